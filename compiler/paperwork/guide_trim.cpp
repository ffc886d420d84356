// How a bound copy is trimmed: by a template and a knife, or by a machine's stop.
#include "paperwork/guide_writer.hpp"

#include "paperwork/own_words.hpp"
#include "sheet/machine_of.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {

// In the order of the cuts: the first is measured from the fold, the last from the new head.
std::string cuts_in_order(const Edition &edition, std::size_t step, const CutBefore &was) {
  const FinishStep &of = edition.finish[step];
  const Ruler ruler = edition.ruler;
  std::vector<std::string> cuts;
  if (of.fore_edge > Length{})
    cuts.push_back(fmt::format("the fore-edge, {} from the fold",
                               written(edition.size->width - was.fore_edge - of.fore_edge, ruler)));
  if (of.head > Length{})
    cuts.push_back(fmt::format("the head, {} off", written(of.head, ruler)));
  if (of.foot > Length{})
    cuts.push_back(fmt::format(
        "the foot, {} from the head",
        written(edition.size->height - was.head - was.foot - of.head - of.foot, ruler)));
  std::string text = "Cut, in this order: ";
  for (std::size_t i = 0; i < cuts.size(); ++i)
    text += fmt::format("{}({}) {}", i == 0 ? "" : "; ", i + 1, cuts[i]);
  return text + ".";
}

// With a knife by a card, which stays where it is for all cuts.
std::string trimming_by_knife(const Edition &edition, std::size_t step, const CutBefore &was) {
  const FinishStep &of = edition.finish[step];
  const Length width = edition.size->width - was.fore_edge - of.fore_edge;
  const Length height = edition.size->height - was.head - was.foot - of.head - of.foot;
  return fmt::format(
      "With a knife: clip a template of stiff card, {} x {}, its corners true, on the copy, "
      "against "
      "the fold{}, till the last cut; hold the rule on it, edge on edge, and cut along the rule.",
      written(width, edition.ruler), written(height, edition.ruler),
      of.head > Length{} ? fmt::format(" and {} below the head", written(of.head, edition.ruler))
                         : "");
}

// On a machine by its stop, which is as far from the blade as what is to be left.
std::string trimming_by_stop(const Edition &edition, std::size_t step, const CutBefore &was) {
  const FinishStep &of = edition.finish[step];
  const Length height = edition.size->height - was.head - was.foot;
  std::vector<std::string> cuts;
  const auto add = [&](Length off, Length left, std::string_view edge) {
    if (off > Length{})
      cuts.push_back(fmt::format("({}) {}, the {} against it", cuts.size() + 1,
                                 written(left, edition.ruler), edge));
  };
  add(of.fore_edge, edition.size->width - was.fore_edge - of.fore_edge, "fold");
  add(of.head, height - of.head, "foot");
  add(of.foot, height - of.head - of.foot, "head");
  const bool ends = of.head > Length{} || of.foot > Length{};
  return fmt::format("On a guillotine, set the stop behind the blade to {}{}.", in_a_row(cuts),
                     ends ? "; for head and foot the fold lies at the side" : "");
}

// What the machine has left bare and the knife does not take.
std::string rim_words(const GuideWriter &writer, std::size_t step) {
  const Edition &edition = writer.edition();
  const FinishStep &of = edition.finish[step];
  if (writer.making.passes.empty())
    return "";
  const Length bare = *machine_of(edition, writer.making.passes.front().machine).bare;
  const Place &place = writer.making.imposition.place_of(1);
  std::vector<std::string> edges;
  Length rim;
  const auto add = [&](Meets meets, Length off, std::string_view edge) {
    if (meets != Meets::sheet_edge || bare <= off)
      return;
    edges.emplace_back(edge);
    rim = std::max(rim, bare - off);
  };
  add(place.spine == SpineAt::right ? place.left : place.right, of.fore_edge, "fore-edge");
  add(place.top, of.head, "head");
  add(place.bottom, of.foot, "foot");
  return edges.empty() || writer.making.imposition.sheets.front().up > 1
             ? ""
             : fmt::format(" The machine prints nothing near a sheet's edges: a bare rim, up to {} "
                           "wide, at {} is right. Cut by measure, not to the print.",
                           writer.exact(rim), in_a_row(edges));
}

} // namespace bodkin::paperwork
