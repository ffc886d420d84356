#include "edition/elements.hpp"
#include "edition/pages.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

// Standing matter may lay other standing matter, but never itself; and what a piece comes to, all
// counted, stays within what a page may hold.
class Laying {
public:
  explicit Laying(Reader &reader) : reader_(reader), pieces_(reader.edition.standings) {
    weights_.resize(pieces_.size(), 0);
    open_.resize(pieces_.size(), false);
  }

  void judge() {
    for (std::size_t piece = 0; piece < pieces_.size(); ++piece)
      weigh(piece, 0);
  }

private:
  std::size_t weigh(std::size_t piece, std::size_t depth) {
    if (weights_[piece] > 0)
      return weights_[piece];
    open_[piece] = true;
    std::size_t weight = 1;
    for (const ElementId id : pieces_[piece].elements)
      weight += weigh_element(reader_.edition.elements[at(id)], depth);
    open_[piece] = false;
    return weights_[piece] = weight;
  }

  std::size_t weigh_element(Element &element, std::size_t depth) {
    Lay *lay = std::get_if<Lay>(&element.what);
    if (!lay || lay->standing == StandingId::none)
      return 1;
    const std::size_t laid = at(lay->standing);
    std::optional<Problem> problem;
    if (open_[laid])
      problem = lays_itself(element, pieces_[laid]);
    else if (depth >= limits::like_depth || weigh(laid, depth + 1) > limits::elements_a_page)
      problem = too_many_things(element.range, limits::elements_a_page);
    if (!problem)
      return weights_[laid];
    reader_.report(std::move(*problem));
    lay->standing = StandingId::none;
    return 1;
  }

  static Problem lays_itself(const Element &element, const Standing &piece) {
    return {.check = "lay-loop",
            .range = element.range,
            .message = fmt::format("{} would lay itself", piece.name),
            .why = "a piece that holds itself has no end, like a mirror in a mirror",
            .type = {{{}, "take this line out"}},
            .related = {{piece.range, fmt::format("{} is made here", piece.name)}}};
  }

  Reader &reader_;
  std::vector<Standing> &pieces_;
  std::vector<std::size_t> weights_;
  std::vector<bool> open_;
};

} // namespace

void take_standings(Reader &reader) {
  for (const Named &named : reader.things(Family::standing).all) {
    Standing standing;
    standing.name = named.name;
    standing.range = named.line.range();
    standing.own = named.line.in->own;
    standing.elements = take_elements(reader, named.line, Stands::in_standing);
    reader.edition.standings.push_back(std::move(standing));
  }
  Laying(reader).judge();
}

} // namespace bodkin
