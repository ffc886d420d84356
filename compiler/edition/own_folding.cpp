#include "edition/own_folding.hpp"

#include "edition/folding_facts.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

// Of the book, of a wrap and of an insert.
std::string_view usual_folding(const Reader &reader) {
  if (!reader.piece)
    return "saddle-stitch";
  if (reader.wraps())
    return "single-fold";
  const Size &page = *reader.edition.size;
  return page.width > page.height ? "flat-across" : "flat";
}

// The shelf keeps one folding a file, named as itself.
FactLine from_shelf(Reader &reader, std::string_view name) {
  const std::string shelf = fmt::format("foldings/{}", name);
  const FileBytes bytes = reader.files.shelf(shelf);
  if (!bytes.owner)
    return {};
  Manuscript &manuscript = reader.manuscripts.emplace_back();
  manuscript.path = shelf;
  manuscript.on_shelf = true;
  const std::string file_name = fmt::format("stdlib/{}.bodkin", shelf);
  reader.note_file(file_name, FileRole::shelf);
  Problems found;
  manuscript.tree =
      language::read(reader.sources.add(file_name, std::string(bytes.view)), reader.sources, found);
  for (Problem &problem : found)
    reader.report(std::move(problem));
  FactLine folding;
  each_line(manuscript, [&](FactLine line) {
    if (line.word() == "folding" && line.words("name") == name)
      folding = line;
  });
  return folding;
}

std::vector<std::string> folding_names(const Reader &reader) {
  std::vector<std::string> names = reader.files.shelf_names("foldings");
  const std::vector<std::string_view> own = reader.things(Family::folding).names();
  names.insert(names.begin(), own.begin(), own.end());
  return names;
}

Problem unknown_folding(const Reader &reader, FactLine line, std::string_view meant,
                        const std::vector<std::string_view> &names) {
  Problem problem{.check = "unknown-name",
                  .range = line.range("folding"),
                  .message = fmt::format("no folding is called {}", line.words("folding")),
                  .why = fmt::format("the foldings here and on the shelf: {}", list_of(names))};
  if (meant.empty())
    return problem;
  problem.message += fmt::format("; did you mean {}?", meant);
  problem.type.push_back({typed(reader, line.range(), line.range("folding"), meant), {}});
  problem.edits.push_back({line.range("folding"), std::string(meant)});
  return problem;
}

FactLine find_folding(Reader &reader, std::string_view name) {
  if (const Named *own = reader.things(Family::folding).find(name)) {
    own->used = true;
    return own->line;
  }
  return from_shelf(reader, name);
}

} // namespace

// Proved like the one that is asked for, so that a maker can keep several and trust them.
static void take_other_foldings(Reader &reader) {
  for (const Named &thing : reader.things(Family::folding).all)
    if (!thing.used && thing.line.in->own)
      reader.edition.other_foldings.push_back(folding_of(reader, thing.line));
}

// The folding asked for, or the one that was meant by a name that there is not.
static FactLine folding_asked(Reader &reader, FactLine asked) {
  if (!asked.has("folding"))
    return {};
  const std::string_view name = asked.words("folding");
  if (const FactLine folding = find_folding(reader, name))
    return folding;
  const std::vector<std::string> all = folding_names(reader);
  const std::vector<std::string_view> names(all.begin(), all.end());
  const std::string_view meant = name_meant(reader, name, names).value_or(std::string_view{});
  reader.report(unknown_folding(reader, asked, meant, names));
  return meant.empty() ? FactLine{} : find_folding(reader, meant);
}

void take_folding(Reader &reader) {
  const FactLine asked = reader.edition_facts.find("folding");
  FactLine folding;
  if (asked) {
    folding = folding_asked(reader, asked);
    reader.edition.folding_guessed = !folding;
  }
  if (!folding)
    folding = find_folding(reader, usual_folding(reader));
  if (folding)
    reader.edition.folding =
        known(folding_of(reader, folding), asked ? asked.range("folding") : Range{});
  take_other_foldings(reader);
}

} // namespace bodkin
