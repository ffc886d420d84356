// Work by hand on pages, its place measured from two edges of the page.
#include "paperwork/guide_writer.hpp"

#include "edition/copy_numbers.hpp"
#include "paperwork/tools.hpp"
#include "problems/characters.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

// An edge of the page as it is when the work is done.
struct FromEdge {
  std::string name;
  Length at;       // where it is on the page as folded
  Length distance; // to the near side of the place
  bool from_end = false;
};

FromEdge nearer(const FromEdge &start, const FromEdge &end) {
  return start.distance <= end.distance ? start : end;
}

// The page's frame less what the knife has taken.
struct PageEdges {
  Length left, top, right, foot;
};

PageEdges edges_of(const Place &place, const Size &page, const CutBefore &cut) {
  const Box left = left_of_page(place, page, cut);
  return {left.x, left.y, left.right(), left.foot()};
}

FromEdge across(const Place &place, const PageEdges &edges, const Box &box) {
  const auto name = [&](bool left) -> std::string {
    if (place.spine == SpineAt::none)
      return left ? "left edge" : "right edge";
    return (place.spine == SpineAt::left) == left ? "fold" : "fore-edge";
  };
  return nearer({name(true), edges.left, box.x - edges.left, false},
                {name(false), edges.right, edges.right - box.right(), true});
}

FromEdge down(const PageEdges &edges, const Box &box) {
  return nearer({"head", edges.top, box.y - edges.top, false},
                {"foot", edges.foot, edges.foot - box.foot(), true});
}

std::string heading_of(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  if (hand == nullptr)
    return fmt::format("Work on the {}", name_of(element));
  std::string text = harmless(hand->text);
  switch (hand->kind) {
  case HandKind::stamp:
    return "Stamp: " + text;
  case HandKind::sticker:
    return "Stick: " + text;
  case HandKind::signature:
    return "Sign: " + text;
  case HandKind::number:
    return "Number: " + text;
  case HandKind::spray:
    return "Spray: " + text;
  case HandKind::colour:
    return "Colour: " + text;
  case HandKind::tear:
    return "Tear: " + text;
  case HandKind::punch:
    return "Punch: " + text;
  case HandKind::tip_in:
    return "Tip in: " + text;
  case HandKind::other:
    break;
  }
  return text;
}

std::string_view when_words(When when) {
  switch (when) {
  case When::flat:
    return "on the flat sheets, before anything is folded";
  case When::folded:
    return "on the folded copy";
  case When::bound:
    return "on the bound copy";
  case When::trimmed:
    return "on the trimmed copy";
  case When::unsaid:
    break;
  }
  return "on the finished copy";
}

// Ink and glue are wet for a while; common practice, no source.
std::string_view drying(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  if (hand == nullptr || !has_to_dry(element))
    return "";
  switch (hand->kind) {
  case HandKind::stamp:
  case HandKind::signature:
  case HandKind::number:
    return "Let the ink dry before anything lies on it: spread the copies out, or lay waste paper "
           "between.";
  case HandKind::spray:
  case HandKind::colour:
    return "Let it dry, spread out, before anything lies on it.";
  case HandKind::tip_in:
    return "Let the glue dry under a weight, with waste paper between.";
  default:
    return "";
  }
}

// Spare sheets are still loose when a copy is folded; on flat sheets they are worked on with the
// others.
std::string count_words(const GuideWriter &writer, const MakingTask &task, const Element &element,
                        When when) {
  const CopiesCounted run = copies_of(writer.edition(), task.only);
  const std::string copies = copies_words(writer.edition(), task.only);
  if (on_good_copies_only(element))
    return task.only ? "on " + copies + ", good ones"
                     : fmt::format("on the {}", counted(run.good, "good copy", "good copies"));
  if (when == When::flat && run.spare > 0)
    return task.only ? fmt::format("on {} and {} spare", copies, run.spare)
                     : fmt::format("on all {}, spares too", run.all());
  return "on " + copies;
}

// Work that one line of the manuscript puts on several pages stands on each of them.
bool same_line(const Edition &edition, ElementId one, ElementId other) {
  const Range &a = edition[one].range, &b = edition[other].range;
  return one == other || (a.somewhere() && a.file == b.file && a.begin == b.begin);
}

void show_places(GuideWriter &writer, const MakingTask &task, const CutBefore &cut) {
  constexpr std::size_t most = 12;
  Pictures pictures{{}, Length::inches(3, 2)};
  std::size_t all = 0;
  for (const HandPlace &hand : writer.making.hands) {
    if (!same_line(writer.edition(), hand.element, task.element) || ++all > most)
      continue;
    pictures.shown.push_back(place_shown(writer, hand, cut));
  }
  writer.leaflet.add(std::move(pictures));
  if (all > most)
    writer.remark(fmt::format("On {} more pages likewise; proof.pdf shows them.", all - most));
}

std::string numbers_words(const Edition &edition, const Hand &hand) {
  return fmt::format("{} to {}", hand.counts ? (*hand.counts)->first : 1,
                     hand.counts ? (*hand.counts)->last : edition.run->copies);
}

} // namespace

Shown place_shown(const GuideWriter &writer, const HandPlace &hand, const CutBefore &cut) {
  const Box &box = hand.box;
  const Place &place = writer.making.imposition.place_of(hand.page);
  const PageEdges edges = edges_of(place, writer.making.imposition.size_of(hand.page), cut);
  const FromEdge x = across(place, edges, box), y = down(edges, box);
  Measured picture;
  picture.ground = PageGround{hand.page};
  picture.size = writer.making.imposition.size_of(hand.page);
  picture.strokes.push_back(
      {StrokeKind::outline, {edges.left, edges.top}, {edges.right, edges.foot}, {}});
  picture.strokes.push_back(
      {StrokeKind::place, {box.x, box.y}, {box.right(), box.foot()}, hand.turn});
  picture.dimensions.push_back({{x.at, y.at},
                                {x.from_end ? box.right() : box.x, y.from_end ? box.foot() : box.y},
                                writer.ruled(x.distance),
                                y.from_end ? Beside::below : Beside::above});
  picture.dimensions.push_back({{x.at, y.at},
                                {x.from_end ? box.right() : box.x, y.from_end ? box.foot() : box.y},
                                writer.ruled(y.distance),
                                x.from_end ? Beside::right : Beside::left});
  return {picture,
          fmt::format("On {}: its {} edge {} from the {}, its {} edge {} from the {}; {} wide, {} "
                      "high{}.",
                      page_words(writer.making, hand.page), x.from_end ? "right" : "left",
                      writer.ruled(x.distance), x.name, y.from_end ? "lower" : "upper",
                      writer.ruled(y.distance), y.name, writer.ruled(box.width),
                      writer.ruled(box.height),
                      hand.turn == Angle{} ? "" : "; then turned about its middle")};
}

void tell_hand(GuideWriter &writer, const MakingTask &task) {
  const Element &element = writer.edition()[task.element];
  const When when = element.work.when ? **element.work.when : When::unsaid;
  writer.step(heading_of(element));
  writer.say(
      fmt::format("Done {}, {}.", when_words(when), count_words(writer, task, element, when)));
  if (const auto *hand = std::get_if<Hand>(&element.what); hand && hand->kind == HandKind::number)
    writer.say(fmt::format("Each copy gets one of the numbers {}, and no two the same; the list in "
                           "the last page is there to tick them off.",
                           numbers_words(writer.edition(), *hand)));
  const CutBefore cut = cut_before(writer.making, writer.tasks, task);
  show_places(writer, task, cut);
  if (const std::string_view dry = drying(element); !dry.empty())
    writer.say(std::string(dry));
  if (element.work.caution)
    writer.care(harmless(**element.work.caution));
  if (const auto *hand = std::get_if<Hand>(&element.what))
    writer.care(std::string(usual_caution(hand->kind)));
}

} // namespace bodkin::paperwork
