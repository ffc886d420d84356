#include "money/arranging_asked.hpp"

#include "money/arranging_task.hpp"

#include <algorithm>

namespace bodkin::arranging {

Question::Question(const AsWritten &of)
    : written(of), books(books_of(of.edition)), works(work_by_sheet(of.edition)) {
  works.resize(std::min(works.size(), most_works));
  const Sheet &first = of.laid.imposition.sheets.front();
  share = Exact::ratio(first.in_a_copy, first.up);
}

bool Question::draws(std::size_t run, int page) const {
  const auto index =
      static_cast<std::size_t>(books[run].pages_before) + static_cast<std::size_t>(page);
  return index < written.draws.size() && written.draws[index];
}

bool on_whole_sheets(const Question &question) {
  for (std::size_t run = 0; run < question.books.size(); ++run)
    if (question.of_run(run).denominator() != 1)
      return false;
  return true;
}

bool sheets_matter(const Question &question) {
  const Edition &edition = question.written.edition;
  return !on_whole_sheets(question) || !edition.other_machines.empty() ||
         std::ranges::any_of(edition.machines, [](const Machine &machine) {
           return *machine.blank_charged || machine.least ||
                  (machine.setup && (*machine.setup)->per == Per::pass);
         });
}

} // namespace bodkin::arranging
