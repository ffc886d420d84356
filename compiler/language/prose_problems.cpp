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

// What CommonMark writes where a tag stands.
WayOut instead_of(std::string_view tag) {
  const std::size_t begin = tag.find_first_not_of("</");
  const std::string_view name =
      begin == tag.npos ? "" : tag.substr(begin, tag.find_first_of(" />", begin) - begin);
  if (name == "b" || name == "strong")
    return {"**strong words**", {}};
  if (name == "i" || name == "em")
    return {"*words with emphasis*", {}};
  if (name == "br")
    return {"\\", "at the end of the line that breaks"};
  if (name.size() == 2 && name[0] == 'h' && name[1] >= '1' && name[1] <= '6')
    return {std::string(static_cast<std::size_t>(name[1] - '0'), '#') + " A heading", {}};
  return {{}, "take the tag out, and leave the words that it holds"};
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
  Problem problem = about(
      "html-in-prose", range, fmt::format("{} is a tag for screens, not for paper", few(tag)),
      "words are marked by signs that can be read as they stand; before an angle bracket that is "
      "meant stands a backslash: \\<");
  problem.type.push_back(instead_of(tag));
  return problem;
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
  Problem problem = about(
      "too-deep", range,
      fmt::format("lists and quotes stand more than {} deep in each other", limits::prose_nesting),
      "each level is set further in, and the paper has no room left; what stands deeper is "
      "read as if it stood at that depth");
  problem.type.push_back({{}, "begin the line with fewer signs, nearer to the text's edge"});
  return problem;
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
            "own form");
  if (lines > 1)
    problem.message += fmt::format(", and {} more lines hold such bytes", lines - 1);
  problem.type.push_back({{}, "save it again as plain text, UTF-8"});
  return problem;
}

} // namespace bodkin::language
