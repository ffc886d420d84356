// What words lie on: a picture, a patch of colour, or the paper itself.
#include "page/outline.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "preflight/shown.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <map>

namespace bodkin {
namespace {

constexpr double least_contrast = 3; // to one
constexpr int steps = 6;             // spots looked at along a line

double paper_luminance(const Inspection &inspection, int page) {
  const StockId stock = inspection.imposition.sheet_of(page).stock;
  return stock == StockId::none ? 1.0 : luminance(*inspection.edition[stock].tint);
}

struct Judged {
  int poor = 0, all = 0;
  bool over_picture = false;
  bool on_paper = true;              // nothing lies under them
  bool white = false, black = false; // some of those that are hard to read
};

void judge_run(const Inspection &inspection, const std::vector<Item> &items, std::size_t index,
               const GlyphRun &run, const Line &line, double paper, Judged &judged) {
  const Item &item = items[index];
  const Transform map = item.to_page * Transform::moved(item.place.x, item.place.y);
  const double ink = luminance(run.paint.colour);
  for (int i = 0; i < steps; ++i) {
    const double x = run.left + (run.right - run.left) * (i + 0.5) / steps;
    const Point spot = map({x, line.baseline - run.size.in_points() * 0.25});
    double ground = paper;
    bool reached = false;
    for (std::size_t below = 0; below < index; ++below)
      if (const auto shown = shown_at(inspection, items[below], spot, ground)) {
        ground = *shown;
        reached = true;
        judged.on_paper = false;
        judged.over_picture =
            judged.over_picture || std::holds_alternative<SetPicture>(items[below].what);
      }
    ++judged.all;
    // No machine has white ink: white is where another thing is left out.
    const bool not_there = run.paint.is_white() && !reached;
    if (contrast(ink, ground) >= least_contrast && !not_there)
      continue;
    ++judged.poor;
    judged.white = judged.white || not_there;
    judged.black = judged.black || run.paint.colour == Colour{};
  }
}

int share_of(const Judged &judged) { return std::max(1, judged.poor * 100 / judged.all); }

// Words on all the pages where they are hard to read, told once; judged as on the worst of them.
struct Poor {
  const Item *item = nullptr;
  std::vector<int> pages;
  Judged worst;
  bool alike = true;
};

// A style's own line for its ink, where it has one.
void type_ink(const Inspection &inspection, Problem &problem, const Item &item) {
  const auto *words = std::get_if<Words>(&inspection.edition[item.element].what);
  const bool styled = words && *words->style != StyleId::none;
  const Range ink = styled ? inspection.edition[*words->style].ink.from : Range{};
  const std::string remark =
      styled ? fmt::format("under style {}", inspection.edition[*words->style].name)
             : "in their style";
  if (ink.somewhere())
    retype_part(inspection, problem, ink, "black", "ink        black", remark);
  else
    problem.type.push_back({"ink        black", remark});
}

Problem hard_to_read(const Inspection &inspection, const Poor &poor) {
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "hard-to-read";
  problem.range = element_of(inspection, *poor.item).range;
  const int share = share_of(poor.worst);
  problem.message =
      fmt::format("{} these words on {} are hard to read on what lies under them",
                  share == 100 ? (poor.alike ? "all of" : "up to all of")
                               : fmt::format("{}{}% of", poor.alike ? "" : "up to ", share),
                  pages_in_words(inspection, poor.pages));
  problem.why =
      poor.worst.white
          ? "no machine has white ink: white words show only on what is printed under them, and on "
            "bare paper they are not there"
          : fmt::format("they differ from the {} by less than 3 to 1 in brightness",
                        poor.worst.on_paper       ? "paper"
                        : poor.worst.over_picture ? "picture there"
                                                  : "ground");
  if (poor.worst.on_paper && poor.worst.black)
    problem.type = {{{}, "ask for a paler paper there: nothing is darker than black"}};
  else if (poor.worst.on_paper)
    type_ink(inspection, problem, *poor.item);
  else
    problem.type = {{"fill     white", "under them, or a quieter place"}};
  return problem;
}

Judged judge(const Inspection &inspection, int page, std::size_t index) {
  const auto &items = inspection.drawings[page].items;
  const auto &words = std::get<SetWords>(items[index].what);
  const double paper = paper_luminance(inspection, page);
  Judged judged;
  for (const Line &line : words.lines)
    for (const GlyphRun &run : line.runs)
      if (!run.glyphs.empty())
        judge_run(inspection, items, index, run, line, paper, judged);
  return judged;
}

void check_contrast(const Inspection &inspection, int page, std::size_t index,
                    std::map<ItemKey, Poor> &found) {
  const Judged judged = judge(inspection, page, index);
  if (judged.poor == 0)
    return;
  const Item &item = inspection.drawings[page].items[index];
  Poor &poor = found[key_of(item)];
  if (poor.item == nullptr)
    poor = {&item, {}, judged};
  poor.alike = poor.alike && share_of(poor.worst) == share_of(judged);
  if (share_of(judged) > share_of(poor.worst))
    poor.worst = judged;
  if (poor.pages.empty() || poor.pages.back() != page)
    poor.pages.push_back(page);
}

} // namespace

void check_ground(const Inspection &inspection, Problems &problems) {
  std::map<ItemKey, Poor> poor;
  for (int page = 1; page <= inspection.imposition.page_count; ++page) {
    const auto &items = inspection.drawings[page].items;
    for (std::size_t i = 0; i < items.size(); ++i)
      if (std::holds_alternative<SetWords>(items[i].what))
        check_contrast(inspection, page, i, poor);
  }
  for (const auto &[key, found] : poor)
    problems.push_back(hard_to_read(inspection, found));
}

} // namespace bodkin
