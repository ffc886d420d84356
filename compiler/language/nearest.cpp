#include "language/vocabulary.hpp"

#include <algorithm>
#include <array>

namespace bodkin::language {
namespace {

// Longer words than these are nobody's slip for a word of the vocabulary or a name.
constexpr std::size_t longest = 40;
using Row = std::array<std::size_t, longest + 1>;

// Damerau's distance in its restricted form: letters left out, put in, changed, or two neighbours
// swapped, each one slip.
std::size_t slips(std::string_view a, std::string_view b) {
  Row before{};
  Row above{};
  Row row{};
  for (std::size_t j = 0; j <= b.size(); ++j)
    above[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = above[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U);
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, changed});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before = above;
    above = row;
  }
  return above[b.size()];
}

// One slip in a short word, two in a middling one, three in a long one.
std::size_t most_slips(std::size_t letters) {
  return letters <= 2 ? 0 : letters <= 4 ? 1 : letters <= 8 ? 2 : 3;
}

} // namespace

std::optional<std::string_view> nearest(std::string_view word,
                                        std::span<const std::string_view> among) {
  std::optional<std::string_view> best;
  if (word.size() > longest)
    return best;
  std::size_t fewest = most_slips(word.size()) + 1;
  for (const std::string_view candidate : among) {
    if (candidate.size() > longest)
      continue;
    const std::size_t count = slips(word, candidate);
    if (count < fewest && count < candidate.size()) {
      fewest = count;
      best = candidate;
    }
  }
  return best;
}

} // namespace bodkin::language
