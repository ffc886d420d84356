#include "edition/supplies.hpp"
#include "edition/values.hpp"

#include "measure/limits.hpp"

#include <array>
#include <map>

namespace bodkin {
namespace {

constexpr std::string_view catalogue_name = "fonts/catalogue";

bool names_a_file(std::string_view text) {
  constexpr std::array<std::string_view, 4> endings{".otf", ".ttf", ".otc", ".ttc"};
  for (const std::string_view ending : endings) {
    if (text.size() <= ending.size())
      continue;
    bool same = true;
    for (std::size_t i = 0; i < ending.size(); ++i) {
      const char c = text[text.size() - ending.size() + i];
      same = same && (c == ending[i] || (c >= 'A' && c <= 'Z' && c - 'A' + 'a' == ending[i]));
    }
    if (same)
      return true;
  }
  return false;
}

Cut cut_of(std::string_view word) {
  if (word == "italic")
    return Cut::italic;
  if (word == "bold")
    return Cut::bold;
  return word == "bold-italic" ? Cut::bold_italic : Cut::regular;
}

// What the catalogue, or the edition, writes below a face.
void take_facts(FactLine face, Face &out) {
  Facts(face).each("file", [&](FactLine line) {
    out.files.push_back(
        {std::string(line.words("path")), cut_of(line.words("cut")), line.range("path")});
  });
  if (const auto package = text_in(Facts(face).find("package"), "package"))
    out.package = package->value;
  if (const auto licence = text_in(Facts(face).find("licence"), "licence"))
    out.licence = licence->value;
}

// The faces of the catalogue by family. It is read only where some face asks for a family.
class Catalogue {
public:
  explicit Catalogue(Reader &reader) : reader_(reader) {}

  FactLine find(std::string_view family) {
    if (!read_)
      read();
    const auto found = by_family_.find(family);
    return found == by_family_.end() ? FactLine{} : found->second;
  }

private:
  void read() {
    read_ = true;
    const FileBytes bytes = reader_.files.shelf(catalogue_name);
    if (!bytes.owner)
      return;
    Manuscript &catalogue = reader_.manuscripts.emplace_back();
    catalogue.path = catalogue_name;
    catalogue.on_shelf = true;
    const std::string name = std::string(catalogue_name) + ".bodkin";
    reader_.note_file(name, FileRole::shelf);
    const FileId file = reader_.sources.add(name, std::string(bytes.view));
    Problems found;
    catalogue.tree = language::read(file, reader_.sources, found);
    for (Problem &problem : found)
      reader_.report(std::move(problem));
    each_line(catalogue, [&](FactLine line) {
      if (line.word() == "face")
        by_family_.emplace(line.words("family"), line);
    });
  }

  Reader &reader_;
  bool read_ = false;
  std::map<std::string_view, FactLine> by_family_;
};

// An own file is kept by the path that Files::read takes; one that is not there as it is written,
// and the room type/ says so when a style asks for the face.
void find_own_files(Reader &reader, FactLine line, Face &face) {
  face.own_files = true;
  for (FaceFile &file : face.files) {
    const Lookup looked = reader.files.look(line.in->folder, file.path, limits::face_file_bytes);
    if (looked.trouble != Trouble::none || line.in->on_shelf)
      continue;
    file.path = looked.path;
    reader.note_file(looked.path, FileRole::face);
  }
}

Face face_of(Reader &reader, Catalogue &catalogue, const Named &named) {
  Face face;
  const FactLine line = named.line;
  face.name = named.name;
  face.range = line.range();
  face.family_range = line.range("family");
  take_facts(line, face);
  const std::string_view text = line.words("family");
  if (names_a_file(text))
    face.files.push_back({std::string(text), Cut::regular, face.family_range});
  else
    face.family = text;
  if (!face.files.empty())
    find_own_files(reader, line, face);
  else if (const FactLine entry = catalogue.find(text))
    take_facts(entry, face);
  return face;
}

} // namespace

void take_faces(Reader &reader) {
  Catalogue catalogue(reader);
  for (const Named &named : reader.things(Family::face).all)
    reader.edition.faces.push_back(face_of(reader, catalogue, named));
}

} // namespace bodkin
