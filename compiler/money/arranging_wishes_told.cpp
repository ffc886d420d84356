#include "money/arranging_wishes_told.hpp"

#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <set>

namespace bodkin::arranging {
namespace {

using spoken::pages_listed;

std::string reason(const Wish &wish) {
  switch (wish.why) {
  case Wish::Why::cover:
    return "the cover stays";
  case Wish::Why::spread:
    return "a spread";
  case Wish::Why::text:
    return "a text runs through them";
  case Wish::Why::broken_text:
    return "a text leaps through them and they stay";
  case Wish::Why::piece:
    return "a piece goes there";
  case Wish::Why::maker:
    break;
  }
  return "kept together";
}

bool says_stays(const Wish &wish) { return wish.why == Wish::Why::maker && wish.stays; }

// The cover stays in any case.
bool on_cover_alone(const Edition &edition, const Wish &wish) {
  return wish.why == Wish::Why::maker &&
         std::ranges::all_of(wish.pages, [&](int page) { return edition.is_cover(page); });
}

std::string on_lines(const std::set<std::uint32_t> &lines) {
  constexpr std::size_t most_lines = 4;
  if (lines.empty())
    return "";
  if (lines.size() == 1)
    return fmt::format(" (line {})", *lines.begin());
  if (lines.size() <= most_lines)
    return fmt::format(" (lines {})", fmt::join(lines, ", "));
  return fmt::format(" ({} lines, {} to {})", lines.size(), *lines.begin(), *lines.rbegin());
}

} // namespace

std::vector<std::string> told(const Edition &edition, const std::vector<Wish> &wishes,
                              const Sources &sources) {
  std::vector<std::string> all;
  std::set<int> staying;
  std::set<std::uint32_t> lines;
  for (const Wish &wish : wishes) {
    if (on_cover_alone(edition, wish))
      continue;
    if (!says_stays(wish)) {
      all.push_back(fmt::format("{}: {}{}", pages_listed(wish.pages), reason(wish),
                                spoken::on_line(sources, wish.from)));
      continue;
    }
    staying.insert(wish.pages.begin(), wish.pages.end());
    if (wish.from.somewhere())
      lines.insert(static_cast<std::uint32_t>(sources.line_number(wish.from)));
  }
  if (!staying.empty())
    all.push_back(fmt::format("{}: {}{}", pages_listed({staying.begin(), staying.end()}),
                              staying.size() == 1 ? "stays" : "stay", on_lines(lines)));
  return all;
}

} // namespace bodkin::arranging
