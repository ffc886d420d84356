#include "command/telling.hpp"

#include "command/delivery.hpp"
#include "command/help.hpp"
#include "problems/render.hpp"

#include <algorithm>
#include <cstdio>
#include <fmt/format.h>

namespace bodkin {
namespace {

std::size_t count(const Problems &problems, Kind kind) {
  return static_cast<std::size_t>(std::count_if(problems.begin(), problems.end(),
                                                [&](const Problem &p) { return p.kind == kind; }));
}

} // namespace

bool stopped(const WayThrough &way, const Options &options) {
  return any_errors(way.problems) || (options.strict && count(way.problems, Kind::warning) > 0);
}

void print(std::string_view text) {
  if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size() || std::fflush(stdout) != 0)
    throw CannotWrite("standard output could not be written");
}

void tell_problems(const WayThrough &way, const Options &options, const Desk &desk) {
  if (options.json)
    return print(as_json(way.problems, way.sources));
  if (options.sarif)
    return print(as_sarif(way.problems, way.sources, version()));
  const std::string text = as_text(way.problems, way.sources, desk.colour);
  std::fwrite(text.data(), 1, text.size(), stderr);
}

std::string tally(const Problems &problems) {
  std::vector<std::string> parts;
  const auto add = [&](Kind kind, std::string_view word) {
    if (const std::size_t n = count(problems, kind))
      parts.push_back(fmt::format("{} {}{}", n, word, n == 1 ? "" : "s"));
  };
  add(Kind::error, "error");
  add(Kind::warning, "warning");
  add(Kind::note, "note");
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i)
    text += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return text;
}

} // namespace bodkin
