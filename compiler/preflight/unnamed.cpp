#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// "9-21", "3, 5, 8-9": as a line lists pages.
std::string runs(const std::vector<int> &pages) {
  std::string text;
  for (std::size_t i = 0, j = 0; i < pages.size(); i = j) {
    for (j = i + 1; j < pages.size() && pages[j] == pages[j - 1] + 1; ++j)
      continue;
    text += fmt::format("{}{}", text.empty() ? "" : ", ", pages[i]);
    if (j - i > 1)
      text += fmt::format("-{}", pages[j - 1]);
  }
  return text;
}

Problem unnamed_page(const Inspection &inspection, const std::vector<int> &pages) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "unnamed-page";
  const Known<int> &count = inspection.edition.page_count;
  problem.range = count.from.somewhere() ? count.from : inspection.edition.title.from;
  problem.message =
      fmt::format("nothing is said of {}, so {} blank", pages_in_words(inspection, pages),
                  pages.size() == 1 ? "it is" : "they are");
  problem.why = "paper is folded whole: a page that carries nothing is still there";
  problem.type = {{fmt::format("page {}\n  blank", runs(pages)), "if that is meant"}};
  return problem;
}

Problem unused_paper(const Inspection &inspection, StockId stock, Range from) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "unused-paper";
  problem.range = from;
  problem.message = fmt::format("no sheet of this edition is {}", inspection.edition[stock].name);
  problem.why = "every sheet is told otherwise by a page or by the cover";
  return problem;
}

bool used(const Inspection &inspection, StockId stock) {
  return std::any_of(inspection.imposition.sheets.begin(), inspection.imposition.sheets.end(),
                     [&](const Sheet &sheet) { return sheet.stock == stock; });
}

} // namespace

void check_unnamed(const Inspection &inspection, Problems &problems) {
  const Edition &edition = inspection.edition;
  std::vector<int> unnamed;
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    if (!edition.pages[static_cast<std::size_t>(page)].opened.somewhere())
      unnamed.push_back(page);
  if (!unnamed.empty())
    problems.push_back(unnamed_page(inspection, unnamed));
  if (*edition.paper != StockId::none && !used(inspection, *edition.paper))
    problems.push_back(unused_paper(inspection, *edition.paper, edition.paper.from));
}

} // namespace bodkin
