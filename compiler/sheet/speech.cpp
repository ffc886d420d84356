#include "sheet/speech.hpp"

#include "measure/paper.hpp"

#include <array>
#include <fmt/format.h>

namespace bodkin::spoken {

std::string listed(const std::vector<int> &numbers) {
  std::vector<std::string> parts;
  for (std::size_t i = 0, end = 0; i < numbers.size(); i = end) {
    end = i + 1;
    while (end < numbers.size() && numbers[end] == numbers[end - 1] + 1)
      ++end;
    if (end - i > 4)
      parts.push_back(fmt::format("{} to {}", numbers[i], numbers[end - 1]));
    else
      for (std::size_t one = i; one < end; ++one)
        parts.push_back(std::to_string(numbers[one]));
  }
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i)
    text += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return text;
}

std::string pages_listed(const std::vector<int> &numbers) {
  return (numbers.size() == 1 ? "page " : "pages ") + listed(numbers);
}

std::string sheets_listed(const std::vector<int> &numbers) {
  return (numbers.size() == 1 ? "sheet " : "sheets ") + listed(numbers);
}

std::string ordinal(int number) {
  static constexpr std::array<std::string_view, 13> words{
      "",        "first",  "second", "third", "fourth",   "fifth",  "sixth",
      "seventh", "eighth", "ninth",  "tenth", "eleventh", "twelfth"};
  if (number > 0 && number < static_cast<int>(words.size()))
    return std::string(words[static_cast<std::size_t>(number)]);
  const int tens = number / 10 % 10, last = number % 10;
  const std::string_view ending = tens == 1   ? "th"
                                  : last == 1 ? "st"
                                  : last == 2 ? "nd"
                                  : last == 3 ? "rd"
                                              : "th";
  return fmt::format("{}{}", number, ending);
}

std::string times(std::size_t number) {
  static constexpr std::array<std::string_view, 11> words{
      "",          "once",        "twice",       "three times", "four times", "five times",
      "six times", "seven times", "eight times", "nine times",  "ten times"};
  return number < words.size() ? std::string(words[number]) : fmt::format("{} times", number);
}

std::string with_article(std::string_view noun) {
  const bool vowel = !noun.empty() && std::string_view("aeiou8").find(noun[0]) != noun.npos;
  const bool eleven = noun.starts_with("11") || noun.starts_with("18");
  return fmt::format("{} {}", vowel || eleven ? "an" : "a", noun);
}

std::string fact(std::string_view keyword, std::string_view phrase) {
  return fmt::format("{:<10} {}", keyword, phrase);
}

std::string measures(const Size &size, Ruler ruler) {
  return fmt::format("{} x {}", written(size.width, ruler), written(size.height, ruler));
}

std::string named_and_measured(const Size &size, Ruler ruler) {
  const std::string name = written(size, ruler);
  const std::string measured = measures(size, ruler);
  return name == measured ? measured : fmt::format("{} ({})", name, measured);
}

std::string_view mode_name(Mode mode) { return mode == Mode::colour ? "colour" : "black"; }

std::string on_line(const Sources &sources, Range range) {
  return range.somewhere() ? fmt::format(" (line {})", sources.line_number(range)) : std::string();
}

} // namespace bodkin::spoken
