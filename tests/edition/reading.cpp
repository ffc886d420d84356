#include "edition/reading.hpp"

#include "problems/render.hpp"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <iterator>

namespace bodkin::tests {
namespace {

std::string text_of(const std::filesystem::path &path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void put_shelf_of(MemoryFiles &files, const std::filesystem::path &folder) {
  if (!std::filesystem::is_directory(folder))
    return;
  for (const auto &entry : std::filesystem::directory_iterator(folder))
    if (entry.path().extension() == ".bodkin")
      files.put_shelf(
          fmt::format("{}/{}", folder.filename().string(), entry.path().stem().string()),
          text_of(entry.path()));
}

void put_shelf(MemoryFiles &files) {
  const std::filesystem::path source = BODKIN_SOURCE_DIR;
  for (const char *folder :
       {"stocks", "machines", "foldings", "styles", "laws", "licences", "mail"})
    put_shelf_of(files, source / "stdlib" / folder);
  put_shelf_of(files, source / "fonts");
}

std::string indented(std::string_view lines) {
  std::string out;
  while (!lines.empty()) {
    const std::size_t end = std::min(lines.find('\n'), lines.size());
    out += fmt::format("  {}\n", lines.substr(0, end));
    lines.remove_prefix(std::min(end + 1, lines.size()));
  }
  return out;
}

} // namespace

std::string Read::found() const {
  std::string out;
  for (const Problem &problem : problems) {
    const LineColumn where = sources->begin_of(problem.range);
    out += fmt::format("{} {}:{}:{} {}\n", word_for(problem.kind),
                       sources->name(problem.range.file), where.line, where.column, problem.check);
  }
  return out;
}

const Problem *Read::problem(std::string_view check) const {
  for (const Problem &problem : problems)
    if (problem.check == check)
      return &problem;
  return nullptr;
}

Read read(std::string_view manuscript, MoreFiles more) {
  Read out;
  put_shelf(out.files);
  out.files.put("almanac.bodkin", std::string(manuscript));
  for (const auto &[path, bytes] : more)
    out.files.put(std::string(path), std::string(bytes));
  out.reading = read_edition("almanac.bodkin", out.files, *out.sources, out.problems);
  return out;
}

std::string small_edition(std::string_view facts, std::string_view rest) {
  return fmt::format(R"(edition "Test"
  size half-letter
  run 10 copies
  paper plain
  machine copier
{}
stock plain
  weight 20 lb bond
  sheet letter, grain long
  costs $10 per 500 sheets

machine copier
  prints black at $0.10 a side
  prints colour at $0.50 a side
  bare 1/4in
  duplex by machine

{})",
                     indented(facts), rest);
}

} // namespace bodkin::tests
