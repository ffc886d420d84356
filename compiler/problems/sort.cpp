#include "measure/limits.hpp"
#include "problems/render.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <tuple>

namespace bodkin {
namespace {

auto order_of(const Problem &problem) {
  return std::tuple(problem.range.file, problem.range.begin, problem.range.end, problem.kind,
                    std::string_view(problem.check), std::string_view(problem.message));
}

std::string number_of(std::size_t count, std::string_view what) {
  return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

Problem rest_is_not_shown(std::size_t rest) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "more-problems";
  problem.message =
      fmt::format("{} not shown", number_of(rest, "more problem") + (rest == 1 ? " is" : " are"));
  problem.why =
      "one slip is often repeated: mend the ones above and most of these will go with them";
  return problem;
}

} // namespace

void sort_problems(Problems &problems) {
  std::stable_sort(problems.begin(), problems.end(),
                   [](const Problem &a, const Problem &b) { return order_of(a) < order_of(b); });
  const auto twice =
      std::unique(problems.begin(), problems.end(),
                  [](const Problem &a, const Problem &b) { return order_of(a) == order_of(b); });
  problems.erase(twice, problems.end());
}

bool any_errors(const Problems &problems) {
  return std::any_of(problems.begin(), problems.end(),
                     [](const Problem &problem) { return problem.kind == Kind::error; });
}

Tally counted(const Problems &problems) {
  Tally counts;
  for (const Problem &problem : problems)
    ++(problem.kind == Kind::error     ? counts.errors
       : problem.kind == Kind::warning ? counts.warnings
                                       : counts.notes);
  return counts;
}

std::string written(const Tally &counts) {
  std::vector<std::string> parts;
  for (const auto &[count, what] :
       {std::pair(counts.errors, "error"), std::pair(counts.warnings, "warning"),
        std::pair(counts.notes, "note")})
    if (count > 0)
      parts.push_back(number_of(count, what));
  if (parts.empty())
    return "nothing wrong";
  std::string out = parts.front();
  for (std::size_t i = 1; i < parts.size(); ++i)
    out += (i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return out;
}

std::string_view word_for(Kind kind) {
  switch (kind) {
  case Kind::error:
    return "error";
  case Kind::warning:
    return "warning";
  case Kind::note:
    break;
  }
  return "note";
}

Problems shown(const Problems &problems) {
  if (problems.size() <= limits::problems_shown)
    return problems;
  const Tally counts = counted(problems);
  std::size_t room = limits::problems_shown;
  const auto take = [&room](std::size_t wanted) {
    const std::size_t taken = std::min(room, wanted);
    room -= taken;
    return taken;
  };
  std::size_t errors = take(counts.errors), warnings = take(counts.warnings),
              notes = take(counts.notes);
  Problems out;
  for (const Problem &problem : problems) {
    std::size_t &left = problem.kind == Kind::error     ? errors
                        : problem.kind == Kind::warning ? warnings
                                                        : notes;
    if (left == 0)
      continue;
    --left;
    out.push_back(problem);
  }
  out.push_back(rest_is_not_shown(problems.size() - limits::problems_shown));
  return out;
}

} // namespace bodkin
