#include "sheet/size_problems.hpp"

#include "measure/paper.hpp"
#include "sheet/even_rows.hpp"
#include "sheet/geometry.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <numeric>

namespace bodkin {
namespace {

using spoken::fact;
using spoken::pages_listed;
using spoken::with_article;

std::vector<int> counted(int first, int last) {
  std::vector<int> numbers(static_cast<std::size_t>(std::max(0, last - first + 1)));
  std::iota(numbers.begin(), numbers.end(), first);
  return numbers;
}

std::string sheet_name(const Edition &edition, const Size &sheet) {
  return written(sheet, edition.ruler);
}

// "folded once", "folded back and forth"; nothing where the sheet stays flat.
std::string folded_how(const FoldedSheet &folded) {
  if (folded.steps.empty())
    return "";
  const bool zigzag = folded.steps.front().kind == FoldKind::back_and_forth;
  return zigzag ? " folded back and forth" : " folded " + spoken::times(folded.steps.size());
}

std::string folded_sheet(const Edition &edition, const FoldedSheet &folded, const Layout &layout) {
  return fmt::format("{} sheet{} carries {} {}",
                     with_article(sheet_name(edition, sheet_size(edition, folded, *edition.paper))),
                     folded_how(folded), layout.pages_a_sheet,
                     layout.pages_a_sheet == 1 ? "page" : "pages");
}

// "5 pages do not fold; this folding takes 4 or 8"
std::string counts(int count, const Layout &layout) {
  std::string takes = layout.fewer > 0 ? std::to_string(layout.fewer) : "";
  if (layout.more > 0)
    takes += fmt::format("{}{}", takes.empty() ? "" : " or ", layout.more);
  return fmt::format("{} {} not fold; this folding takes {}", count,
                     count == 1 ? "page does" : "pages do", takes);
}

std::string what_is_short(int count, const Layout &layout) {
  const std::vector<int> over = counted(layout.fewer + 1, count);
  if (layout.more == 0)
    return fmt::format("{} {} no paper to stand on, since it takes {} {}", pages_listed(over),
                       over.size() == 1 ? "has" : "have", layout.fewer / layout.pages_a_sheet,
                       layout.fewer == layout.pages_a_sheet ? "sheet" : "sheets");
  const bool one = over.size() == 1;
  const std::string blank = spoken::listed(counted(count + 1, layout.more));
  if (layout.fewer == 0)
    return fmt::format("{} {} {} blank", pages_listed(over), one ? "leaves" : "leave", blank);
  return fmt::format("{} {} a {} sheet and {} {} blank", pages_listed(over), one ? "needs" : "need",
                     spoken::ordinal(layout.sheets), one ? "leaves" : "leave", blank);
}

std::string_view share_in_words(std::size_t panels) {
  switch (panels) {
  case 2:
    return "half";
  case 4:
    return "a quarter";
  case 8:
    return "an eighth";
  case 16:
    return "a sixteenth";
  default:
    return "";
  }
}

// Equal panels of a sheet without a tab; 0 where they differ.
std::size_t panels_of(const FoldedSheet &folded) {
  const auto alike = [](const std::vector<PanelShare> &panels) {
    return std::all_of(panels.begin(), panels.end(), [&](const PanelShare &panel) {
      return panel.share == panels.front().share && panel.less == Length();
    });
  };
  const bool equal = !folded.tab && alike(folded.across) && alike(folded.down);
  return equal ? folded.across.size() * folded.down.size() : 0;
}

// A paper by name that a page so large is, slack under 1 mm.
const NamedPaper *paper_like(Size page) {
  for (const NamedPaper &paper : named_papers()) {
    const Length wide = page.width - paper.size.width, high = page.height - paper.size.height;
    if (wide >= Length() && wide < Length::mm(1) && high >= Length() && high < Length::mm(1))
      return &paper;
  }
  return nullptr;
}

// A paper by name that this folding turns into the page asked for, slack under 1 mm.
const NamedPaper *paper_that_gives(const Edition &edition, const FoldedSheet &folded) {
  for (const NamedPaper &paper : named_papers()) {
    const Size sheet = lying(paper.size, edition.folding->across);
    if (!has_room(folded, sheet))
      continue;
    const Size page = page_given(folded, sheet);
    const Length wide = page.width - edition.size->width, high = page.height - edition.size->height;
    if (wide >= Length() && wide < Length::mm(1) && high >= Length() && high < Length::mm(1))
      return &paper;
  }
  return nullptr;
}

std::string papers_here(const Edition &edition, const Imposition &imposition, const Sheet &sheet) {
  const std::string name = sheet_name(edition, sheet.size);
  const bool all = std::all_of(imposition.sheets.begin(), imposition.sheets.end(),
                               [&](const Sheet &other) { return other.size == sheet.size; });
  return all ? fmt::format("every stock here is cut {}", name)
             : fmt::format("{}, the paper of sheet {}, is cut {}", edition[sheet.stock].name,
                           sheet.number, name);
}

// Papers by name are spoken of in their own units, a size in figures in those of the figures.
bool has_name(const Size &size) {
  return written(size, Ruler::inches) != spoken::measures(size, Ruler::inches);
}

std::string measured_down(const Size &size, Ruler ruler) {
  return fmt::format("{} x {}", written_down(size.width, ruler), written_down(size.height, ruler));
}

Problem wrong_size(const Edition &edition, const FoldedSheet &folded, const Imposition &imposition,
                   const Sheet &sheet) {
  const Size given = page_given(folded, sheet.size), asked = *edition.size;
  const NamedPaper *better = paper_that_gives(edition, folded);
  const bool named = has_name(asked);
  const Ruler ruler = named ? ruler_of(asked) : edition.ruler;
  const std::string measured = measured_down(given, named ? ruler_of(sheet.size) : edition.ruler);
  Problem problem;
  problem.check = "wrong-size";
  problem.range = edition.size.from;
  problem.message =
      fmt::format("{}{} gives {}, not {}", sheet_name(edition, sheet.size), folded_how(folded),
                  measured, spoken::named_and_measured(asked, ruler));
  const std::string_view part = share_in_words(panels_of(folded));
  if (better != nullptr && !part.empty())
    problem.why = fmt::format("{} is {} of {}; ", written(asked, ruler), part, better->name);
  problem.why += papers_here(edition, imposition, sheet);
  const NamedPaper *given_name = paper_like(given);
  const std::string size = given_name != nullptr ? std::string(given_name->name) : measured;
  problem.type = {
      {fact("size", size), better != nullptr ? fmt::format("or buy {}", better->name) : ""}};
  if (edition.size.from.somewhere())
    problem.edits = {{edition.size.from, size}};
  const Size cell = sheet_size(edition, folded, StockId::none);
  if (const std::int64_t up =
          cell.width > Length() && cell.height > Length() ? most_on(sheet.size, cell) : 0;
      up > 1)
    problem.type.push_back(
        {fact("up", std::to_string(up)), fmt::format("to cut {} of them out of each sheet", up)});
  if (sheet.stock != StockId::none)
    problem.related = {{edition[sheet.stock].sheet->from,
                        fmt::format("{} is cut here", edition[sheet.stock].name)}};
  return problem;
}

Problem wrong_sheet(const Edition &edition, const Sheet &sheet) {
  const Folding &folding = *edition.folding;
  const Stock &stock = edition[sheet.stock];
  Problem problem;
  problem.check = "wrong-size";
  problem.range = stock.sheet->from;
  const std::string wanted = sheet_name(edition, **folding.sheet);
  problem.message = fmt::format("{} is cut {}, and {} folds {} sheets", stock.name,
                                sheet_name(edition, **stock.sheet), folding.name, wanted);
  problem.why = fmt::format("sheet {} is {}, and the folding says which sheet its panels are for",
                            sheet.number, stock.name);
  problem.type = {
      {fact("sheet", wanted), fmt::format("or `{}` in the folding", fact("sheet", "any"))}};
  problem.related = {{folding.sheet->from, "the folding asks it here"}};
  return problem;
}

Problem too_small(const Edition &edition, const FoldedSheet &folded, const Sheet &sheet) {
  const Folding &folding = *edition.folding;
  Problem problem;
  problem.check = "sheet-too-small";
  problem.range = folding.tab                ? folding.tab->range
                  : folding.narrowed.empty() ? folding.range
                                             : folding.narrowed.front().range;
  problem.message = fmt::format("{} has no room for the panels of {}",
                                sheet_name(edition, sheet.size), folding.name);
  problem.why = fmt::format("a sheet of {} is parted into {} by {} panels, less what its tab and "
                            "its narrower panels give up",
                            spoken::measures(sheet.size, ruler_of(sheet.size)),
                            folded.across.size(), folded.down.size());
  problem.type = {{folding.tab ? "tab        1/2in at right" : "narrow     column 1 by 1/16in",
                   "or a larger sheet"}};
  return problem;
}

bool page_fits(const Size &given, const Size &page) {
  const Length wide = given.width - page.width, high = given.height - page.height;
  return wide >= Length() && high >= Length() && wide < Length::mm(1) && high < Length::mm(1);
}

// The count may stand on a `pages` line, or come of the highest page.
bool says_pages(const Sources &sources, Range from) {
  if (!from.somewhere())
    return false;
  const std::string_view line = sources.line(from.file, sources.line_number(from));
  return line.substr(std::min(line.find_first_not_of(" \t"), line.size())).starts_with("pages");
}

} // namespace

Problem does_not_fold(const Edition &edition, const FoldedSheet &folded, const Layout &layout,
                      const Sources &sources) {
  const int count = *edition.page_count;
  const std::vector<int> over = counted(layout.fewer + 1, count);
  Problem problem;
  problem.check = "does-not-fold";
  problem.range = edition.page_count.from;
  problem.message = counts(count, layout);
  problem.why = folded_sheet(edition, folded, layout) + ": " + what_is_short(count, layout);
  const std::string fewer = layout.fewer > 0 ? fact("pages", std::to_string(layout.fewer)) : "";
  if (layout.more > 0)
    problem.type = {
        {fact("pages", std::to_string(layout.more)),
         fewer.empty() ? "" : fmt::format("or take {} out: `{}`", pages_listed(over), fewer)}};
  else
    problem.type = {{fewer, fmt::format("and take {} out", pages_listed(over))}};
  const Range from = edition.page_count.from;
  if (says_pages(sources, from))
    problem.edits = {{from, std::to_string(layout.more > 0 ? layout.more : layout.fewer)}};
  return problem;
}

bool check_sizes(const Edition &edition, const FoldedSheet &folded, const Imposition &imposition,
                 Problems &problems) {
  const std::size_t told = problems.size();
  std::vector<Size> seen;
  std::vector<bool> stock_seen(edition.stocks.size());
  for (const Sheet &sheet : imposition.sheets) {
    if (sheet.stock == StockId::none || !edition[sheet.stock].sheet || stock_seen[at(sheet.stock)])
      continue;
    stock_seen[at(sheet.stock)] = true;
    const std::optional<Known<Size>> &wanted = edition.folding->sheet;
    if (wanted && lying(**wanted, true) != lying(sheet.size, true))
      problems.push_back(wrong_sheet(edition, sheet));
    else if (!has_room(folded, sheet.size))
      problems.push_back(too_small(edition, folded, sheet));
    else if (!page_fits(page_given(folded, sheet.size), *edition.size) &&
             std::find(seen.begin(), seen.end(), sheet.size) == seen.end())
      problems.push_back(wrong_size(edition, folded, imposition, sheet));
    seen.push_back(sheet.size);
  }
  return problems.size() > told;
}

} // namespace bodkin
