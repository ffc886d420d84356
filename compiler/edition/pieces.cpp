#include "edition/pieces.hpp"

#include "edition/elements.hpp"
#include "edition/own_facts.hpp"
#include "edition/own_folding.hpp"
#include "edition/own_runs.hpp"
#include "edition/pages.hpp"
#include "edition/piece.hpp"
#include "edition/piece_facts.hpp"
#include "edition/pockets.hpp"
#include "edition/values.hpp"
#include "edition/work.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin {
namespace {

// The supplies of the whole, and nothing of the book's own.
Edition shell_of(const Edition &book) {
  Edition edition;
  edition.title = book.title;
  edition.languages = book.languages;
  edition.run = book.run;
  edition.runs = book.runs;
  edition.counts = book.counts;
  edition.impression = book.impression;
  edition.exchanges = book.exchanges;
  edition.currency = book.currency;
  edition.marks = book.marks;
  edition.ruler = book.ruler;
  edition.stocks = book.stocks;
  edition.machines = book.machines;
  edition.faces = book.faces;
  edition.styles = book.styles;
  edition.licences = book.licences;
  edition.sources = book.sources;
  edition.texts = book.texts;
  edition.standings = book.standings;
  edition.page_count = known(1, {});
  edition.pages.resize(2);
  return edition;
}

// While it lives, what the reader fills is the piece, whose elements go on after the book's.
class ReadingPiece {
public:
  ReadingPiece(Reader &reader, FactLine line, Edition &edition)
      : reader_(reader), book_(edition), edition_line_(reader.edition_line),
        facts_(std::exchange(reader.edition_facts, Facts(line))),
        claimed_(std::exchange(reader.claimed, {})), called_(std::exchange(reader.called, {})) {
    reader.whole = {edition_line_, facts_, *reader.edition.page_count};
    reader.edition_line = reader.piece = line;
    trade();
  }
  ~ReadingPiece() {
    trade();
    reader_.edition_line = edition_line_;
    reader_.piece = {};
    reader_.edition_facts = std::move(facts_);
    reader_.claimed = std::move(claimed_);
    reader_.called = std::move(called_);
  }
  ReadingPiece(const ReadingPiece &) = delete;
  ReadingPiece &operator=(const ReadingPiece &) = delete;
  const Edition &book() const { return book_; }

private:
  void trade() {
    std::swap(reader_.edition, book_);
    std::swap(reader_.edition.elements, book_.elements);
  }

  Reader &reader_;
  Edition &book_; // holds the book while the reader holds the piece
  FactLine edition_line_;
  Facts facts_;
  std::vector<bool> claimed_;
  std::map<std::string_view, int> called_;
};

// Of the work on each copy what is done to this piece: gathering and stapling are the book's. A
// finish of its own is all that is done to it, but for the knife that cuts it with the book.
void take_steps(Reader &reader, FactLine line, Piece &piece) {
  const FactLine own = Facts(line).find("finish");
  if (own)
    piece.edition.finish = finish_steps(reader, own);
  piece.own_steps = piece.edition.finish.size();
  for (const FinishStep &step : reader.edition.finish) {
    const bool folds = step.kind == StepKind::crease || step.kind == StepKind::fold;
    const bool knife = step.kind == StepKind::trim && piece.is_cut_with_the_book();
    if ((folds && !own) || knife)
      piece.edition.finish.push_back(step);
  }
  piece.edition.finish_range = own ? own.range() : reader.edition.finish_range;
}

void read_pages(Reader &reader, FactLine line, Piece &piece) {
  ReadingPiece reading(reader, line, piece.edition);
  take_piece_facts(reader, reading.book());
  take_folding(reader);
  count_pages(reader);
  if (*reader.edition.page_count < 1)
    reader.edition.page_count = known(1, {});
  reader.edition.pages.clear();
  open_pages(reader);
  settle_pages(reader.edition);
}

Size lying_sheet(const Edition &book) {
  const Size page = *book.size;
  if (*book.paper == StockId::none || !book[*book.paper].sheet)
    return page;
  const Size sheet = **book[*book.paper].sheet;
  const bool lies = sheet.width >= sheet.height;
  return lies == book.folding->across ? sheet : sheet.turned();
}

// One page on the front of a flat sheet as large as the book's; its other side is the book.
void read_reverse(Reader &reader, FactLine line, Piece &piece) {
  ReadingPiece reading(reader, line, piece.edition);
  const Edition &book = reading.book();
  Edition &edition = reader.edition;
  edition.size = known(lying_sheet(book), line.range());
  edition.paper = book.paper;
  edition.machine = book.machine;
  const auto mode = mode_in(line, "mode");
  edition.printing = mode ? *mode : book.printing;
  edition.margins = book.margins;
  take_folding(reader);
  edition.page_count = known(2, line.range());
  edition.pages.assign(3, Page{});
  edition.pages[1].opened = edition.pages[2].opened = line.range();
  edition.pages[1].elements = take_elements(reader, line, Stands::on_page);
  edition.pages[2].blank = true;
  settle_pages(reader.edition);
}

// Two boards alike, nothing printed on them; how large they are is worked out with the sheets.
void read_boards(Reader &reader, FactLine line, Piece &piece) {
  piece.count = known(std::int64_t{2}, {});
  if (const auto out = length_in(reader, Facts(line).find("squares"), "squares", true))
    piece.squares = *out;
  ReadingPiece reading(reader, line, piece.edition);
  take_piece_facts(reader, reading.book());
  take_folding(reader);
  Edition &edition = reader.edition;
  edition.page_count = known(2, line.range());
  edition.pages.assign(3, Page{});
  for (const std::size_t page : {1u, 2u}) {
    edition.pages[page].opened = line.range();
    edition.pages[page].blank = true;
  }
  settle_pages(reader.edition);
}

Problem too_many_in_a_copy(Known<std::int64_t> count, std::int64_t most) {
  return {.check = "number-too-big",
          .range = count.from,
          .message =
              fmt::format("{} of one piece do not go into a copy; {} is the most", *count, most),
          .why = "a copy that holds so many is a crate of them",
          .type = {{"count      2", {}}}};
}

void take_numbers(Reader &reader, const Facts &facts, Piece &piece) {
  constexpr std::int64_t most_in_a_copy = 1'000;
  if (const auto count = count_in(reader, facts.find("count"), "count", 1,
                                  "none of an insert is the same as no insert")) {
    piece.count = known(std::min(**count, most_in_a_copy), count->from);
    if (**count > most_in_a_copy)
      reader.report(too_many_in_a_copy(*count, most_in_a_copy));
  }
  if (const auto up = up_in(reader, facts.find("up")))
    piece.up = *up;
}

using Wraps = std::vector<std::string>;

std::shared_ptr<Piece> piece_of(Reader &reader, FactLine line, const Wraps &wraps,
                                std::string_view name) {
  auto piece = std::make_shared<Piece>();
  piece->range = line.range();
  piece->name = name;
  piece->only = only_in(reader, Facts(line).find("only"));
  piece->edition = shell_of(reader.edition);
  if (piece->only)
    piece->edition.of_run = **piece->only;
  take_numbers(reader, Facts(line), *piece);
  if (line.word() == "reverse") {
    piece->goes = known(Goes::behind, line.range());
    read_reverse(reader, line, *piece);
  } else if (line.word() == "boards") {
    piece->goes = known(Goes::outside, {});
    read_boards(reader, line, *piece);
  } else if (line.word() == "wrap") {
    piece->goes = known(Goes::round_the_book, {});
    read_pages(reader, line, *piece);
  } else {
    piece->title = line.words("title");
    take_place(reader, line, wraps, *piece);
    read_pages(reader, line, *piece);
  }
  take_steps(reader, line, *piece);
  return piece;
}

// Of wraps that are each for another run; else none.
Wraps names_by_run(const std::vector<FactLine> &wraps) {
  Wraps names;
  for (const FactLine &wrap : wraps) {
    const std::string_view run = Facts(wrap).find("only").words("run");
    std::string name = fmt::format("{}-wrap", run);
    if (run.empty() || std::find(names.begin(), names.end(), name) != names.end())
      return {};
    names.push_back(std::move(name));
  }
  return names;
}

Wraps names_of_wraps(const std::vector<FactLine> &wraps) {
  const std::size_t count = wraps.size();
  if (Wraps by_run = names_by_run(wraps); count > 1 && !by_run.empty())
    return by_run;
  if (count == 1)
    return {"wrap"};
  Wraps names(count);
  for (std::size_t i = 0; i < count; ++i)
    names[i] = i == 0           ? "inner-wrap"
               : i + 1 == count ? "outer-wrap"
                                : fmt::format("wrap-{}", i + 1);
  return names;
}

std::vector<FactLine> lines_of(const Reader &reader, std::string_view word) {
  std::vector<FactLine> lines;
  each_line(*reader.strongest_first.front(), [&](FactLine line) {
    if (line.word() == word)
      lines.push_back(line);
  });
  return lines;
}

} // namespace

void take_pieces(Reader &reader) {
  std::vector<std::shared_ptr<Piece>> pieces;
  const std::vector<FactLine> wraps = lines_of(reader, "wrap");
  const Wraps names = names_of_wraps(wraps);
  for (std::size_t i = 0; i < wraps.size(); ++i)
    pieces.push_back(piece_of(reader, wraps[i], names, names[i]));
  for (const std::string_view word : {"reverse", "boards"})
    for (const FactLine line : lines_of(reader, word))
      pieces.push_back(piece_of(reader, line, names, word));
  for (const Named &insert : reader.things(Family::insert).all)
    pieces.push_back(piece_of(reader, insert.line, names, insert.name));
  settle_pockets(reader, pieces);
  // Ids of elements run through the whole.
  for (const auto &piece : pieces)
    piece->edition.elements = reader.edition.elements;
  reader.edition.pieces.assign(pieces.begin(), pieces.end());
}

} // namespace bodkin
