#include "sheet/piece_words.hpp"

#include "problems/wrap.hpp"
#include "sheet/finish_text.hpp"
#include "sheet/glued_on.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin {
namespace {

std::string line(const std::string &text) {
  return fmt::format("  {}\n", wrapped(text, report_columns, 2));
}

std::string spine_words(const CopyPart &part, Ruler ruler) {
  return part.spine > Length{} ? fmt::format("; its spine is {} wide, with a fold on either side",
                                             rounded(part.spine, ruler))
                               : std::string();
}

// "fold away from the print at 5.375in, 5.42in and so on from its left end"
std::string band_words(const CopyPart &part, Ruler ruler) {
  const auto &panels = part.imposition.panels;
  std::vector<std::string> folds, widths;
  for (std::size_t i = 0; i < panels.size(); ++i) {
    widths.push_back(
        fmt::format("{} {}", name_of(panels[i].panel), rounded(panels[i].box.width, ruler)));
    if (i > 0)
      folds.push_back(rounded(panels[i].box.x, ruler));
  }
  const Length length = part.edition->size->width;
  return line(fmt::format("It is {} long: {}, from the left end of its printed side.",
                          rounded(length, ruler), fmt::join(widths, ", "))) +
         line(fmt::format("Fold it, print outside, at {} from that end; lay it round the closed "
                          "copy and glue the overlap under the back.",
                          fmt::join(folds, ", ")));
}

std::string pocket_words(const CopyPart &part, Ruler ruler) {
  const Flaps &flaps = **part.piece->flaps;
  return line(fmt::format("Cut it out with its flaps of {}, fold them under on the three sides "
                          "that are not its {}, and glue them alone: the {} stays open.",
                          written(flaps.width, ruler), name_of(flaps.open), name_of(flaps.open)));
}

std::string where_on_page(const GluedOn &glued, Ruler ruler) {
  const Size page = glued.host->imposition.size_of(glued.page);
  const bool left_page = glued.page % 2 == 0;
  const Length spine = left_page ? page.width - glued.box.right() : glued.box.x;
  return fmt::format("Its edges lie {} from the spine and {} from the head of the page before the "
                     "knife",
                     rounded(spine, ruler), rounded(glued.box.y, ruler));
}

std::string glued_words(const std::vector<CopyPart> &parts, const CopyPart &part, Ruler ruler) {
  std::string text;
  for (const GluedOn &glued : glued_on(parts))
    if (glued.piece == &part && part.piece->is_tipped_in())
      text += line(
          fmt::format("{}; glue a strip of {} along its {} edge.", where_on_page(glued, ruler),
                      written(part.piece->glued->width, ruler), name_of(part.piece->glued->edge)));
    else if (glued.piece == &part && part.piece->is_pocket())
      text += line(where_on_page(glued, ruler) + ".");
  return text;
}

// What shows through the outer of two wraps.
std::string opacity_words(const std::vector<CopyPart> &parts, const CopyPart &part) {
  const auto wraps = wraps_of(*parts.front().edition);
  const StockId paper = *part.edition->paper;
  if (wraps.size() < 2 || part.piece == wraps.front() || paper == StockId::none ||
      !lie_together(*wraps.front(), *part.piece))
    return {};
  const auto &opacity = (*part.edition)[paper].opacity;
  if (!opacity || (*opacity)->value() >= 1)
    return {};
  return line(fmt::format("{} hides {:.0f}% of what lies under it: the wrap beneath shows "
                          "through.",
                          (*part.edition)[paper].name, (*opacity)->value() * 100));
}

std::string finish_words(const CopyPart &part) {
  std::vector<FinishTold> steps = finish_told(*part.edition, part.imposition);
  steps.resize(std::min(part.piece->own_steps, steps.size()));
  std::string text;
  for (const FinishTold &told : steps) {
    text += line(told.says + ".");
    for (const std::string &caution : told.cautions)
      text += line("Take care: " + caution);
  }
  return text;
}

} // namespace

std::string piece_in_words(const std::vector<CopyPart> &parts, const CopyPart &part, Ruler ruler) {
  const Size &size = *part.edition->size;
  std::string text = fmt::format("\n{}: {} x {}, {}{}\n", part.piece->name,
                                 rounded(size.width, ruler), rounded(size.height, ruler),
                                 goes_in_words(*part.piece), spine_words(part, ruler));
  if (part.piece->is_band())
    text += band_words(part, ruler);
  if (part.piece->is_pocket())
    text += pocket_words(part, ruler);
  return text + glued_words(parts, part, ruler) + opacity_words(parts, part) + finish_words(part);
}

} // namespace bodkin
