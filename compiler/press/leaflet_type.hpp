// The type that leaflets are set in: the styles of stdlib/styles/paperwork.bodkin in their own
// faces, or, where those are not installed or lack a character, in a face of the edition's.
#pragma once

#include "edition/files.hpp"
#include "page/drawing.hpp"
#include "type/compositor.hpp"
#include "type/system_faces.hpp"

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin::press {

enum class LeafletRole {
  title,
  kind,
  aside,
  head,
  number,
  subhead,
  minor,
  text,
  small,
  column,
  cell,
  care,
  caption,
  measure,
  page,
  foot
};

// Styles and the faces that they can be set in.
struct LeafletDress {
  std::unique_ptr<Edition> edition; // holds the styles
  const OpenFaces *faces = nullptr;
  std::array<StyleId, 16> styles{}; // by role
  std::array<bool, 16> fractions{}; // whose face makes one sign of a fraction
};

// What the shelf's own styles would be set in, and is not there.
struct AbsentFace {
  std::string family, package; // "EB Garamond", "fonts-ebgaramond"
};

// A face that words can be set in; held by others.
struct FaceOffer {
  const Edition *edition = nullptr;
  const OpenFaces *faces = nullptr;
  FaceId face = FaceId::none;
};

class LeafletType {
public:
  // `edition` and `own` are the edition's, kept by reference; of `files` only the shelf is asked.
  LeafletType(const Files &files, const SystemFaces &system, const Edition &edition,
              const OpenFaces &own);

  bool usable() const { return compositor_.has_value(); }
  const std::vector<AbsentFace> &absent() const { return absent_; }
  // Of these characters, those that the faces chosen have no glyph for.
  std::vector<std::string> lacking(const std::vector<std::string> &characters) const;
  // Chooses the faces that have a glyph for every character of these words, if any do.
  void suit(const std::vector<std::string> &words);

  // Words broken to a measure, from a top left of 0. `lead` is strong and comes before.
  std::vector<Line> broken(std::string_view lead, std::string_view text, LeafletRole role,
                           double measure);
  Line line(std::string_view text, LeafletRole role);
  double width(std::string_view text, LeafletRole role);
  double leading(LeafletRole role) const;
  // What an edition's own papers may be set in, the best first: `loud` begins with the face of its
  // largest style, `quiet` with the one that it is read in. Both end with those of the shelf.
  std::vector<FaceOffer> loud() const;
  std::vector<FaceOffer> quiet() const;
  // Every file that has been opened beside the edition's own.
  const std::vector<std::unique_ptr<FaceCut>> &files() const { return faces_.files(); }

private:
  bool lacks_a_glyph(const LeafletDress &dress, const std::vector<std::string> &words) const;
  void wear(std::size_t dress);
  StyleId style(LeafletRole role) const {
    return dresses_[worn_].styles[static_cast<std::size_t>(role)];
  }

  FaceOffer offer(const LeafletDress &dress, LeafletRole role) const;
  std::string as_set(std::string_view text, LeafletRole role) const;

  const Edition &own_edition_;
  const OpenFaces &own_faces_;
  OpenFaces faces_;
  std::vector<LeafletDress> dresses_;
  std::vector<AbsentFace> absent_;
  std::size_t worn_ = 0;
  std::optional<Compositor> compositor_;
};

} // namespace bodkin::press
