// Small changes to a line that stopped fitting its phrase, the likeliest first. Whether any of them
// helps is found by reading the changed line.
#pragma once

#include "language/match.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin::language {

// A line as it could be typed, read once.
struct Trial {
  std::string line;
  std::vector<Lexeme> lexemes;
  Failure failure;
  bool fits = false;

  Trial(std::string typed, const Entry &entry);

  bool ended() const { return failure.at >= lexemes.size(); }
  // How much of the line nobody has understood yet.
  std::size_t left() const { return ended() ? 0 : line.size() - lexemes[failure.at].begin; }
  std::string_view words(std::size_t i) const {
    return std::string_view(line).substr(lexemes[i].begin, lexemes[i].end - lexemes[i].begin);
  }
  std::string with(std::size_t i, std::string_view instead) const {
    return line.substr(0, lexemes[i].begin) + std::string(instead) + line.substr(lexemes[i].end);
  }
  bool wants(std::initializer_list<ValueKind> kinds) const;
  bool wants(Piece piece) const;
};

// Changes that keep everything the line says.
std::vector<std::string> changes_that_keep(const Trial &trial, const Entry &entry,
                                           std::string_view file);
// Changes that take something out or put something else in its stead.
std::vector<std::string> changes_that_drop(const Trial &trial, const Entry &entry,
                                           std::string_view file);

// The unit of a number that x touches: `85x` has none, `85mmx` has mm; no unit at all of others.
std::optional<std::string_view> before_the_x(std::string_view unit);

// changes_values.cpp: the line with its lengths, its money and its type sizes as they are written
// here.
void change_measures(const Trial &trial, std::string_view file, std::vector<std::string> &lines);
void change_money(const Trial &trial, std::string_view file, std::vector<std::string> &lines);
void change_type_size(const Trial &trial, std::vector<std::string> &lines);

} // namespace bodkin::language
