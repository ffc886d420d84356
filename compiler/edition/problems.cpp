#include "edition/problems.hpp"

#include "edition/shelf_names.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin {
namespace {

constexpr std::size_t names_listed = 12;

std::string there_is(Reader &reader, Family family) {
  const std::vector<std::string_view> names = reader.things(family).names();
  if (names.empty())
    return fmt::format("there is no {} in this edition, nor in what it borrows", spoken(family));
  return fmt::format("the {}s here: {}", spoken(family),
                     list_of(names, reader.things(family).all.size()));
}

std::string one(Family family) {
  return fmt::format("{} {}", family == Family::insert ? "an" : "a", spoken(family));
}

} // namespace

std::string typed(const Reader &reader, Range line, Range part, std::string_view instead) {
  const std::string_view whole = reader.sources.text(line);
  const std::uint32_t begin = bytes(part.begin) - bytes(line.begin);
  const std::uint32_t end = bytes(part.end) - bytes(line.begin);
  if (part.file != line.file || bytes(part.begin) < bytes(line.begin) || end > whole.size())
    return std::string(instead);
  return fmt::format("{}{}{}", whole.substr(0, begin), instead, whole.substr(end));
}

std::string list_of(const std::vector<std::string_view> &names, std::size_t total) {
  total = std::max(total, names.size());
  std::string out;
  const std::size_t shown = std::min(names.size(), names_listed);
  for (std::size_t i = 0; i < shown; ++i) {
    if (i > 0)
      out += i + 1 == total ? " and " : ", ";
    out += names[i];
  }
  if (total > shown)
    out += fmt::format(" and {} more", total - shown);
  return out;
}

std::vector<std::string_view> called_names(const Reader &reader) {
  std::vector<std::string_view> names;
  for (const auto &[name, page] : reader.called)
    if (names.size() <= Reader::names_searched)
      names.push_back(name);
    else
      break;
  return names;
}

std::string called_list(const Reader &reader) {
  if (reader.called.empty())
    return "pages get names by `called`, as in `page 12 called timetable`";
  return fmt::format("the pages called by name are {}",
                     list_of(called_names(reader), reader.called.size()));
}

std::string place_words(const Reader &reader, Range range, FileId seen_from) {
  const std::uint32_t line = reader.sources.line_number(range);
  if (range.file == seen_from)
    return fmt::format("line {}", line);
  return fmt::format("line {} of {}", line, reader.sources.name(range.file));
}

std::string_view spoken(Family family) {
  switch (family) {
  case Family::stock:
    return "paper";
  case Family::standing:
    return "standing piece";
  default:
    return word_for(family);
  }
}

namespace {

// A name that this one is the beginning or the end of: green-80 for green, eight-page-mini for
// mini.
std::optional<std::string_view> longer_name(std::string_view name,
                                            const std::vector<std::string_view> &names) {
  if (name.size() < 3 || names.size() > Reader::names_searched)
    return std::nullopt;
  for (const std::string_view longer : names)
    if (longer.starts_with(fmt::format("{}-", name)) || longer.ends_with(fmt::format("-{}", name)))
      return longer;
  return std::nullopt;
}

} // namespace

std::optional<std::string_view> name_meant(Reader &reader, std::string_view name,
                                           const std::vector<std::string_view> &names) {
  const auto near = reader.near(name, names);
  return near ? near : longer_name(name, names);
}

Problem unknown_name(Reader &reader, Family family, FactLine line, std::string_view part) {
  const std::string_view name = line.words(part);
  const Range where = line.range(part);
  constexpr std::size_t remembered = 50;
  if (std::vector<std::string_view> &vain = reader.things(family).asked_in_vain;
      vain.size() < remembered)
    vain.push_back(name);
  Problem problem{.check = "unknown-name",
                  .range = where,
                  .message = fmt::format("no {} here is called {}", spoken(family), name),
                  .why = there_is(reader, family)};
  const std::vector<std::string_view> names = reader.things(family).names();
  if (const auto near = name_meant(reader, name, names)) {
    problem.message += fmt::format("; did you mean {}?", *near);
    problem.type.push_back({typed(reader, line.range(), where, *near), {}});
    problem.edits.push_back({where, std::string(*near)});
  }
  for (const std::string &shelf : shelves_holding(reader, family, name))
    problem.type.push_back({fmt::format("borrow \"{}\"", shelf), "which holds one"});
  if (problem.type.empty() && !names.empty())
    problem.type.push_back({typed(reader, line.range(), where, names.front()), {}});
  if (problem.type.empty() && family != Family::folding)
    problem.type.push_back(
        {fmt::format("{} {}", word_for(family), name), "and its facts below it"});
  return problem;
}

Problem duplicate_name(const Reader &reader, Family family, FactLine first, FactLine second) {
  const std::string_view name = second.words("name");
  return {.check = "duplicate-name",
          .range = second.range("name"),
          .message = fmt::format("{} called {} is already made on {}", one(family), name,
                                 place_words(reader, first.range(), second.range().file)),
          .why = "a name stands for one thing of its kind, and a line that asks for this one could "
                 "mean either; this often comes of a merge",
          .type = {{typed(reader, second.range(), second.range("name"), fmt::format("{}-2", name)),
                    "or take one of them out"}},
          .related = {{first.range("name"), "the first of that name"}},
          .edits = {{second.range("name"), fmt::format("{}-2", name)}}};
}

Problem own_beats_shelf(const Reader &reader, Family family, FactLine winner, FactLine loser) {
  return {.kind = Kind::note,
          .check = "own-beats-shelf",
          .range = winner.range("name"),
          .message = fmt::format("this {} takes the place of the borrowed {} ({})", spoken(family),
                                 winner.words("name"),
                                 place_words(reader, loser.range(), winner.range().file)),
          .why = "a thing of the edition's own file counts before a borrowed one of the same name",
          .related = {{loser.range("name"), "the borrowed one"}}};
}

Problem later_borrow(const Reader &reader, Family family, FactLine winner, FactLine loser) {
  return {.kind = Kind::note,
          .check = "later-borrow",
          .range = winner.range("name"),
          .message = fmt::format("two borrowed files hold {} called {}; this one counts, not {}",
                                 one(family), winner.words("name"),
                                 place_words(reader, loser.range(), winner.range().file)),
          .why = "of two borrowed things of one name, that of the file borrowed later counts",
          .related = {{loser.range("name"), "this one is left out"}}};
}

Problem unused_thing(Family family, const Named &thing) {
  return {.kind = Kind::note,
          .check = family == Family::stock ? "unused-paper" : "unused-thing",
          .range = thing.line.range("name"),
          .message = fmt::format("nothing uses the {} {}", spoken(family), thing.name),
          .why = "no line asks for it by this name; it does no harm"};
}

Problem missing_fact(Range thing, std::string message, std::string why, std::string line) {
  return {.check = "missing-fact",
          .range = thing,
          .message = std::move(message),
          .why = std::move(why),
          .type = {{std::move(line), {}}}};
}

Problem too_many_lines(FactLine last, std::size_t most) {
  return {.check = "too-many-things",
          .range = last.range(),
          .message = fmt::format("these are {} lines of {}, and what follows is left out", most,
                                 last.word()),
          .why = "no edition needs so many, and reckoning with them would only make you wait",
          .type = {{{}, "keep those that count"}}};
}

Problem too_small(Range range, std::string message, std::string why, std::string line) {
  return {.check = "number-too-small",
          .range = range,
          .message = std::move(message),
          .why = std::move(why),
          .type = {{std::move(line), {}}}};
}

} // namespace bodkin
