#include "paperwork/in_a_sentence.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

namespace bodkin::paperwork {
namespace {

using Words = std::span<const std::string_view>;

// Nobody's name where one of these begins what a paper is called.
constexpr auto of_papers = std::to_array<std::string_view>(
    {"A",        "An",       "The",         "My",          "Our",       "White",    "Cream",
     "Ivory",    "Natural",  "Black",       "Grey",        "Gray",      "Blue",     "Green",
     "Red",      "Pink",     "Rose",        "Yellow",      "Canary",    "Orange",   "Brown",
     "Buff",     "Lilac",    "Purple",      "Salmon",      "Goldenrod", "Golden",   "Pale",
     "Light",    "Dark",     "Bright",      "Warm",        "Cool",      "Plain",    "Heavy",
     "Heavier",  "Thick",    "Thin",        "Stiff",       "Soft",      "Rough",    "Smooth",
     "Fine",     "Better",   "Cheap",       "Coated",      "Uncoated",  "Recycled", "Unbleached",
     "Coloured", "Colored",  "Translucent", "Transparent", "Tracing",   "Vellum",   "Kraft",
     "Sugar",    "Wrapping", "Writing",     "Drawing",     "Copy",      "Copier",   "Office",
     "Text",     "Book",     "Cover",       "Card",        "Board",     "Index",    "Cotton",
     "Rag",      "Handmade", "Newsprint",   "Paper",       "Ordinary",  "Old",      "Second"});

constexpr auto of_machines = std::to_array<std::string_view>(
    {"A", "An", "The", "My", "Our", "Copier", "Photocopier", "Printer", "Laser", "Inkjet", "Press",
     "Duplicator", "Machine", "Office", "Small", "Large", "Old", "New"});

bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }

bool begins_with_one(const std::string &text, Words words) {
  const std::string_view first = std::string_view(text).substr(0, text.find(' '));
  return first.ends_with("-coloured") || first.ends_with("-colored") ||
         std::find(words.begin(), words.end(), first) != words.end();
}

// "Cream Laid", with another capital, is a name whatever begins it.
bool is_a_phrase(const std::string &title, Words words) {
  return title.find(' ') != std::string::npos && begins_with_one(title, words) &&
         std::none_of(title.begin() + 1, title.end(), is_capital);
}

std::string in_a_sentence(const std::string &title, const std::string &name, Words words) {
  std::string text = title.empty() ? name : title;
  if (title.empty())
    std::replace(text.begin(), text.end(), '-', ' ');
  else if (is_a_phrase(title, words))
    text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

} // namespace

std::string paper_in_a_sentence(const std::string &title, const std::string &name) {
  return in_a_sentence(title, name, of_papers);
}

std::string machine_in_a_sentence(const std::string &title, const std::string &name) {
  std::string machine = in_a_sentence(title, name, of_machines);
  for (const std::string_view word : {"the ", "a ", "an ", "my ", "our ", "The ", "A ", "Our "})
    if (machine.starts_with(word))
      return machine;
  return "the " + machine;
}

} // namespace bodkin::paperwork
