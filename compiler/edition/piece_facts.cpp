#include "edition/piece_facts.hpp"

#include "edition/page_list.hpp"
#include "edition/placement.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr Length usual_overlap = Length::inches(3, 4);

Goes goes_of(FactLine line) {
  if (line.has("after"))
    return Goes::after_page;
  if (line.has("on"))
    return Goes::on_page;
  if (line.has("in"))
    return Goes::in_pocket;
  const std::string_view where = line.words("where");
  return where == "centre" ? Goes::centre : where == "round" ? Goes::round_the_copy : Goes::loose;
}

PieceEdge edge_of(std::string_view word) {
  for (const PieceEdge edge : {PieceEdge::outer, PieceEdge::head, PieceEdge::foot})
    if (word == name_of(edge))
      return edge;
  return PieceEdge::inner;
}

// With a wrap, the four pages that have names of their own are the wrap's: the outer one's outside,
// the inner one's inside.
bool on_a_wrap(const Reader &reader, FactLine line, const std::vector<std::string> &wraps,
               Piece &piece) {
  constexpr std::array<std::string_view, 4> words{"front-cover", "inside-front", "inside-back",
                                                  "back-cover"};
  if (wraps.empty() || !line.has("on"))
    return false;
  const auto word = std::find(words.begin(), words.end(), reader.sources.text(line.range("on")));
  if (word == words.end())
    return false;
  piece.at_page = static_cast<int>(word - words.begin()) + 1;
  piece.host = piece.at_page == 1 || piece.at_page == 4 ? wraps.back() : wraps.front();
  return true;
}

void take_goes(Reader &reader, FactLine line, const std::vector<std::string> &wraps, Piece &piece) {
  piece.goes = known(Goes::loose, {});
  if (!line)
    return;
  piece.goes = known(goes_of(line), line.range());
  piece.pocket = line.words("in");
  const std::string_view part = line.has("after") ? "after" : "on";
  if (!line.has(part) || on_a_wrap(reader, line, wraps, piece))
    return;
  if (const auto page = page_in(reader, line, part))
    piece.at_page = **page;
}

void take_flaps(Reader &reader, const Facts &facts, Piece &piece) {
  const FactLine line = facts.find("flaps");
  if (const auto width = length_in(reader, line, "width", false))
    piece.flaps =
        known(Flaps{**width, line.has("open") ? edge_of(line.words("open")) : PieceEdge::head},
              line.range());
}

void take_glue(Reader &reader, const Facts &facts, Piece &piece) {
  const FactLine line = facts.find("glued");
  if (!line)
    return;
  piece.glued = known(Glued{edge_of(line.words("edge"))}, line.range());
  if (const auto width = length_in(reader, line, "width", false))
    piece.glued.value.width = **width;
}

void take_at(const Facts &facts, Piece &piece) {
  piece.across = {piece.flaps ? From::centred : From::inner, {}};
  piece.down = {From::centred, {}};
  const FactLine line = facts.find("at");
  if (!line)
    return;
  piece.at_range = line.range();
  if (const auto *across = line.get<language::Along>("across"))
    piece.across = along_of(*across);
  if (const auto *down = line.get<language::Along>("down"))
    piece.down = along_of(*down);
}

void take_band(Reader &reader, const Facts &facts, Piece &piece) {
  piece.overlap = known(usual_overlap, {});
  if (const auto overlap = length_in(reader, facts.find("overlap"), "overlap", false))
    piece.overlap = *overlap;
  if (const auto height = length_in(reader, facts.find("height"), "height", false))
    piece.height = *height;
}

// A fact that means nothing for a piece of this sort.
struct Idle {
  std::string_view word;
  bool (*meant)(const Piece &);
  std::string_view whose, why, type;
};

constexpr std::array idle_facts{
    Idle{"height", [](const Piece &piece) { return piece.is_band(); }, "a band's",
         "every other piece says its size whole", "size       3in x 5in"},
    Idle{"overlap", [](const Piece &piece) { return piece.is_band(); }, "a band's",
         "only what goes round a copy meets its own end", "goes       round"},
    Idle{"size", [](const Piece &piece) { return !piece.is_band(); },
         "of pieces that are not bands",
         "a band is as long as it takes to go round the trimmed copy; that is worked out",
         "height     2in"},
    Idle{"flaps", [](const Piece &piece) { return *piece.goes == Goes::on_page; }, "a pocket's",
         "a pocket is glued on a page by its flaps", "goes       on 8"},
    Idle{"glued", [](const Piece &piece) { return piece.is_tipped_in(); },
         "of a leaf that is tipped in",
         "a pocket is glued by its flaps, and what lies loose or is "
         "bound in by nothing",
         "goes       on 8"},
    Idle{"at", [](const Piece &piece) { return *piece.goes == Goes::on_page; },
         "of what is glued on a page", "nothing else keeps its place", "goes       on 8"},
};

void judge_idle(Reader &reader, FactLine insert, const Facts &facts, const Piece &piece) {
  for (const Idle &idle : idle_facts) {
    const FactLine line = facts.find(idle.word);
    if (line && !idle.meant(piece))
      reader.report({.check = "not-for-this-piece",
                     .range = line.range(),
                     .message = fmt::format("{} is {}, and {} is none", idle.word, idle.whose,
                                            insert.words("name")),
                     .why = std::string(idle.why),
                     .type = {{std::string(idle.type), "or take this line out"}}});
  }
}

} // namespace

void take_place(Reader &reader, FactLine line, const std::vector<std::string> &wraps,
                Piece &piece) {
  const Facts facts(line);
  take_goes(reader, facts.find("goes"), wraps, piece);
  take_flaps(reader, facts, piece);
  take_glue(reader, facts, piece);
  take_at(facts, piece);
  take_band(reader, facts, piece);
  // Where it goes cannot be told from a broken line.
  const FactLine goes = facts.find("goes");
  if (!goes || !goes.statement->broken || goes.statement->meant)
    judge_idle(reader, line, facts, piece);
  if (*piece.goes != Goes::on_page)
    piece.flaps.reset();
}

} // namespace bodkin
