#include "command/way.hpp"

#include "command/pictures_seen.hpp"
#include "language/tree.hpp"
#include "money/budget.hpp"
#include "money/more_sheets.hpp"
#include "money/price_apart.hpp"
#include "money/send.hpp"
#include "money/ups.hpp"
#include "paperwork/own_words.hpp"
#include "paperwork/rights_problems.hpp"
#include "preflight/copy.hpp"
#include "problems/render.hpp"
#include "sheet/parts.hpp"
#include "sheet/told_by_run.hpp"

#include <algorithm>
#include <filesystem>

namespace bodkin {
namespace {

void add(Problems &problems, Problems more) {
  std::move(more.begin(), more.end(), std::back_inserter(problems));
}

// Index 0 is unused; pages are numbered on through the parts.
void add_inks(std::vector<PageInk> &inks, const CopyPart &part, const Drawings &drawings) {
  for (std::size_t page = 1; page < drawings.pages.size(); ++page)
    inks.push_back({drawings.pages[page].draws, *part.edition->pages[page].mode});
}

std::vector<PageInk> inks_of(const WayThrough &way) {
  std::vector<PageInk> inks(1);
  for (std::size_t i = 0; i < way.parts.size(); ++i)
    add_inks(inks, way.parts[i], way.drawings[i]);
  return inks;
}

const std::vector<std::unique_ptr<FaceCut>> no_cuts;

// "stdlib/stocks/us.bodkin" is asked of the shelf as "stocks/us".
std::string shelf_name(std::string_view path) {
  constexpr std::string_view before = "stdlib/", after = ".bodkin";
  if (path.starts_with(before))
    path.remove_prefix(before.size());
  if (path.ends_with(after))
    path.remove_suffix(after.size());
  return std::string(path);
}

std::string file_name(const std::string &path) {
  return std::filesystem::path(path).filename().string();
}

// The families that the catalogue of faces knows, for whoever misspelt one.
std::vector<std::string> catalogue_families(const Files &files) {
  Sources sources;
  Problems ignored; // the shelf's own files are held clean by the tests
  const FileId file = sources.add("catalogue", std::string(files.shelf("fonts/catalogue").view));
  const language::Tree tree = language::read(file, sources, ignored);
  std::vector<std::string> families;
  tree.each_top([&](const language::Statement &statement) {
    if (const auto *family = tree.get<language::Quoted>(statement, "family"))
      families.emplace_back(family->text);
  });
  return families;
}

// Nothing where the pages are the book's.
std::string_view name_of(const CopyPart &part) {
  return part.piece && !part.is_other_book() ? std::string_view(part.piece->name)
                                             : std::string_view();
}

void set_pages(WayThrough &way) {
  way.system = machine_faces();
  way.faces.emplace(
      open_faces(way.edition(), *way.disk.files, *way.system, catalogue_families(*way.disk.files)));
  add(way.problems, std::move(way.faces->problems));
  way.compositor.emplace(way.edition(), way.faces->faces);
  way.drawings = compose_copy(way.parts, way.sources, *way.gallery, *way.compositor, way.problems);
  add(way.problems, way.compositor->problems(&way.sources));
}

// Of a page, in some run.
bool coloured_in_a_run(const WayThrough &way, std::size_t page) {
  for (std::size_t i = 0; i < way.parts.size(); ++i)
    if ((i == 0 || way.parts[i].is_other_book()) && way.drawings[i].pages[page].coloured)
      return true;
  return false;
}

// Where a page asks for colour that one run alone has, the others' copies of it are black.
void print_black_where_colour_is_another_runs(WayThrough &way) {
  if (!has_other_books(way.edition()))
    return;
  for (std::size_t i = 0; i < way.parts.size(); ++i) {
    CopyPart &part = way.parts[i];
    if (i > 0 && !part.is_other_book())
      continue;
    auto own = std::make_shared<Edition>(*part.edition);
    for (std::size_t page = 1; page < own->pages.size(); ++page)
      if (own->pages[page].asked.mode && !way.drawings[i].pages[page].coloured &&
          coloured_in_a_run(way, page))
        own->pages[page].mode.value = Mode::black;
    if (i == 0)
      way.reading.edition.pages = own->pages;
    part.sized = i == 0 ? part.sized : own;
    part.edition = i == 0 ? &way.edition() : own.get();
  }
}

PagesDrawn drawn_in(const WayThrough &way) {
  PagesDrawn drawn{draws_of(way), {false}};
  for (const Drawings &part : way.drawings)
    for (std::size_t page = 1; page < part.pages.size(); ++page)
      drawn.coloured.push_back(part.pages[page].coloured);
  return drawn;
}

void count_money(WayThrough &way, bool anyway, AskedAbout about) {
  way.sides = charged_sides(way.imposition, way.modes, way.passes);
  way.estimate = estimate(way.edition(), way.imposition, way.sides);
  add(way.problems,
      price_problems(way.edition(), way.imposition, way.sides, way.estimate, way.sources));
  if (about == AskedAbout::money)
    check_ups(way.edition(), draws_of(way), way.sources, way.problems);
  check_price_apart(way.edition(), way.imposition, way.sides, draws_of(way), way.sources,
                    way.problems);
  price_more_sheets(way.edition(), way.imposition, way.sides, draws_of(way), way.sources,
                    way.problems);
  add(way.problems, over_budget(way.edition(), way.imposition, way.sides, way.estimate,
                                drawn_in(way), way.sources, anyway));
}

// Of a part by itself, pages from its own first.
std::vector<SheetModes> modes_of_part(const WayThrough &way, std::size_t index) {
  const CopyPart &part = way.parts[index];
  if (part.is_other_book()) {
    std::vector<PageInk> inks(1);
    add_inks(inks, part, way.drawings[index]);
    return modes_of(part.imposition, inks);
  }
  const auto first = way.modes.begin() + part.sheets_before;
  return {first, first + static_cast<std::ptrdiff_t>(part.imposition.sheets.size())};
}

// Of another run's book the numbers that its sheets have in the copy.
std::vector<int> numbers_of_sheets(const WayThrough &way, const CopyPart &part) {
  std::vector<int> numbers;
  for (std::size_t i = 0; i < part.imposition.sheets.size() && part.is_other_book(); ++i)
    numbers.push_back(sheet_of_copy(way.parts, part, i) + 1);
  return numbers;
}

void look_over(WayThrough &way) {
  std::vector<std::vector<SheetModes>> modes; // of each part's sheets
  std::vector<Inspection> each;
  std::vector<Problems> found(way.parts.size());
  modes.reserve(way.parts.size());
  for (std::size_t i = 0; i < way.parts.size(); ++i) {
    const CopyPart &part = way.parts[i];
    const auto &own = modes.emplace_back(modes_of_part(way, i));
    each.push_back({*part.edition, part.imposition, way.drawings[i], own, *way.gallery, way.sources,
                    name_of(part), part.sheets_before, numbers_of_sheets(way, part)});
    preflight(each.back(), found[i]);
  }
  tell_by_run(way.parts, std::move(found), way.problems);
  preflight(CopyInspection{way.parts, each}, way.problems);
}

// Credits are set as words are, so what they tell of pictures is looked up before.
std::vector<paperwork::PictureSeen> pictures_to_tell(WayThrough &way) {
  if (!paperwork::credits_tell_changes(way.edition()))
    return {};
  Problems told_later;
  return pictures_seen(impose_parts(way.edition(), way.sources, told_later), *way.gallery);
}

void walk_on(WayThrough &way, bool anyway, Progress &progress, AskedAbout about) {
  progress.say("laying sheets");
  choose_ups(way.reading.edition, way.sources);
  way.gallery.emplace(*way.disk.files);
  paperwork::write_own_words(way.reading.edition, way.sources, way.problems, pictures_to_tell(way));
  way.parts = impose_parts(way.edition(), way.sources, way.problems);
  send_to_machines(way.edition(), way.parts, inks_asked_for(way.parts), way.sources);
  way.imposition = joined(way.parts);
  progress.say("setting words and looking at pictures");
  set_pages(way);
  print_black_where_colour_is_another_runs(way);
  way.modes = modes_of(way.imposition, inks_of(way));
  way.passes = passes_of(way.edition(), way.imposition, way.modes, way.sources, way.problems);
  progress.say("counting money");
  count_money(way, anyway, about);
  progress.say("checking");
  look_over(way);
  way.rights = paperwork::ledger_of(way.edition(), pictures_seen(way.parts, *way.gallery));
  paperwork::check_rights(way.edition(), way.rights, way.sources, way.problems);
  way.mailings = paperwork::mailings_of(way.edition(), way.parts);
  paperwork::check_post(way.edition(), way.parts, way.mailings, way.sources, way.problems);
}

} // namespace

std::vector<bool> draws_of(const WayThrough &way) {
  std::vector<bool> draws;
  for (const PageInk &ink : inks_of(way))
    draws.push_back(ink.draws);
  return draws;
}

std::unique_ptr<WayThrough> walk(const std::string &manuscript, const std::string &shelf_root,
                                 bool anyway, Progress &progress, AskedAbout about) {
  auto way = std::make_unique<WayThrough>();
  way->disk = open_on_disk(manuscript, shelf_root);
  if (!way->disk.files)
    throw NoManuscript(way->disk.trouble);
  progress.say("reading");
  way->reading = read_edition(way->disk.manuscript, *way->disk.files, way->sources, way->problems);
  if (way->reading.has_edition)
    walk_on(*way, anyway, progress, about);
  sort_problems(way->problems);
  return way;
}

std::vector<InputFile> inputs_of(WayThrough &way, const std::string &shelf_root) {
  std::vector<InputFile> inputs;
  for (const FileRead &file : way.reading.files) {
    if (file.role == FileRole::shelf)
      inputs.push_back({file.path, shelf_root + "/" + file.path,
                        written(sha256(way.disk.files->shelf(shelf_name(file.path)).view))});
    else
      inputs.push_back({file.path, way.disk.folder + "/" + file.path,
                        written(way.gallery ? way.gallery->digest(file.path) : Digest{})});
  }
  for (const auto &cut : way.faces ? way.faces->faces.files() : no_cuts)
    if (cut->system())
      inputs.push_back({file_name(cut->file()), cut->file(), written(sha256(cut->bytes()))});
  const auto by_path = [](const InputFile &a, const InputFile &b) { return a.path < b.path; };
  std::sort(inputs.begin(), inputs.end(), by_path);
  const auto same = [](const InputFile &a, const InputFile &b) { return a.path == b.path; };
  inputs.erase(std::unique(inputs.begin(), inputs.end(), same), inputs.end());
  return inputs;
}

} // namespace bodkin
