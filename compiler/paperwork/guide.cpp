#include "paperwork/guide.hpp"

#include "paperwork/guide_writer.hpp"
#include "problems/characters.hpp"
#include "sheet/copy_weight.hpp"
#include "sheet/numbered.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin::paperwork {
namespace {

std::string run_words(const Making &making) {
  const Run &run = *making.edition.run;
  std::string text = runs_words(making.edition);
  if (run.spare > 0)
    text += making.edition.runs.empty() ? fmt::format(", with {} spare {} of each", run.spare,
                                                      run.spare == 1 ? "sheet" : "sheets")
                                        : ", with spare sheets";
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
  const Size copy = size_of_copy(writer.making.parts);
  return fmt::format("{} x {}", writer.exact(copy.width), writer.exact(copy.height));
}

} // namespace

void GuideWriter::step(std::string text, std::string count) {
  leaflet.add(Headline{std::move(text), 1, std::to_string(++steps), false, std::move(count)});
}

void GuideWriter::care(const std::string &text) {
  if (text.empty())
    return;
  const auto [said, first] = cautioned.emplace(text, steps);
  if (first) {
    leaflet.add(Care{text});
  } else if (said->second != steps) {
    const std::string begins = text.substr(0, text.find(';'));
    leaflet.add(Care{fmt::format("{}{} All of it is said at step {}.", begins,
                                 begins.ends_with('.') ? "" : ".", said->second)});
    said->second = steps;
  }
}

void GuideWriter::say_thin_film() {
  if (!std::exchange(film_told, true))
    say("Use PVA or a glue stick, unless other words here name another glue: a thin film, for wet "
        "paper cockles.");
}

std::string count_of(const Making &making, const MakingTask &task) {
  const CopiesCounted copies = copies_of(making.edition, task.only);
  const std::string run =
      task.only ? " " + harmless(making.edition.runs[*task.only].name) : std::string();
  if (!task.step && on_good_copies_only(making.edition[task.element]))
    return counted(copies.good, "good copy", "good copies") + run;
  if (!is_on_flat_sheets(making.edition, task))
    return counted(copies.good, "copy", "copies") + run;
  const bool all =
      task.step && making.edition.finish[*task.step].all && making.imposition.sheets.size() > 1;
  const std::int64_t sheets =
      all ? sheets_needed(making.edition, making.imposition.sheets.front()).all : copies.all();
  std::string text = counted(sheets, "sheet", "sheets");
  if (all)
    text += " of each pile";
  if (sheets == copies.all() && copies.spare == 0)
    return text;
  return fmt::format("{}: {}{}{}", text, counted(copies.good, "copy", "copies"), run,
                     copies.spare == 0 ? "" : fmt::format(" and {} spare", copies.spare));
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
  tell_words(writer);
  if (!writer.cautioned.empty())
    writer.leaflet.blocks.insert(
        writer.leaflet.blocks.begin() + static_cast<std::ptrdiff_t>(writer.first_caution),
        Care{"What stands after these two words is read before its step is begun. Rules of the "
             "place where you work, and what labels say, come before this guide."});
  return std::move(writer.leaflet);
}

} // namespace bodkin::paperwork
