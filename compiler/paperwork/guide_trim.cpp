// How a bound copy is trimmed: by a template and a knife, or by a machine's stop.
#include "paperwork/guide_writer.hpp"

#include "paperwork/own_words.hpp"
#include "sheet/machine_of.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {

namespace {

// A page's paper before the step's cuts and after them.
struct Trimmed {
  Box before, after;
  Length off_head() const { return after.y - before.y; }
};

Trimmed trimmed(const Making &making, std::size_t step, const CutBefore &was) {
  const FinishStep &of = making.edition.finish[step];
  const CutBefore cut{was.fore_edge + of.fore_edge, was.head + of.head, was.foot + of.foot};
  return {left_of_page(making, 1, was), left_of_page(making, 1, cut)};
}

} // namespace

// In the order of the cuts: the first is measured from the fold, the last from the new head.
std::string cuts_in_order(const Making &making, std::size_t step, const CutBefore &was) {
  const FinishStep &of = making.edition.finish[step];
  const Ruler ruler = making.edition.ruler;
  const Trimmed page = trimmed(making, step, was);
  std::vector<std::string> cuts;
  if (of.fore_edge > Length{})
    cuts.push_back(
        fmt::format("the fore-edge, {} from the fold", written(page.after.width, ruler)));
  if (of.head > Length{})
    cuts.push_back(fmt::format("the head, {} off", written(page.off_head(), ruler)));
  if (of.foot > Length{})
    cuts.push_back(fmt::format("the foot, {} from the head", written(page.after.height, ruler)));
  std::string text = "Cut, in this order: ";
  for (std::size_t i = 0; i < cuts.size(); ++i)
    text += fmt::format("{}({}) {}", i == 0 ? "" : "; ", i + 1, cuts[i]);
  return text + ".";
}

// With a knife by a card, which stays where it is for all cuts.
std::string trimming_by_knife(const Making &making, std::size_t step, const CutBefore &was) {
  const Ruler ruler = making.edition.ruler;
  const Trimmed page = trimmed(making, step, was);
  const std::string below =
      page.off_head() > Length{}
          ? fmt::format(" and {} below the head", written(page.off_head(), ruler))
          : "";
  return fmt::format(
      "With a knife: lay a template of stiff card, {} x {}, its corners true, on the copy, against "
      "the fold{}. Two clips over the fold, a scrap of card under each, hold it till the last cut, "
      "out of the rule's way. Hold the rule on it, edge on edge, and cut along the rule.",
      written(page.after.width, ruler), written(page.after.height, ruler), below);
}

// On a machine by its stop, which is as far from the blade as what is to be left.
std::string trimming_by_stop(const Making &making, std::size_t step, const CutBefore &was) {
  const FinishStep &of = making.edition.finish[step];
  const Trimmed page = trimmed(making, step, was);
  std::vector<std::string> cuts;
  const auto add = [&](Length off, Length left, std::string_view edge) {
    if (off > Length{})
      cuts.push_back(fmt::format("({}) {}, the {} against it", cuts.size() + 1,
                                 written(left, making.edition.ruler), edge));
  };
  add(of.fore_edge, page.after.width, "fold");
  add(of.head, page.before.foot() - page.after.y, "foot");
  add(of.foot, page.after.height, "head");
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
