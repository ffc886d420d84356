#include "type/compositor.hpp"

#include "type/face_problems.hpp"
#include "type/filling.hpp"
#include "type/words.hpp"

namespace bodkin {
namespace {

constexpr std::size_t words_quoted = 5;

std::string language_of(const Edition &edition) {
  return edition.languages.empty() ? "en" : *edition.languages.front();
}

// The words last set before the mark, which may stand in an earlier paragraph.
std::string last_words(const FlowParts &flow, Mark mark) {
  std::string_view text;
  if (mark.paragraph < flow.paragraphs.size())
    text = std::string_view(flow.paragraphs[mark.paragraph].text).substr(0, mark.byte);
  if (text.empty() && mark.paragraph > 0 && mark.paragraph <= flow.paragraphs.size())
    text = flow.paragraphs[mark.paragraph - 1].text;
  return last_words_of(text, words_quoted);
}

} // namespace

struct Compositor::Parts {
  Parts(const Edition &of, const OpenFaces &from, LineMaker maker)
      : edition(of), faces(from), shaper(language_of(of)),
        setter(shaper), tools{shaper, setter, maker, findings} {}

  const Edition &edition;
  const OpenFaces &faces;
  Findings findings;
  Shaper shaper;
  LineSetter setter;
  Case tools;
};

Compositor::Compositor(const Edition &edition, const OpenFaces &faces, LineMaker maker)
    : parts_(new Parts(edition, faces, maker)) {}
Compositor::~Compositor() = default;
Compositor::Compositor(Compositor &&) noexcept = default;

Flow Compositor::flow(const Prose &prose, StyleId style) {
  Flow flow;
  if (style != StyleId::none)
    flow.parts_->paragraphs =
        paragraphs_of(prose, style, parts_->edition, parts_->faces, parts_->findings);
  return flow;
}

Column Compositor::fill(Flow &flow, Mark from, Size room) {
  return Filling(parts_->tools, *flow.parts_, from, room).column();
}

LeftOver Compositor::left_over(Flow &flow, Mark from, Length measure) {
  LeftOver left;
  left.lines = Filling(parts_->tools, *flow.parts_, from, {measure, Length{}}).count_lines();
  left.words_set = flow.words_before(from);
  left.words = flow.words() - left.words_set;
  left.last_words = last_words(*flow.parts_, from);
  return left;
}

Line Compositor::line(std::string_view words, StyleId style, Range from) {
  if (style == StyleId::none)
    return {};
  const Paragraph paragraph = paragraph_of(words, style, parts_->edition, parts_->faces, from);
  if (paragraph.typed.cut != nullptr)
    return whole_line(parts_->tools, paragraph);
  Line empty;
  empty.foot = paragraph.leading;
  return empty;
}

Problems Compositor::problems(const Sources *sources) const {
  return problems_of(parts_->findings, parts_->edition, parts_->faces, sources);
}

} // namespace bodkin
