#include "language/prose_problems.hpp"

#include "measure/limits.hpp"
#include "problems/characters.hpp"

#include <fmt/format.h>

namespace bodkin::language {
namespace {

constexpr std::size_t longest = 60;

std::string few(std::string_view words) {
  if (words.size() <= longest)
    return harmless(words);
  return harmless(words.substr(0, character_start(words, longest))) + "…";
}

Problem about(std::string check, Range range, std::string message, std::string why) {
  Problem problem;
  problem.check = std::move(check);
  problem.range = range;
  problem.message = std::move(message);
  problem.why = std::move(why);
  return problem;
}

} // namespace

Problem image_in_prose(Range range, std::string_view path, std::string_view description) {
  Problem problem = about("image-in-prose", range, "a picture cannot stand inside running text",
                          "it needs a place on the paper and a size, which prose cannot say; give "
                          "it lines of its own on the page");
  std::string lines = fmt::format("picture \"{}\"", few(path.empty() ? "art/moon.png" : path));
  if (!description.empty())
    lines += fmt::format("\n  describe \"{}\"", few(description));
  problem.type.push_back({lines, {}});
  return problem;
}

Problem html_in_prose(Range range, std::string_view tag) {
  return about("html-in-prose", range,
               fmt::format("{} is a tag for screens, not for paper", few(tag)),
               "write *emphasis*, **strong** and # headings; before an angle bracket that is meant "
               "stands a backslash: \\<");
}

Problem verse_set_in(Range range, std::string_view first_line) {
  Problem problem =
      about("verse-as-code", range, "four spaces make these lines typed matter, not verse",
            "CommonMark reads lines that stand four spaces in as a program's text; verse stands at "
            "the edge of its text, with a backslash at each line's end");
  problem.kind = Kind::warning;
  problem.type.push_back({few(first_line) + "\\", {}});
  return problem;
}

Problem prose_too_deep(Range range) {
  return about(
      "too-deep", range,
      fmt::format("lists and quotes stand more than {} deep in each other", limits::prose_nesting),
      "each level is set further in, and the paper has no room left; what stands deeper is "
      "read as if it stood at that depth");
}

Problem prose_too_tangled(Range range) {
  return about("too-deep", range, "this text holds too many signs in too long a paragraph",
               "brackets, stars and strokes are paired with each other within a paragraph; part it "
               "by empty lines, or put a backslash before signs that are meant as such");
}

Problem prose_bytes(Range range, std::size_t byte, std::size_t lines) {
  Problem problem =
      about("malformed-bytes", range, fmt::format("byte {} is no text in UTF-8", byte),
            "the file was saved in another encoding, or by a word processor in its "
            "own form; save it as plain text, UTF-8");
  if (lines > 1)
    problem.message += fmt::format(", and {} more lines hold such bytes", lines - 1);
  return problem;
}

} // namespace bodkin::language
