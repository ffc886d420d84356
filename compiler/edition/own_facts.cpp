#include "edition/own_facts.hpp"

#include "edition/own_money.hpp"
#include "edition/own_runs.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "language/mended.hpp"
#include "measure/paper.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr Length usual_margin = Length::inches(1, 2);

Problem must_say(const Reader &reader, std::string_view fact, std::string why, std::string line) {
  return missing_fact(reader.edition_line.range(),
                      fmt::format("this {} does not say its {}", reader.edition_line.word(), fact),
                      std::move(why), std::move(line));
}

// The units that a size is typed in; a paper by its name is spoken of in its own.
Ruler ruler_typed(std::string_view words, const Size &size) {
  if (words.find("mm") != std::string_view::npos || words.find("cm") != std::string_view::npos)
    return Ruler::millimetres;
  return words.find("in") != std::string_view::npos ? Ruler::inches : ruler_of(size);
}

// `usual` is what a line says that is handed out where there is none.
void take_size(Reader &reader, std::string_view usual) {
  Edition &edition = reader.edition;
  const FactLine line = reader.edition_facts.find("size");
  const std::string handed_out = fmt::format("size       {}", usual);
  if (const auto size = value_in<Size>(line, "size")) {
    if (size->value.width > Length{} && size->value.height > Length{}) {
      edition.size = *size;
      edition.ruler = ruler_typed(reader.sources.text(size->from), size->value);
      return;
    }
    reader.report(too_small(size->from, "a page with no width or no height holds nothing",
                            "the size is a page's as folded: width x height", handed_out));
  } else if (!line) {
    reader.report(must_say(reader, "size", "how a page is folded out of a sheet follows from it",
                           handed_out));
  }
  // Later rooms draw what they can, on the page that most zines have.
  edition.size = known(*paper_named("half-letter"), {});
  edition.size_guessed = true;
}

bool counts_in_millimetres(const Reader &reader) {
  const FileId own = reader.strongest_first.front()->tree.file;
  return language::unit_of_habit(reader.sources.text(own)) != "in";
}

// A page of the copy after the knife: as large as a piece that lies in it may be.
std::string copy_size(const Edition &book) {
  Size size = *book.size;
  for (const FinishStep &step : book.finish)
    if (step.kind == StepKind::trim)
      size = {size.width - step.fore_edge, size.height - step.head - step.foot};
  return written(size, book.ruler);
}

// "inner 3in and outer 3in are 6in together, and a page is 5 1/2in wide"
std::string what_margins_leave(const Margins &m, const Size &size, Ruler ruler) {
  const auto told = [&](std::string_view a, Length first, std::string_view b, Length second,
                        Length whole, std::string_view way) {
    return fmt::format("{} {} and {} {} are {} together, and a page is {} {}", a,
                       written(first, ruler), b, written(second, ruler),
                       written(first + second, ruler), written(whole, ruler), way);
  };
  return m.inner + m.outer >= size.width
             ? told("inner", m.inner, "outer", m.outer, size.width, "wide")
             : told("head", m.head, "foot", m.foot, size.height, "high");
}

bool leave_room(const Margins &m, const Size &size) {
  return m.inner + m.outer < size.width && m.head + m.foot < size.height;
}

// None where the line is broken: half of `0,5in` is no margin of 0.
std::optional<Margins> written_margins(Reader &reader, FactLine line, Margins margins) {
  if (!line || (line.statement->broken && !line.statement->meant))
    return std::nullopt;
  if (const auto all = length_in(reader, line, "all", true))
    margins = {all->value, all->value, all->value, all->value};
  const auto side = [&](std::string_view name, Length &width) {
    if (const auto written = length_in(reader, line, name, true))
      width = written->value;
  };
  side("inner", margins.inner);
  side("outer", margins.outer);
  side("head", margins.head);
  side("foot", margins.foot);
  return margins;
}

void take_margins(Reader &reader) {
  const FactLine line = reader.edition_facts.find("margins");
  const Size &size = *reader.edition.size;
  const Margins usual{usual_margin, usual_margin, usual_margin, usual_margin};
  const std::optional<Margins> written = written_margins(reader, line, usual);
  if (written && leave_room(*written, size)) {
    reader.edition.margins = known(*written, line.range());
    return;
  }
  if (written)
    reader.report({.check = "margins-meet",
                   .range = line.range(),
                   .message = "these margins leave no type area between them",
                   .why = what_margins_leave(*written, size, reader.edition.ruler),
                   .type = {{"margins    3/8in", {}}},
                   .edits = {{line.range(), "margins    3/8in"}}});
  reader.edition.margins = known(leave_room(usual, size) ? usual : Margins{}, Range{});
}

void take_grid(Reader &reader) {
  const FactLine line = reader.edition_facts.find("grid");
  // Cells narrower than these hold nothing.
  constexpr std::int64_t most = 1'000;
  const auto columns = count_in(reader, line, "columns", 1, "a grid has a column at the least");
  const auto rows = count_in(reader, line, "rows", 1, "a grid has a row at the least");
  if (!columns || !rows)
    return;
  Grid grid{static_cast<int>(std::min(columns->value, most)),
            static_cast<int>(std::min(rows->value, most)),
            {}};
  if (const auto gap = length_in(reader, line, "gap", true))
    grid.gap = gap->value;
  reader.edition.grid = known(grid, line.range());
}

void take_titles(Reader &reader) {
  Edition &edition = reader.edition;
  const Facts &facts = reader.edition_facts;
  if (const auto title = text_in(reader.edition_line, "title"))
    edition.title = *title;
  edition.subtitle = text_in(facts.find("subtitle"), "subtitle");
  edition.maker = text_in(facts.find("maker"), "maker");
  edition.series = text_in(facts.find("series"), "series");
  if (const FactLine number = facts.find("number"); number && number.has("number"))
    edition.number =
        known(std::string(reader.sources.text(number.range("number"))), number.range("number"));
  edition.dated = value_in<Date>(facts.find("dated"), "date");
  if (const FactLine languages = facts.find("language"))
    for (const language::Capture &part : languages.in->tree.captured(*languages.statement))
      if (const auto *word = std::get_if<language::Word>(&part.value))
        edition.languages.push_back(known(std::string(word->text), languages.in->tree.range(part)));
  if (edition.languages.empty())
    edition.languages.push_back({"en", {}});
  if (const auto up = up_in(reader, facts.find("up")))
    edition.up = *up;
  if (const FactLine marks = facts.find("marks"); marks && marks.words("marks") == "none")
    edition.marks = known(false, marks.range());
}

std::string first_name(const Reader &reader, Family family, std::string_view otherwise) {
  const std::vector<std::string_view> names = reader.things(family).names();
  return std::string(names.empty() ? otherwise : names.front());
}

// The machines after the first of `corner-copier or library-copier`.
std::vector<Known<MachineId>> other_machines_in(Reader &reader, FactLine line) {
  std::vector<Known<MachineId>> machines;
  for (const std::string_view part : {"second", "third", "fourth"})
    if (const auto id = id_in<MachineId>(reader, Family::machine, line, part))
      machines.push_back(*id);
  return machines;
}

} // namespace

void take_own_facts(Reader &reader) {
  reader.edition.printing = known(Mode::black, {});
  take_titles(reader);
  if (!reader.edition_line) {
    reader.edition.size = known(*paper_named("half-letter"), {});
    reader.edition.run = known(Run{1, 0}, {});
    take_margins(reader);
    return;
  }
  take_size(reader, counts_in_millimetres(reader) ? "a5" : "half-letter");
  take_runs(reader);
  take_margins(reader);
  take_grid(reader);
  const FactLine creep = reader.edition_facts.find("creep");
  reader.edition.creep = length_in(reader, creep, "creep", true);
  reader.edition.creep_made_up_for = !creep || !creep.has("left");
  take_money(reader);
}

// Without the copy's thickness, which is known when its sheets are.
void take_band_size(Reader &reader, const Size &book) {
  const Facts &facts = reader.edition_facts;
  const FactLine line = facts.find("height");
  if (!line)
    reader.report(
        must_say(reader, "height", "its length is worked out; how high it is is yours",
                 reader.edition.ruler == Ruler::inches ? "height     2in" : "height     50mm"));
  const auto height = value_in<Length>(line, "height");
  const auto overlap = value_in<Length>(facts.find("overlap"), "overlap");
  const Length glued = overlap ? overlap->value : Length::inches(3, 4);
  const bool high = height && height->value > Length{};
  reader.edition.size = known(
      Size{book.width * 2 + std::max(glued, Length{}), high ? height->value : Length::inches(2)},
      high ? height->from : Range{});
}

void take_piece_size(Reader &reader, const Edition &book) {
  if (reader.is_band())
    take_band_size(reader, *book.size);
  else if (reader.wraps() || reader.is_boards())
    reader.edition.size = known(*book.size, {});
  else
    take_size(reader, copy_size(book));
}

// These may stand several times below an edition alone.
void one_line_each(Reader &reader) {
  for (const std::string_view word : {"paper", "printing"}) {
    for (const RunLine &of : lines_by_run(reader, word))
      if (of.run)
        reader.report(only_in_a_piece(reader, Facts(of.line).find("only")));
  }
}

void take_piece_facts(Reader &reader, const Edition &book) {
  Edition &edition = reader.edition;
  edition.creep_made_up_for = book.creep_made_up_for;
  take_piece_size(reader, book);
  take_margins(reader);
  take_grid(reader);
  const Facts &facts = reader.edition_facts;
  const auto asked = [&](std::string_view fact) {
    return reader.wraps() || reader.is_boards() ? reader.piece : facts.find(fact);
  };
  one_line_each(reader);
  const auto stock = id_in<StockId>(reader, Family::stock, asked("paper"), "stock");
  edition.paper = stock ? *stock : book.paper;
  const auto mode = mode_in(asked("printing"), "mode");
  edition.printing = mode ? *mode : book.printing;
  const auto machine = id_in<MachineId>(reader, Family::machine, facts.find("machine"), "machine");
  edition.machine = machine ? *machine : book.machine;
  edition.other_machines =
      machine ? other_machines_in(reader, facts.find("machine")) : book.other_machines;
}

void take_own_supplies(Reader &reader) {
  Edition &edition = reader.edition;
  if (!reader.edition_line)
    return;
  const Facts &facts = reader.edition_facts;
  for (const std::string_view word : {"paper", "cover", "printing"})
    take_lines_by_run(reader, word);
  const FactLine paper = line_for(reader, "paper", 0);
  if (const auto stock = id_in<StockId>(reader, Family::stock, paper, "stock"))
    edition.paper = *stock;
  else if (!facts.find("paper"))
    reader.report(
        must_say(reader, "paper", "weight, feeding and cost follow from it",
                 fmt::format("paper      {}", first_name(reader, Family::stock, "plain"))));
  const FactLine cover = line_for(reader, "cover", 0);
  edition.cover_stock = id_in<StockId>(reader, Family::stock, cover, "stock");
  edition.cover_mode = mode_in(cover, "mode");
  if (const auto mode = mode_in(line_for(reader, "printing", 0), "mode"))
    edition.printing = *mode;
  const FactLine machine = facts.find("machine");
  edition.other_machines = other_machines_in(reader, machine);
  if (const auto id = id_in<MachineId>(reader, Family::machine, machine, "machine"))
    edition.machine = *id;
  else if (!machine)
    reader.report(must_say(
        reader, "machine", "what it leaves bare, feeds and charges is where planning begins",
        fmt::format("machine    {}", first_name(reader, Family::machine, "copier"))));
}

} // namespace bodkin
