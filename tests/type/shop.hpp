// A small printing shop for tests: an edition with three faces of this machine and a few styles.
#pragma once

#include "edition/memory.hpp"
#include "type/compositor.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

// Faces in memory by name; none is of the machine.
class ShelfOfFaces : public SystemFaces {
public:
  std::string path_of(std::string_view file_name) const override;
  const std::vector<SystemFace> &list() const override { return faces; }
  FileBytes read(const std::string &path, std::size_t most_bytes) const override;

  std::vector<SystemFace> faces;
  MemoryFiles files;
};

struct Shop {
  Shop(); // book: EB Garamond 12; poster: Bebas Neue; typed: Courier Prime
  // 10/13 in the book face, ranged left, indent 10pt; change it before opening the compositor.
  Style &style(StyleId id) { return edition.styles[at(id)]; }
  StyleId add_style(std::string name, FaceId face, Length size, Length leading);
  // Opens the faces at first.
  Compositor &compositor();
  Column fill(const Prose &prose, StyleId style, Size room);

  Edition edition;
  StyleId body, sign, label;
  FacesOpened opened;

private:
  std::unique_ptr<Compositor> compositor_;
};

Face catalogued(std::string name, std::string family, std::string package,
                std::vector<std::pair<std::string, Cut>> files);
std::string file_bytes(const std::string &path);

Block block(BlockKind kind, std::string_view text);
inline Block paragraph(std::string_view text) { return block(BlockKind::paragraph, text); }
Prose prose(std::vector<Block> blocks);
inline Prose one(std::string_view text) { return prose({paragraph(text)}); }

std::string text_of(const Line &line);
std::vector<std::string> texts_of(const std::vector<Line> &lines);
// What a command prints; the test fails where it cannot be run.
std::string printed(const std::string &command);

} // namespace bodkin
