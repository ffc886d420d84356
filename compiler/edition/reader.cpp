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
