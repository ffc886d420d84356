#include "edition/reader.hpp"

#include "measure/limits.hpp"

#include <utility>

namespace bodkin {

namespace {
constexpr std::size_t bound = limits::problems_kept;
}

// Past the bound only errors are kept, and past twice the bound there are so many of them that one
// more changes nothing.
void Reader::report(Problem problem) {
  const std::size_t have = problems_.size();
  if (have < bound || (have < 2 * bound && problem.kind == Kind::error))
    problems_.push_back(std::move(problem));
}

std::optional<std::string_view> Reader::near(std::string_view name,
                                             const std::vector<std::string_view> &among) {
  // Nobody mends a thousand names one by one, and among thousands each costs a moment.
  constexpr std::size_t most_suggestions = 500;
  if (among.size() > names_searched || suggestions >= most_suggestions)
    return std::nullopt;
  ++suggestions;
  return language::nearest(name, among);
}

bool Reader::keeps_problems() const { return problems_.size() < 2 * bound; }

bool Reader::first_said_at(Range range) {
  return keeps_problems() &&
         said_at_.emplace(static_cast<std::uint32_t>(range.file), bytes(range.begin)).second;
}

void Reader::note_file(std::string path, FileRole role) {
  if (noted_.insert(path).second)
    reading.files.push_back({std::move(path), role});
}

} // namespace bodkin
