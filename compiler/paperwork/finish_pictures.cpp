#include "paperwork/finish_pictures.hpp"

#include "paperwork/own_words.hpp"
#include "sheet/finish_text.hpp"

#include <algorithm>
#include <fmt/format.h>

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

  int outer_sheet() const { return paperwork::outer_sheet(making); }

  static void outline(Measured &picture) {
    picture.strokes.push_back(
        {StrokeKind::outline, {}, {picture.size.width, picture.size.height}, {}});
  }

  std::vector<Shown> crease() const {
    const int sheet = step().all ? 0 : outer_sheet();
    const Sheet &paper = making.imposition.sheets[static_cast<std::size_t>(sheet)];
    Measured picture;
    picture.ground = SideGround{sheet, 0};
    picture.size = paper.size;
    outline(picture);
    std::vector<std::string> at;
    for (const Sheet::FoldLine &line : paper.folds) {
      const bool upright = line.start.x == line.end.x;
      const Length from = upright ? line.start.x : line.start.y;
      picture.strokes.push_back({StrokeKind::crease, line.start, line.end, {}});
      if (upright)
        picture.dimensions.push_back({{}, {from, {}}, says(from), Beside::above});
      else
        picture.dimensions.push_back({{}, {{}, from}, says(from), Beside::left});
      at.push_back(fmt::format("{} from its {}", says(from), upright ? "left edge" : "head"));
    }
    return {{picture, fmt::format("The sheet of pile {} from outside: the {} to crease, {}.",
                                  paper.number, at.size() == 1 ? "line" : "lines", in_a_row(at))}};
  }

  // The open copy from outside: two pages and the fold between them.
  Measured open_copy() const {
    const CutBefore cut = this->cut();
    const Size page{edition().size->width - cut.fore_edge,
                    edition().size->height - cut.head - cut.foot};
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
    return {{picture, "The open copy: holes in the fold."}};
  }

  // The closed copy, its first page up, the spine at its left.
  Measured closed_copy() const {
    Measured picture;
    picture.ground = PageGround{1};
    picture.size = *edition().size;
    outline(picture);
    return picture;
  }

  std::vector<Shown> holes_at_side(Length from_spine) const {
    Measured picture = closed_copy();
    const CutBefore cut = this->cut();
    Length last = cut.head;
    const std::vector<Length> places = places_down();
    for (const Length down : places) {
      const Spot hole{from_spine, cut.head + down};
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
    const Length right = w - was.fore_edge - step().fore_edge;
    const Length top = was.head + step().head, foot = h - was.foot - step().foot;
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
      picture.dimensions.push_back({{w, {}}, {w, top}, says(step().head), Beside::right});
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
