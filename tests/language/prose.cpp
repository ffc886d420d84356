#include "language/prose.hpp"

#include "problems/render.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

namespace {

struct Read {
  Sources sources;
  Problems problems;
  Prose prose;

  explicit Read(const std::string &text) {
    const FileId file = sources.add("words/a.md", text);
    prose = read_prose(text, {file, {}, Offset{static_cast<std::uint32_t>(text.size())}}, sources,
                       problems);
    sort_problems(problems);
  }
  std::string told() const { return as_text(problems, sources, false); }
};

// Each block on a line: its kind with heading level or depths, its sign, its spans.
std::string shape(const Prose &prose) {
  std::string text;
  for (const Block &block : prose.blocks) {
    constexpr const char *kinds[] = {"paragraph", "heading", "item", "quote", "code", "break"};
    text += kinds[static_cast<std::size_t>(block.kind)];
    if (block.heading_level != 0)
      text += std::to_string(block.heading_level);
    if (block.quote_depth != 0)
      text += " q" + std::to_string(block.quote_depth);
    if (block.list_depth != 0)
      text += " l" + std::to_string(block.list_depth) + (block.loose ? " loose" : "");
    if (!block.sign.empty())
      text += " " + block.sign;
    for (const Span &span : block.spans) {
      text += span.hard_break ? " [break" : " [" + span.text;
      text += span.emphasis ? " em" : "";
      text += span.strong ? " strong" : "";
      text += span.code ? " code" : "";
      text += span.fact.empty() ? "" : " fact " + span.fact;
      text += span.page.empty() ? "" : " page " + span.page;
      text += "]";
    }
    text += "\n";
  }
  return text;
}
std::string shape(const std::string &text) {
  const Read read(text);
  CHECK(read.told() == "");
  return shape(read.prose);
}

} // namespace

TEST_CASE("headings, paragraphs and what stands out in them") {
  CHECK(shape("# Lost property\n\nOne glove, *left*, wool.\n**Three** `umbrellas`, ***all***.\n") ==
        "heading1 [Lost property]\n"
        "paragraph [One glove, ] [left em] [, wool. ] [Three strong] [ ] [umbrellas code] [, ] "
        "[all em strong] [.]\n");
  CHECK(shape("One  \ntwo\\\nthree\n\n***\n\nfour\n") ==
        "paragraph [One] [break] [two] [break] [three]\n"
        "break\n"
        "paragraph [four]\n");
}

TEST_CASE("lists hang their signs, tight or loose, one in another") {
  CHECK(shape("- a\n- b\n  1. c\n  2. d\n- e\n") == "item l1 • [a]\n"
                                                    "item l1 • [b]\n"
                                                    "item l2 1. [c]\n"
                                                    "item l2 2. [d]\n"
                                                    "item l1 • [e]\n");
  CHECK(shape("7. a\n\n   more\n\n8. b\n") == "item l1 loose 7. [a]\n"
                                              "item l1 loose [more]\n"
                                              "item l1 loose 8. [b]\n");
  CHECK(shape("- - a\n-\n") == "item l1 •\nitem l2 • [a]\nitem l1 •\n");
}

TEST_CASE("quotes, alone and around lists") {
  CHECK(shape("> a\n> > b\n>\n> - c\n") == "quote q1 [a]\nquote q2 [b]\nitem q1 l1 • [c]\n");
}

TEST_CASE("code keeps its lines") {
  CHECK(shape("```\na  b\n\nc\n```\n") == "code [a  b code] [break] [ code] [break] [c code]\n");
  CHECK(shape("a\n\n    one line\n") == "paragraph [a]\ncode [one line code]\n");
}

TEST_CASE("a link is its words, and a fact or a page is filled in later") {
  CHECK(shape("See [the *map*](https://example.org) and <https://example.org/a>.\n") ==
        "paragraph [See the ] [map em] [ and https://example.org/a.]\n");
  CHECK(shape("[7](fact:number) of [12](page:lost), [word][w]\n\n[w]: /url\n") ==
        "paragraph [7 fact number] [ of ] [12 page lost] [, word]\n");
}

TEST_CASE("words are counted as people count them") {
  CHECK(word_count(
            Read("# Lost property\n\nOne glove -- left; don't *ask*.\n\n- 3 umbrellas\n").prose) ==
        9);
  CHECK(word_count(Read("half*way*\n").prose) == 1);
  CHECK(word_count(Read("Größe, école, 東京 – “quoted”\n").prose) == 4);
  CHECK(word_count(Read("one\\\ntwo\n").prose) == 2);
}

TEST_CASE("plain text is blocks parted by an empty line") {
  CHECK(plain_text(Read("# A\n\n*one*\\\ntwo\n").prose) == "A\n\none\ntwo");
}

TEST_CASE("a picture inside running text is told what to write") {
  CHECK(Read("A line.\nSee ![a moon](art/moon.png) here.\n").told() ==
        "words/a.md:2:5: error: a picture cannot stand inside running text [image-in-prose]\n"
        "  See ![a moon](art/moon.png) here.\n"
        "      ~~~~~~~~~~~~~~~~~~~~~~~\n"
        "  why   it needs a place on the paper and a size, which prose cannot say; give it lines "
        "of its own\n"
        "        on the page\n"
        "  type  picture \"art/moon.png\"\n"
        "          describe \"a moon\"\n");
}

TEST_CASE("tags are told") {
  CHECK(Read("One <b>two</b>\n").problems.size() == 1); // what closes a told tag needs no telling
  CHECK(Read("One two</b>\n").problems.size() == 1);
  CHECK(Read("One <b>two\n").told() ==
        "words/a.md:1:5: error: <b> is a tag for screens, not for paper [html-in-prose]\n"
        "  One <b>two\n"
        "      ~~~\n"
        "  why   words are marked by signs that can be read as they stand; before an angle bracket "
        "that "
        "is\n"
        "        meant stands a backslash: \\<\n"
        "  type  **strong words**\n");
  CHECK(Read("<div>\nwords\n</div>\n").problems.size() == 1);
}

TEST_CASE("verse that is set in by four spaces is told") {
  CHECK(
      Read("Verse:\n\n    The last bus has its lights on\n    and nobody inside\n").told() ==
      "words/a.md:3:5: warning: four spaces make these lines typed matter, not verse "
      "[verse-as-code]\n"
      "  The last bus has its lights on\n"
      "  ~~~~~~~~~~~~~~~~~~~~~~~~~~~~~~\n"
      "  why   CommonMark reads lines that stand four spaces in as a program's text; verse stands "
      "at the\n"
      "        edge of its text, with a backslash at each line's end\n"
      "  type  The last bus has its lights on\\\n");
}

TEST_CASE("malformed bytes in a file of words are told once") {
  const Read read("One\ntw\xFFo\n\xFE\n");
  REQUIRE(read.problems.size() == 1);
  CHECK(read.problems[0].message == "byte 6 is no text in UTF-8, and 1 more lines hold such bytes");
  CHECK(read.sources.line_number(read.problems[0].range) == 2);
}

TEST_CASE("a block inside a manuscript points at its own lines") {
  const std::string manuscript = "words in body\n  says\n    One\n\n    two ![](x.png)\n";
  Sources sources;
  const FileId file = sources.add("a.bodkin", manuscript);
  const auto begin = static_cast<std::uint32_t>(manuscript.find("    One"));
  Problems problems;
  const Prose prose =
      read_prose("One\n\ntwo ![](x.png)\n",
                 {file, Offset{begin}, Offset{static_cast<std::uint32_t>(manuscript.size())}},
                 sources, problems);
  CHECK(sources.line_number(prose.blocks[1].from) == 5);
  CHECK(sources.text(prose.blocks[1].from) == "two ![](x.png)");
  REQUIRE(problems.size() == 1);
  CHECK(sources.text(problems[0].range) == "![](x.png)");
}
