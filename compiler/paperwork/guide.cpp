#include "paperwork/guide.hpp"

#include "paperwork/guide_writer.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string run_words(const Making &making) {
  const Run &run = *making.edition.run;
  std::string text = runs_words(making.edition);
  if (run.spare > 0)
    text += fmt::format(", and sheets for {} spare", run.spare);
  return text;
}

std::string pages_words(const Making &making) {
  const auto sheets =
      std::count_if(making.imposition.sheets.begin(), making.imposition.sheets.end(),
                    [](const Sheet &sheet) { return sheet.piece.empty(); });
  const auto pieces = std::count_if(making.edition.pieces.begin(), making.edition.pieces.end(),
                                    [](const auto &piece) { return !piece->is_other_book(); });
  return fmt::format("{} on {}{}", counted(*making.edition.page_count, "page", "pages"),
                     counted(sheets, "sheet", "sheets"),
                     pieces == 0 ? ""
                                 : fmt::format(", and {}", counted(pieces, "piece", "pieces")));
}

// "5 3/8in x 8 1/4in"
std::string measures_words(const GuideWriter &writer) {
  const Size copy = trimmed_size(writer.edition());
  return fmt::format("{} x {}", writer.exact(copy.width), writer.exact(copy.height));
}

} // namespace

void GuideWriter::step(std::string text) {
  leaflet.add(Headline{std::move(text), 1, std::to_string(++steps)});
}

void GuideWriter::care(std::string text) {
  if (!text.empty() && cautioned.insert(text).second)
    leaflet.add(Care{std::move(text)});
}

Leaflet assembly_guide(const Making &making) {
  GuideWriter writer{making, tasks_in_order(making)};
  writer.leaflet.kind = "How to make a copy";
  writer.leaflet.title = harmless(*making.edition.title);
  writer.leaflet.aside = fmt::format("{}. {}. A finished copy is {}.", run_words(making),
                                     pages_words(making), measures_words(writer));
  writer.leaflet.in_text = "Its pictures are in assembly.pdf.";
  writer.leaflet.paper = home_paper(making.edition.ruler);
  writer.leaflet.ruler = making.edition.ruler;
  tell_copy(writer);
  tell_originals(writer);
  tell_printing(writer);
  tell_piles(writer);
  tell_tasks(writer);
  tell_counts(writer);
  tell_rest(writer);
  tell_plan(writer);
  tell_numbers(writer);
  return std::move(writer.leaflet);
}

} // namespace bodkin::paperwork
