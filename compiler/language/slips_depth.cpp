#include "language/slips.hpp"
#include "measure/limits.hpp"

#include <fmt/format.h>

namespace bodkin::language {
namespace {

std::string has(std::string_view word) { return word == "words" ? "have" : "has"; }

std::string subject(std::string_view word) {
  if (word == "file")
    return "the file's left edge";
  if (word == "words" || word == "finish")
    return std::string(word);
  const bool vowel = std::string_view("aeiou").find(word.front()) != std::string_view::npos;
  return fmt::format("{} {}", vowel ? "an" : "a", word);
}

std::uint32_t line_begin(const Typed &line) {
  std::uint32_t begin = line.lexemes.front().begin;
  while (begin != 0 && line.text[begin - 1] != '\n')
    --begin;
  return begin;
}

// The range of its indentation, and the edit that makes it `indent`.
Problem indented(const Typed &line, std::string check, std::string_view indent) {
  Problem problem;
  problem.check = std::move(check);
  problem.range = line.whole();
  const std::uint32_t first = line.lexemes.front().begin;
  problem.edits.push_back(
      {{line.file, Offset{line_begin(line)}, Offset{first}}, std::string(indent)});
  if (const std::string typed = line.with(first, first, ""); !typed.empty())
    // A tab cannot be shown; the edit has it.
    problem.type.push_back(
        {(indent.find('\t') == indent.npos ? std::string(indent) : "") + typed, {}});
  return problem;
}

} // namespace

Problem not_here(const Typed &line, const Stands &stands, const Belongs &belongs,
                 const Sources &sources) {
  Problem problem = indented(line, "not-here", belongs.indent);
  problem.range = line.range(0);
  const std::uint32_t above = sources.line_number(belongs.line);
  problem.message =
      stands.closed
          ? fmt::format("nothing stands under {}; {} belongs to the {} above it (line {})",
                        stands.under, line.found(0), belongs.word, above)
          : fmt::format("{} {} no {}; the {} above it (line {}) {}", subject(stands.under),
                        has(stands.under), line.found(0), belongs.word, above, has(belongs.word));
  const std::size_t stands_in = line.lexemes.front().begin - line_begin(line);
  const bool few = stands_in < belongs.indent.size();
  const std::size_t off =
      few ? belongs.indent.size() - stands_in : stands_in - belongs.indent.size();
  problem.why = fmt::format(
      "{} {} too {}: {}", off,
      belongs.indent.find('\t') != std::string::npos ? (off == 1 ? "tab" : "tabs")
                                                     : (off == 1 ? "space" : "spaces"),
      few ? "few" : "many",
      few ? fmt::format("this line stands beside the {} instead of under it", belongs.word)
          : fmt::format("this line stands under {} instead of under the {}", stands.under,
                        belongs.word));
  problem.related.push_back({belongs.line, "what it belongs to"});
  return problem;
}

Problem nothing_under(const Typed &line, std::string_view above, Range above_line,
                      const Sources &sources) {
  Problem problem;
  problem.check = "not-here";
  problem.range = line.range(0);
  problem.message =
      fmt::format("nothing stands under {} (line {})", above, sources.line_number(above_line));
  problem.why = fmt::format("{} is a fact of one line; a line that stands deeper than the one "
                            "above it belongs to that one",
                            above);
  problem.related.push_back({above_line, "the line above it"});
  return problem;
}

Problem between_levels(const Typed &line, std::string_view indent, Range sibling,
                       const Sources &sources) {
  Problem problem = indented(line, "not-here", indent);
  problem.message = "this line stands under none of the lines above it";
  problem.why = fmt::format("lines that belong together begin one below the other; those near by "
                            "stand as far in as line {}",
                            sources.line_number(sibling));
  problem.related.push_back({sibling, "a line to stand below"});
  return problem;
}

Problem not_at_edge(const Typed &line, std::string_view above, Range above_line,
                    const Sources &sources) {
  Problem problem = indented(line, "not-here", "");
  problem.range = line.range(0);
  problem.message = fmt::format("{} begins at the left edge", line.words(0));
  const std::string_view blanks =
      line.text.substr(line_begin(line), line.lexemes.front().begin - line_begin(line));
  const bool tabs = blanks.find('\t') != std::string_view::npos;
  problem.why = fmt::format(
      "{} {}{} too many: a line that stands further in belongs to the one above it, here the {} of "
      "line {}",
      blanks.size(), tabs ? "tab" : "space", blanks.size() == 1 ? "" : "s", above,
      sources.line_number(above_line));
  return problem;
}

Problem first_line_indented(const Typed &line) {
  Problem problem = indented(line, "not-here", "");
  problem.message = "a file's first line stands at the left edge";
  problem.why = "a line that stands further in belongs to the one above it, and there is none";
  return problem;
}

Problem mixed_indent(const Typed &line, std::string_view indent, std::string_view wanted) {
  Problem problem = indented(line, "mixed-indent", wanted);
  const auto shape = [](std::string_view blanks) {
    const bool tabs = blanks.find('\t') != std::string_view::npos;
    const bool spaces = blanks.find(' ') != std::string_view::npos;
    return tabs && spaces ? "both tabs and spaces" : tabs ? "a tab" : "spaces";
  };
  const std::string_view here = shape(indent);
  const std::string_view there = shape(wanted);
  problem.message =
      here == there ? fmt::format("this line begins with {}, in another order than its block", here)
                    : fmt::format("this line begins with {}, its block with {}", here, there);
  problem.why = "a tab is as wide as each program pleases, so nobody can say what this line "
                "belongs to";
  return problem;
}

Problem too_deep(const Typed &line) {
  Problem problem;
  problem.check = "too-deep";
  problem.range = line.range(0);
  problem.message = fmt::format("lines stand more than {} levels deep", limits::nesting);
  problem.why = "an edition needs five levels; this line and those deeper are left out";
  problem.type.push_back({{}, "begin it less far to the right"});
  return problem;
}

Problem malformed_bytes(FileId file, std::string_view text, std::uint32_t at, std::size_t lines) {
  using namespace std::string_view_literals;
  // The marks with which such files begin, either way round.
  const bool wide = text.starts_with("\xFF\xFE"sv) || text.starts_with("\xFE\xFF"sv);
  Problem problem;
  problem.check = "malformed-bytes";
  problem.range = {file, Offset{at}, Offset{at + 1}};
  problem.message = wide ? std::string("this file is saved as UTF-16, two bytes a letter")
                         : fmt::format("byte {} is no text in UTF-8", at);
  if (!wide && lines > 1)
    problem.message += fmt::format(", and {} more {} such bytes", lines - 1,
                                   lines == 2 ? "line holds" : "lines hold");
  problem.why = "the file was saved in another encoding, or by a word processor in its own form";
  problem.type.push_back({{}, "save it again as plain text, UTF-8"});
  return problem;
}

} // namespace bodkin::language
