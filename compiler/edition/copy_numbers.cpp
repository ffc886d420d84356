#include "edition/copy_numbers.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr std::string_view copy_fact = "copy";

bool is_number(const Span &span) { return span.fact == copy_fact; }

std::int64_t first_of(const Edition &edition) {
  return edition.counts ? (*edition.counts)->first : 1;
}

} // namespace

CopiesCounted copies_of(const Edition &edition, std::optional<std::uint32_t> run) {
  if (!run || edition.runs.empty())
    return {0, edition.run->copies, edition.run->spare};
  CopiesCounted counted{0, edition.runs[*run].run.copies, edition.runs[*run].run.spare};
  for (std::uint32_t earlier = 0; earlier < *run; ++earlier)
    counted.before += edition.runs[earlier].run.copies;
  return counted;
}

std::string number_of(const Edition &edition, std::int64_t copy) {
  if (copy != spare_copy)
    return std::to_string(first_of(edition) + copy);
  return std::string(std::to_string(first_of(edition) + edition.run->copies - 1).size(), '_');
}

bool bears_number(const Prose &prose) {
  return std::any_of(prose.blocks.begin(), prose.blocks.end(), [](const Block &block) {
    return std::any_of(block.spans.begin(), block.spans.end(), is_number);
  });
}

bool bears_number(const Element &element) {
  const auto *words = std::get_if<Words>(&element.what);
  const auto *prose = words ? std::get_if<Prose>(&words->words) : nullptr;
  return prose && bears_number(*prose);
}

Prose with_number(Prose prose, const std::string &number) {
  for (Block &block : prose.blocks)
    for (Span &span : block.spans)
      if (is_number(span))
        span.text = number;
  return prose;
}

} // namespace bodkin
