#include "money/chart.hpp"
#include "money/bids.hpp"
#include "money/chart_lines.hpp"
#include "money/manuscript.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>
#include <random>

namespace bodkin::tests {
namespace {

// About the width of a letter as the pen draws it, and the height of a capital.
constexpr double letter = 4.8, capital = 5;

struct WordBox {
  double left, top, right, bottom;
};

std::vector<WordBox> boxes_of_words(const Figure &figure) {
  std::vector<WordBox> boxes;
  for (const FigureItem &item : figure.items)
    if (const auto *words = std::get_if<FigureWords>(&item); words && !words->text.empty())
      boxes.push_back({words->x, words->y - capital,
                       words->x + letter * static_cast<double>(words->text.size()), words->y});
  return boxes;
}

bool overlap(const WordBox &a, const WordBox &b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

std::vector<std::string> words_of(const Figure &figure) {
  std::vector<std::string> all;
  for (const FigureItem &item : figure.items)
    if (const auto *words = std::get_if<FigureWords>(&item))
      all.push_back(words->text);
  return all;
}

bool says(const Figure &figure, std::string_view text) {
  for (const std::string &words : words_of(figure))
    if (words == text)
      return true;
  return false;
}

Figure chart_of(const std::string &bids, std::string_view facts = "") {
  const Priced it = priced(small_zine(facts, bids));
  return draw_costs(it.edition(), it.laid.imposition, it.laid.sides, it.estimate);
}

} // namespace

TEST_CASE("the key names each line and each crossing by what stands on the chart") {
  const Figure chart =
      chart_of("bid near\n  copies 1 at $0.50 a copy\n  copies 80 at $0.30 a copy\n"
               "bid far\n  copies 200 at $0.20 a copy\n");
  CHECK(says(chart, "a copy of 50, like for like"));
  CHECK(says(chart, "your own making, $0.40"));
  CHECK(says(chart, "near, $0.50"));
  CHECK(says(chart, "far, no run of 50"));
  CHECK(says(chart, "A costs least up to 79 copies"));
  CHECK(says(chart, "from 80 copies on B"));
  CHECK(says(chart, "from 200 copies on C"));
}

TEST_CASE("what is not drawn is named with its reason") {
  const Figure chart = chart_of("bid small\n  copies 1 at $0.20 a copy\n  sizes a5\n"
                                "bid empty\n  prints black\n"
                                "bid gone\n  copies 1 at $0.20 a copy\n  until 2026-10\n"
                                "bid dear\n  copies 1 at $40 a copy\n"
                                "bid equal\n  copies 1 at $0.40 a copy\n");
  CHECK(says(chart, "not drawn: small: it makes a5, not half-letter"));
  CHECK(says(chart, "not drawn: empty: it names no price"));
  CHECK(says(chart, "not drawn: gone: the offer ended 2026-10"));
  CHECK(says(chart, "dear, $40.00, above the chart"));
  CHECK(says(chart, "equal, $0.40, on the line of A"));
}

TEST_CASE("where something has no price the offers are said to be left out") {
  std::string manuscript = small_zine("", "bid near\n  copies 1 at $0.20 a copy\n");
  const std::string_view included = "  costs      included\n";
  manuscript.erase(manuscript.find(included), included.size());
  const Priced it = priced(manuscript);
  CHECK(says(draw_costs(it.edition(), it.laid.imposition, it.laid.sides, it.estimate),
             "Not everything of your own has a price: its true cost is higher, and offers are not "
             "drawn beside it."));
}

TEST_CASE("no words of a chart stand on others, whatever the offers are") {
  std::mt19937 random(5);
  const auto below = [&](int most) {
    return static_cast<int>(random() % static_cast<unsigned>(most));
  };
  for (int round = 0; round < 120; ++round) {
    std::string bids;
    for (int bid = below(12); bid >= 0; --bid) {
      bids += fmt::format("bid {}-{}\n", below(4) == 0 ? "a-printer-with-a-very-long-name" : "near",
                          bid);
      const int steps = below(6);
      for (int step = 0, from = 1; step < steps; ++step) {
        bids += fmt::format("  copies {} at ${}.{:02} a copy\n", from, below(3) == 0 ? below(9) : 0,
                            1 + below(99));
        from += 1 + below(step % 2 == 0 ? 20 : 4000);
      }
      if (below(3) == 0)
        bids += fmt::format("  postage ${} once\n", 1 + below(200));
      if (below(6) == 0)
        bids += "  sizes a5\n";
    }
    std::string manuscript = small_zine("", bids);
    const int copies = below(3) == 0 ? 1 + below(9) : below(2) == 0 ? 20000 + below(9999) : 50;
    manuscript.replace(manuscript.find("run        50"), 13, fmt::format("run        {}", copies));
    CAPTURE(manuscript);
    const Priced it = priced(manuscript);
    const std::vector<WordBox> boxes =
        boxes_of_words(draw_costs(it.edition(), it.laid.imposition, it.laid.sides, it.estimate));
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      CHECK(boxes[i].left >= 20);
      CHECK(boxes[i].right <= figure_width - figure_margin + 4);
      for (std::size_t j = 0; j < i; ++j) {
        const bool clear = !overlap(boxes[i], boxes[j]);
        CHECK(clear);
      }
    }
  }
}

TEST_CASE("labels in a row keep apart, and as near to their places as goes") {
  CHECK(spread({10, 11, 40}, 12, 100) == std::vector<double>{10, 22, 40});
  CHECK(spread({90, 95, 99}, 12, 100) == std::vector<double>{76, 88, 100});
}

} // namespace bodkin::tests
