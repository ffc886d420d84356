// Where every page lands: sheets, their two sides, and the places on them.
#pragma once

#include "edition/element.hpp"
#include "edition/index.hpp"
#include "edition/run_set.hpp"
#include "measure/box.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bodkin {

enum class SideName { front, back };

// What an edge of a page meets on its sheet: the sheet's own edge, a fold that the finished copy is
// bound at, or another fold (a section's head, a fore-edge that opens when it is cut).
enum class Meets { sheet_edge, spine, fold };

// At which edge of a page its leaf is bound; none where no leaf turns.
enum class SpineAt { none, left, right };

struct Place {
  int page = 0; // 0: no page
  Box box;      // on the sheet as seen on this side, from its top left
  int turn = 0; // 0, 90, 180 or 270 degrees clockwise
  Length creep; // how far the fold pushes this leaf out past the outermost
  Length shift; // creep made up for: all matter moved this far towards the spine
  // In the page's own upright frame.
  Meets left = Meets::sheet_edge, top = Meets::sheet_edge, right = Meets::sheet_edge,
        bottom = Meets::sheet_edge;
  SpineAt spine = SpineAt::none;
  // Paper that no reader sees along each edge: held in the binding, or under a glued tab.
  Edges hidden;
  // Distance from each page edge that meets the sheet's edge to that edge: slack of a page smaller
  // than its place (left, top, right, bottom in the page's upright frame; 0 at folds).
  Edges slack;
};

// A back is given as seen when the sheet is turned like a leaf of the finished book. Places stand
// row by row from the top, each row from the left.
struct Side {
  SideName name = SideName::front;
  MachineId machine = MachineId::none; // what any of its pages asks by `by`, else the edition's
  std::vector<Place> places;
  bool numbered = false; // shows the number of the copy that it comes into
};

struct Sheet {
  int number = 0; // from 1, outermost or first gathered
  StockId stock = StockId::none;
  Size size;       // as it lies for the folding
  Length creep;    // the largest of its places
  int section = 1; // sheets of one number are nested in each other; sections are gathered
  // The axis that a leaf turns about lies up and down the sheet (else across): a point of the front
  // at (x, y) is (width - x, y) on the back as given here (else (x, height - y)).
  bool turns_upright = true;
  std::array<Side, 2> sides;
  // Where it is folded, as lines on the front as seen, in the order of folding.
  struct FoldLine {
    Spot start, end;
    bool spine = false;
    bool along_grain = true; // false: the fold runs across the grain
    bool valley = true;      // folded towards who looks at the front
    int step = 0;            // of the folding, from 0
  };
  std::vector<FoldLine> folds;
  std::vector<FoldLine> slits; // cut before folding, likewise
  std::vector<FoldLine> cuts;  // that part what is laid on it several up, in order of cutting
  Edges tabs;                  // strips of the front, as seen, that hold no page
  // Of a wrap or an insert, where all sheets of a copy stand together: its name, how many of it a
  // copy holds, and how many pages are numbered before its own first.
  std::string piece;
  std::int64_t in_a_copy = 1;
  RunSet only;              // whose copies hold it
  int in_place_of = 0;      // of another book: the number of the sheet that it stands for; else 0
  int up = 1;               // so many alike are cut out of it
  std::optional<Size> cell; // what is cut out, where less than the whole sheet is
  int reverse = 0;          // the page that its whole back is; 0: none
  int pages_before = 0;
};

struct Spotted {
  int sheet = -1; // index into Imposition::sheets
  int side = 0;
  int place = 0;
};

// Where a part of a band lies on its page.
struct BandPart {
  BandPanel panel = BandPanel::front;
  Box box;
};

struct Imposition {
  int page_count = 0; // of the book; every one of its pages has a place
  int folds_into = 0; // pages that the sheets carry: more than page_count where it does not fold
  int pages_a_sheet = 0;
  int layers = 1;          // of paper, where a folded sheet (a strip: all of it) is thickest
  Size page_size;          // of the largest page
  bool wrong_size = false; // told: pages do not lie on their sheets as they should
  bool one_side = false;   // backs hold no pages: blank, or one area
  bool leaves_turn = true; // else the reader undoes fold after fold
  std::vector<Sheet> sheets;
  std::vector<BandPart> panels; // of a band's printed side, from its left end; else none
  std::vector<Spotted> where;   // by page, index 1..page_count

  const Place &place_of(int page) const {
    const Spotted &spot = where[static_cast<std::size_t>(page)];
    return sheets[static_cast<std::size_t>(spot.sheet)]
        .sides[static_cast<std::size_t>(spot.side)]
        .places[static_cast<std::size_t>(spot.place)];
  }
  // A page narrower than others (a gate, a panel folded in) has a size of its own.
  Size size_of(int page) const {
    const Place &place = place_of(page);
    return place.turn % 180 == 0 ? place.box.size() : place.box.size().turned();
  }
  const Sheet &sheet_of(int page) const {
    return sheets[static_cast<std::size_t>(where[static_cast<std::size_t>(page)].sheet)];
  }
};

} // namespace bodkin
