#include "problems/checks.hpp"

#include "problems/families.hpp"
#include "problems/render.hpp"
#include "problems/wrap.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <vector>

namespace bodkin {
namespace {

constexpr int page_columns = 80;

bool before(const Check &a, const Check &b) { return a.name < b.name; }

std::vector<Check> gathered() {
  std::vector<Check> all;
  for (const std::span<const Check> family :
       {checks_of_paper(), checks_of_folding(), checks_of_pieces(), checks_of_finish(),
        checks_of_place(), checks_of_pictures(), checks_of_words(), checks_of_manuscripts(),
        checks_of_values(), checks_of_names(), checks_of_rights(), checks_of_money()})
    all.insert(all.end(), family.begin(), family.end());
  std::sort(all.begin(), all.end(), before);
  return all;
}

std::string indented(std::string_view lines) {
  std::string out;
  while (!lines.empty()) {
    const std::size_t end = lines.find('\n');
    out += fmt::format("    {}\n", lines.substr(0, end));
    lines.remove_prefix(end == std::string_view::npos ? lines.size() : end + 1);
  }
  return out;
}

} // namespace

std::span<const Check> all_checks() {
  static const std::vector<Check> all = gathered();
  return all;
}

const Check *check_named(std::string_view name) {
  const std::span<const Check> all = all_checks();
  const auto found = std::lower_bound(
      all.begin(), all.end(), name,
      [](const Check &check, std::string_view wanted) { return check.name < wanted; });
  return found != all.end() && found->name == name ? &*found : nullptr;
}

std::string explain_page(const Check &check) {
  std::string out =
      fmt::format("{}  ({})\n{}\n\n{}\n\n{}\n", check.name, word_for(check.kind), check.title,
                  wrapped(check.page, page_columns, 0), wrapped(check.mend, page_columns, 0));
  if (!check.example.empty())
    out += "\n" + indented(check.example);
  return out;
}

} // namespace bodkin
