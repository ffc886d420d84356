#include "edition/licences.hpp"

#include "edition/like.hpp"
#include "edition/problems.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

bool says(FactLine line, std::string_view word) {
  if (!line)
    return false;
  for (const language::Capture &part : line.in->tree.captured(*line.statement))
    if (const auto *written = std::get_if<language::Word>(&part.value);
        written && written->text == word)
      return true;
  return false;
}

Licence licence_of(const Named &named, const Facts &facts) {
  Licence licence;
  licence.name = named.name;
  licence.title = named.line.words("title");
  licence.range = named.line.range();
  if (const FactLine called = facts.find("called"))
    licence.called = called.words("called");
  if (const FactLine link = facts.find("link"))
    licence.link = link.words("link");
  const FactLine asks = facts.find("asks"), forbids = facts.find("forbids");
  licence.asks_credit = says(asks, "credit");
  licence.asks_changes_said = says(asks, "changes");
  licence.asks_same_licence = says(asks, "same-licence");
  licence.forbids_sale = says(forbids, "sale");
  licence.forbids_changes = says(forbids, "changes");
  return licence;
}

// "CC BY-SA 4.0" and "cc-by-sa-4.0" are the same words.
std::string letters_of(std::string_view words) {
  std::string letters;
  for (const char c : words)
    if (c >= 'A' && c <= 'Z')
      letters += static_cast<char>(c - 'A' + 'a');
    else if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
      letters += c;
  return letters;
}

bool bears(const Licence &licence, const std::string &letters) {
  return letters == letters_of(licence.title) || letters == letters_of(licence.called) ||
         letters == letters_of(licence.name);
}

// "CC-BY-" of "CC-BY-4.0": what is left of a name without its version; empty where it has none.
std::string_view without_version(std::string_view title) {
  const std::size_t end = title.find_last_not_of("0123456789.");
  return end == std::string_view::npos || end + 1 == title.size() ? std::string_view()
                                                                  : title.substr(0, end + 1);
}

// What a licence is, however it is spelled: "by-nc", "CC BY-NC 3.0" and "Attribution
// NonCommercial" are all bync.
std::string stem_of(std::string_view name) {
  struct Spelled {
    std::string_view in_full, letters;
  };
  constexpr std::array<Spelled, 7> spelled{{{"creativecommons", ""},
                                            {"noncommercial", "nc"},
                                            {"attribution", "by"},
                                            {"sharealike", "sa"},
                                            {"noderivatives", "nd"},
                                            {"noderivs", "nd"},
                                            {"licence", ""}}};
  for (const std::string_view last : {" International", " Unported"})
    if (name.ends_with(last))
      name.remove_suffix(last.size());
  const std::string_view stem = without_version(name);
  std::string letters = letters_of(stem.empty() ? name : stem);
  for (const auto &[in_full, short_form] : spelled)
    if (const std::size_t at = letters.find(in_full); at != std::string::npos)
      letters.replace(at, in_full.size(), short_form);
  return letters.starts_with("cc") && letters.size() > 3 ? letters.substr(2) : letters;
}

// The same licence in the versions that are known, as they stand in their lines.
std::vector<std::string_view> other_versions(const std::vector<std::string_view> &titles,
                                             std::string_view written) {
  const std::string stem = stem_of(written);
  std::vector<std::string_view> versions;
  for (const std::string_view title : titles)
    if (!stem.empty() && stem_of(title) == stem)
      versions.push_back(title);
  std::sort(versions.rbegin(), versions.rend());
  return versions;
}

// Another version is another text, and not what was meant: it is named and not put in.
void tell_versions(const Reader &reader, FactLine line,
                   const std::vector<std::string_view> &versions, Problem &problem) {
  problem.message +=
      fmt::format("; known here {} {}", versions.size() == 1 ? "is" : "are", list_of(versions));
  problem.type.push_back(
      {typed(reader, line.range(), line.range("licence"), fmt::format("\"{}\"", versions.front())),
       "the newest, if its maker says that one"});
}

Problem unknown_licence(Reader &reader, FactLine line) {
  std::vector<std::string_view> titles;
  for (const Licence &licence : reader.edition.licences)
    titles.push_back(licence.title.empty() ? licence.name : licence.title);
  const std::string_view written = line.words("licence");
  Problem problem{.kind = Kind::warning,
                  .check = "unknown-licence",
                  .range = line.range("licence"),
                  .message = fmt::format("no licence here is called {}", written),
                  .why = "what a licence asks, whether a credit or that nothing is sold, stands "
                         "in its lines; without them nobody can hold the edition against it"};
  if (const auto versions = other_versions(titles, written); !versions.empty()) {
    tell_versions(reader, line, versions, problem);
  } else if (const auto near = reader.near(written, titles)) {
    const std::string quoted = fmt::format("\"{}\"", *near);
    problem.message += fmt::format("; did you mean {}?", *near);
    problem.type.push_back({typed(reader, line.range(), line.range("licence"), quoted), {}});
    problem.edits.push_back({line.range("licence"), quoted});
  } else if (titles.empty()) {
    problem.type.push_back({"borrow \"licences/open\"", "which holds the usual open ones"});
  }
  // Typed as it is, it asks too much and never too little.
  problem.type.push_back({fmt::format("licence theirs \"{}\"\n  asks       credit, changes, "
                                      "same-licence\n  forbids    sale, changes",
                                      written),
                          "all that one can ask: take out what this one does not"});
  return problem;
}

} // namespace

void take_licences(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::licence);
  const Things &things = reader.things(Family::licence);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.licences.push_back(licence_of(things.all[i], facts[i]));
  const FactLine own = reader.edition_facts.find("licence");
  reader.edition.given_under = text_in(own, "licence");
  reader.edition.licence_id = licence_named(reader, own);
}

std::optional<LicenceId> licence_named(Reader &reader, FactLine line) {
  if (!line || !line.has("licence"))
    return std::nullopt;
  const std::string letters = letters_of(line.words("licence"));
  const std::vector<Licence> &licences = reader.edition.licences;
  for (std::size_t i = 0; i < licences.size(); ++i)
    if (bears(licences[i], letters)) {
      reader.things(Family::licence).all[i].used = true;
      return static_cast<LicenceId>(i);
    }
  if (reader.first_said_at(line.range("licence")))
    reader.report(unknown_licence(reader, line));
  return std::nullopt;
}

} // namespace bodkin
