#include "edition/line.hpp"

namespace bodkin {

Range FactLine::range(std::string_view part) const {
  const language::Capture *capture = in->tree.find(*statement, part);
  return capture ? in->tree.range(*capture) : range();
}

std::string_view FactLine::words(std::string_view part) const {
  if (!statement)
    return {};
  if (const auto *word = get<language::Word>(part))
    return word->text;
  if (const auto *quoted = get<language::Quoted>(part))
    return quoted->text;
  return {};
}

} // namespace bodkin
