#include "problems/checks.hpp"
#include "problems/render.hpp"

#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>

namespace bodkin {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view schema =
    "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

// A path as a relative reference of a URI (RFC 3986): everything else than letters, digits and
// -._~/ stands as %XX, so that a colon in a file's name does not read as a scheme.
std::string uri_of(std::string_view path) {
  std::string out;
  for (const char c : path) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    if (letter || std::string_view("-._~/").find(c) != std::string_view::npos)
      out += c;
    else
      out += fmt::format("%{:02X}", static_cast<unsigned char>(c));
  }
  return out;
}

Json text_of(std::string_view text) { return {{"text", text}}; }

Json region_of(Range range, const Sources &sources) {
  const LineColumn begin = sources.begin_of(range), end = sources.end_of(range);
  return {{"startLine", begin.line},
          {"startColumn", begin.column},
          {"endLine", end.line},
          {"endColumn", end.column}};
}

Json artifact_of(FileId file, const Sources &sources) {
  return {{"uri", uri_of(sources.name(file))}};
}

Json location_of(Range range, const Sources &sources) {
  return {{"physicalLocation",
           {{"artifactLocation", artifact_of(range.file, sources)},
            {"region", region_of(range, sources)}}}};
}

Json rule_of(const Check &check) {
  return {{"id", check.name},
          {"shortDescription", text_of(check.title)},
          {"fullDescription", text_of(check.page)},
          {"help", text_of(check.mend)},
          {"defaultConfiguration", {{"level", word_for(check.kind)}}}};
}

std::string whole_message(const Problem &problem) {
  std::string out = problem.message;
  if (!problem.why.empty())
    out += "\n\nWhy: " + problem.why;
  for (const WayOut &way : problem.type) {
    out += "\n\nType: " + way.line;
    if (!way.remark.empty())
      out += (way.line.empty() ? "" : " (") + way.remark + (way.line.empty() ? "" : ")");
  }
  return out;
}

Json related_of(const Problem &problem, const Sources &sources) {
  Json out = Json::array();
  for (const Related &related : problem.related) {
    Json location =
        related.range.somewhere() ? location_of(related.range, sources) : Json::object();
    location["message"] = text_of(related.message);
    out.push_back(std::move(location));
  }
  return out;
}

// All edits of a problem belong together: one fix, one change for each file.
Json fixes_of(const Problem &problem, const Sources &sources) {
  std::map<FileId, Json> replacements;
  for (const Edit &edit : problem.edits)
    replacements[edit.range.file].push_back({{"deletedRegion", region_of(edit.range, sources)},
                                             {"insertedContent", text_of(edit.text)}});
  Json changes = Json::array();
  for (auto &[file, list] : replacements)
    changes.push_back({{"artifactLocation", artifact_of(file, sources)}, {"replacements", list}});
  return Json::array({{{"description", text_of(problem.message)}, {"artifactChanges", changes}}});
}

Json result_of(const Problem &problem, const Sources &sources) {
  Json out;
  out["ruleId"] = problem.check;
  if (const Check *check = check_named(problem.check))
    out["ruleIndex"] = check - all_checks().data();
  out["level"] = word_for(problem.kind);
  out["message"] = text_of(whole_message(problem));
  out["locations"] = Json::array();
  if (problem.range.somewhere())
    out["locations"].push_back(location_of(problem.range, sources));
  if (!problem.related.empty())
    out["relatedLocations"] = related_of(problem, sources);
  if (!problem.edits.empty())
    out["fixes"] = fixes_of(problem, sources);
  return out;
}

} // namespace

std::string as_sarif(const Problems &problems, const Sources &sources, const std::string &version) {
  Json driver = {{"name", "bodkin"}, {"version", version}, {"rules", Json::array()}};
  for (const Check &check : all_checks())
    driver["rules"].push_back(rule_of(check));
  Json results = Json::array();
  for (const Problem &problem : shown(problems))
    results.push_back(result_of(problem, sources));
  Json run;
  run["tool"]["driver"] = std::move(driver);
  run["columnKind"] = "unicodeCodePoints";
  run["results"] = std::move(results);
  Json out;
  out["$schema"] = schema;
  out["version"] = "2.1.0";
  out["runs"] = Json::array();
  out["runs"].push_back(std::move(run));
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace bodkin
