#include "type/face_problems.hpp"

#include "type/words.hpp"

#include <fmt/format.h>
#include <hb.h>

namespace bodkin {
namespace {

// What a maker calls the face: its family, or its file where it has no family.
std::string spoken(const Face &face) {
  if (!face.family.empty())
    return face.family;
  return face.files.empty() ? face.name : face.files.front().path;
}

// "EB Garamond, bold," before a verb.
std::string spoken(const Face &face, Cut cut) {
  return cut == Cut::regular ? spoken(face) : fmt::format("{}, {},", spoken(face), word_for(cut));
}

std::string either(const std::vector<std::string> &names) {
  std::string all = names.front();
  for (std::size_t i = 1; i < names.size(); ++i)
    all += (i + 1 == names.size() ? " or " : ", ") + names[i];
  return all;
}

// "→ (U+2192)"; a character that shows nothing goes by its number alone.
std::string spelt(std::string_view character) {
  const char32_t code = code_point_at(character, 0).value;
  const std::string number = fmt::format("U+{:04X}", static_cast<std::uint32_t>(code));
  const auto kind = hb_unicode_general_category(hb_unicode_funcs_get_default(), code);
  const bool shows = kind > HB_UNICODE_GENERAL_CATEGORY_SURROGATE &&
                     kind < HB_UNICODE_GENERAL_CATEGORY_LINE_SEPARATOR;
  return shows ? fmt::format("{} ({})", character, number) : number;
}

std::string face_line(const Face &face, std::string_view from) {
  return fmt::format("face {} from \"{}\"", face.name, from);
}

// The line that names a face's file, with another path in it.
std::string file_line(const Face &face, const FaceFile &file, std::string_view path) {
  if (file.range == face.family_range)
    return face_line(face, path);
  const std::string_view cut = file.cut == Cut::bold_italic ? "bold-italic" : word_for(file.cut);
  return fmt::format("file       \"{}\", cut {}", path, cut);
}

std::string_view file_name(std::string_view path) {
  return path.substr(path.find_last_of('/') + 1);
}

} // namespace

std::string_view word_for(Cut cut) {
  switch (cut) {
  case Cut::regular:
    return "regular";
  case Cut::italic:
    return "italic";
  case Cut::bold:
    return "bold";
  case Cut::bold_italic:
    return "bold italic";
  }
  return "";
}

Problem missing_face(const Face &face, const std::vector<std::string> &near) {
  Problem problem;
  problem.check = "missing-face";
  problem.range = face.family_range;
  problem.message = fmt::format("the family {} is not on this machine", face.family);
  problem.why = "another face is never put in its place: every line would end elsewhere, and on "
                "the next machine elsewhere again";
  if (!face.package.empty()) {
    problem.message += fmt::format("; the Debian package {} brings it", face.package);
    problem.type.push_back({fmt::format("apt-get install {}", face.package),
                            "as root, in a terminal; then compile again"});
  } else if (!near.empty()) {
    problem.message += fmt::format("; did you mean {}?", either(near));
    for (const std::string &name : near)
      problem.type.push_back({face_line(face, name), ""});
    if (near.size() == 1)
      problem.edits = {{face.family_range, "\"" + near.front() + "\""}};
  } else {
    problem.type.push_back(
        {face_line(face, "faces/" + face.name + ".otf"),
         "once that file is in the edition's folder; `bodkin explain faces` names the families "
         "that need none"});
  }
  return problem;
}

Problem missing_face_file(const Face &face, const FaceFile &file, const Lookup &looked) {
  Problem problem;
  problem.range = file.range;
  if (looked.trouble == Trouble::outside) {
    problem.check = "outside-the-folder";
    problem.message = "this face lives outside the edition's folder";
    problem.why = "a manuscript may read its own folder only, so that it still works on another "
                  "desk and a stranger's cannot read yours";
    problem.type.push_back({file_line(face, file, fmt::format("faces/{}", file_name(file.path))),
                            "after copying it in, if its licence allows that"});
    return problem;
  }
  const bool other_case = looked.trouble == Trouble::wrong_case;
  problem.check = other_case ? "wrong-case" : "missing-file";
  problem.message = fmt::format("{} is not there", file.path);
  if (!looked.near.empty()) {
    problem.message += fmt::format("; {} is", looked.near);
    problem.type.push_back({file_line(face, file, looked.near), ""});
    problem.edits = {{file.range, "\"" + looked.near + "\""}};
  }
  problem.why = fmt::format("the words in {} stay off the pages until it is", face.name);
  return problem;
}

Problem unreadable_face(const Face &face, Range range, std::string_view file,
                        std::string_view reason) {
  Problem problem;
  problem.check = "unreadable-face";
  problem.range = range.somewhere() ? range : face.family_range;
  problem.message = fmt::format("{} cannot be set from: {}", file_name(file), reason);
  problem.why = fmt::format("the words in {} stay off the pages until it can", face.name);
  if (!face.package.empty())
    problem.type.push_back({fmt::format("apt-get install --reinstall {}", face.package),
                            "as root, in a terminal; then compile again"});
  else
    problem.type.push_back({"", "copy the font's file in again whole, or name another"});
  return problem;
}

Problem system_face(const Face &face, std::string_view path) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "system-face";
  problem.range = face.family_range;
  problem.message = fmt::format("{} is taken from this machine", face.family);
  problem.why = "another machine may have it in another version with other line ends, or not at "
                "all; a file in the edition's folder keeps the edition whole";
  problem.type.push_back({face_line(face, fmt::format("faces/{}", file_name(path))),
                          fmt::format("after copying in {}, if its licence allows it", path)});
  return problem;
}

Problem missing_cut(const Face &face, Cut wanted, Cut instead, Range from) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "missing-cut";
  problem.range = from;
  problem.message = fmt::format("{} has no {}; these words are set in its {}", spoken(face),
                                word_for(wanted), word_for(instead));
  problem.why = "a letter slanted or smeared by machine looks poor on paper and is never made";
  problem.related.push_back({face.range, fmt::format("{} is this face", face.name)});
  return problem;
}

Problem missing_glyph(const Face &face, Cut cut, std::string_view character,
                      const MissingGlyph &where, std::string_view other) {
  Problem problem;
  problem.check = "missing-glyph";
  problem.range = where.from;
  problem.message =
      fmt::format("{} has no {}, wanted in “{}”", spoken(face, cut), spelt(character), where.words);
  if (where.times > 1)
    problem.message +=
        fmt::format(" and {} more time{}", where.times - 1, where.times > 2 ? "s" : "");
  problem.why = "it would print as an empty box";
  if (!other.empty())
    problem.why += fmt::format("; {}, also in this edition, has it", other);
  problem.type.push_back({"", other.empty()
                                  ? "write it otherwise, or set these words in a face that has it"
                                  : fmt::format("set these words in a style of {}", other)});
  problem.related.push_back({face.range, fmt::format("{} is this face", face.name)});
  return problem;
}

Problem more_missing_glyphs(const Face &face, Cut cut, std::size_t more, Range from) {
  Problem problem;
  problem.check = "missing-glyph";
  problem.range = from;
  problem.message = fmt::format("{} lacks {} more character{} of this edition's words",
                                spoken(face, cut), more, more == 1 ? "" : "s");
  problem.why =
      "so many are a script that this family does not draw; its words want a face that does";
  problem.related.push_back({face.range, fmt::format("{} is this face", face.name)});
  return problem;
}

Problem code_unstyled(const Style &style, Range from, std::string_view typed) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "code-unstyled";
  problem.range = from;
  problem.message = fmt::format(
      "words between backticks look like the rest: {} has no style for code", style.name);
  problem.why = "backticks ask for words as a typewriter sets them";
  if (!typed.empty())
    problem.type.push_back(
        {fmt::format("code       in {}", typed), fmt::format("under style {}", style.name)});
  problem.related.push_back({style.range, fmt::format("style {}", style.name)});
  return problem;
}

} // namespace bodkin
