#include "paperwork/finish_pictures.hpp"

#include "paperwork/own_words.hpp"
#include "paperwork/step_words.hpp"
#include "sheet/finish_text.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin::paperwork {
namespace {

struct Drawer {
  const Making &making;
  const std::vector<MakingTask> &tasks;
  std::size_t index;

  const Edition &edition() const { return making.edition; }
  const FinishStep &step() const { return edition().finish[index]; }
  std::string says(Length length) const { return measured(length, edition().ruler); }
  CutBefore cut() const { return cut_before(making, tasks, {index, ElementId::none, {}}); }

  std::vector<Length> places_down() const {
    return finish_told(edition(), making.imposition)[index].down;
  }

  // That of the run whose copies alone it is done on.
  int outer_sheet() const {
    const int outer = paperwork::outer_sheet(making);
    return step().work.only ? sheet_in_run(making, outer, **step().work.only) : outer;
  }

  static void outline(Measured &picture) {
    picture.strokes.push_back(
        {StrokeKind::outline, {}, {picture.size.width, picture.size.height}, {}});
  }

  // Sheets of several copies are cut apart first where finish says nothing of it.
  bool is_cut_apart(const Sheet &sheet) const {
    const auto cut = std::find_if(edition().finish.begin(), edition().finish.end(), cuts_sheets);
    return sheet.up > 1 && sheet.cell &&
           (cut == edition().finish.end() ||
            cut - edition().finish.begin() < static_cast<std::ptrdiff_t>(index));
  }

  // Of what is cut out, the first: the others are alike.
  static Spot corner_of_first(const Sheet &sheet) {
    const auto &places = sheet.sides[0].places;
    Spot corner{places.front().box.x, places.front().box.y};
    for (std::size_t i = 0; i < places.size() / static_cast<std::size_t>(sheet.up); ++i)
      corner = {std::min(corner.x, places[i].box.x), std::min(corner.y, places[i].box.y)};
    return corner;
  }

  // ", and of pile 5 likewise,", of what other runs have in its place.
  std::string like_it(const Sheet &of) const {
    std::string text;
    for (const Sheet &sheet : making.imposition.sheets)
      if (of.piece.empty() && sheet.in_place_of == of.number)
        text += fmt::format(", and of pile {} likewise,", sheet.number);
    return text;
  }

  std::vector<Shown> crease() const {
    const int sheet = step().all ? 0 : outer_sheet();
    const Sheet &paper = making.imposition.sheets[static_cast<std::size_t>(sheet)];
    const bool apart = is_cut_apart(paper);
    const Spot corner = apart ? corner_of_first(paper) : Spot{};
    Measured picture;
    picture.size = apart ? *paper.cell : paper.size;
    if (!apart)
      picture.ground = SideGround{sheet, 0};
    outline(picture);
    std::set<Length> upright, level; // those of copies beside each other are one line
    for (const Sheet::FoldLine &line : paper.folds) {
      const Length x = line.start.x - corner.x, y = line.start.y - corner.y;
      if (line.start.x == line.end.x && x < picture.size.width)
        upright.insert(x);
      if (line.start.x != line.end.x && y < picture.size.height)
        level.insert(y);
    }
    std::vector<std::string> at;
    for (const Length x : upright) {
      picture.strokes.push_back({StrokeKind::crease, {x, {}}, {x, picture.size.height}, {}});
      picture.dimensions.push_back({{}, {x, {}}, says(x), Beside::above});
      at.push_back(says(x) + " from its left edge");
    }
    for (const Length y : level) {
      picture.strokes.push_back({StrokeKind::crease, {{}, y}, {picture.size.width, y}, {}});
      picture.dimensions.push_back({{}, {{}, y}, says(y), Beside::left});
      at.push_back(says(y) + " from its head");
    }
    return {{picture, fmt::format("{} of pile {}{} from outside: the {} to crease, {}.",
                                  apart ? "What is cut out of a sheet" : "The sheet", paper.number,
                                  step().all ? "" : like_it(paper),
                                  at.size() == 1 ? "line" : "lines", in_a_row(at))}};
  }

  // The open copy from outside: two pages and the fold between them.
  Measured open_copy() const {
    const Box page = left_of_page(making, 1, cut());
    const Sheet &outer = making.imposition.sheets[static_cast<std::size_t>(outer_sheet())];
    Measured picture;
    picture.size = {page.width * 2, page.height};
    if (outer.size == picture.size)
      picture.ground = SideGround{outer_sheet(), 0};
    outline(picture);
    picture.strokes.push_back({StrokeKind::fold, {page.width, {}}, {page.width, page.height}, {}});
    return picture;
  }

  std::vector<Shown> staples() const {
    const Length half = Length::inches(1, 4);
    Measured picture = open_copy();
    const Length fold = picture.size.width / 2;
    Length last;
    const std::vector<Length> places = places_down();
    for (const Length down : places) {
      picture.strokes.push_back({StrokeKind::staple, {fold, down - half}, {fold, down + half}, {}});
      picture.dimensions.push_back({{{}, last}, {{}, down}, says(down - last), Beside::left});
      last = down;
    }
    picture.dimensions.push_back(
        {{{}, last}, {{}, picture.size.height}, says(picture.size.height - last), Beside::left});
    picture.dimensions.push_back({{fold, picture.size.height},
                                  {picture.size.width, picture.size.height},
                                  says(fold),
                                  Beside::below});
    return {{picture, "The open copy from outside: staples in the fold, and the distance that the "
                      "stop is set to."}};
  }

  std::vector<Shown> holes_in_fold() const {
    Measured picture = open_copy();
    const Length fold = picture.size.width / 2;
    Length last;
    const std::vector<Length> places = places_down();
    for (const Length down : places) {
      picture.strokes.push_back({StrokeKind::hole, {fold, down}, {fold, down}, {}});
      picture.dimensions.push_back({{{}, last}, {{}, down}, says(down - last), Beside::left});
      last = down;
    }
    picture.dimensions.push_back(
        {{{}, last}, {{}, picture.size.height}, says(picture.size.height - last), Beside::left});
    const std::vector<std::string> order = order_of_sewing(step().holes);
    for (std::size_t i = 0; i < std::min(order.size(), places.size()); ++i)
      picture.letterings.push_back({{fold + fold * 2 / 5, places[i]}, order[i]});
    return {{picture, order.empty() ? "The open copy: holes in the fold."
                                    : "The open copy from outside: holes in the fold, with the "
                                      "order that the needle goes through them."}};
  }

  // The closed copy, its first page up, the spine at its left, as the knife has left it.
  Measured closed_copy() const {
    const Box page = left_of_page(making, 1, cut());
    Measured picture;
    picture.ground = PageGround{1, page};
    picture.size = {page.width, page.height};
    outline(picture);
    return picture;
  }

  std::vector<Shown> holes_at_side(Length from_spine) const {
    Measured picture = closed_copy();
    Length last;
    const std::vector<Length> places = places_down();
    for (const Length down : places) {
      const Spot hole{from_spine, down};
      picture.strokes.push_back({StrokeKind::hole, hole, hole, {}});
      picture.dimensions.push_back({{{}, last}, {{}, hole.y}, says(hole.y - last), Beside::left});
      last = hole.y;
    }
    picture.dimensions.push_back({{}, {from_spine, {}}, says(from_spine), Beside::above});
    return {{picture, "The closed copy, page 1 up: holes, from the spine and from the head."}};
  }

  std::vector<Shown> trim() const {
    Measured picture = closed_copy();
    const Length w = picture.size.width, h = picture.size.height;
    const CutBefore was = cut();
    const Box before = left_of_page(making, 1, was);
    const Box after = left_of_page(
        making, 1,
        {was.fore_edge + step().fore_edge, was.head + step().head, was.foot + step().foot});
    const Length right = after.right() - before.x;
    const Length top = after.y - before.y, foot = after.foot() - before.y;
    const auto line = [&](Spot a, Spot b) {
      picture.strokes.push_back({StrokeKind::cut, a, b, {}});
      picture.badges.push_back(
          {{(a.x + b.x) / 2, (a.y + b.y) / 2}, std::to_string(picture.badges.size() + 1)});
    };
    if (step().fore_edge > Length{}) {
      line({right, {}}, {right, h});
    }
    if (step().head > Length{}) {
      line({{}, top}, {w, top});
      picture.dimensions.push_back({{w, {}}, {w, top}, says(top), Beside::right});
    }
    if (step().foot > Length{}) {
      line({{}, foot}, {w, foot});
    }
    picture.dimensions.push_back({{{}, top}, {right, top}, says(right), Beside::above});
    picture.dimensions.push_back({{{}, top}, {{}, foot}, says(foot - top), Beside::left});
    return {{picture, "The closed copy, page 1 up, the fold at its left: where the knife goes, and "
                      "what is left."}};
  }
};

} // namespace

std::optional<std::vector<Shown>>
picture_of_step(const Making &making, const std::vector<MakingTask> &tasks, std::size_t step) {
  const Drawer drawer{making, tasks, step};
  const auto &holes = making.edition.folding->holes;
  switch (making.edition.finish[step].kind) {
  case StepKind::crease:
    return drawer.crease();
  case StepKind::staple:
    return drawer.staples();
  case StepKind::sew:
    return holes ? drawer.holes_at_side(holes->from_spine) : drawer.holes_in_fold();
  case StepKind::punch:
    return drawer.holes_at_side(making.edition.finish[step].from_spine);
  case StepKind::trim:
    return drawer.trim();
  default:
    return std::nullopt;
  }
}

} // namespace bodkin::paperwork
