#include "problems/manuscript.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

TEST_CASE("a problem as JSON has its place in characters, ends exclusive") {
  Sources sources;
  const FileId file = sources.add("almanac.bodkin", "page 3\n  words \"夜\" in bdy\n");
  const Range range = range_of(sources, file, "bdy");
  const Problem problem{Kind::error,
                        "unknown-name",
                        range,
                        "no style is called bdy",
                        "the styles are body and label",
                        {{"words \"夜\" in body", ""}, {"words \"夜\" in label", "smaller"}},
                        {{range_of(sources, file, "page 3"), "on this page"}},
                        {{range, "body"}}};
  CHECK(as_json({problem}, sources) == R"({
  "problems": [
    {
      "kind": "error",
      "check": "unknown-name",
      "file": "almanac.bodkin",
      "line": 2,
      "column": 16,
      "end_line": 2,
      "end_column": 19,
      "message": "no style is called bdy",
      "why": "the styles are body and label",
      "type": "words \"夜\" in body",
      "ways": [
        {
          "line": "words \"夜\" in body",
          "remark": ""
        },
        {
          "line": "words \"夜\" in label",
          "remark": "smaller"
        }
      ],
      "related": [
        {
          "file": "almanac.bodkin",
          "line": 1,
          "column": 1,
          "end_line": 1,
          "end_column": 7,
          "message": "on this page"
        }
      ],
      "edits": [
        {
          "file": "almanac.bodkin",
          "line": 2,
          "column": 16,
          "end_line": 2,
          "end_column": 19,
          "text": "body"
        }
      ]
    }
  ]
}
)");
}

TEST_CASE("a problem in no file has null for its place") {
  const Problem problem{
      Kind::warning, "over-budget", {}, "too dear", "", {{"", "fewer pages"}}, {}, {}};
  CHECK(as_json({problem}, Sources{}) == R"({
  "problems": [
    {
      "kind": "warning",
      "check": "over-budget",
      "file": null,
      "line": null,
      "column": null,
      "end_line": null,
      "end_column": null,
      "message": "too dear",
      "why": "",
      "type": "fewer pages",
      "ways": [
        {
          "line": "",
          "remark": "fewer pages"
        }
      ],
      "related": [],
      "edits": []
    }
  ]
}
)");
}

TEST_CASE("no problems are an empty list") {
  CHECK(as_json({}, Sources{}) == "{\n  \"problems\": []\n}\n");
}

TEST_CASE("malformed bytes come out as U+FFFD, so that the JSON is always UTF-8") {
  Sources sources;
  const FileId file = sources.add("a\xFF.bodkin", "\xFF");
  const Problem problem{
      Kind::error, "malformed-bytes", range_at(file, 0, 1), "byte \xFF here", "", {}, {}, {}};
  const std::string json = as_json({problem}, sources);
  CHECK(json.find("\"file\": \"a\uFFFD.bodkin\"") != std::string::npos);
  CHECK(json.find("\"message\": \"byte \uFFFD here\"") != std::string::npos);
  CHECK(json.find('\xFF') == std::string::npos);
}
