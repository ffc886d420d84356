// The examples of the CommonMark specification, version 0.30, as Debian's package
// golang-github-yuin-goldmark-dev carries them: each text with the HTML that it means. Ours must
// have the same characters, each with the same emphasis, strength and type.
#include "language/prose.hpp"

#include <doctest/doctest.h>
#include <fstream>
#include <nlohmann/json.hpp>

using namespace bodkin;

namespace {

constexpr const char *examples_file =
    "/usr/share/gocode/src/github.com/yuin/goldmark/_test/spec.json";

// A character with what it looks like: `e` emphasised, `s` strong, `c` as code; white space left
// out, as line ends and blanks between blocks differ freely.
void put(std::string &out, std::string_view text, bool emphasis, bool strong, bool code) {
  for (const char c : text) {
    if (c == ' ' || c == '\n' || c == '\t')
      continue;
    out += c;
    // A character's other bytes carry no mark.
    if ((static_cast<unsigned char>(c) & 0xC0) == 0x80)
      continue;
    if (emphasis)
      out += "/e";
    if (strong)
      out += "/s";
    if (code)
      out += "/c";
  }
}

std::string unescaped(std::string_view html) {
  std::string text;
  for (std::size_t i = 0; i < html.size(); ++i) {
    bool found = false;
    for (const auto &[name, sign] : {std::pair<std::string_view, char>{"&lt;", '<'},
                                     {"&gt;", '>'},
                                     {"&amp;", '&'},
                                     {"&quot;", '"'}})
      if (html.substr(i).starts_with(name)) {
        text += sign;
        i += name.size() - 1;
        found = true;
        break;
      }
    if (!found)
      text += html[i];
  }
  return text;
}

std::string marked_html(std::string_view html) {
  std::string out;
  int emphasis = 0;
  int strong = 0;
  int code = 0;
  for (std::size_t i = 0; i < html.size();) {
    if (html[i] != '<') {
      const std::size_t end = std::min(html.find('<', i), html.size());
      put(out, unescaped(html.substr(i, end - i)), emphasis > 0, strong > 0, code > 0);
      i = end;
      continue;
    }
    const std::size_t end = html.find('>', i);
    const std::string_view tag = html.substr(i + 1, end - i - 1);
    const int step = tag.starts_with('/') ? -1 : 1;
    const std::string_view name = tag.substr(step < 0 ? 1 : 0);
    if (name == "em")
      emphasis += step;
    if (name == "strong")
      strong += step;
    if (name.starts_with("code"))
      code += step;
    i = end + 1;
  }
  return out;
}

std::string marked(const Prose &prose) {
  std::string out;
  for (const Block &block : prose.blocks)
    for (const Span &span : block.spans)
      put(out, span.text, span.emphasis, span.strong, span.code);
  return out;
}

std::size_t count(std::string_view text, std::string_view piece) {
  std::size_t found = 0;
  for (std::size_t at = text.find(piece); at != std::string_view::npos;
       at = text.find(piece, at + 1))
    ++found;
  return found;
}

} // namespace

TEST_CASE("the examples of CommonMark mean what the specification says") {
  std::ifstream in(examples_file);
  REQUIRE_MESSAGE(in.good(), "install golang-github-yuin-goldmark-dev");
  const nlohmann::json examples = nlohmann::json::parse(in);
  REQUIRE(examples.size() == 652);
  int compared = 0;
  for (const nlohmann::json &example : examples) {
    const std::string text = example.at("markdown");
    const std::string html = example.at("html");
    Sources sources;
    const FileId file = sources.add("spec.md", text);
    Problems problems;
    const Prose prose = read_prose(
        text, {file, {}, Offset{static_cast<std::uint32_t>(text.size())}}, sources, problems);
    bool refused = false; // pictures and tags are told instead
    for (const Problem &problem : problems)
      refused |= problem.check == "image-in-prose" || problem.check == "html-in-prose";
    if (refused)
      continue;
    ++compared;
    CHECK_MESSAGE(marked(prose) == marked_html(html), text);
    const auto blocks = [&prose](BlockKind kind) {
      std::size_t found = 0;
      for (const Block &block : prose.blocks)
        found += block.kind == kind ? 1U : 0U;
      return found;
    };
    std::size_t signs = 0;
    for (const Block &block : prose.blocks)
      signs += block.sign.empty() ? 0U : 1U;
    CHECK_MESSAGE(signs == count(html, "<li>"), text);
    CHECK_MESSAGE(blocks(BlockKind::thought_break) == count(html, "<hr />"), text);
    CHECK_MESSAGE(blocks(BlockKind::code) == count(html, "<pre>"), text);
    CHECK_MESSAGE(blocks(BlockKind::heading) == count(html, "<h1>") + count(html, "<h2>") +
                                                    count(html, "<h3>") + count(html, "<h4>") +
                                                    count(html, "<h5>") + count(html, "<h6>"),
                  text);
  }
  CHECK(compared == 559);
}
