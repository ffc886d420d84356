#include "edition/copy_numbers.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr std::string_view copy_fact = "copy";

bool is_number(const Span &span) { return span.fact == copy_fact; }

std::string in_a_row(const std::vector<std::string> &words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i)
    text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
  return text;
}

std::int64_t first_of(const Edition &edition) {
  return edition.counts ? (*edition.counts)->first : 1;
}

} // namespace

std::int64_t CopiesCounted::place(std::int64_t copy) const {
  for (const Stretch &stretch : stretches) {
    if (copy < stretch.good)
      return stretch.before + copy;
    copy -= stretch.good;
  }
  return spare_copy;
}

CopiesCounted copies_of(const Edition &edition, const RunSet &runs) {
  if (!runs || edition.runs.empty())
    return {edition.run->copies, edition.run->spare, {{0, edition.run->copies}}};
  CopiesCounted counted;
  std::int64_t before = 0;
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run) {
    const Run &of = edition.runs[run].run;
    if (runs.holds(run)) {
      counted.good += of.copies;
      counted.spare += of.spare;
      auto &all = counted.stretches;
      if (!all.empty() && all.back().before + all.back().good == before)
        all.back().good += of.copies;
      else
        all.push_back({before, of.copies});
    }
    before += of.copies;
  }
  return counted;
}

std::string names_of(const Edition &edition, const RunSet &runs) {
  std::vector<std::string> names;
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
    if (runs.holds(run))
      names.push_back(edition.runs[run].name);
  return in_a_row(names);
}

std::string numbers_of(const Edition &edition, const CopiesCounted &copies) {
  std::vector<std::string> all;
  for (const auto &[before, good] : copies.stretches)
    all.push_back(number_of(edition, before) +
                  (good == 1 ? "" : " to " + number_of(edition, before + good - 1)));
  return in_a_row(all);
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
