#include "edition/named_file.hpp"

#include "edition/problems.hpp"
#include "measure/limits.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

// What becomes of the page, or of the edition, while the file is missing.
std::string consequence(FactLine line) {
  if (line.word() == "picture")
    return "the page is drawn with a dashed keyline so that you can see the rest";
  if (line.word() == "borrow")
    return "the rest is read without what it holds";
  if (line.word() == "permission")
    return "a permission that nobody can show is none when somebody asks";
  return "the rest is set without these words";
}

std::string_view thing_of(FactLine line) {
  if (line.word() == "permission")
    return "letter";
  return line.word() == "picture" ? "picture" : line.word() == "borrow" ? "manuscript" : "text";
}

void say_near(const Reader &reader, Problem &problem, const Lookup &looked, FactLine line,
              std::string_view part) {
  if (looked.near.empty())
    return;
  const std::string instead = fmt::format("\"{}\"", looked.near);
  problem.type.push_back({typed(reader, line.range(), line.range(part), instead), {}});
  problem.edits.push_back({line.range(part), instead});
}

Problem absent(const Reader &reader, const Lookup &looked, FactLine line, std::string_view part) {
  const std::string_view written = line.words(part);
  Problem problem{.check = "missing-file",
                  .range = line.range(part),
                  .message = fmt::format("{} is not there", written),
                  .why = consequence(line)};
  if (!looked.near.empty())
    problem.message += fmt::format("; {} is", looked.near);
  else
    problem.type.push_back({{},
                            line.in->folder.empty()
                                ? "put the file into the edition's folder under this name"
                                : fmt::format("put the file into {} under this name, where this "
                                              "manuscript lies",
                                              line.in->folder)});
  say_near(reader, problem, looked, line, part);
  return problem;
}

Problem wrong_case(const Reader &reader, const Lookup &looked, FactLine line,
                   std::string_view part) {
  Problem problem{.check = "wrong-case",
                  .range = line.range(part),
                  .message = fmt::format("{} is there, {} is not: capitals count in a file's name",
                                         looked.near, line.words(part)),
                  .why = "some computers take both for one file and others do not; an edition that "
                         "works on this desk would fail on the next"};
  say_near(reader, problem, looked, line, part);
  return problem;
}

Problem outside(const Reader &reader, FactLine line, std::string_view part) {
  const std::string_view written = line.words(part);
  const std::size_t slash = written.rfind('/');
  const std::string_view name =
      slash == std::string_view::npos ? written : written.substr(slash + 1);
  return {.check = "outside-the-folder",
          .range = line.range(part),
          .message = fmt::format("this {} lives outside the edition's folder", thing_of(line)),
          .why =
              "a manuscript may read its own folder only, so that it still works on another desk "
              "and a stranger's cannot read yours",
          .type = {{typed(reader, line.range(), line.range(part), fmt::format("\"{}\"", name)),
                    "after copying it in"}}};
}

Problem not_readable(const Lookup &looked, FactLine line, std::string_view part) {
  const bool folder = looked.trouble == Trouble::not_a_file;
  return {.check = "missing-file",
          .range = line.range(part),
          .message = fmt::format("{} is {}", line.words(part),
                                 folder ? "not a file" : "there but may not be read"),
          .why = consequence(line),
          .type = {{{}, folder ? "name the file itself" : "allow yourself to read it"}}};
}

Problem too_long(FactLine line, std::string_view part) {
  const bool picture = line.word() == "picture";
  return {.check = picture ? "picture-too-big" : "too-long-file",
          .range = line.range(part),
          .message =
              fmt::format("{} is too long a file for a {}", line.words(part), thing_of(line)),
          .why = fmt::format("at most {} MB are read; something else must have got into its place",
                             (picture                   ? limits::picture_file_bytes
                              : line.word() == "borrow" ? limits::manuscript_bytes
                                                        : limits::prose_bytes) >>
                                 20),
          .type = {{{}, "name the file that was meant"}}};
}

} // namespace

Problem file_problem(const Reader &reader, const Lookup &looked, FactLine line,
                     std::string_view part) {
  switch (looked.trouble) {
  case Trouble::outside:
    return outside(reader, line, part);
  case Trouble::wrong_case:
    return wrong_case(reader, looked, line, part);
  case Trouble::not_a_file:
  case Trouble::unreadable:
    return not_readable(looked, line, part);
  case Trouble::too_big:
    return too_long(line, part);
  case Trouble::none:
  case Trouble::absent:
    break;
  }
  return absent(reader, looked, line, part);
}

std::optional<std::string> find_file(Reader &reader, FactLine line, std::string_view part,
                                     std::size_t most_bytes, FileRole role) {
  // A shelf file stands in no edition's folder.
  const Lookup looked = line.in->on_shelf
                            ? Lookup{.trouble = Trouble::absent}
                            : reader.files.look(line.in->folder, line.words(part), most_bytes);
  if (looked.trouble != Trouble::none) {
    reader.report(file_problem(reader, looked, line, part));
    return std::nullopt;
  }
  reader.note_file(looked.path, role);
  return looked.path;
}

FileId take_words(Reader &reader, FactLine line, std::string_view part) {
  const auto path = find_file(reader, line, part, limits::prose_bytes, FileRole::words);
  if (!path)
    return FileId::none;
  const auto taken = reader.words_taken.find(*path);
  if (taken != reader.words_taken.end())
    return taken->second;
  const FileBytes bytes = reader.files.read(*path);
  if (!bytes.owner) {
    reader.report(file_problem(reader, {.trouble = Trouble::unreadable}, line, part));
    return FileId::none;
  }
  const FileId file = reader.sources.add(*path, std::string(bytes.view));
  reader.words_taken.emplace(*path, file);
  return file;
}

} // namespace bodkin
