// A paper for people at a table, as data: headlines, passages, tables, pictures to measure by,
// boxes to tick. The room press/ sets it on pages; as_text() tells it on a terminal.
#pragma once

#include "edition/folding.hpp"
#include "measure/box.hpp"
#include "measure/few.hpp"
#include "sheet/folding_drawing.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace bodkin::paperwork {

// What a picture shows below its lines: nothing, one page of the copy, or one side of a sheet
// (pages and sheets counted on through all parts).
struct EmptyGround {};
struct PageGround {
  int page = 0;
  std::optional<Box> seen{}; // what the knife leaves of it; else all
};
struct SideGround {
  int sheet = 0; // index into Imposition::sheets
  int side = 0;
};

enum class StrokeKind { outline, fold, crease, cut, staple, hole, place, faint };
struct Stroke {
  StrokeKind kind = StrokeKind::outline;
  Spot start, end; // of a place: two corners of its box; of a hole: its middle twice
  Angle turn;      // of a place, about its middle
};

// A line with a tick at either end and a measure on it, level or upright: in the picture, or beside
// it with thin lines from what it measures.
enum class Beside { nothing, above, below, left, right };
struct Dimension {
  Spot start, end;
  std::string says;
  Beside beside = Beside::nothing;
};

// Words at a spot of the picture, centred: a page's number, "fold".
struct Lettering {
  Spot at;
  std::string says;
  int turn = 0; // degrees clockwise, of a head that points elsewhere
};

// A number in a ring at a spot of the picture's edge or beyond it: which cut comes when.
struct Badge {
  Spot at;
  std::string says;
  Beside beside = Beside::nothing;
  bool further = false; // in a second row, since another is near
};

// In real measures, from its top left; drawn as large as there is room for.
struct Measured {
  std::variant<EmptyGround, PageGround, SideGround> ground;
  Size size;
  std::vector<Stroke> strokes;
  std::vector<Dimension> dimensions;
  std::vector<Lettering> letterings;
  std::vector<Badge> badges{};
};

// A stage of a folding, and which part of the paper moves next.
struct FoldStage {
  DrawnStage drawn;
  Size cell; // of one panel
  std::optional<Part> moving;
};

// Sheets on each other as they are gathered, each a little further down than the one below it, so
// that all their names are seen.
struct Heap {
  Size sheet;
  std::vector<std::string> names; // from the bottom up
};

struct Shown {
  std::variant<Measured, FoldStage, Heap> what;
  std::string caption;
  bool only_seen = false; // says nothing to who does not see it
};

struct Headline {
  std::string text;
  int level = 1;       // 1 to 3
  std::string number;  // of a step, set beside it
  bool whole = false;  // what stands below it, up to the next, keeps to one page that holds it
  std::string count{}; // how many of what this is done to: "53 sheets: 50 copies and 3 spare"
};
struct Passage {
  std::string lead; // strong, before the rest
  std::string text;
  bool small = false;
  bool only_seen = false; // speaks of pictures, and says nothing without them
};
struct Care { // what to take care of
  std::string text;
};
struct Table {
  std::vector<std::string> heads; // empty: none
  std::vector<std::vector<std::string>> rows;
  std::vector<bool> figures; // columns that are set to the right
  bool summed = false;       // the last row is what the others come to
  bool plain = false;        // close rows with no lines between: a list of words
};
// Side by side, in one scale, as many rows of them as they need.
struct Pictures {
  std::vector<Shown> shown;
  Length most_height;     // of one
  std::size_t across = 0; // so many in each row; 0: as many as find room
  bool wide = false;      // across the page, never beside words
};
struct Ticks { // boxes to tick, each with a line to write on
  std::vector<std::string> labels;
};
struct Checklist { // boxes to tick before whole phrases
  std::vector<std::string> items;
};
struct NewPage {};

using LeafletBlock =
    std::variant<Headline, Passage, Care, Table, Pictures, Ticks, Checklist, NewPage>;

struct Leaflet {
  std::string kind;         // "How to make a copy"
  std::string title, aside; // the edition's, and a line below it
  std::string in_text{};    // said below these where there are no pictures
  Size paper;               // that it is printed on, upright
  Ruler ruler = Ruler::inches;
  bool hanging = true; // numbers of steps stand in a column of their own
  std::vector<LeafletBlock> blocks;

  template <typename Block>
  Block &add(Block block) {
    return std::get<Block>(blocks.emplace_back(std::move(block)));
  }
};

// For a terminal or a file; pictures are told by their captions. A table that is wider breaks its
// cells into lines.
std::string as_text(const Leaflet &leaflet, int columns);
std::string blocks_as_text(const Leaflet &leaflet, int columns); // without its title

// Of a table with heads: columns with nothing in them say nothing.
Table without_empty_columns(Table table);

// Letter where the edition's papers are measured in inches, else A4.
Size home_paper(Ruler ruler);

} // namespace bodkin::paperwork
