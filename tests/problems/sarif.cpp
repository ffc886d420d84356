// What the OASIS schema of SARIF 2.1.0 requires of each object is listed here from memory.
#include "problems/checks.hpp"
#include "problems/manuscript.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>
#include <set>

using namespace bodkin;
using Json = nlohmann::json;

namespace {

bool has(const Json &object, std::initializer_list<const char *> keys) {
  for (const char *key : keys)
    if (!object.is_object() || !object.contains(key))
      return false;
  return true;
}

Json log_of(const Problems &problems, const Sources &sources) {
  return Json::parse(as_sarif(problems, sources, "0.1.0"));
}

struct Almanac {
  Sources sources;
  Problem problem;
  Almanac() {
    const FileId file = sources.add("art: 2/al manac.bodkin", "page 6 on craem\n");
    const Range range = range_of(sources, file, "craem");
    problem = {Kind::error,
               "unknown-name",
               range,
               "no stock is called craem",
               "the stocks are cream and rose",
               {{"page 6 on cream", "or rose"}},
               {{range_of(sources, file, "page 6"), "on this page"}, {{}, "somewhere else"}},
               {{range, "cream"}}};
  }
};

} // namespace

TEST_CASE("a SARIF log has a version and a run with a tool whose driver has a name") {
  const Json log = log_of({}, Sources{});
  REQUIRE(has(log, {"version", "runs"}));
  CHECK(log["version"] == "2.1.0");
  REQUIRE(log["runs"].size() == 1);
  const Json &run = log["runs"][0];
  REQUIRE(has(run, {"tool"}));
  REQUIRE(has(run["tool"], {"driver"}));
  REQUIRE(has(run["tool"]["driver"], {"name"}));
  CHECK(run["tool"]["driver"]["name"] == "bodkin");
  CHECK(run["tool"]["driver"]["version"] == "0.1.0");
  CHECK(run["columnKind"] == "unicodeCodePoints");
  CHECK(run["results"] == Json::array());
}

TEST_CASE("every check is a rule with an id of its own and texts") {
  const Json log = log_of({}, Sources{});
  const Json &rules = log["runs"][0]["tool"]["driver"]["rules"];
  CHECK(rules.size() == all_checks().size());
  std::set<std::string> ids;
  for (const Json &rule : rules) {
    REQUIRE(has(rule, {"id", "shortDescription", "fullDescription", "help"}));
    CHECK(ids.insert(rule["id"].get<std::string>()).second);
    for (const char *key : {"shortDescription", "fullDescription", "help"})
      CHECK(has(rule[key], {"text"}));
    const std::string level = rule["defaultConfiguration"]["level"];
    CHECK(std::set<std::string>{"error", "warning", "note"}.count(level) == 1);
  }
}

TEST_CASE("a result says rule, level, message and place, as the schema requires") {
  const Almanac almanac;
  const Json log = log_of({almanac.problem}, almanac.sources);
  const Json &run = log["runs"][0];
  REQUIRE(run["results"].size() == 1);
  const Json &result = run["results"][0];
  REQUIRE(has(result, {"message"}));
  REQUIRE(has(result["message"], {"text"}));
  CHECK(result["message"]["text"] == "no stock is called craem\n\n"
                                     "Why: the stocks are cream and rose\n\n"
                                     "Type: page 6 on cream (or rose)");
  CHECK(result["level"] == "error");
  CHECK(result["ruleId"] == "unknown-name");
  const std::size_t index = result["ruleIndex"];
  CHECK(run["tool"]["driver"]["rules"][index]["id"] == "unknown-name");
  const Json &physical = result["locations"][0]["physicalLocation"];
  REQUIRE(has(physical, {"artifactLocation", "region"}));
  CHECK(physical["region"] ==
        Json{{"startLine", 1}, {"startColumn", 11}, {"endLine", 1}, {"endColumn", 16}});
}

// RFC 3986: a colon in the first part of a relative reference would read as a scheme.
TEST_CASE("a file's name is written as a URI reference") {
  const Almanac almanac;
  const Json log = log_of({almanac.problem}, almanac.sources);
  CHECK(
      log["runs"][0]["results"][0]["locations"][0]["physicalLocation"]["artifactLocation"]["uri"] ==
      "art%3A%202/al%20manac.bodkin");
}

TEST_CASE("related places have messages, with a place or without") {
  const Almanac almanac;
  const Json log = log_of({almanac.problem}, almanac.sources);
  const Json &related = log["runs"][0]["results"][0]["relatedLocations"];
  REQUIRE(related.size() == 2);
  CHECK(related[0]["message"] == Json{{"text", "on this page"}});
  CHECK(related[0]["physicalLocation"]["region"]["startLine"] == 1);
  CHECK(related[1] == Json{{"message", {{"text", "somewhere else"}}}});
}

TEST_CASE("edits are one fix with a change for each file, as the schema requires") {
  const Almanac almanac;
  const Json log = log_of({almanac.problem}, almanac.sources);
  const Json &fixes = log["runs"][0]["results"][0]["fixes"];
  REQUIRE(fixes.size() == 1);
  REQUIRE(has(fixes[0], {"artifactChanges"}));
  REQUIRE(fixes[0]["artifactChanges"].size() == 1);
  const Json &change = fixes[0]["artifactChanges"][0];
  REQUIRE(has(change, {"artifactLocation", "replacements"}));
  REQUIRE(change["replacements"].size() == 1);
  REQUIRE(has(change["replacements"][0], {"deletedRegion", "insertedContent"}));
  CHECK(change["replacements"][0]["insertedContent"] == Json{{"text", "cream"}});
  CHECK(change["replacements"][0]["deletedRegion"]["startColumn"] == 11);
}

TEST_CASE("a problem in no file has no location") {
  const Problem problem{Kind::note, "more-problems", {}, "1 more problem is not shown", "", {}, {},
                        {}};
  const Json log = log_of({problem}, Sources{});
  const Json &result = log["runs"][0]["results"][0];
  CHECK(result["locations"] == Json::array());
  CHECK(result["level"] == "note");
  CHECK_FALSE(has(result, {"fixes"}));
  CHECK_FALSE(has(result, {"relatedLocations"}));
}
