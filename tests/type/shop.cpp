#include "type/shop.hpp"

#include <doctest/doctest.h>

#include <cstdio>
#include <fstream>
#include <sstream>

namespace bodkin {

std::string ShelfOfFaces::path_of(std::string_view file_name) const {
  const std::string path = "/shelf/" + std::string(file_name);
  return files.read(path).owner != nullptr ? path : std::string();
}

FileBytes ShelfOfFaces::read(const std::string &path, std::size_t most_bytes) const {
  FileBytes bytes = files.read(path);
  return bytes.view.size() <= most_bytes ? bytes : FileBytes{};
}

Face catalogued(std::string name, std::string family, std::string package,
                std::vector<std::pair<std::string, Cut>> files) {
  Face face;
  face.name = std::move(name);
  face.family = std::move(family);
  face.package = std::move(package);
  for (auto &[file, cut] : files)
    face.files.push_back({file, cut, {}});
  return face;
}

Shop::Shop() {
  edition.languages.push_back({"en-GB", {}});
  edition.faces = {catalogued("book", "EB Garamond", "fonts-ebgaramond",
                              {{"EBGaramond12-Regular.otf", Cut::regular},
                               {"EBGaramond12-Italic.otf", Cut::italic},
                               {"EBGaramond12-Bold.otf", Cut::bold}}),
                   catalogued("poster", "Bebas Neue", "fonts-bebas-neue",
                              {{"BebasNeue-Regular.otf", Cut::regular}}),
                   catalogued("typed", "Courier Prime", "fonts-courier-prime",
                              {{"Courier Prime.otf", Cut::regular},
                               {"Courier Prime Italic.otf", Cut::italic},
                               {"Courier Prime Bold.otf", Cut::bold},
                               {"Courier Prime Bold Italic.otf", Cut::bold_italic}})};
  body = add_style("body", FaceId{0}, Length::points(10), Length::points(13));
  style(body).indent = {Length::points(10), {}};
  sign = add_style("sign", FaceId{1}, Length::points(20), Length::points(20));
  label = add_style("label", FaceId{2}, Length::points(8), Length::points(11));
}

StyleId Shop::add_style(std::string name, FaceId face, Length size, Length leading) {
  Style style;
  style.name = std::move(name);
  style.face = {face, {}};
  style.size = {size, {}};
  style.leading = {leading, {}};
  edition.styles.push_back(style);
  Element element;
  Words words;
  const auto id = static_cast<StyleId>(edition.styles.size() - 1);
  words.style = {id, {}};
  element.what = words;
  edition.elements.push_back(element);
  return id;
}

Compositor &Shop::compositor() {
  if (compositor_ == nullptr) {
    opened = open_faces(edition, MemoryFiles(), *machine_faces());
    REQUIRE(opened.problems.empty());
    compositor_ = std::make_unique<Compositor>(edition, opened.faces);
  }
  return *compositor_;
}

Column Shop::fill(const Prose &prose, StyleId style, Size room) {
  Flow flow = compositor().flow(prose, style);
  return compositor().fill(flow, Mark{}, room);
}

std::string file_bytes(const std::string &path) {
  std::ifstream file(path, std::ios::binary);
  REQUIRE_MESSAGE(file.good(), path);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return bytes.str();
}

Block block(BlockKind kind, std::string_view text) {
  Block block;
  block.kind = kind;
  Span span;
  span.text = text;
  block.spans.push_back(span);
  return block;
}

Prose prose(std::vector<Block> blocks) {
  Prose prose;
  prose.blocks = std::move(blocks);
  return prose;
}

std::string text_of(const Line &line) {
  std::string text;
  for (const GlyphRun &run : line.runs)
    text += run.text;
  return text;
}

std::vector<std::string> texts_of(const std::vector<Line> &lines) {
  std::vector<std::string> texts;
  for (const Line &line : lines)
    texts.push_back(text_of(line));
  return texts;
}

std::string printed(const std::string &command) {
  FILE *pipe = popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string out;
  char part[4096];
  for (std::size_t n = 0; (n = std::fread(part, 1, sizeof part, pipe)) > 0;)
    out.append(part, n);
  REQUIRE_MESSAGE(pclose(pipe) == 0, command);
  return out;
}

} // namespace bodkin
