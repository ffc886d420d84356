// What is wrong with faces and with words set in them, one small function a problem.
#pragma once

#include "edition/edition.hpp"
#include "edition/files.hpp"
#include "problems/problem.hpp"
#include "type/faces.hpp"
#include "type/findings.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

std::string_view word_for(Cut cut); // "bold italic"

Problem missing_face(const Face &face, const std::vector<std::string> &near);
// A face's own file that is not there as it is written: missing-file, wrong-case or
// outside-the-folder.
Problem missing_face_file(const Face &face, const FaceFile &file, const Lookup &looked);
Problem unreadable_face(const Face &face, Range range, std::string_view file,
                        std::string_view reason);
Problem system_face(const Face &face, std::string_view path);
Problem missing_cut(const Face &face, Cut wanted, Cut instead, Range from);
// `other` is a family of this edition that has the character, or empty.
Problem missing_glyph(const Face &face, Cut cut, std::string_view character,
                      const MissingGlyph &where, std::string_view other);
// The rest, where many are missing.
Problem more_missing_glyphs(const Face &face, Cut cut, std::size_t more, Range from);
// `typed` is a style of this edition in a typewriter's face, or empty.
Problem code_unstyled(const Style &style, Range from, std::string_view typed);

// Everything found while setting, as problems.
// Without sources a problem of words stands for their whole block.
Problems problems_of(const Findings &findings, const Edition &edition, const OpenFaces &faces,
                     const Sources *sources);

} // namespace bodkin
