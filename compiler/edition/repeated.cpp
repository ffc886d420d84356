#include "edition/repeated.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace bodkin {
namespace {

// "17, 19 and 21", or the first few and how many more.
std::string lines_of(const std::vector<std::uint32_t> &lines) {
  constexpr std::size_t shown = 6;
  const std::size_t named = lines.size() <= shown ? lines.size() : shown - 1;
  std::string out;
  for (std::size_t i = 0; i < named; ++i)
    out += fmt::format("{}{}", i == 0 ? "" : i + 1 == lines.size() ? " and " : ", ", lines[i]);
  if (named < lines.size())
    out += fmt::format(" and {} more", lines.size() - named);
  return out;
}

// The first of `places` speaks for all; the others count as told.
void tell_others(const std::vector<std::size_t> &places, Problems &problems, const Sources &sources,
                 std::vector<bool> &told) {
  Problem &first = problems[places.front()];
  std::vector<std::uint32_t> lines;
  for (std::size_t i = 1; i < places.size(); ++i) {
    const Problem &other = problems[places[i]];
    lines.push_back(sources.line_number(other.range));
    first.edits.insert(first.edits.end(), other.edits.begin(), other.edits.end());
    told[places[i]] = true;
  }
  std::sort(lines.begin(), lines.end());
  lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
  first.why += fmt::format("{}asked for on line{} {} too", first.why.empty() ? "" : "; ",
                           lines.size() == 1 ? "" : "s", lines_of(lines));
}

bool is_name_of(const Problem &problem, FileId file) {
  return problem.check == "unknown-name" && problem.range.file == file;
}

} // namespace

void tell_names_once(Problems &problems, const Sources &sources) {
  std::vector<bool> told(problems.size(), false);
  std::map<std::pair<FileId, std::string>, std::vector<std::size_t>> asked;
  for (std::size_t i = 0; i < problems.size(); ++i)
    if (is_name_of(problems[i], problems[i].range.file))
      asked[{problems[i].range.file, problems[i].message}].push_back(i);
  for (auto &[name, places] : asked) {
    const auto first =
        std::min_element(places.begin(), places.end(), [&problems](std::size_t a, std::size_t b) {
          return problems[a].range.begin < problems[b].range.begin;
        });
    std::iter_swap(places.begin(), first);
    if (places.size() > 1)
      tell_others(places, problems, sources, told);
  }
  std::size_t kept = 0;
  for (std::size_t i = 0; i < problems.size(); ++i)
    if (!told[i] && kept++ != i)
      problems[kept - 1] = std::move(problems[i]);
  problems.resize(kept);
}

bool tell_no_manuscript(Problems &problems, FileId file, const Sources &sources) {
  constexpr long many = 5;
  const std::string_view name = sources.name(file);
  const auto no_word = [file](const Problem &problem) {
    return problem.range.file == file && problem.check == "unknown-word";
  };
  const long lines = std::count_if(problems.begin(), problems.end(), no_word);
  if (name.ends_with(".bodkin") || lines < many)
    return false;
  problems.erase(std::remove_if(problems.begin(), problems.end(),
                                [file](const Problem &p) { return p.range.file == file; }),
                 problems.end());
  problems.push_back(
      {.check = "missing-edition",
       .range = {file, Offset{0}, Offset{0}},
       .message = fmt::format("{} is no manuscript: {} of its lines begin with no word of the "
                              "language",
                              name, lines),
       .why = "a manuscript's name ends in .bodkin, and each of its lines says one fact; prose "
              "stands in files of its own, which the manuscript names",
       .type = {{fmt::format("text story from \"{}\"", name), "in a manuscript beside it"}}});
  return true;
}

} // namespace bodkin
