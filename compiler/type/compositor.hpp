// The compositor sets words in a style into boxes: paragraphs are shaped once as wholes, broken
// into lines as wide as the box that they reach, and the lines stacked one leading each.
//
//   Compositor compositor(edition, opened.faces);
//   Flow flow = compositor.flow(prose, style);
//   Column first = compositor.fill(flow, Mark{}, box.size());
//   Column second = compositor.fill(flow, first.next, other.size());
//   if (!flow.ends_at(second.next)) … compositor.left_over(flow, second.next, other.width)
//
// A Mark means the same in every flow of the same prose, so a text may change its style between
// boxes. Columns of one box are boxes. Filling in order takes time in proportion to the text; only
// the paragraph last reached is kept shaped.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "type/faces.hpp"
#include "type/lines.hpp"
#include "type/set.hpp"

#include <compare>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

// Where a line begins in a flow's words.
struct Mark {
  std::uint32_t paragraph = 0, byte = 0;
  auto operator<=>(const Mark &) const = default;
};

struct FlowParts;
// Words with their styles and faces looked up. Move only. Copies what it needs of the prose.
class Flow {
public:
  Flow();
  ~Flow();
  Flow(Flow &&) noexcept;
  Flow &operator=(Flow &&) noexcept;
  bool ends_at(Mark mark) const;
  Mark end() const;
  std::int64_t words() const; // all of them
  std::int64_t words_before(Mark mark) const;

private:
  friend class Compositor;
  std::unique_ptr<FlowParts> parts_;
};

struct Column {
  std::vector<Line> lines; // places from the box's top left
  Mark next;               // what the next box begins with; where it began if not one line fits
};

struct LeftOver {
  std::int64_t lines = 0; // at the measure asked for
  std::int64_t words = 0;
  std::int64_t words_set = 0;
  std::string last_words; // "…and the ribs went back"; empty where none was set
};

class Compositor {
public:
  // Both are kept by reference. The edition's main language decides how words are shaped and
  // broken.
  Compositor(const Edition &edition, const OpenFaces &faces, LineMaker maker = first_fit);
  ~Compositor();
  Compositor(Compositor &&) noexcept;
  Compositor &operator=(Compositor &&) = delete;

  Flow flow(const Prose &prose, StyleId style);
  Column fill(Flow &flow, Mark from, Size room);
  LeftOver left_over(Flow &flow, Mark from, Length measure);
  // One line that is never broken, from x = 0 and the top of its leading: a folio, a sign, a label.
  Line line(std::string_view words, StyleId style, Range from);

  // What was met in all words set by now, each once an edition: missing-glyph, missing-cut,
  // code-unstyled. Their exact words are found in the sources, where these are given.
  Problems problems(const Sources *sources = nullptr) const;

private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

} // namespace bodkin
