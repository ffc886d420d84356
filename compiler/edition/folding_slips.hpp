// What can be wrong with a folding as written, before any paper is folded.
#pragma once

#include "edition/folding.hpp"
#include "edition/reader.hpp"

namespace bodkin {

std::string_view word_of(Part part);

Problem not_across(const Reader &reader, FactLine line, Part moving);
Problem too_many_folds(FactLine line);
Problem no_panels(FactLine thing);
Problem panels_past_all_bounds(FactLine line);
// `line` is `widths` or `heights`, for this many columns or rows.
Problem shares_do_not_match(FactLine line, std::size_t shares, int panels);
Problem shares_past_all_bounds(FactLine line);
Problem no_such_panel(FactLine line, Range number, std::string_view what, int panels);
Problem not_neighbours(FactLine line, std::string_view what, std::int64_t before);
Problem along_itself(FactLine line, std::string_view what);
Problem slit_runs_backwards(const Reader &reader, FactLine line);
Problem two_sides_at_most(const Reader &reader, FactLine line);
Problem no_page_list(FactLine line);

} // namespace bodkin
