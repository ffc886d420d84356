// Pages as lists of things to draw, in order of laying. Places are upright boxes on the page as
// folded, from its top left; `to_page` then turns (and, for laid matter, moves) what stands in
// them.
#pragma once

#include "edition/edition.hpp"
#include "page/transform.hpp"
#include "type/set.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace bodkin {

// Words that hold a copy's own number, as they are set for one copy: its place in the count of all,
// from 0, or spare_copy.
struct LinesOfCopy {
  std::int64_t copy = 0;
  std::vector<Line> lines;
};

// Words as set: lines from the place's top left. Columns are laid one after another in `lines`,
// already moved to their place. Where copies differ these are the first copy's; `of_copies` has all
// of them, the spares' last.
struct SetWords {
  std::vector<Line> lines;
  std::vector<LinesOfCopy> of_copies{};
};

// A picture: `whole` is where all of it would lie, `window` the part that is seen.
// Which file and what tone, its element says.
struct SetPicture {
  Box whole, window;
  bool coloured = false; // after its tone
};

// A plain area of a colour, or a line round the inside of one.
struct SetFill {
  Paint paint;
  Share share;
};
struct SetOutline {
  Length width;
  Paint paint;
};
struct SetRule {
  Length width;
  Paint paint;
  Spot start, end; // on the page
};

// A code's dark modules, row by row; the quiet zone of four modules is inside the place.
struct SetQr {
  int modules = 0; // along one side, quiet zone left out
  std::vector<bool> dark;
  Paint paint;
};

struct SetHand {
  HandKind kind = HandKind::other;
  std::string text;
};

// A window for what is glued on the page's original.
struct SetPasteUp {
  std::string text;
};

// A thing that cannot be drawn: a dashed keyline with the reason, on proofs.
struct SetMissing {
  std::string reason;
};

struct Item {
  ElementId element = ElementId::none;
  ElementId laid_by = ElementId::none; // the `lay` that brought it
  bool running = false;
  bool crosses_fold = false; // of a spread and on both its pages: not shifted for creep
  Box place;
  Transform to_page;
  std::variant<SetWords, SetPicture, SetFill, SetOutline, SetRule, SetQr, SetHand, SetMissing,
               SetPasteUp>
      what;
};

struct PageDrawing {
  std::vector<Item> items;
  bool draws = false;    // leaves ink: hand work, white and empty words do not
  bool coloured = false; // at least one of its things has a colour of its own
};

struct Drawings {
  std::vector<PageDrawing> pages; // index 1..page_count
  const PageDrawing &operator[](int page) const { return pages[static_cast<std::size_t>(page)]; }
};

} // namespace bodkin
