#include "money/random_books.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <random>

namespace bodkin::tests {
namespace {

// The library's distributions differ from one to another; a remainder does not.
struct Dice {
  std::mt19937 generator;
  int below(int sides) { return static_cast<int>(generator() % static_cast<std::uint32_t>(sides)); }
  bool one_in(int sides) { return below(sides) == 0; }
};

bool is_cover(const RandomBook &book, int page) { return page <= 2 || page >= book.count - 1; }

RandomPage random_page(Dice &dice) {
  RandomPage page;
  page.draws = !dice.one_in(5);
  page.colour = page.draws && dice.one_in(3);
  if (dice.one_in(4))
    page.paper = dice.one_in(4) ? 0 : 1;
  return page;
}

void random_prices(RandomBook &book, Dice &dice) {
  book.copies = 1 + dice.below(40);
  book.plain = dice.below(6);
  book.rose = dice.below(12);
  book.black = 5 + dice.below(10);
  book.colour = book.black + dice.below(50);
  book.black_after = book.black;
  book.colour_after = book.colour;
  if (dice.one_in(2)) {
    book.black_step = 2 + dice.below(8 * book.copies);
    book.black_after = 1 + dice.below(book.black);
  }
  if (dice.one_in(2)) {
    book.colour_step = 2 + dice.below(4 * book.copies);
    book.colour_after = 1 + dice.below(book.colour);
  }
  book.blank_charged = dice.one_in(5);
  book.setup = dice.one_in(6) ? 20 + dice.below(300) : 0;
  book.least = dice.one_in(6) ? 100 + dice.below(20 * book.copies) : 0;
}

void random_wishes(RandomBook &book, Dice &dice) {
  for (int i = 3; i < book.count - 2; ++i) {
    RandomPage &page = book.pages[static_cast<std::size_t>(i)];
    RandomPage &next = book.pages[static_cast<std::size_t>(i) + 1];
    const bool free = i == 3 || !book.pages[static_cast<std::size_t>(i) - 1].spread_left;
    if (i % 2 == 0 && free && dice.one_in(6)) {
      page.spread_left = true;
      next.draws = page.draws;
      next.colour = page.colour;
      next.paper = page.paper;
    } else if (dice.one_in(8)) {
      page.with_next = true;
    }
    page.stays = free && dice.one_in(10);
  }
}

std::string page_line(const RandomBook &book, int number) {
  const RandomPage &page = book.pages[static_cast<std::size_t>(number)];
  const bool right = number > 1 && book.pages[static_cast<std::size_t>(number) - 1].spread_left;
  if (right)
    return "";
  std::string line = page.spread_left ? fmt::format("spread {}-{}", number, number + 1)
                                      : fmt::format("page {}", number);
  line += page.colour ? " in colour" : "";
  line += page.paper == 0 ? " on plain" : page.paper == 1 ? " on rose" : "";
  line += page.draws ? "\n  words \"x\" in label\n    at 1in 1in, 1in x 1in\n" : "\n  blank\n";
  if (page.stays)
    return line + "  stays\n";
  const int last = page.spread_left ? number + 1 : number;
  if (book.pages[static_cast<std::size_t>(last)].with_next)
    line += fmt::format("  stays with {}\n", last + 1);
  return line;
}

std::string price(int cents) { return fmt::format("${}.{:02}", cents / 100, cents % 100); }

std::string prints(const char *mode, int before, int after, int step) {
  std::string lines = fmt::format("  prints {} at {} a side\n", mode, price(before));
  if (step > 1)
    lines += fmt::format("  prints {} at {} a side, from {} sides\n", mode, price(after), step);
  return lines;
}

int rate(int before, int after, int step, std::int64_t sides) {
  return step > 1 && sides >= step ? after : before;
}

} // namespace

bool RandomBook::stays(int page) const {
  return is_cover(*this, page) || pages[static_cast<std::size_t>(page)].stays;
}

std::string RandomBook::manuscript() const {
  std::string text = fmt::format(R"(edition "Test"
  size half-letter
  pages {}
  folding {}
  run {} copies
  paper plain
  machine copier

stock plain
  weight 20 lb bond
  sheet letter, grain short
  costs {} a sheet
stock rose like plain
  costs {} a sheet

machine copier
{}{}  bare 1/4in
  duplex by machine
{}{}{}
style label
  face typed 9/11
face typed from "Courier Prime"
)",
                                 count, folding, copies, price(plain), price(rose),
                                 prints("black", black, black_after, black_step),
                                 prints("colour", colour, colour_after, colour_step),
                                 blank_charged ? "  blank charged\n" : "",
                                 setup > 0 ? fmt::format("  setup {} a pass\n", price(setup)) : "",
                                 least > 0 ? fmt::format("  least {} a run\n", price(least)) : "");
  for (int page = 1; page <= count; ++page)
    text += page_line(*this, page);
  return text;
}

Lying lying(const Imposition &imposition) {
  Lying lying;
  for (const Spotted &spot : imposition.where) {
    lying.sheet.push_back(spot.sheet);
    lying.side.push_back(spot.side);
  }
  lying.sheets = static_cast<int>(imposition.sheets.size());
  return lying;
}

RandomBook random_book(std::uint32_t seed) {
  Dice dice{std::mt19937(seed)};
  RandomBook book;
  constexpr std::array<std::pair<const char *, int>, 6> forms{{{"saddle-stitch", 8},
                                                               {"saddle-stitch", 12},
                                                               {"section-8", 8},
                                                               {"single-fold", 8},
                                                               {"side-stapled", 10},
                                                               {"side-stapled", 8}}};
  const auto &[folding, count] = forms[static_cast<std::size_t>(dice.below(6))];
  book.folding = folding;
  book.count = count;
  book.pages.resize(static_cast<std::size_t>(book.count) + 2);
  for (int page = 1; page <= book.count; ++page)
    book.pages[static_cast<std::size_t>(page)] = random_page(dice);
  random_prices(book, dice);
  random_wishes(book, dice);
  return book;
}

RandomBook random_book(std::uint32_t seed, int count, int movable) {
  Dice dice{std::mt19937(seed)};
  RandomBook book;
  book.count = count;
  book.folding = "saddle-stitch";
  book.pages.resize(static_cast<std::size_t>(count) + 2);
  for (int page = 1; page <= count; ++page)
    book.pages[static_cast<std::size_t>(page)] = random_page(dice);
  random_prices(book, dice);
  // Pages that stay are plain black ones, so that every edition can be printed in some order.
  for (const int page : {1, 2, count - 1, count})
    book.pages[static_cast<std::size_t>(page)].paper = -1;
  std::vector<int> inner;
  for (int page = 3; page <= count - 2; ++page)
    inner.push_back(page);
  while (static_cast<int>(inner.size()) > movable) {
    const auto at = static_cast<std::size_t>(dice.below(static_cast<int>(inner.size())));
    RandomPage &page = book.pages[static_cast<std::size_t>(inner[at])];
    page.stays = true;
    page.paper = -1;
    inner.erase(inner.begin() + static_cast<std::ptrdiff_t>(at));
  }
  return book;
}

namespace {

bool keeps_wishes(const RandomBook &book, const std::vector<int> &order) {
  std::vector<int> becomes(order.size());
  for (std::size_t place = 1; place < order.size(); ++place)
    becomes[static_cast<std::size_t>(order[place])] = static_cast<int>(place);
  for (int page = 1; page <= book.count; ++page) {
    const RandomPage &asked = book.pages[static_cast<std::size_t>(page)];
    const int now = becomes[static_cast<std::size_t>(page)];
    const int next = page < book.count ? becomes[static_cast<std::size_t>(page) + 1] : 0;
    // A page of a spread stays with its other half.
    const bool half = page > 1 && book.pages[static_cast<std::size_t>(page) - 1].spread_left;
    if ((book.stays(page) || (half && book.stays(page - 1))) && now != page)
      return false;
    if (asked.spread_left && (now % 2 != 0 || next != now + 1))
      return false;
    // A line that says `stays` says no more.
    const bool says_stays =
        asked.stays || (half && book.pages[static_cast<std::size_t>(page) - 1].stays);
    if (asked.with_next && !asked.spread_left && !says_stays && next != now + 1)
      return false;
  }
  return true;
}

struct Counted {
  std::int64_t black = 0, colour = 0, plain = 0, rose = 0, blank = 0, passes = 0;
};

// What each sheet of an order is; false where one is asked for on two papers.
bool count(const RandomBook &book, const Lying &lying, const std::vector<int> &order,
           Counted &out) {
  struct Sheet {
    int paper = -1;
    std::array<int, 2> mode{0, 0}; // 0 blank, 1 black, 2 colour
  };
  std::vector<Sheet> sheets(static_cast<std::size_t>(lying.sheets));
  for (std::size_t place = 1; place < order.size(); ++place) {
    const RandomPage &page = book.pages[static_cast<std::size_t>(order[place])];
    Sheet &sheet = sheets[static_cast<std::size_t>(lying.sheet[place])];
    if (page.paper >= 0 && sheet.paper >= 0 && page.paper != sheet.paper)
      return false;
    sheet.paper = std::max(sheet.paper, page.paper);
    int &mode = sheet.mode[static_cast<std::size_t>(lying.side[place])];
    mode = std::max(mode, page.draws ? (page.colour ? 2 : 1) : 0);
  }
  for (const int paper : {0, 1}) {
    std::array<bool, 2> prints{false, false};
    for (const Sheet &sheet : sheets)
      for (std::size_t side = 0; side < 2; ++side)
        prints[side] = prints[side] || (std::max(sheet.paper, 0) == paper && sheet.mode[side] > 0);
    // The machine turns sheets itself, so each paper that is printed is one pass.
    out.passes += prints[0] || prints[1] ? 1 : 0;
    for (const Sheet &sheet : sheets) {
      if (std::max(sheet.paper, 0) != paper)
        continue;
      ++(paper == 0 ? out.plain : out.rose);
      for (std::size_t side = 0; side < 2; ++side) {
        out.black += sheet.mode[side] == 1 ? 1 : 0;
        out.colour += sheet.mode[side] == 2 ? 1 : 0;
        // A machine that turns sheets itself feeds the blank side of one through with the others.
        out.blank += sheet.mode[side] == 0 && sheet.mode[1 - side] > 0 && prints[0] && prints[1];
      }
    }
  }
  return true;
}

} // namespace

std::int64_t cents(const RandomBook &book, const Lying &lying, const std::vector<int> &order) {
  Counted counted;
  if (!keeps_wishes(book, order) || !count(book, lying, order, counted))
    return -1;
  const auto run = [&](std::int64_t sides) { return sides * book.copies; };
  std::int64_t total = run(counted.plain) * book.plain + run(counted.rose) * book.rose;
  std::int64_t black = counted.black;
  std::int64_t colour = counted.colour;
  if (book.blank_charged && counted.blank > 0) {
    // Blank sides are counted as the mode that is cheaper at the steps that printed ones reach.
    const int as_black =
        rate(book.black, book.black_after, book.black_step, std::max<std::int64_t>(run(black), 1));
    const int as_colour = rate(book.colour, book.colour_after, book.colour_step,
                               std::max<std::int64_t>(run(colour), 1));
    (as_colour < as_black ? colour : black) += counted.blank;
  }
  const std::int64_t printing =
      run(black) * rate(book.black, book.black_after, book.black_step, run(black)) +
      run(colour) * rate(book.colour, book.colour_after, book.colour_step, run(colour)) +
      counted.passes * book.setup;
  // A machine that prints nothing asks for nothing.
  total += counted.passes > 0 ? std::max<std::int64_t>(printing, book.least) : 0;
  return total;
}

} // namespace bodkin::tests
