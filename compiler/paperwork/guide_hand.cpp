// Work by hand on pages, its place measured from two edges of the page.
#include "paperwork/guide_writer.hpp"

#include "edition/copy_numbers.hpp"
#include "paperwork/tools.hpp"
#include "problems/characters.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

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

PageEdges edges_of(const Making &making, int page, const CutBefore &cut) {
  const Box left = left_of_page(making, page, cut);
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
    return "Signature: " + text;
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

// How it is done, and what is wet for a while; common practice, no source.
std::string way_of(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  if (hand == nullptr)
    return "";
  switch (hand->kind) {
  case HandKind::stamp:
    return "A stamp prints its picture the other way round: who cuts one cuts it so. Mark on its "
           "back where the head is, and try it on waste paper first.";
  case HandKind::sticker:
    return hand->text.find("gummed") != std::string::npos
               ? fmt::format(
                     "Wet its gummed back with a damp sponge or cloth, not dripping, lay it "
                     "down, press it flat under waste paper, and leave a slip of that in "
                     "till the gum is dry, about {}; then take the slip out.",
                     written(gum_dries))
               : "Lay down one edge first, and rub it on from there.";
  default:
    return "";
  }
}

std::string drying_of(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  if (hand == nullptr || !has_to_dry(element))
    return "";
  switch (hand->kind) {
  case HandKind::stamp:
  case HandKind::signature:
  case HandKind::number:
    return fmt::format("Let the ink dry before anything lies on it, about {}: leave the copies "
                       "open there, spread out, or lay waste paper in.",
                       written(ink_dries));
  case HandKind::spray:
  case HandKind::colour:
    return "Let it dry, spread out, before anything lies on it.";
  case HandKind::tip_in:
    return "Let the glue dry under a weight, with waste paper between.";
  default:
    return "";
  }
}

// Work that one line of the manuscript puts on several pages stands on each of them.
bool same_line(const Edition &edition, ElementId one, ElementId other) {
  const Range &a = edition[one].range, &b = edition[other].range;
  return one == other || (a.somewhere() && a.file == b.file && a.begin == b.begin);
}

// A place alone is told in the step's own words, several below their pictures.
void show_places(GuideWriter &writer, const MakingTask &task, const CutBefore &cut,
                 std::string done) {
  constexpr std::size_t most = 12;
  Pictures pictures{{}, Length::inches(2)};
  std::size_t all = 0;
  for (const HandPlace &hand : writer.making.hands) {
    if (!same_line(writer.edition(), hand.element, task.element) || ++all > most)
      continue;
    HandPlace place = hand;
    if (task.only)
      place.page = page_in_run(writer.making, hand.page, *task.only);
    pictures.shown.push_back(place_shown(writer, place, cut));
  }
  if (all == 1) {
    Shown &shown = pictures.shown.front();
    done += " " + std::exchange(shown.caption, "The heavy frame is the place.");
    shown.only_seen = true;
  } else {
    pictures.most_height = Length::inches(3, 2);
  }
  writer.say(std::move(done));
  writer.leaflet.add(std::move(pictures));
  if (all > most)
    writer.remark(fmt::format("On {} more pages likewise; proof.pdf shows them.", all - most));
}

// One card measured once, instead of every copy. A stamp's block is larger than what it prints.
std::string mask_words(GuideWriter &writer, const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  if (hand == nullptr)
    return "";
  if (hand->kind == HandKind::stamp) {
    writer.care("For the strips: " + std::string(card_caution));
    return "The measures are of what is printed, not of the stamp's block. Two strips of card laid "
           "along those edges save measuring each copy: as wide as the two distances, less what "
           "the block stands out beyond its picture. Where a frame or an empty space is printed "
           "for it, go by that.";
  }
  if (hand->kind != HandKind::sticker && hand->kind != HandKind::tip_in)
    return "";
  writer.care("For the mask: " + std::string(card_caution));
  return std::exchange(writer.masked, true)
             ? "A mask saves measuring here too."
             : "A mask saves measuring: a card as large as the page, with a window of that size at "
               "that place, laid on edge to edge.";
}

std::string numbers_words(const Edition &edition, const Hand &hand) {
  return fmt::format("{} to {}", hand.counts ? (*hand.counts)->first : 1,
                     hand.counts ? (*hand.counts)->last : edition.run->copies);
}

// All places of a picture, from another corner.
void seen_from(Measured &picture, Spot corner) {
  const auto move = [&](Spot &spot) { spot = {spot.x - corner.x, spot.y - corner.y}; };
  for (Stroke &stroke : picture.strokes) {
    move(stroke.start);
    move(stroke.end);
  }
  for (Dimension &dimension : picture.dimensions) {
    move(dimension.start);
    move(dimension.end);
  }
}

// Pages that bear no number are found by their side: ", a right-hand page,".
std::string facing_words(const GuideWriter &writer, int page) {
  const SpineAt spine = writer.making.imposition.place_of(page).spine;
  if (spine == SpineAt::none || !writer.making.imposition.leaves_turn)
    return "";
  const CopyPart &part = part_of_page(writer.making.parts, page);
  const bool right = spine == SpineAt::left;
  const int facing = page - part.pages_before + (right ? -1 : 1);
  return fmt::format(", a {}-hand page{}", right ? "right" : "left",
                     facing < 1 || facing > part.imposition.page_count
                         ? ""
                         : fmt::format(" facing page {}", facing));
}

} // namespace

Shown place_shown(const GuideWriter &writer, const HandPlace &hand, const CutBefore &cut) {
  const Box &box = hand.box;
  const Place &place = writer.making.imposition.place_of(hand.page);
  const PageEdges edges = edges_of(writer.making, hand.page, cut);
  const FromEdge x = across(place, edges, box), y = down(edges, box);
  Measured picture;
  picture.ground = PageGround{
      hand.page, Box{edges.left, edges.top, edges.right - edges.left, edges.foot - edges.top}};
  picture.size = {edges.right - edges.left, edges.foot - edges.top};
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
  seen_from(picture, {edges.left, edges.top});
  return {
      picture,
      fmt::format("On {}{}: its {} edge {} from the {}, its {} edge {} from the {}; {} wide, {} "
                  "high{}.",
                  page_words(writer.making, hand.page), facing_words(writer, hand.page),
                  x.from_end ? "right" : "left", writer.ruled(x.distance), x.name,
                  y.from_end ? "lower" : "upper", writer.ruled(y.distance), y.name,
                  writer.ruled(box.width), writer.ruled(box.height),
                  hand.turn == Angle{} ? "" : "; then turned about its middle")};
}

void tell_hand(GuideWriter &writer, const MakingTask &task) {
  const Element &element = writer.edition()[task.element];
  const When when = element.work.when ? **element.work.when : When::unsaid;
  writer.step(heading_of(element), count_of(writer.making, task));
  if (element.work.caution)
    writer.care(harmless(**element.work.caution));
  if (const auto *hand = std::get_if<Hand>(&element.what))
    writer.care(std::string(usual_caution(hand->kind)));
  const std::string mask = mask_words(writer, element);
  const CutBefore cut = cut_before(writer.making, writer.tasks, task);
  show_places(writer, task, cut, fmt::format("Done {}.", when_words(when)));
  for (const std::string &more : {mask, way_of(element)})
    if (!more.empty())
      writer.say(more);
  if (const auto *hand = std::get_if<Hand>(&element.what); hand && hand->kind == HandKind::tip_in)
    writer.say_thin_film();
  if (const auto *hand = std::get_if<Hand>(&element.what); hand && hand->kind == HandKind::number)
    writer.say(fmt::format("Each copy gets one of the numbers {}, and no two the same; tick them "
                           "off on the list at the end of this guide.",
                           numbers_words(writer.edition(), *hand)));
  if (const std::string dry = drying_of(element); !dry.empty())
    writer.say(dry);
}

} // namespace bodkin::paperwork
