#include "language/mended.hpp"

#include <algorithm>
#include <array>

namespace bodkin::language {
namespace {

// So much of a file tells what its maker is used to.
constexpr std::size_t enough = std::size_t{1} << 16U;

std::size_t numbers_with(std::string_view unit, std::string_view file) {
  std::size_t count = 0;
  for (std::size_t at = file.find(unit); at != std::string_view::npos;
       at = file.find(unit, at + unit.size()))
    if (at > 0 && file[at - 1] >= '0' && file[at - 1] <= '9')
      ++count;
  return count;
}

} // namespace

std::string_view unit_of_habit(std::string_view file) {
  file = file.substr(0, enough);
  std::string_view most = "in";
  for (const std::string_view unit : {"mm", "cm"})
    if (numbers_with(unit, file) > numbers_with(most, file))
      most = unit;
  return most;
}

std::string_view money_of_habit(std::string_view file) {
  file = file.substr(0, enough);
  std::string_view first = "$";
  std::size_t at = file.find('$');
  for (const std::string_view sign : {"£", "€"})
    if (const std::size_t found = file.find(sign); found < at) {
      at = found;
      first = sign;
    }
  return first;
}

std::string_view sign_of_money(std::string_view word) {
  struct Name {
    std::string_view name, sign;
  };
  constexpr std::array<Name, 9> names{{{"$", "$"},
                                       {"£", "£"},
                                       {"€", "€"},
                                       {"dollars", "$"},
                                       {"dollar", "$"},
                                       {"pounds", "£"},
                                       {"pound", "£"},
                                       {"euros", "€"},
                                       {"euro", "€"}}};
  const auto named = std::find_if(names.begin(), names.end(),
                                  [&](const Name &money) { return money.name == word; });
  return named == names.end() ? std::string_view{} : named->sign;
}

} // namespace bodkin::language
