#include "language/changes.hpp"

#include "language/mended.hpp"
#include "language/order.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin::language {
namespace {

using Lines = std::vector<std::string>;

struct Usual {
  std::string_view typed, ours;
};
constexpr std::array<Usual, 31> usual{
    {{"the", "a"},         {"total", "a run"}, {"altogether", "a run"},
     {"second", "s"},      {"seconds", "s"},   {"sec", "s"},
     {"secs", "s"},        {"minute", "min"},  {"minutes", "min"},
     {"mins", "min"},      {"hour", "h"},      {"hours", "h"},
     {"hr", "h"},          {"hrs", "h"},       {"gram", "g"},
     {"grams", "g"},       {"ounce", "oz"},    {"ounces", "oz"},
     {"pounds", "lb"},     {"lbs", "lb"},      {"per", "a"},
     {"left", "inner"},    {"right", "outer"}, {"inside", "inner"},
     {"outside", "outer"}, {"top", "head"},    {"bottom", "foot"},
     {"one", "1"},         {"two", "2"},       {"three", "3"},
     {"four", "4"}}};

// `$9.50 a ream`, which is 500 sheets, and `per pack of 250 sheets`.
void packs(const Trial &trial, Lines &lines) {
  const std::size_t at = trial.failure.at, size = trial.lexemes.size();
  if (at < 2 || !trial.wants({ValueKind::rate}))
    return;
  const std::string before = trial.line.substr(0, trial.lexemes[at - 1].begin);
  if (trial.words(at) == "ream")
    lines.push_back(before + "per 500 sheets" + trial.line.substr(trial.lexemes[at].end));
  if (at + 2 >= size || trial.words(at + 1) != "of" || trial.words(at) == "ream")
    return;
  const std::size_t last = at + 3 < size && trial.words(at + 3) == "sheets" ? at + 3 : at + 2;
  lines.push_back(fmt::format("{}per {} sheets{}", before, trial.words(at + 2),
                              trial.line.substr(trial.lexemes[last].end)));
}

// A word of everyday speech for one of ours, here or just before.
void everyday(const Trial &trial, Lines &lines) {
  const std::size_t at = trial.failure.at;
  for (std::size_t i = at > 1 ? at - 1 : at; i <= at; ++i)
    for (const Usual &one : usual)
      if (trial.words(i) == one.typed)
        lines.push_back(trial.with(i, one.ours));
}

bool opens_a_line(std::string_view file, std::string_view word, std::string_view name) {
  const std::string line = fmt::format("\n{} {}", word, name);
  for (std::size_t at = file.find(line); at != file.npos; at = file.find(line, at + 1))
    if (const std::size_t end = at + line.size();
        end == file.size() || std::string_view(" \t\r\n").find(file[end]) != file.npos)
      return true;
  return false;
}

// The little word that leads a mode, a paper or a machine: `page 3 colour`, `page 4 rose`.
std::string_view leading(std::string_view word, std::string_view file) {
  if (word == "colour" || word == "color" || word == "black" || opens_a_line(file, "ink", word))
    return "in";
  if (opens_a_line(file, "stock", word))
    return "on";
  return opens_a_line(file, "machine", word) ? "by" : "";
}

void led(const Trial &trial, const std::vector<std::string> &words, std::string_view file,
         Lines &lines) {
  const std::size_t at = trial.failure.at;
  const std::string_view little = leading(trial.words(at), file);
  if (std::find(words.begin(), words.end(), little) != words.end())
    lines.push_back(trial.with(at, fmt::format("{} {}", little, trial.words(at))));
}

bool is_plain_number(const Trial &trial, std::size_t i) {
  return trial.words(i).find_first_not_of("0123456789") == std::string_view::npos;
}

// `8-page-mini`: names begin with a letter.
void spelled_out(const Trial &trial, Lines &lines) {
  constexpr std::array<std::string_view, 13> words{"",     "one",    "two",   "three", "four",
                                                   "five", "six",    "seven", "eight", "nine",
                                                   "ten",  "eleven", "twelve"};
  const std::size_t at = trial.failure.at;
  if (!trial.wants({ValueKind::name}) || !is_plain_number(trial, at) ||
      at + 1 >= trial.lexemes.size() || trial.lexemes[at].end != trial.lexemes[at + 1].begin ||
      trial.words(at + 1)[0] != '-')
    return;
  const std::string_view digits = trial.words(at);
  const int number = digits == "16" ? 16 : digits.size() > 2 ? 0 : std::stoi(std::string(digits));
  if (number == 16)
    lines.push_back(trial.with(at, "sixteen"));
  else if (number > 0 && number < static_cast<int>(words.size()))
    lines.push_back(trial.with(at, words[static_cast<std::size_t>(number)]));
}

// Words that no name of two words begins with.
bool parts_words(std::string_view word) {
  constexpr std::array<std::string_view, 9> little{"by",  "or", "and",  "in",  "on",
                                                   "for", "at", "with", "from"};
  return std::find(little.begin(), little.end(), word) != little.end();
}

// `back cover`, `paper 90`, `public domain`: a name in two words. `#note`: a remark that touches
// its sign.
void joined(const Trial &trial, Lines &lines) {
  const std::size_t at = trial.failure.at;
  if (trial.words(at).starts_with('#'))
    lines.push_back(trial.with(at, fmt::format("# {}", trial.words(at).substr(1))));
  const bool part_of_name =
      trial.lexemes[at].kind == LexemeKind::word || is_plain_number(trial, at);
  if (parts_words(trial.words(at)))
    return;
  if (at > 1 && part_of_name && trial.lexemes[at - 1].kind == LexemeKind::word)
    lines.push_back(trial.line.substr(0, trial.lexemes[at - 1].end) + "-" +
                    trial.line.substr(trial.lexemes[at].begin));
  if (part_of_name && at + 1 < trial.lexemes.size() &&
      trial.lexemes[at + 1].kind == LexemeKind::word)
    lines.push_back(trial.line.substr(0, trial.lexemes[at].end) + "-" +
                    trial.line.substr(trial.lexemes[at + 1].begin));
}

// What a price or a time is for, as the entry's example has it.
std::string_view what_for(const Entry &entry) {
  for (const std::string_view words :
       {"a copy", "a side", "a sheet", "each", "per 500 sheets", "an hour", "once"})
    if (entry.example.find(words) != std::string_view::npos)
      return words;
  return "a copy";
}

std::string sample(ValueKind kind, std::string_view file) {
  switch (kind) {
  case ValueKind::length:
    return unit_of_habit(file) == "in" ? "1/2in" : "12mm";
  case ValueKind::count:
    return "2";
  case ValueKind::colour:
  case ValueKind::mode:
    return "black";
  case ValueKind::language:
    return "en-GB";
  case ValueKind::typesize:
    return "10.5/13";
  default:
    return {};
  }
}

// The words that may stand where the line stopped fitting.
std::vector<std::string> literals(const Trial &trial) {
  std::vector<std::string> words;
  // Whoever writes a date that is none does not mean `never`.
  if (trial.wants({ValueKind::date}))
    return words;
  for (std::uint32_t i = 0; i < trial.failure.count; ++i) {
    const Part &part = *trial.failure.wanted[i].part;
    if (part.part == PartKind::word || part.part == PartKind::choice)
      each_choice(part.words, [&words](std::string_view word) { words.emplace_back(word); });
  }
  return words;
}

std::vector<std::string> samples(const Trial &trial, const Entry &entry, std::string_view file) {
  std::vector<std::string> words;
  for (std::uint32_t i = 0; i < trial.failure.count; ++i) {
    const Wanted &wanted = trial.failure.wanted[i];
    if (wanted.piece == Piece::per || wanted.piece == Piece::per_what)
      words.emplace_back(what_for(entry));
    else if (wanted.part->part == PartKind::value && wanted.piece == Piece::whole)
      words.push_back(sample(wanted.part->kind, file));
  }
  std::erase(words, std::string());
  return words;
}

// The comma that was left out, after the word before.
void comma(const Trial &trial, Lines &lines) {
  const std::uint32_t end = trial.lexemes[trial.failure.at - 1].end;
  lines.push_back(trial.line.substr(0, end) + "," + trial.line.substr(end));
}

// Words that the lexeme parted stay apart.
std::string without(const Trial &trial, std::size_t at) {
  const std::uint32_t before = trial.lexemes[at - 1].end;
  if (at + 1 >= trial.lexemes.size())
    return trial.line.substr(0, before);
  const std::string after = trial.line.substr(trial.lexemes[at + 1].begin);
  if (before != trial.lexemes[at].begin)
    return trial.line.substr(0, trial.lexemes[at].begin) + after;
  return trial.line.substr(0, before) + " " + after;
}

void put_in(const Trial &trial, const std::vector<std::string> &all, Lines &lines) {
  const bool sign = !trial.ended() && trial.lexemes[trial.failure.at].kind == LexemeKind::comma;
  const std::uint32_t before = trial.lexemes[trial.failure.at - 1].end;
  for (const std::string &words : all)
    if (trial.ended() || sign)
      lines.push_back(
          fmt::format("{} {}{}", trial.line.substr(0, before), words, trial.line.substr(before)));
    else
      lines.push_back(fmt::format("{}{} {}",
                                  trial.line.substr(0, trial.lexemes[trial.failure.at].begin),
                                  words, trial.line.substr(trial.lexemes[trial.failure.at].begin)));
}

} // namespace

Trial::Trial(std::string typed, const Entry &entry) : line(std::move(typed)) {
  cut(line, 0, lexemes);
  if (lexemes.empty())
    return;
  Tree tree;
  Cursor cursor{.text = line, .lexemes = lexemes, .tree = tree, .failure = failure};
  fits = match(Grammar::of_table(), entry, 1, cursor) && !cursor.inch_mark && !cursor.curly &&
         !cursor.open_text;
}

bool Trial::wants(std::initializer_list<ValueKind> kinds) const {
  for (std::uint32_t i = 0; i < failure.count; ++i)
    if (failure.wanted[i].part->part == PartKind::value)
      for (const ValueKind kind : kinds)
        if (failure.wanted[i].part->kind == kind)
          return true;
  return false;
}

bool Trial::wants(Piece piece) const {
  for (std::uint32_t i = 0; i < failure.count; ++i)
    if (failure.wanted[i].piece == piece)
      return true;
  return false;
}

std::vector<std::string> changes_that_keep(const Trial &trial, const Entry &entry,
                                           std::string_view file) {
  Lines lines;
  if (trial.failure.at == 0)
    return lines;
  const std::vector<std::string> words = literals(trial);
  if (!trial.ended()) {
    const std::string small = small_letters(trial.words(trial.failure.at));
    if (const auto near = nearest(small, std::vector<std::string_view>(words.begin(), words.end())))
      lines.push_back(trial.with(trial.failure.at, *near));
    led(trial, words, file, lines);
    packs(trial, lines);
    everyday(trial, lines);
    change_measures(trial, file, lines);
    change_money(trial, file, lines);
    change_type_size(trial, lines);
    spelled_out(trial, lines);
    joined(trial, lines);
  }
  comma(trial, lines);
  // Before a word that nobody knows, any one of several would be a guess.
  if (words.size() == 1 || trial.ended() ||
      trial.lexemes[trial.failure.at].kind != LexemeKind::word)
    put_in(trial, words, lines);
  put_in(trial, samples(trial, entry, file), lines);
  return lines;
}

std::vector<std::string> changes_that_drop(const Trial &trial, const Entry &entry,
                                           std::string_view file) {
  Lines lines;
  const std::size_t at = trial.failure.at;
  if (trial.ended() || at == 0)
    return lines;
  lines.push_back(without(trial, at));
  // A word of the phrase that stands too early is no slip of the one that is missing.
  const std::vector<std::string_view> own = own_words_of_phrase(entry);
  const bool early = std::find(own.begin(), own.end(), trial.words(at)) != own.end();
  if (const std::vector<std::string> words = literals(trial); words.size() == 1 && !early)
    lines.push_back(trial.with(at, words.front()));
  if (trial.wants({ValueKind::language, ValueKind::colour, ValueKind::mode}))
    for (const std::string &words : samples(trial, entry, file))
      lines.push_back(trial.with(at, words));
  return lines;
}

} // namespace bodkin::language
