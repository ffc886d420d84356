#include "press/papers_told.hpp"

#include "press/leaflet.hpp"
#include "press/price_cards.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>
#include <set>

namespace bodkin::press {
namespace {

std::string in_a_row(const std::vector<std::string> &names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

std::vector<std::string> files_of(const PapersAsked &asked) {
  std::vector<std::string> files;
  for (const PaperToSet &paper : asked.papers)
    files.push_back(paper.file);
  if (asked.cards != nullptr)
    files.emplace_back("prices.pdf");
  return files;
}

Problem no_paper_face(const PapersAsked &asked, const std::vector<AbsentFace> &absent) {
  std::vector<std::string> families;
  std::string install = "apt install";
  for (const AbsentFace &face : absent) {
    families.push_back(face.family);
    install += face.package.empty() ? "" : " " + face.package;
  }
  const std::vector<std::string> files = files_of(asked);
  return {.kind = Kind::warning,
          .check = "no-paper-face",
          .range = asked.edition.title.from,
          .message = fmt::format("{} {} left out: there is no face to set them in", in_a_row(files),
                                 files.size() == 1 ? "is" : "are"),
          .why = fmt::format("they are set in {}, which {} not on this machine, or else in a face "
                             "of the edition's own, which has none that is; assembly.txt and "
                             "ticket.txt say the same in plain text",
                             in_a_row(families), families.size() == 1 ? "is" : "are"),
          .type = {{install, "as root, in a terminal"},
                   {"style label\n  face       book 9/11",
                    "or words of the edition in a face that is there"}}};
}

// Those that not every face has, each once.
std::vector<std::string> rare_characters(const std::vector<std::string> &words) {
  std::set<std::string> rare;
  for (const std::string &text : words)
    for (std::size_t at = 0; at < text.size();) {
      const Character character = character_at(text, at);
      if (character.bytes > 1)
        rare.insert(text.substr(at, character.bytes));
      at += character.bytes;
    }
  return {rare.begin(), rare.end()};
}

// Where the maker typed it, in whichever file; else the edition's title.
Range where_typed(const PapersAsked &asked, const std::string &character) {
  for (std::size_t i = 0; i < asked.sources.count(); ++i) {
    const auto file = static_cast<FileId>(i);
    const std::size_t at = asked.sources.text(file).find(character);
    if (at != std::string_view::npos && !asked.sources.is_shelf(file))
      return {file, static_cast<Offset>(at), static_cast<Offset>(at + character.size())};
  }
  return asked.edition.title.from;
}

Problem lacking_on_paper(const PapersAsked &asked, const std::string &character,
                         const std::vector<std::string> &files) {
  return {.kind = Kind::warning,
          .check = "missing-glyph",
          .range = where_typed(asked, character),
          .message = fmt::format("no face that {} can be set in has “{}” (U+{:04X})",
                                 in_a_row(files), harmless(character),
                                 static_cast<std::uint32_t>(character_at(character, 0).code)),
          .why = "it is an empty box there; papers are set in the faces of `styles/paperwork`, or "
                 "in the one that this edition's running text has",
          .type = {{"", "write it otherwise, or let that text be in a face that has it"}}};
}

Problem more_lacking(const PapersAsked &asked, std::size_t more) {
  return {.kind = Kind::warning,
          .check = "missing-glyph",
          .range = asked.edition.title.from,
          .message = fmt::format("{} more character{} of {} {} in no face that these can be set in",
                                 more, more == 1 ? "" : "s", in_a_row(files_of(asked)),
                                 more == 1 ? "is" : "are"),
          .why = "so many are a script that the faces of papers do not draw",
          .type = {{"", "read this edition's own words in a face that does"}}};
}

// By character, so that what several papers lack is told once.
Problems lacking_on_papers(const PapersAsked &asked, LeafletType &type) {
  std::vector<std::pair<std::string, std::vector<std::string>>> lacking;
  for (const PaperToSet &paper : asked.papers) {
    const std::vector<std::string> words = words_of(*paper.leaflet);
    type.suit(words);
    for (std::string &character : type.lacking(rare_characters(words))) {
      const auto known = std::find_if(lacking.begin(), lacking.end(),
                                      [&](const auto &other) { return other.first == character; });
      if (known == lacking.end())
        lacking.emplace_back(std::move(character), std::vector{paper.file});
      else
        known->second.push_back(paper.file);
    }
  }
  constexpr std::size_t most_told = 12;
  Problems problems;
  for (std::size_t i = 0; i < std::min(lacking.size(), most_told); ++i)
    problems.push_back(lacking_on_paper(asked, lacking[i].first, lacking[i].second));
  if (lacking.size() > most_told)
    problems.push_back(more_lacking(asked, lacking.size() - most_told));
  return problems;
}

} // namespace

Problems paper_problems(const PapersAsked &asked, LeafletType &type) {
  if (!type.usable())
    return {no_paper_face(asked, type.absent())};
  Problems problems = lacking_on_papers(asked, type);
  if (asked.cards != nullptr)
    for (Problem &problem : lacking_on_cards(*asked.cards, type, asked.edition.cards->from))
      problems.push_back(std::move(problem));
  return problems;
}

} // namespace bodkin::press
