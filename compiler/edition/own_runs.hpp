// The run, or the several of an edition whose copies differ.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

void take_runs(Reader &reader);

// The lines of a fact by the runs that they are for, read once. Two for one run are a problem.
std::vector<RunLine> lines_by_run(Reader &reader, std::string_view word);
// Those of the edition; a run without a paper where others have one is a problem too.
void take_lines_by_run(Reader &reader, std::string_view word);
// The line that holds for a run; empty where none does.
FactLine line_for(const Reader &reader, std::string_view word, std::uint32_t run);
// Whether some run has a line of its own.
bool has_own_line(const Reader &reader, std::string_view word);

// What a run has otherwise of an insert or a wrap is a piece of its own.
Problem only_in_a_piece(const Reader &reader, FactLine only);
// The lines of a piece that opens with `line`, once for each run; `name` is its name there.
std::vector<WayOut> piece_for_each_run(const Reader &reader, Range line, std::string_view name);

// The numbers that copies get; none where the line names none.
std::optional<Known<Counts>> counts_in(Reader &reader, FactLine line);

// The run that an `only` names, by number; none where it names none.
std::optional<Known<std::uint32_t>> only_in(Reader &reader, FactLine line);

} // namespace bodkin
