// What a paper says of itself beyond size and weight: that it takes print on one side, or is cut
// out of larger sheets.
#include "measure/paper.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "preflight/stock_line.hpp"
#include "sheet/papers.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// Sheets in rows and columns on a larger one, both upright; turned: their long edges lie across it.
struct CutLayout {
  bool turned = false;
  std::int64_t columns = 0, rows = 0;
  Size sheet; // as it lies
  std::int64_t count() const { return columns * rows; }
};

CutLayout laid(const Size &parent, Size sheet, bool turned) {
  if (turned)
    sheet = sheet.turned();
  return {turned, parent.width.units() / sheet.width.units(),
          parent.height.units() / sheet.height.units(), sheet};
}

// Upright first: then the grain of the larger sheet is that of the smaller.
CutLayout layout_for(const Stock &stock) {
  const CutFrom &cut = **stock.cut_from;
  const CutLayout upright = laid(cut.parent, **stock.sheet, false);
  const CutLayout turned = laid(cut.parent, **stock.sheet, true);
  // Merchants sell large sheets grain long: common practice, no source.
  const bool wants_turned = *stock.grain == Grain::along_short_edge;
  const CutLayout &first = wants_turned ? turned : upright,
                  &other = wants_turned ? upright : turned;
  if (first.count() >= cut.out)
    return first;
  return other.count() > first.count() ? other : first;
}

// "at 5 1/2in and 11in"; nothing where no cut is needed that way.
std::string cuts(std::int64_t count, Length each, Length whole, Ruler ruler) {
  const std::int64_t last = each * count == whole ? count - 1 : count;
  constexpr std::int64_t most_told = 6;
  if (last < 1)
    return "";
  if (last > most_told)
    return fmt::format("every {}", written(each, ruler));
  std::string text = "at ";
  for (std::int64_t i = 1; i <= last; ++i)
    text += fmt::format("{}{}", i == 1 ? "" : i == last ? " and " : ", ", written(each * i, ruler));
  return text;
}

std::string way_to_cut(const CutLayout &layout, const Size &parent, Ruler ruler) {
  const std::string across = cuts(layout.rows, layout.sheet.height, parent.height, ruler);
  const std::string down = cuts(layout.columns, layout.sheet.width, parent.width, ruler);
  if (across.empty() && down.empty())
    return "it needs no cut";
  return fmt::format("cut it {}{}{}{}{}, its long edge upright", across.empty() ? "" : "across ",
                     across, across.empty() || down.empty() ? "" : "; then ",
                     down.empty() ? "" : "down ", down);
}

std::string_view grain_name(bool along_long) { return along_long ? "long" : "short"; }

std::string grain_words(const Stock &stock, const CutLayout &layout, const std::string &parent) {
  if (*stock.grain == Grain::unsaid)
    return fmt::format("the sheets have the grain of {}{}", parent,
                       layout.turned ? ", long and short exchanged" : "");
  const bool wanted_long = *stock.grain == Grain::along_long_edge;
  return fmt::format("for {} grain {}, buy {} grain {}", stock.name, grain_name(wanted_long),
                     parent, grain_name(wanted_long != layout.turned));
}

Problem cut_the_sheets(const Inspection &inspection, StockId id, const CutLayout &layout) {
  const Stock &stock = inspection.edition[id];
  const CutFrom &cut = **stock.cut_from;
  const Ruler ruler = ruler_of(cut.parent);
  const std::string parent = written(cut.parent, ruler);
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "cut-the-sheets";
  problem.range = stock_range(inspection, id, stock.cut_from->from);
  problem.message =
      fmt::format("{} of {}: {}", cut.out == 1 ? "a sheet" : fmt::format("{} sheets", cut.out),
                  parent, way_to_cut(layout, cut.parent, ruler));
  problem.why = fmt::format("its {} sheets lie {} on it: {}", written(**stock.sheet, ruler),
                            layout.turned ? "with their long edges across" : "upright",
                            grain_words(stock, layout, parent));
  return problem;
}

Problem not_out_of_it(const Inspection &inspection, StockId id, const CutLayout &layout) {
  const Stock &stock = inspection.edition[id];
  const CutFrom &cut = **stock.cut_from;
  const Ruler ruler = ruler_of(cut.parent);
  const std::string sheet = written(**stock.sheet, ruler), parent = written(cut.parent, ruler);
  Problem problem;
  problem.check = "not-out-of-it";
  problem.range = stock_range(inspection, id, stock.cut_from->from);
  problem.message = fmt::format("{} does not give {} sheets of {}", parent, cut.out, sheet);
  problem.why = fmt::format("a {} sheet is {}, {} is {}; laid the better way it gives {}", parent,
                            spoken::measures(cut.parent, ruler), sheet,
                            spoken::measures(**stock.sheet, ruler), layout.count());
  if (layout.count() > 0)
    retype_stock(inspection, problem, id, stock.cut_from->from,
                 fmt::format("cut-from   {}, {} out", parent, layout.count()),
                 fmt::format("cut-from   {}, {} out", parent, layout.count()), "");
  else
    problem.type = {{"", "name a larger sheet that it is cut from"}};
  return problem;
}

void check_cutting(const Inspection &inspection, StockId id, Problems &problems) {
  const Stock &stock = inspection.edition[id];
  if (!stock.cut_from || !stock.sheet || (*stock.sheet)->width <= Length{})
    return;
  const CutFrom &cut = **stock.cut_from;
  const CutLayout upright = laid(cut.parent, **stock.sheet, false);
  const CutLayout turned = laid(cut.parent, **stock.sheet, true);
  if (std::max(upright.count(), turned.count()) < cut.out)
    problems.push_back(
        not_out_of_it(inspection, id, upright.count() >= turned.count() ? upright : turned));
  else
    problems.push_back(cut_the_sheets(inspection, id, layout_for(stock)));
}

std::vector<int> drawn_pages(const Inspection &inspection, const Side &side) {
  std::vector<int> pages;
  for (const int page : pages_of(side))
    if (page <= inspection.imposition.page_count && inspection.drawings[page].draws)
      pages.push_back(page);
  std::sort(pages.begin(), pages.end());
  return pages;
}

Problem one_sided_paper(const Inspection &inspection, StockId id, const std::vector<int> &sheets) {
  const Stock &stock = inspection.edition[id];
  const Sheet &first = inspection.imposition.sheets[static_cast<std::size_t>(sheets.front() - 1)];
  const std::vector<int> front = drawn_pages(inspection, first.sides[0]);
  const std::vector<int> back = drawn_pages(inspection, first.sides[1]);
  std::vector<int> numbers;
  for (const int sheet : sheets)
    numbers.push_back(
        number_of(inspection, inspection.imposition.sheets[static_cast<std::size_t>(sheet) - 1]));
  Problem problem;
  problem.check = "one-sided-paper";
  problem.range = stock_range(inspection, id, stock.one_side.from);
  problem.message =
      fmt::format("print holds on one side of {}, and {} {} printed on both", stock.name,
                  spoken::sheets_listed(numbers), sheets.size() == 1 ? "is" : "are");
  problem.why = fmt::format("sheet {} has {} on its front and {} on its back; toner does not hold "
                            "on the other side, or that side is glued",
                            numbers.front(), pages_in_words(inspection, front),
                            pages_in_words(inspection, back));
  retype_stock(inspection, problem, id, stock.one_side.from, "sides      2", "sides      2",
               fmt::format("if it does take print on both; or keep {} empty",
                           pages_in_words(inspection, back)));
  return problem;
}

void check_sides(const Inspection &inspection, StockId id, Problems &problems) {
  std::vector<int> both;
  for (std::size_t i = 0; i < inspection.imposition.sheets.size(); ++i) {
    const Sheet &sheet = inspection.imposition.sheets[i];
    if (sheet.stock == id && inspection.modes[i][0] && inspection.modes[i][1])
      both.push_back(static_cast<int>(i) + 1);
  }
  if (!both.empty())
    problems.push_back(one_sided_paper(inspection, id, both));
}

} // namespace

void check_stocks(const Inspection &inspection, Problems &problems) {
  std::vector<StockId> used;
  for (const Sheet &sheet : inspection.imposition.sheets)
    if (sheet.stock != StockId::none &&
        std::find(used.begin(), used.end(), sheet.stock) == used.end())
      used.push_back(sheet.stock);
  for (const StockId id : used) {
    check_cutting(inspection, id, problems);
    if (*inspection.edition[id].one_side)
      check_sides(inspection, id, problems);
  }
}

} // namespace bodkin
