#include "problems/characters.hpp"
#include "problems/excerpt.hpp"
#include "problems/render.hpp"
#include "problems/wrap.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr int label_columns = 8;
constexpr std::string_view label_space = "        ";
constexpr std::string_view remark_gap = "      ";
constexpr std::string_view bold = "1";

std::string_view ink_of(Kind kind) {
  switch (kind) {
  case Kind::error:
    return "1;31";
  case Kind::warning:
    return "1;35";
  case Kind::note:
    break;
  }
  return "1;36";
}

// ANSI's select-graphic-rendition around a text (ECMA-48).
std::string inked(std::string_view text, std::string_view ink, bool colour) {
  return colour ? fmt::format("\x1b[{}m{}\x1b[0m", ink, text) : std::string(text);
}

std::string harmless_lines(std::string_view text) {
  std::string out;
  for (;;) {
    const std::size_t end = text.find('\n');
    out += harmless(text.substr(0, end));
    if (end == std::string_view::npos)
      return out;
    out += '\n';
    text.remove_prefix(end + 1);
  }
}

std::string place_of(Range range, const Sources &sources) {
  if (!range.somewhere())
    return "bodkin";
  const LineColumn at = sources.begin_of(range);
  return fmt::format("{}:{}:{}", harmless(sources.name(range.file)), at.line, at.column);
}

std::string first_line(const Problem &problem, const Sources &sources, bool colour) {
  const std::string kind = fmt::format("{}:", word_for(problem.kind));
  std::string out = inked(place_of(problem.range, sources) + ":", bold, colour) + " " +
                    inked(kind, ink_of(problem.kind), colour) + " " + harmless(problem.message);
  if (!problem.check.empty())
    out += fmt::format(" [{}]", problem.check);
  return out + "\n";
}

std::string words_underlined(const Problem &problem, const Sources &sources, bool colour) {
  if (!problem.range.somewhere())
    return {};
  const Excerpt excerpt = excerpt_of(problem.range, sources, report_columns - 2);
  const std::size_t mark = excerpt.underline.find('~');
  return fmt::format("  {}\n  {}{}\n", excerpt.line, excerpt.underline.substr(0, mark),
                     inked(excerpt.underline.substr(mark), ink_of(problem.kind), colour));
}

std::string label(std::string_view name, bool colour) {
  return "  " + inked(name, bold, colour) +
         std::string(label_space.substr(0, label_columns - 2 - name.size()));
}

// The line stays whole, so that it can be pasted; only what is said about it is wrapped.
std::string way_out(const WayOut &way) {
  if (way.line.empty())
    return wrapped(harmless_lines(way.remark), report_columns, label_columns);
  std::string out = harmless_lines(way.line);
  for (std::size_t end = out.find('\n'); end != std::string::npos; end = out.find('\n', end + 1))
    out.insert(end + 1, label_space);
  if (way.remark.empty())
    return out;
  const std::string remark = "(" + harmless_lines(way.remark) + ")";
  const std::size_t last = out.rfind('\n');
  const int used = last == std::string::npos ? label_columns + columns_of(out)
                                             : columns_of(std::string_view(out).substr(last + 1));
  const int gap = static_cast<int>(remark_gap.size());
  if (used + gap + columns_of(remark) <= report_columns)
    return out.append(remark_gap) + remark;
  return out.append("\n").append(label_space) + wrapped(remark, report_columns, label_columns);
}

std::string ways_out(const std::vector<WayOut> &ways, bool colour) {
  std::string out;
  for (const WayOut &way : ways)
    out += (out.empty() ? label("type", colour) : std::string(label_space)) + way_out(way) + "\n";
  return out;
}

} // namespace

std::string as_text(const Problem &problem, const Sources &sources, bool colour) {
  std::string out = first_line(problem, sources, colour);
  out += words_underlined(problem, sources, colour);
  if (!problem.why.empty())
    out += label("why", colour) +
           wrapped(harmless_lines(problem.why), report_columns, label_columns) + "\n";
  out += ways_out(problem.type, colour);
  for (const Related &related : problem.related)
    out += fmt::format("{} {} {}\n", inked(place_of(related.range, sources) + ":", bold, colour),
                       inked("note:", ink_of(Kind::note), colour), harmless(related.message));
  return out;
}

std::string as_text(const Problems &problems, const Sources &sources, bool colour) {
  std::string out;
  for (const Problem &problem : shown(problems))
    out += (out.empty() ? "" : "\n") + as_text(problem, sources, colour);
  return out;
}

} // namespace bodkin
