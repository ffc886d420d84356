#include "edition/pieces.hpp"

#include "edition/elements.hpp"
#include "edition/own_facts.hpp"
#include "edition/own_folding.hpp"
#include "edition/page_list.hpp"
#include "edition/pages.hpp"
#include "edition/piece.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <utility>

namespace bodkin {
namespace {

// The supplies of the whole, and nothing of the book's own.
Edition shell_of(const Edition &book) {
  Edition edition;
  edition.title = book.title;
  edition.languages = book.languages;
  edition.run = book.run;
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

// Where it goes is told in pages of the book, so before the piece is read.
void take_goes(Reader &reader, const Facts &facts, Piece &piece) {
  const FactLine line = facts.find("goes");
  piece.goes = known(Goes::loose, {});
  if (!line)
    return;
  const bool after = line.has("after"), on = line.has("on");
  const Goes goes = after                             ? Goes::after_page
                    : on                              ? Goes::on_page
                    : line.words("where") == "centre" ? Goes::centre
                                                      : Goes::loose;
  piece.goes = known(goes, line.range());
  if (after || on)
    if (const auto page = page_in(reader, line, after ? "after" : "on"))
      piece.at_page = **page;
}

// What lies within the pile when the knife comes is cut with it.
bool cut_with_the_book(Goes goes) { return goes == Goes::centre || goes == Goes::round_the_book; }

// Of the work on each copy what is done to this piece: gathering and stapling are the book's.
void take_steps(const Edition &book, Piece &piece) {
  for (const FinishStep &step : book.finish)
    if (step.kind == StepKind::crease || step.kind == StepKind::fold ||
        (step.kind == StepKind::trim && cut_with_the_book(*piece.goes)))
      piece.edition.finish.push_back(step);
  piece.edition.finish_range = book.finish_range;
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
  settle_pages(reader);
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
  settle_pages(reader);
}

std::shared_ptr<Piece> piece_of(Reader &reader, FactLine line) {
  auto piece = std::make_shared<Piece>();
  piece->range = line.range();
  const Facts facts(line);
  if (line.word() == "reverse") {
    piece->name = "reverse";
    piece->goes = known(Goes::behind, line.range());
  } else if (line.word() == "wrap") {
    piece->name = "wrap";
    piece->goes = known(Goes::round_the_book, {});
  } else {
    piece->name = line.words("name");
    piece->title = line.words("title");
    take_goes(reader, facts, *piece);
    if (const auto count = count_in(reader, facts.find("count"), "count", 1,
                                    "none of an insert is the same as no insert"))
      piece->count = *count;
    constexpr std::int64_t most_up = 100; // smaller than business cards
    if (const auto up =
            count_in(reader, facts.find("up"), "copies", 1, "one at the least is on each sheet"))
      piece->up = known(static_cast<int>(std::min(**up, most_up)), up->from);
    if (const FactLine up = facts.find("up"); up && up.has("most"))
      piece->up = known(up_most, up.range());
  }
  piece->edition = shell_of(reader.edition);
  if (piece->is_reverse())
    read_reverse(reader, line, *piece);
  else
    read_pages(reader, line, *piece);
  take_steps(reader.edition, *piece);
  return piece;
}

} // namespace

void take_pieces(Reader &reader) {
  std::vector<std::shared_ptr<Piece>> pieces;
  each_line(*reader.strongest_first.front(), [&](FactLine line) {
    if (line.word() == "wrap")
      pieces.insert(pieces.begin(), piece_of(reader, line));
    else if (line.word() == "reverse")
      pieces.push_back(piece_of(reader, line));
  });
  for (const Named &insert : reader.things(Family::insert).all)
    pieces.push_back(piece_of(reader, insert.line));
  // Ids of elements run through the whole.
  for (const auto &piece : pieces)
    piece->edition.elements = reader.edition.elements;
  reader.edition.pieces.assign(pieces.begin(), pieces.end());
}

} // namespace bodkin
