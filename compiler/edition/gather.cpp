#include "edition/gather.hpp"

#include "edition/problems.hpp"
#include "measure/limits.hpp"

#include <array>
#include <fmt/format.h>
#include <unordered_map>
#include <utility>

namespace bodkin {
namespace {

constexpr std::array<std::string_view, static_cast<std::size_t>(Family::count)> family_words{
    "stock",   "machine", "bid",    "face", "style",   "source", "text",    "standing",
    "running", "folding", "insert", "law",  "licence", "mail",   "envelope"};

std::optional<Family> family_of(std::string_view word) {
  for (std::size_t i = 0; i < family_words.size(); ++i)
    if (family_words[i] == word)
      return static_cast<Family>(i);
  return std::nullopt;
}

Problem too_many_named(Family family, FactLine line) {
  return {.check = "too-many-things",
          .range = line.keyword(),
          .message = fmt::format("this is more than {} things of one kind, each a {}; the rest is "
                                 "left out",
                                 limits::named_things, word_for(family)),
          .why = "no edition asks for so many, and reading them would only make you wait",
          .type = {{{}, "take out those that nothing asks for"}}};
}

void gather_thing(Reader &reader, Family family, FactLine line) {
  const std::string_view name = line.words("name");
  if (name.empty())
    return;
  Things &things = reader.things(family);
  if (things.all.size() == limits::named_things && !things.find(name)) {
    if (!std::exchange(things.full, true))
      reader.report(too_many_named(family, line));
    return;
  }
  const auto [found, added] =
      things.by_name.emplace(name, static_cast<std::uint32_t>(things.all.size()));
  if (added) {
    things.all.push_back({name, line});
    return;
  }
  const FactLine winner = things.all[found->second].line;
  if (winner.in == line.in)
    reader.report(duplicate_name(reader, family, winner, line));
  else if (winner.in->own)
    reader.report(own_beats_shelf(reader, family, winner, line));
  else
    reader.report(later_borrow(reader, family, winner, line));
}

bool for_the_edition_alone(std::string_view word) {
  return word == "edition" || word == "page" || word == "spread" || word == "finish" ||
         word == "insert" || word == "wrap" || word == "reverse" || word == "boards";
}

Problem not_borrowed(FactLine line) {
  return {.check = "not-borrowed",
          .range = line.range(),
          .message = fmt::format("a borrowed file holds no {}", line.word()),
          .why = "what others borrow is papers, machines, faces, styles and standing matter; an "
                 "edition, its pages and its finish stand in its own file",
          .type = {{{},
                    fmt::format("move this {} and what stands below it into the edition's file, "
                                "or take it out",
                                line.word())}}};
}

void gather_edition(Reader &reader, FactLine line) {
  if (reader.edition_line)
    return;
  reader.edition_line = line;
  reader.edition_facts = Facts(line);
  reader.reading.has_edition = true;
}

class Gathering {
public:
  Gathering(Reader &reader, const Manuscript &manuscript)
      : reader_(reader), manuscript_(manuscript) {}

  void run() {
    each_line(manuscript_, [&](FactLine line) { take(line); });
    for (auto &[kind, facts] : every_)
      reader_.every[kind].levels.push_back(std::move(facts));
  }

private:
  void take(FactLine line) {
    const std::string_view word = line.word();
    if (!manuscript_.own && for_the_edition_alone(word))
      reader_.report(not_borrowed(line));
    else if (word == "edition")
      gather_edition(reader_, line);
    else if (word == "every")
      take_every(line);
    else if (const auto family = family_of(word))
      gather_thing(reader_, *family, line);
  }

  void take_every(FactLine line) {
    const std::string_view kind = line.words("kind");
    if (kind.empty())
      return;
    Facts &facts = every_[kind];
    line.each_child([&](FactLine fact) {
      if (const FactLine before = facts.find(fact.word());
          before && !fact.statement->entry->many &&
          before.statement->parent != fact.statement->parent)
        reader_.report(said_twice(before, fact, kind));
      else
        facts.add(fact);
    });
  }

  Problem said_twice(FactLine first, FactLine second, std::string_view kind) const {
    return {.check = "same-fact-twice",
            .range = second.range(),
            .message = fmt::format("every {} has its {} from {} already", kind, second.word(),
                                   place_words(reader_, first.range(), second.range().file)),
            .why = "one fact is written once, so that there is never a question which line counts; "
                   "this often comes of a merge",
            .type = {{{}, "keep the line that is right and take the other out"}},
            .related = {{first.range(), "the first of them"}}};
  }

  Reader &reader_;
  const Manuscript &manuscript_;
  std::unordered_map<std::string_view, Facts> every_;
};

} // namespace

std::string_view word_for(Family family) { return family_words[static_cast<std::size_t>(family)]; }

std::vector<std::string_view> Things::names() const {
  std::vector<std::string_view> out;
  for (const Named &thing : all) {
    out.push_back(thing.name);
    if (out.size() > Reader::names_searched)
      break;
  }
  return out;
}

void gather(Reader &reader) {
  for (const Manuscript *manuscript : reader.strongest_first)
    Gathering(reader, *manuscript).run();
}

} // namespace bodkin
