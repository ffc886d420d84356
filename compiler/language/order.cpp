#include "language/order.hpp"

#include <algorithm>

namespace bodkin::language {
namespace {

// Longer lines are nobody's slip of order, and trying all of their parts would take long.
constexpr std::size_t most_lexemes = 20;

bool is_own_word(std::string_view token) {
  return !token.empty() && token.find(':') == std::string_view::npos;
}

std::string between(const Trial &trial, std::size_t first, std::size_t end) {
  return trial.line.substr(trial.lexemes[first].begin,
                           trial.lexemes[end - 1].end - trial.lexemes[first].begin);
}

Reordered exchanged(const Trial &trial, std::size_t first, std::size_t first_end,
                    std::size_t second, std::size_t end) {
  const std::uint32_t gap = trial.lexemes[first_end - 1].end;
  return {trial.line.substr(0, trial.lexemes[first].begin) + between(trial, second, end) +
              trial.line.substr(gap, trial.lexemes[second].begin - gap) +
              between(trial, first, first_end) + trial.line.substr(trial.lexemes[end - 1].end),
          first, first_end, second, end};
}

// `at 1in from foot, 1in from outer, 1in x 1in`
void exchange_between_commas(const Trial &trial, std::vector<Reordered> &all) {
  std::vector<std::size_t> commas;
  for (std::size_t i = 1; i < trial.lexemes.size(); ++i)
    if (trial.lexemes[i].kind == LexemeKind::comma)
      commas.push_back(i);
  commas.push_back(trial.lexemes.size());
  std::size_t first = 1;
  for (std::size_t i = 0; i + 1 < commas.size(); ++i) {
    if (first < commas[i] && commas[i] + 1 < commas[i + 1])
      all.push_back(exchanged(trial, first, commas[i], commas[i] + 1, commas[i + 1]));
    first = commas[i] + 1;
  }
}

// `run 10 copies called fine, 2 spare`: what the comma leads comes before a part with a word of its
// own.
Reordered comma_part_first(const Trial &trial, std::size_t word, std::size_t comma) {
  std::string text = trial.line.substr(0, trial.lexemes[word].begin);
  text.erase(text.find_last_not_of(' ') + 1);
  const std::size_t end = trial.lexemes.size();
  text += between(trial, comma, end) + " " + between(trial, word, comma);
  return {text, word, comma, comma + 1, end};
}

} // namespace

std::vector<std::string_view> own_words_of_phrase(const Entry &entry) {
  constexpr std::string_view signs = " [](){},/";
  std::vector<std::string_view> words;
  std::string_view rest = entry.phrase;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find_first_of(signs), rest.size());
    if (is_own_word(rest.substr(0, end)))
      words.push_back(rest.substr(0, end));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return words;
}

std::vector<Reordered> reorderings(const Trial &trial, const Entry &entry) {
  std::vector<Reordered> all;
  if (trial.lexemes.size() > most_lexemes)
    return all;
  const std::vector<std::string_view> words = own_words_of_phrase(entry);
  const auto begins_a_part = [&](std::size_t i) {
    return trial.lexemes[i].kind == LexemeKind::word &&
           std::find(words.begin(), words.end(), trial.words(i)) != words.end();
  };
  for (std::size_t first = 1; first < trial.lexemes.size(); ++first)
    for (std::size_t second = first + 1; second < trial.lexemes.size(); ++second)
      if (begins_a_part(first) && trial.lexemes[second].kind == LexemeKind::comma)
        all.push_back(comma_part_first(trial, first, second));
      else if (begins_a_part(first) && begins_a_part(second))
        for (std::size_t end = second + 1; end <= trial.lexemes.size(); ++end)
          all.push_back(exchanged(trial, first, second, second, end));
  exchange_between_commas(trial, all);
  return all;
}

} // namespace bodkin::language
