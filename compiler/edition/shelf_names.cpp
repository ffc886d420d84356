#include "edition/shelf_names.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

// One folder of the shelf for each kind of thing.
std::string_view folder_for(Family family) {
  switch (family) {
  case Family::stock:
    return "stocks";
  case Family::machine:
    return "machines";
  case Family::style:
    return "styles";
  case Family::law:
    return "laws";
  case Family::licence:
    return "licences";
  case Family::mail:
  case Family::envelope:
    return "mail";
  default:
    return {};
  }
}

ShelfIndex indexed(const Files &files, std::string_view folder, std::string_view word) {
  ShelfIndex index;
  for (const std::string &name : files.shelf_names(folder)) {
    const std::string shelf = fmt::format("{}/{}", folder, name);
    Sources sources;
    Problems ignored;
    const FileBytes bytes = files.shelf(shelf);
    if (!bytes.owner)
      continue;
    Manuscript manuscript;
    manuscript.tree = language::read(sources.add(shelf, std::string(bytes.view)), sources, ignored);
    each_line(manuscript, [&](FactLine line) {
      if (line.word() == word)
        index[std::string(line.words("name"))].push_back(shelf);
    });
  }
  return index;
}

} // namespace

std::vector<std::string> shelves_holding(Reader &reader, Family family, std::string_view name) {
  const std::string_view folder = folder_for(family);
  if (folder.empty())
    return {};
  auto found = reader.shelves.find(family);
  if (found == reader.shelves.end())
    found = reader.shelves.emplace(family, indexed(reader.files, folder, word_for(family))).first;
  const auto shelves = found->second.find(name);
  return shelves == found->second.end() ? std::vector<std::string>{} : shelves->second;
}

} // namespace bodkin
