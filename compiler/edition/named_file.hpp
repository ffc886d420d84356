// Files that a manuscript names by a quoted path.
#pragma once

#include "edition/reader.hpp"

#include <optional>
#include <string>

namespace bodkin {

// Where the file lies that `part` of `line` names, relative to the edition's folder; none with the
// problem reported.
std::optional<std::string> find_file(Reader &reader, FactLine line, std::string_view part,
                                     std::size_t most_bytes, FileRole role);
// One of missing-file, wrong-case, outside-the-folder, too-long-file.
Problem file_problem(const Reader &reader, const Lookup &looked, FactLine line,
                     std::string_view part);

// Its text, added to Sources; FileId::none where it is not there.
FileId take_words(Reader &reader, FactLine line, std::string_view part);

} // namespace bodkin
