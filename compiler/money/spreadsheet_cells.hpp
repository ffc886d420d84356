// The rows of a spreadsheet as OpenDocument writes them, one after the other. A formula holds no
// value of its own.
#pragma once

#include "money/exact.hpp"

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin::spread {

std::string words(std::string_view text);
std::string nothing();
std::string formula(std::string_view of);       // shown as money
std::string count_formula(std::string_view of); // shown as it is
// As it is, where twelve decimals hold it; a third is a quotient.
std::string figure(const Exact &number);

// "[.E7]"
std::string at(char column, int row);
// "[.E7:.E9]"
std::string range(char column, int first, int last);
// "2/3" of a thing as a factor after it: "*2/3", "*4", nothing for one. The product comes first, so
// that a whole number stays one in floating point.
std::string times(const Exact &number);
// "a+b", "0" where there is nothing to add.
std::string sum_of(const std::vector<std::string> &terms);

class Rows {
public:
  int next() const { return next_; } // the number of the row that comes next
  // Its number, which formulas name.
  int row(std::initializer_list<std::string> cells);
  void titles(std::initializer_list<std::string> names);
  int total(std::string_view name, std::string_view of);
  void note(std::string_view text);
  std::string document() const; // content.xml

private:
  std::string rows_;
  int next_ = 1;
};

} // namespace bodkin::spread
