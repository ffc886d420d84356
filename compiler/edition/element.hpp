// What stands on a page.
#pragma once

#include "edition/index.hpp"
#include "edition/known.hpp"
#include "edition/style.hpp"
#include "language/prose.hpp"
#include "measure/box.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"
#include "measure/weight.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace bodkin {

enum class Area { page, live, margins, place };

// One direction of a place as written: an offset from an edge, or the middle.
enum class From { start, end, outer, inner, centred }; // start: left or top; end: right or foot
struct Along {
  From from = From::start;
  Length offset;
};

// From the start of a whole to a thing of some extent in it; `outer` is at the start of left pages.
Length offset_of(const Along &along, Length extent, Length whole, bool outer_is_start);

struct At {
  Along across, down;
  std::optional<Size> size; // none only for `lay` and `folio`
};
struct Cells {
  int first_column = 1, last_column = 1, first_row = 1, last_row = 1;
};

// The parts of a belly band, in order from the left end of its printed side.
enum class BandPanel { back, spine, front, fore_edge, overlap };

struct Placement {
  std::variant<std::monostate, At, Cells> where; // monostate: no place written
  Known<Area> area{Area::place, {}};             // of `fits` or `fills`
  bool fills = false;
  Range from;                            // the line that says where
  std::optional<Known<BandPanel>> panel; // that the place is counted on; none: the whole page
  bool written() const { return !std::holds_alternative<std::monostate>(where); }
};

struct Outline {
  Length width;
  Paint paint;
};
struct Fill {
  Paint paint;
  Share share{1'000'000};
};

enum class ToneKind { as_is, grey, line };
struct Tone {
  ToneKind kind = ToneKind::as_is;
  Share threshold{500'000}; // of `line at`
};

// Shares of the picture, from its top left as it is seen.
struct Crop {
  Share x, y, width, height;
};
struct Focus {
  Share x{500'000}, y{500'000};
};

struct Picture {
  // Relative to the edition's folder, checked to lie inside it; empty where the file is not there,
  // which was reported: its place is drawn as a dashed keyline.
  Known<std::string> path;
  std::string written; // as the manuscript names it
  int pdf_page = 1;
  std::optional<Known<Crop>> crop;
  Known<Focus> focus;
  Known<Tone> tone;
};

// By the maker, or by the compiler out of the edition's own facts.
enum class WrittenBy { maker, credits, colophon };

struct Words {
  Known<StyleId> style{StyleId::none, {}};
  std::variant<Prose, TextId> words;
  WrittenBy by = WrittenBy::maker;
  std::string file; // that they come from, as written; else empty
  int columns = 1;
  Length gap;
  std::optional<Known<int>> continues; // this text's next place is its first on that page
};

struct Rule {
  Length width;
  Paint paint;
  Spot start, end;
};
struct Patch {};
struct Qr {
  Known<std::string> text;
  Paint paint;
};
struct Lay {
  StandingId standing = StandingId::none;
  Along across, down;
};
enum class HandKind {
  stamp,
  sticker,
  signature,
  number,
  spray,
  colour,
  tear,
  punch,
  tip_in,
  other
};
enum class When { unsaid, flat, folded, bound, trimmed };
// The numbers that copies get, one each.
struct Counts {
  std::int64_t first = 1, last = 1;
};
struct Hand {
  HandKind kind = HandKind::other;
  std::string text;
  std::optional<Known<Counts>> counts; // of a number
};
// Something glued by hand on the page's original, and copied with it.
struct PasteUp {
  std::string text;
};
struct Folio {
  StyleId style = StyleId::none;
};

// Time, money and care of work done by hand, on a page or as a step of finish.
enum class TimePer { copy, sheet, once };
struct Takes {
  Duration time;
  TimePer per = TimePer::copy;
};
struct Work {
  std::optional<Known<Takes>> takes;
  std::vector<Known<Rate>> costs;
  std::vector<Known<Rate>> kept;            // of tools that an earlier impression has paid for
  std::optional<Known<std::uint32_t>> only; // the run whose copies alone have it
  std::optional<Known<std::string>> caution;
  std::optional<Known<When>> when;
  std::optional<Known<Mass>> mass;
};

struct Element {
  Range range;   // its whole first line
  Range keyword; // the word that names it
  std::variant<Picture, Words, Rule, Patch, Qr, Lay, Hand, Folio, PasteUp> what;
  Placement placement;
  Known<Angle> turn;
  std::optional<Known<Outline>> outline;
  std::optional<Known<Fill>> fill;
  std::optional<Known<std::string>> describe;
  std::optional<Known<SourceId>> source;
  Work work;
};

std::string_view name_of(const Element &element); // "picture", "words", …
std::string_view name_of(HandKind kind);          // "stamp", …
std::string_view name_of(BandPanel panel);        // "front", …

} // namespace bodkin
