#include "sheet/report.hpp"

#include "sheet/copy_weight.hpp"
#include "sheet/finish_text.hpp"
#include "sheet/numbered.hpp"
#include "sheet/speech.hpp"

#include <nlohmann/json.hpp>

namespace bodkin {
namespace {

using Json = nlohmann::ordered_json;

// Whole points as whole numbers.
Json points(Length length) {
  if (length.units() % Length::per_point == 0)
    return length.units() / Length::per_point;
  return length.in_points();
}

Json place_json(const Place &place, const Sheet &sheet) {
  Json json;
  if (place.page > 0 && place.page == sheet.reverse)
    json["page"] = "reverse";
  else
    json["page"] = place.page > 0 ? Json(place.page - sheet.pages_before) : Json(nullptr);
  json["x"] = points(place.box.x);
  json["y"] = points(place.box.y);
  json["width"] = points(place.box.width);
  json["height"] = points(place.box.height);
  json["turn"] = place.turn;
  json["shift"] = place.shift.in_points();
  return json;
}

// By place, the number of the copy that it comes into; null for a spare.
Json numbers(const SheetsReport &report, const PassPage &page) {
  Json all = Json::array();
  const Sheet &sheet = report.imposition.sheets[static_cast<std::size_t>(page.sheet)];
  for (const std::int64_t copy :
       copies_on(report.edition, sheet, page.side == SideName::front ? 0 : 1, page.nth))
    all.push_back(copy == spare_copy ? Json(nullptr) : Json(number_of(report.edition, copy)));
  return all;
}

// Every PDF page that prints on a side, by sheet and side.
using PassPages = std::vector<std::array<Json, 2>>;
PassPages pass_pages(const SheetsReport &report) {
  PassPages result(report.imposition.sheets.size(), {Json::array(), Json::array()});
  for (const Pass &pass : report.passes)
    for (std::size_t i = 0; i < pass.pages.size(); ++i) {
      const PassPage &page = pass.pages[i];
      if (!page.prints)
        continue;
      Json entry;
      entry["file"] = pass.file;
      entry["pdf_page"] = i + 1;
      if (pass.numbered)
        entry["numbers"] = numbers(report, page);
      result[static_cast<std::size_t>(page.sheet)][page.side == SideName::front ? 0 : 1].push_back(
          std::move(entry));
    }
  return result;
}

Json side_json(const Side &side, const SideMode &mode, const Sheet &sheet, Json &passes) {
  Json json;
  json["side"] = side.name == SideName::front ? "front" : "back";
  json["mode"] = mode ? std::string(spoken::mode_name(*mode)) : "blank";
  json["passes"] = std::move(passes);
  json["places"] = Json::array();
  for (const Place &place : side.places)
    json["places"].push_back(place_json(place, sheet));
  return json;
}

Json grams(const std::optional<Mass> &mass) { return mass ? Json(mass->grams()) : Json(nullptr); }

Json piece_json(const CopyPart &part, const PartWeight &weight) {
  Json json;
  json["piece"] = weight.name;
  json["in_a_copy"] = weight.in_a_copy;
  json["goes"] = part.piece ? Json(goes_in_words(*part.piece)) : Json(nullptr);
  json["width"] = points(part.edition->size->width);
  json["height"] = points(part.edition->size->height);
  json["spine"] = points(part.spine);
  for (const BandPart &panel : part.imposition.panels)
    json["panels"].push_back({{"panel", std::string(name_of(panel.panel))},
                              {"x", points(panel.box.x)},
                              {"width", points(panel.box.width)}});
  json["weight"] = grams(weight.mass);
  json["thickness"] = points(weight.thickness);
  return json;
}

Json runs_json(const std::vector<NamedRun> &runs, std::span<const CopyPart> parts) {
  Json all = Json::array();
  for (std::uint32_t run = 0; run < runs.size(); ++run) {
    const CopyWeight copy = weigh(parts, run);
    all.push_back({{"run", runs[run].name},
                   {"copies", runs[run].run.copies},
                   {"spare", runs[run].run.spare},
                   {"weight", grams(copy.mass)},
                   {"thickness", points(copy.thickness)}});
  }
  return all;
}

void add_weight(Json &json, std::span<const CopyPart> parts) {
  const CopyWeight copy = weigh(parts);
  json["weight"] = grams(copy.mass);
  json["weight_by_hand"] = grams(copy.by_hand);
  json["thickness"] = points(copy.thickness);
  if (const auto &runs = parts.front().edition->runs; !runs.empty())
    json["runs"] = runs_json(runs, parts);
  json["pieces"] = Json::array();
  for (std::size_t i = 0; i < parts.size(); ++i)
    json["pieces"].push_back(piece_json(parts[i], copy.parts[i]));
}

Json finish_json(const SheetsReport &report) {
  Json steps = Json::array();
  for (const FinishTold &told : finish_told(report.edition, report.imposition)) {
    Json down = Json::array();
    for (const Length at : told.down)
      down.push_back(points(at));
    steps.push_back({{"says", told.says}, {"down", down}, {"cautions", told.cautions}});
  }
  return steps;
}

} // namespace

std::string sheets_as_json(const SheetsReport &report) {
  PassPages passes = pass_pages(report);
  Json json;
  json["edition"] = *report.edition.title;
  json["page_count"] = report.imposition.page_count;
  json["folding"] = report.edition.folding->name;
  json["sheets"] = Json::array();
  for (std::size_t i = 0; i < report.imposition.sheets.size(); ++i) {
    const Sheet &sheet = report.imposition.sheets[i];
    Json one;
    one["sheet"] = sheet.number;
    if (!sheet.piece.empty() && sheet.in_place_of == 0) {
      one["piece"] = sheet.piece;
      one["in_a_copy"] = sheet.in_a_copy;
      one["up"] = sheet.up;
    }
    if (sheet.only)
      for (std::uint32_t run = 0; run < report.edition.runs.size(); ++run)
        if (sheet.only.holds(run))
          one["runs"].push_back(report.edition.runs[run].name);
    if (sheet.in_place_of > 0)
      one["in_place_of"] = sheet.in_place_of;
    one["stock"] =
        sheet.stock == StockId::none ? Json(nullptr) : Json(report.edition[sheet.stock].name);
    one["width"] = points(sheet.size.width);
    one["height"] = points(sheet.size.height);
    one["creep"] = sheet.creep.in_points();
    one["sides"] = Json::array();
    for (std::size_t s = 0; s < 2; ++s)
      one["sides"].push_back(side_json(sheet.sides[s], report.modes[i][s], sheet, passes[i][s]));
    json["sheets"].push_back(std::move(one));
  }
  if (!report.parts.empty())
    add_weight(json, report.parts);
  json["finish"] = finish_json(report);
  return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace bodkin
