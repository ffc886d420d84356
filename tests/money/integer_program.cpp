#include "money/integer_program.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <tuple>
#include <vector>

namespace bodkin::tests {
namespace {

// Pages alike are counted on each side: n_KIND_SIDE; a side is printed (p_SIDE), in colour
// (c_SIDE); a sheet is rose (r_SHEET). Each of these is 1 only where a page of its kind lies there.
using PageSort = std::tuple<bool, bool, int>; // draws, colour, paper

struct Writing {
  const RandomBook &book;
  const Lying &lying;
  std::map<PageSort, int> kinds{};            // movable pages of each
  std::vector<int> free{};                    // places by side
  std::vector<std::vector<PageSort>> fixed{}; // by side
  std::string rows{}, whole{}, binary{};

  int sides() const { return lying.sheets * 2; }

  void read() {
    free.assign(static_cast<std::size_t>(sides()), 0);
    fixed.resize(static_cast<std::size_t>(sides()));
    for (int number = 1; number <= book.count; ++number) {
      const auto i = static_cast<std::size_t>(number);
      const RandomPage &page = book.pages[i];
      const PageSort kind{page.draws, page.colour, page.paper};
      const auto side = static_cast<std::size_t>(lying.sheet[i] * 2 + lying.side[i]);
      if (book.stays(number))
        fixed[side].push_back(kind);
      else
        ++kinds[kind], ++free[side];
    }
  }

  static std::string name(std::size_t kind, int side) { return fmt::format("n_{}_{}", kind, side); }

  template <typename Match>
  std::pair<std::string, int> pages_on(std::vector<int> on_sides, Match match) const {
    std::string sum;
    int there = 0;
    for (const int side : on_sides) {
      std::size_t k = 0;
      for (const auto &[kind, number] : kinds) {
        if (match(kind) && free[static_cast<std::size_t>(side)] > 0)
          sum += " + " + name(k, side);
        ++k;
      }
      there +=
          static_cast<int>(std::ranges::count_if(fixed[static_cast<std::size_t>(side)], match));
    }
    return {sum, there};
  }

  std::string minus(std::string sum) const {
    for (std::size_t at = sum.find('+'); at != std::string::npos; at = sum.find('+', at))
      sum[at] = '-';
    return sum;
  }

  // `flag` is 1 if and only if a page that matches lies on one of the sides.
  template <typename Match>
  void flag_where(const std::string &flag, const std::vector<int> &on_sides, Match match) {
    const auto [sum, there] = pages_on(on_sides, match);
    rows += fmt::format(" 8 {}{} >= {}\n", flag, minus(sum), there);
    rows += fmt::format(" {}{} <= {}\n", flag, minus(sum), there);
    binary += " " + flag + "\n";
  }

  void counts() {
    std::size_t k = 0;
    for (const auto &[kind, number] : kinds) {
      std::string all;
      for (int side = 0; side < sides(); ++side)
        if (free[static_cast<std::size_t>(side)] > 0) {
          all += " + " + name(k, side);
          whole += " " + name(k, side) + "\n";
        }
      rows += fmt::format("{} = {}\n", all, number);
      ++k;
    }
    for (int side = 0; side < sides(); ++side) {
      const auto [sum, there] = pages_on({side}, [](const PageSort &) { return true; });
      if (!sum.empty())
        rows += fmt::format("{} = {}\n", sum, free[static_cast<std::size_t>(side)]);
    }
  }

  void sheets() {
    for (int sheet = 0; sheet < lying.sheets; ++sheet) {
      const std::vector<int> both{sheet * 2, sheet * 2 + 1};
      for (const int side : both) {
        flag_where(fmt::format("p_{}", side), {side},
                   [](const PageSort &kind) { return std::get<0>(kind); });
        flag_where(fmt::format("c_{}", side), {side},
                   [](const PageSort &kind) { return std::get<1>(kind); });
      }
      const std::string rose = fmt::format("r_{}", sheet);
      flag_where(rose, both, [](const PageSort &kind) { return std::get<2>(kind) == 1; });
      const auto [plain, there] =
          pages_on(both, [](const PageSort &kind) { return std::get<2>(kind) == 0; });
      rows += fmt::format("{} + 8 {} <= {}\n", plain, rose, 8 - there);
    }
  }

  // Sides a copy at the price before the step and after it; `over` says which.
  void steps(const std::string &mode, const std::string &sum, int step) {
    const int most = sides();
    const int reached = step > 1 ? (step + book.copies - 1) / book.copies : most + 1;
    rows += fmt::format(" {0}_before + {0}_after{1} = 0\n", mode, sum);
    rows += fmt::format(" {0}_before + {1} {0}_over <= {1}\n", mode, most);
    rows += fmt::format(" {0}_after - {1} {0}_over <= 0\n", mode, most);
    rows += fmt::format(" {0}_before <= {1}\n", mode, reached - 1);
    rows += fmt::format(" {0}_after - {1} {0}_over >= 0\n", mode, reached);
    binary += fmt::format(" {}_over\n", mode);
  }

  std::string text() {
    read();
    counts();
    sheets();
    std::string black, colour, papers;
    for (int side = 0; side < sides(); ++side) {
      black += fmt::format(" - p_{0} + c_{0}", side);
      colour += fmt::format(" - c_{}", side);
    }
    for (int sheet = 0; sheet < lying.sheets; ++sheet)
      papers += fmt::format(" {:+} r_{}", book.copies * (book.rose - book.plain), sheet);
    steps("black", black, book.black_step);
    steps("colour", colour, book.colour_step);
    return fmt::format(
        "Minimize\n cost: {} black_before + {} black_after + {} colour_before + {} colour_after{}\n"
        "Subject To\n{}General\n{}Binary\n{}End\n",
        book.copies * book.black, book.copies * book.black_after, book.copies * book.colour,
        book.copies * book.colour_after, papers, rows, whole, binary);
  }
};

} // namespace

std::string integer_program(const RandomBook &book, const Lying &lying) {
  return Writing{book, lying}.text();
}

} // namespace bodkin::tests
