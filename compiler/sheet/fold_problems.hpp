// What is wrong with a folding that cannot be done, told in terms of its panels.
#pragma once

#include "edition/folding.hpp"
#include "problems/problem.hpp"
#include "sheet/crossing.hpp"
#include "sheet/folded_paper.hpp"
#include "sheet/opening.hpp"

namespace bodkin {

Problem too_many_panels(const Folding &folding);
Problem too_many_sheets(const Folding &folding);
Problem never_folded(const Folding &folding);
Problem slit_across_fold(const Folding &folding, const Slit &slit);
Problem panel_falls_off(const Folding &folding, int panel);
// `paper` is how the sheet lies before the step.
Problem hindered(const Folding &folding, const FoldStep &step, const FoldedPaper &paper,
                 const Folded &folded);
Problem through_itself(const Folding &folding, const FoldStep &step, const Clash &clash);
// `paper` is how it lies after the last step.
Problem not_folded_down(const Folding &folding, const FoldedPaper &paper);
Problem not_read(const Folding &folding, const PagesMet &met);
// `pages` of `front` and `back` are not those that the sheet shows, each once.
Problem pages_miscounted(const Folding &folding, bool front, int wanted);
// The page told at this place of its side's list; the sheet holds `count`.
Problem page_claimed(const Folding &folding, bool front, std::size_t at, int count);
Problem said_otherwise(const Folding &folding, int page, int shown);
Problem strip_upside_down(const Folding &folding);

} // namespace bodkin
