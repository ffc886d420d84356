#include "sheet/told_by_run.hpp"

#include "edition/copy_numbers.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <string>
#include <tuple>

namespace bodkin {
namespace {

using Trouble = std::tuple<std::string, FileId, Offset, Offset, std::string>;

Trouble trouble_of(const Problem &problem) {
  return {problem.check, problem.range.file, problem.range.begin, problem.range.end,
          problem.message};
}

bool all_have_it(const Edition &edition, const RunSet &runs) {
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
    if (!runs.holds(run))
      return false;
  return true;
}

bool is_a_book(const CopyPart &part) { return !part.piece || part.is_other_book(); }

RunSet run_of(const CopyPart &book) { return book.piece ? RunSet(**book.piece->only) : RunSet(0); }

// By trouble, whose books have it.
std::map<Trouble, RunSet> all_troubles(std::span<const CopyPart> parts,
                                       const std::vector<Problems> &found) {
  std::map<Trouble, RunSet> whose;
  for (std::size_t part = 0; part < parts.size(); ++part)
    for (const Problem &problem : found[part])
      if (is_a_book(parts[part])) {
        const RunSet run = run_of(parts[part]);
        const auto [known, first] = whose.emplace(trouble_of(problem), run);
        if (!first)
          known->second = known->second.with(run);
      }
  return whose;
}

} // namespace

void tell_by_run(std::span<const CopyPart> parts, std::vector<Problems> found, Problems &problems) {
  const bool runs_differ = std::any_of(parts.begin(), parts.end(),
                                       [](const CopyPart &part) { return part.is_other_book(); });
  std::map<Trouble, RunSet> whose = all_troubles(parts, found);
  for (std::size_t part = 0; part < parts.size(); ++part)
    for (Problem &problem : found[part]) {
      if (runs_differ && is_a_book(parts[part])) {
        const auto trouble = whose.extract(trouble_of(problem));
        if (trouble.empty())
          continue; // told of a book before
        const Edition &edition = *parts[part].edition;
        if (!all_have_it(edition, trouble.mapped()))
          problem.message += fmt::format(", in the copies {}", names_of(edition, trouble.mapped()));
      }
      problems.push_back(std::move(problem));
    }
}

} // namespace bodkin
