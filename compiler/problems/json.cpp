#include "problems/render.hpp"

#include <nlohmann/json.hpp>

namespace bodkin {
namespace {

using Json = nlohmann::ordered_json;

void put_place(Json &out, Range range, const Sources &sources) {
  if (!range.somewhere()) {
    for (const char *key : {"file", "line", "column", "end_line", "end_column"})
      out[key] = nullptr;
    return;
  }
  const LineColumn begin = sources.begin_of(range), end = sources.end_of(range);
  out["file"] = sources.name(range.file);
  out["line"] = begin.line;
  out["column"] = begin.column;
  out["end_line"] = end.line;
  out["end_column"] = end.column;
}

Json json_of(const Related &related, const Sources &sources) {
  Json out;
  put_place(out, related.range, sources);
  out["message"] = related.message;
  return out;
}

Json json_of(const Edit &edit, const Sources &sources) {
  Json out;
  put_place(out, edit.range, sources);
  out["text"] = edit.text;
  return out;
}

Json ways_of(const Problem &problem) {
  Json ways = Json::array();
  for (const WayOut &way : problem.type)
    ways.push_back({{"line", way.line}, {"remark", way.remark}});
  return ways;
}

std::string first_way_of(const Problem &problem) {
  if (problem.type.empty())
    return {};
  const WayOut &way = problem.type.front();
  return way.line.empty() ? way.remark : way.line;
}

Json json_of(const Problem &problem, const Sources &sources) {
  Json out;
  out["kind"] = word_for(problem.kind);
  out["check"] = problem.check;
  put_place(out, problem.range, sources);
  out["message"] = problem.message;
  out["why"] = problem.why;
  out["type"] = first_way_of(problem);
  out["ways"] = ways_of(problem);
  out["related"] = Json::array();
  for (const Related &related : problem.related)
    out["related"].push_back(json_of(related, sources));
  out["edits"] = Json::array();
  for (const Edit &edit : problem.edits)
    out["edits"].push_back(json_of(edit, sources));
  return out;
}

} // namespace

std::string as_json(const Problems &problems, const Sources &sources) {
  Json out;
  out["problems"] = Json::array();
  for (const Problem &problem : shown(problems))
    out["problems"].push_back(json_of(problem, sources));
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace bodkin
