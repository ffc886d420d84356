#include "sheet/report.hpp"

#include "edition/copy_numbers.hpp"
#include "measure/paper.hpp"
#include "problems/wrap.hpp"
#include "sheet/copy_weight.hpp"
#include "sheet/finish_text.hpp"
#include "sheet/fold.hpp"
#include "sheet/layout.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/piece_words.hpp"
#include "sheet/speech.hpp"
#include "sheet/steps_text.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <map>

namespace bodkin {
namespace {

std::string_view side_name(SideName side) { return side == SideName::front ? "front" : "back"; }

// Which way a page's head points, after its number: nothing when up.
std::string_view pointing(int turn) {
  return turn == 90 ? ">" : turn == 180 ? "v" : turn == 270 ? "<" : "";
}

std::string page_at(const Place &place, const Sheet &sheet, std::size_t width) {
  if (place.page > 0 && place.page == sheet.reverse)
    return "reverse";
  const std::string text =
      place.page > 0 ? fmt::format("{}{}", place.page - sheet.pages_before, pointing(place.turn))
                     : "-";
  return fmt::format("{:>{}}", text, width);
}

// One line of text for each row of places.
std::string drawn(const Side &side, const Sheet &sheet, std::size_t width) {
  std::string text;
  for (std::size_t i = 0; i < side.places.size(); ++i) {
    const bool new_row = i == 0 || side.places[i].box.y != side.places[i - 1].box.y;
    text += new_row ? (i == 0 ? "    " : "\n    ") : " | ";
    text += page_at(side.places[i], sheet, width);
  }
  return text + "\n";
}

std::string pdf_pages_of(const Pass &pass, int sheet, SideName side) {
  std::vector<std::size_t> pages;
  for (std::size_t i = 0; i < pass.pages.size(); ++i)
    if (const PassPage &page = pass.pages[i];
        page.prints && page.sheet == sheet && page.side == side)
      pages.push_back(i + 1);
  if (pages.empty())
    return {};
  if (pages.size() == 1)
    return fmt::format("{} page {}", pass.file, pages.front());
  const std::string step = pages[1] == pages[0] + 1 ? "" : fmt::format(", {}", pages[1]);
  return fmt::format("{} pages {}{} to {}, one for each sheet of the run", pass.file, pages[0],
                     step, pages.back());
}

// The PDF pages that print a side.
std::string printed_by(const SheetsReport &report, std::size_t sheet, SideName side) {
  std::vector<std::string> all;
  for (const Pass &pass : report.passes)
    if (std::string pages = pdf_pages_of(pass, static_cast<int>(sheet), side); !pages.empty())
      all.push_back(std::move(pages));
  return all.empty() ? "not printed" : fmt::format("{}", fmt::join(all, ", "));
}

// "  pages 3 and 5: 3 5/8in x 8 1/2in", where a panel is narrower than the rest.
std::string narrower_pages(const SheetsReport &report, const Sheet &sheet) {
  std::map<Size, std::vector<int>> by_size;
  for (const Side &side : sheet.sides)
    for (const Place &place : side.places)
      if (place.page > 0)
        if (const Size size = report.imposition.size_of(place.page);
            sheet.piece.empty() && place.page != sheet.reverse &&
            size != report.imposition.page_size)
          by_size[size].push_back(place.page);
  std::string text;
  for (auto &[size, pages] : by_size) {
    std::sort(pages.begin(), pages.end());
    text += fmt::format("  {}: {}\n", spoken::pages_listed(pages),
                        spoken::measures(size, report.edition.ruler));
  }
  return text;
}

// "  cut 4 out of it: across at 5 1/2in from the head, then ..."
std::string cuts_text(const SheetsReport &report, const Sheet &sheet) {
  if (sheet.cuts.empty())
    return {};
  std::vector<std::string> across, down;
  for (const Sheet::FoldLine &cut : sheet.cuts) {
    const bool upright = cut.start.x == cut.end.x;
    (upright ? down : across)
        .push_back(written(upright ? cut.start.x : cut.start.y, report.edition.ruler));
  }
  std::string text = fmt::format("  cut {} out of it, as its front lies:",
                                 sheet.up == 1 ? "the piece" : std::to_string(sheet.up));
  if (!across.empty())
    text += fmt::format(" across, {} from the head", fmt::join(across, ", "));
  if (!down.empty())
    text += fmt::format("{} down, {} from the left", across.empty() ? "" : "; then each strip",
                        fmt::join(down, ", "));
  return text + "\n";
}

std::string piece_words(const Edition &edition, const Sheet &sheet) {
  std::vector<std::string> words;
  if (!sheet.piece.empty() && sheet.in_place_of == 0)
    words.push_back(sheet.piece);
  if (!sheet.piece.empty() && sheet.in_a_copy > 1)
    words.push_back(fmt::format("{} in a copy", sheet.in_a_copy));
  if (sheet.only)
    words.push_back(fmt::format("{} alone", names_of(edition, sheet.only)));
  if (sheet.in_place_of > 0)
    words.push_back(fmt::format("in place of sheet {}", sheet.in_place_of));
  return words.empty() ? "" : fmt::format(" ({})", fmt::join(words, ", "));
}

std::string sheet_text(const SheetsReport &report, std::size_t index, std::size_t width) {
  const Sheet &sheet = report.imposition.sheets[index];
  const Edition &edition = report.edition;
  std::string text =
      fmt::format("\nsheet {} of {}{}: {}, {}, creep {}{}\n", sheet.number,
                  report.imposition.sheets.size(), piece_words(edition, sheet),
                  sheet.stock == StockId::none ? "no stock" : edition[sheet.stock].name,
                  spoken::named_and_measured(sheet.size, ruler_of(sheet.size)),
                  written(sheet.creep, edition.ruler),
                  edition.creep_made_up_for || sheet.creep == Length{} ? "" : ", not made up for");
  for (std::size_t s = 0; s < 2; ++s) {
    const Side &side = sheet.sides[s];
    const SideMode &mode = report.modes[index][s];
    text += fmt::format("  {:<5}  {:<6}  {}\n", side_name(side.name),
                        mode ? spoken::mode_name(*mode) : "blank",
                        printed_by(report, index, side.name));
    text += side.places.empty() ? "    no pages\n" : drawn(side, sheet, width);
  }
  return text + narrower_pages(report, sheet) + cuts_text(report, sheet);
}

// Where each piece goes, and how it is made.
std::string pieces_text(const SheetsReport &report) {
  const std::vector<CopyPart> parts(report.parts.begin(), report.parts.end());
  std::string text;
  for (const CopyPart &part : parts)
    if (part.piece && !part.piece->is_other_book())
      text += piece_in_words(parts, part, report.edition.ruler);
  return text;
}

std::string thing_weighs(std::string_view name, std::int64_t count, Mass mass) {
  return count == 1 ? fmt::format("{} {}", name, in_grams(mass))
                    : fmt::format("{} {} each, {} in a copy", name, in_grams(mass), count);
}

std::vector<std::string> weights_by_part(std::span<const CopyPart> parts, const CopyWeight &copy,
                                         std::optional<std::uint32_t> run) {
  const std::vector<const CopyPart *> held = parts_of_copy(parts, run);
  std::vector<std::string> all;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const PartWeight &part = copy.parts[i];
    const bool other = parts[i].piece && parts[i].piece->is_other_book();
    if (std::find(held.begin(), held.end(), &parts[i]) != held.end() && part.mass &&
        part.mass->micrograms > 0)
      all.push_back(thing_weighs(other ? "book" : part.name, part.in_a_copy, *part.mass));
  }
  if (copy.by_hand.micrograms > 0)
    all.push_back(thing_weighs("hand work", 1, copy.by_hand));
  return all;
}

// "A copy weighs 21.4 g and is 0.043in thick: book 18.2 g, wrap 3.2 g."
std::string weight_of_copy(const SheetsReport &report, std::optional<std::uint32_t> run) {
  const CopyWeight copy = weigh(report.parts, run);
  const std::vector<std::string> parts = weights_by_part(report.parts, copy, run);
  const std::string name = run ? "A copy " + report.edition.runs[*run].name : "A copy";
  const std::string thick =
      fmt::format("{} thick, pressed flat", rounded(copy.thickness, report.edition.ruler));
  const std::string heavy =
      copy.mass ? fmt::format("{} weighs {} and is {}", name, in_grams(*copy.mass), thick)
                : fmt::format("{} is {}; a paper of no known weight is in it", name, thick);
  const std::string all =
      parts.size() < 2 ? heavy : fmt::format("{}: {}", heavy, fmt::join(parts, "; "));
  return fmt::format("\n{}.\n", wrapped(all, report_columns, 0));
}

std::string weight_text(const SheetsReport &report) {
  if (report.parts.empty())
    return {};
  if (report.edition.runs.empty())
    return weight_of_copy(report, std::nullopt);
  std::string text;
  for (std::uint32_t run = 0; run < report.edition.runs.size(); ++run)
    text += weight_of_copy(report, run);
  return text;
}

std::string folding_text(const Edition &edition, const Imposition &imposition) {
  Problems none;
  const auto folded =
      fold(*edition.folding, none, panels_of_strip(*edition.folding, imposition.page_count));
  return folded ? folding_in_words(edition, *folded, imposition) : "";
}

std::string_view sides_text(const Pass &pass) {
  switch (pass.sides) {
  case PassSides::both:
    return "fronts and backs";
  case PassSides::fronts:
    return "fronts";
  case PassSides::backs:
    return "backs";
  }
  return "";
}

std::string passes_text(const SheetsReport &report) {
  std::string text;
  for (const Pass &pass : report.passes) {
    const std::string machine = machine_of(report.edition, pass.machine).name;
    text += fmt::format("\n{}: {}{}{}, {} PDF {}\n", pass.file, sides_text(pass),
                        machine.empty() ? "" : " by ", machine, pass.pages.size(),
                        pass.pages.size() == 1 ? "page" : "pages");
    for (const std::string &line : pass.feeding)
      text += fmt::format("  {}\n", line);
  }
  return text;
}

} // namespace

std::string sheets_as_text(const SheetsReport &report) {
  const Imposition &imposition = report.imposition;
  const bool turned =
      std::any_of(imposition.sheets.begin(), imposition.sheets.end(), [](const Sheet &sheet) {
        return std::any_of(sheet.sides[0].places.begin(), sheet.sides[0].places.end(),
                           [](const Place &place) { return place.turn != 0; });
      });
  const std::size_t width = std::to_string(imposition.folds_into).size() + (turned ? 1 : 0);
  std::string text =
      fmt::format("{}: {} {} on {} {}, {}\n", *report.edition.title, imposition.page_count,
                  imposition.page_count == 1 ? "page" : "pages", imposition.sheets.size(),
                  imposition.sheets.size() == 1 ? "sheet" : "sheets", report.edition.folding->name);
  text += "Each side is drawn as you see it; a back as you see it when the sheet is turned like a "
          "leaf.\n";
  if (turned)
    text += "v after a page: its head points down; < left; > right.\n";
  for (std::size_t i = 0; i < imposition.sheets.size(); ++i)
    text += sheet_text(report, i, width);
  return text + folding_text(report.edition, imposition) + pieces_text(report) +
         weight_text(report) + passes_text(report) + finish_in_words(report.edition, imposition);
}

} // namespace bodkin
