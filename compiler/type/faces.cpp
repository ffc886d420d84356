#include "type/faces.hpp"

#include "measure/limits.hpp"
#include "type/face_problems.hpp"
#include "type/family.hpp"

#include <algorithm>
#include <map>

namespace bodkin {

const FaceCut *OpenFace::nearest(Cut cut) const {
  if (const FaceCut *exact = (*this)[cut])
    return exact;
  if (cut == Cut::bold_italic)
    for (const Cut other : {Cut::bold, Cut::italic})
      if (const FaceCut *near = (*this)[other])
        return near;
  return (*this)[Cut::regular];
}

const OpenFace &OpenFaces::operator[](FaceId id) const {
  static const OpenFace closed;
  return at(id) < faces_.size() ? faces_[at(id)] : closed;
}

class FaceOpener {
public:
  FaceOpener(const Edition &edition, const Files &files, const SystemFaces &system,
             const std::vector<std::string> &catalogue)
      : edition_(edition), files_(files), system_(system), catalogue_(catalogue) {}

  FacesOpened opened() {
    const std::vector<bool> used = faces_in_use(edition_);
    opened_.faces.faces_.resize(edition_.faces.size());
    for (std::size_t i = 0; i < used.size(); ++i)
      if (used[i])
        open(edition_.faces[i], opened_.faces.faces_[i]);
    return std::move(opened_);
  }

private:
  void open(const Face &face, OpenFace &open) {
    if (face.own_files)
      open_own(face, open);
    else if (!face.files.empty())
      open_catalogued(face, open);
    else if (!face.family.empty())
      open_family(face, open);
  }

  void open_own(const Face &face, OpenFace &open) {
    for (const FaceFile &file : face.files) {
      const Lookup found = files_.look("", file.path, limits::face_file_bytes);
      if (found.trouble == Trouble::none)
        put(open, file.cut,
            cut_of(face, file.range, files_.read(found.path), found.path, false, 0));
      else
        opened_.problems.push_back(trouble(face, file, found));
    }
    stand_in_for_regular(face, open);
  }

  void open_catalogued(const Face &face, OpenFace &open) {
    bool whole = true;
    for (const FaceFile &file : face.files) {
      const std::string path = system_.path_of(file.path);
      if (!path.empty())
        put(open, file.cut, system_cut(face, path, 0));
      else if (file.cut == Cut::regular)
        whole = false;
    }
    stand_in_for_regular(face, open);
    if (!whole)
      missing(face, open);
  }

  void open_family(const Face &face, OpenFace &open) {
    const auto cuts = cuts_of_family(system_.list(), face.family);
    const SystemFace *regular = cuts[static_cast<std::size_t>(Cut::regular)];
    if (regular == nullptr) {
      opened_.problems.push_back(missing_face(face, near_names(face)));
      return;
    }
    opened_.problems.push_back(system_face(face, regular->path));
    for (std::size_t cut = 0; cut < cuts.size(); ++cut)
      if (cuts[cut] != nullptr)
        put(open, static_cast<Cut>(cut), system_cut(face, cuts[cut]->path, cuts[cut]->index));
  }

  static Problem trouble(const Face &face, const FaceFile &file, const Lookup &found) {
    switch (found.trouble) {
    case Trouble::too_big:
      return unreadable_face(face, file.range, file.path, "it is larger than any face");
    case Trouble::unreadable:
      return unreadable_face(face, file.range, file.path, "it may not be read");
    case Trouble::not_a_file:
      return unreadable_face(face, file.range, file.path, "it is not a file");
    default:
      return missing_face_file(face, file, found);
    }
  }

  void missing(const Face &face, OpenFace &open) {
    open = OpenFace{};
    opened_.problems.push_back(missing_face(face, {}));
  }

  std::vector<std::string> near_names(const Face &face) const {
    std::vector<SystemFace> all = system_.list();
    SystemFace catalogued;
    catalogued.families = catalogue_;
    all.push_back(std::move(catalogued));
    return near_families(all, face.family);
  }

  static void put(OpenFace &open, Cut cut, const FaceCut *file) {
    const FaceCut *&place = open.cuts[static_cast<std::size_t>(cut)];
    if (place == nullptr)
      place = file;
  }

  // A face that names one file, whatever its cut, is set in that.
  static void stand_in_for_regular(const Face &face, OpenFace &open) {
    for (const FaceFile &file : face.files)
      if (file.cut == Cut::regular)
        return;
    const FaceCut *&regular = open.cuts[static_cast<std::size_t>(Cut::regular)];
    for (const FaceCut *other : open.cuts)
      if (regular == nullptr)
        regular = other;
  }

  const FaceCut *system_cut(const Face &face, const std::string &path, int index) {
    FileBytes bytes = system_.read(path, limits::face_file_bytes);
    return cut_of(face, face.family_range, std::move(bytes), path, true, index);
  }

  const FaceCut *cut_of(const Face &face, Range range, FileBytes bytes, const std::string &path,
                        bool system, int index) {
    const auto [place, is_new] = known_.try_emplace({path, index}, nullptr);
    if (!is_new)
      return place->second;
    if (bytes.view.empty()) {
      opened_.problems.push_back(unreadable_face(face, range, path, "it cannot be read"));
      return nullptr;
    }
    auto made = FaceCut::open(opened_.faces.library_, std::move(bytes), path, system, index);
    if (const auto *reason = std::get_if<std::string>(&made)) {
      opened_.problems.push_back(unreadable_face(face, range, path, *reason));
      return nullptr;
    }
    auto &cuts = opened_.faces.cuts_;
    cuts.push_back(std::move(std::get<std::unique_ptr<FaceCut>>(made)));
    return place->second = cuts.back().get();
  }

  const Edition &edition_;
  const Files &files_;
  const SystemFaces &system_;
  const std::vector<std::string> &catalogue_;
  FacesOpened opened_;
  std::map<std::pair<std::string, int>, const FaceCut *> known_;
};

FacesOpened open_faces(const Edition &edition, const Files &files, const SystemFaces &system,
                       const std::vector<std::string> &catalogue) {
  return FaceOpener(edition, files, system, catalogue).opened();
}

namespace {

class StylesReached {
public:
  explicit StylesReached(const Edition &edition)
      : edition_(edition), reached_(edition.styles.size(), false) {}

  void reach(StyleId id) {
    if (at(id) >= reached_.size() || reached_[at(id)])
      return;
    reached_[at(id)] = true;
    const Style &style = edition_[id];
    for (const auto &heading : style.headings)
      if (heading)
        reach(**heading);
    for (const auto &other : {style.quote, style.list, style.code})
      if (other)
        reach(**other);
  }
  bool has(std::size_t style) const { return reached_[style]; }

private:
  const Edition &edition_;
  std::vector<bool> reached_;
};

} // namespace

std::vector<bool> faces_in_use(const Edition &edition) {
  StylesReached styles(edition);
  for (const Element &element : edition.elements) {
    if (const auto *words = std::get_if<Words>(&element.what))
      styles.reach(*words->style);
    if (const auto *folio = std::get_if<Folio>(&element.what))
      styles.reach(folio->style);
  }
  std::vector<bool> used(edition.faces.size(), false);
  for (std::size_t i = 0; i < edition.styles.size(); ++i) {
    const FaceId face = *edition.styles[i].face;
    if (styles.has(i) && at(face) < used.size())
      used[at(face)] = true;
  }
  return used;
}

} // namespace bodkin
