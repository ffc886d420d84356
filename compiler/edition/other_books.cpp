#include "edition/other_books.hpp"

#include "edition/laid.hpp"
#include "edition/own_runs.hpp"
#include "edition/pages.hpp"
#include "edition/piece.hpp"
#include "edition/price_words.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

// What is glued on an original is copied with it.
bool is_printed(const Element &element) { return !std::holds_alternative<Hand>(element.what); }

bool is_of_one_run(const Element &element) { return is_printed(element) && element.work.only; }

// Every list of elements that pages are laid from.
template <typename Visit>
void each_list(Edition &edition, Visit visit) {
  for (Page &page : edition.pages)
    visit(page.elements);
  for (Spread &spread : edition.spreads)
    visit(spread.elements);
  for (Standing &standing : edition.standings)
    visit(standing.elements);
  for (Running &running : edition.runnings)
    visit(running.elements);
}

// Takes out what only other runs have.
void keep_for(Edition &edition, std::uint32_t run) {
  each_list(edition, [&](std::vector<ElementId> &elements) {
    elements.erase(std::remove_if(elements.begin(), elements.end(),
                                  [&](ElementId id) {
                                    const Element &element = edition[id];
                                    return is_of_one_run(element) && **element.work.only != run;
                                  }),
                   elements.end());
  });
}

// By page, what is printed on it; a spread's matter on both its pages.
std::vector<std::vector<ElementId>> printed_by_page(const Edition &edition) {
  std::vector<std::vector<ElementId>> printed(edition.pages.size());
  each_laid(edition, [&](ElementId id, int page) {
    if (!is_printed(edition[id]))
      return;
    printed[static_cast<std::size_t>(page)].push_back(id);
    const auto &spread = edition.pages[static_cast<std::size_t>(page)].spread;
    if (spread && edition.spreads[*spread].left == page)
      printed[static_cast<std::size_t>(edition.spreads[*spread].right)].push_back(id);
  });
  return printed;
}

TextId text_of(const Element &element) {
  const auto *words = std::get_if<Words>(&element.what);
  const auto *text = words ? std::get_if<TextId>(&words->words) : nullptr;
  return text ? *text : TextId::none;
}

// Texts that one of two books has another box for: they run on otherwise.
std::set<TextId> running_otherwise(const Edition &edition,
                                   const std::vector<std::vector<ElementId>> &one,
                                   const std::vector<std::vector<ElementId>> &other) {
  std::set<TextId> texts;
  for (std::size_t page = 0; page < one.size(); ++page)
    for (const auto &[these, those] :
         {std::pair(&one[page], &other[page]), std::pair(&other[page], &one[page])})
      for (const ElementId id : *these)
        if (std::find(those->begin(), those->end(), id) == those->end())
          texts.insert(text_of(edition[id]));
  texts.erase(TextId::none);
  return texts;
}

// A run's book, and what is printed on its pages.
struct Printed {
  const Edition *book = nullptr;
  std::vector<std::vector<ElementId>> on;
};

// By page; where the two have another price, words that tell it differ.
std::vector<bool> other_matter(const Printed &one, const Printed &two, bool other_price) {
  const Edition &book = *one.book;
  const std::set<TextId> otherwise = running_otherwise(book, one.on, two.on);
  std::vector<bool> differs(one.on.size(), false);
  for (std::size_t page = 0; page < differs.size(); ++page)
    differs[page] = one.on[page] != two.on[page] ||
                    std::any_of(one.on[page].begin(), one.on[page].end(), [&](ElementId id) {
                      return otherwise.count(text_of(book[id])) > 0 ||
                             (other_price && told_price(book, book[id]));
                    });
  return differs;
}

// By page, the first run whose copies have there what those of `run` have.
std::vector<std::uint32_t> matter_of(const std::vector<Printed> &books, std::uint32_t run,
                                     const Prices &prices) {
  std::vector<std::uint32_t> first(books[run].on.size(), run);
  for (std::uint32_t earlier = run; earlier-- > 0;) {
    const std::vector<bool> differs =
        other_matter(books[earlier], books[run], prices[earlier] != prices[run]);
    for (std::size_t page = 0; page < first.size(); ++page)
      if (!differs[page])
        first[page] = earlier;
  }
  return first;
}

void find_matter(const Edition &book, std::vector<std::shared_ptr<Piece>> &others,
                 const Prices &prices) {
  std::vector<Printed> books{{&book, printed_by_page(book)}};
  for (const auto &other : others)
    books.push_back({&other->edition, printed_by_page(other->edition)});
  for (std::uint32_t run = 1; run < books.size(); ++run) {
    Piece &other = *others[run - 1];
    other.matter_of = matter_of(books, run, prices);
    other.matter_but_price =
        differ(prices) ? matter_of(books, run, Prices(prices.size())) : other.matter_of;
  }
}

void print_as(Reader &reader, Edition &book, std::uint32_t run) {
  if (const auto stock =
          id_in<StockId>(reader, Family::stock, line_for(reader, "paper", run), "stock"))
    book.paper = *stock;
  const FactLine cover = line_for(reader, "cover", run);
  book.cover_stock = id_in<StockId>(reader, Family::stock, cover, "stock");
  book.cover_mode = mode_in(cover, "mode");
  const auto mode = mode_in(line_for(reader, "printing", run), "mode");
  book.printing = mode ? *mode : known(Mode::black, {});
  settle_pages(book);
}

// A file and a page are called after the run; an insert may have its name already.
std::string name_for(const Edition &book, const std::string &run) {
  const bool taken = std::any_of(book.pieces.begin(), book.pieces.end(),
                                 [&](const auto &piece) { return piece->name == run; });
  return taken ? run + "-book" : run;
}

std::shared_ptr<Piece> book_of(Reader &reader, std::uint32_t run) {
  const NamedRun &named = reader.edition.runs[run];
  auto piece = std::make_shared<Piece>();
  piece->name = name_for(reader.edition, named.name);
  piece->range = named.range;
  piece->goes = known(Goes::instead, {});
  piece->only = known(run, named.range);
  piece->edition = reader.edition;
  piece->edition.pieces.clear();
  piece->edition.of_run = run;
  print_as(reader, piece->edition, run);
  keep_for(piece->edition, run);
  return piece;
}

bool differ_in_print(const Reader &reader) {
  for (const std::string_view word : {"paper", "cover", "printing"})
    if (has_own_line(reader, word))
      return true;
  bool any = false;
  each_laid(reader.edition,
            [&](ElementId id, int) { any = any || is_of_one_run(reader.edition[id]); });
  return any;
}

Problem empty_in_a_run(const Edition &book, std::size_t page, const NamedRun &run) {
  return {.kind = Kind::note,
          .check = "empty-in-a-run",
          .range = book.pages[page].opened,
          .message = fmt::format("page {} is blank in the copies {}", page, run.name),
          .why = "everything on it is for another run alone, and its side is paid for all the same "
                 "where anything else stands on it",
          .type = {{fmt::format("only       {}", run.name),
                    "below what the page is to show in these copies"}}};
}

// A page that has matter in one run and none in another.
void tell_empty_pages(Reader &reader, const Edition &one, const Edition &other,
                      const NamedRun &run) {
  const auto has = printed_by_page(one), lacks = printed_by_page(other);
  for (std::size_t page = 1; page < has.size(); ++page)
    if (!has[page].empty() && lacks[page].empty())
      reader.report(empty_in_a_run(one, page, run));
}

Problem laid_on_a_piece(const Reader &reader, const Element &element, const Piece &piece) {
  return {.check = "only-in-a-piece",
          .range = element.work.only->from,
          .message = fmt::format("what one run alone has is laid on {}, which all copies have",
                                 piece.name),
          .why = "what differs from run to run is laid for each of them, and a piece is laid once",
          .type = piece_for_each_run(reader, piece.range, piece.name),
          .related = {{piece.range, "the piece"}}};
}

// Standing matter may bring to a piece what is for one run.
void settle_pieces(Reader &reader) {
  for (std::shared_ptr<const Piece> &piece : reader.edition.pieces) {
    const Element *foreign = nullptr;
    each_laid(piece->edition, [&](ElementId id, int) {
      if (is_of_one_run(piece->edition[id]))
        foreign = &piece->edition[id];
    });
    if (foreign && !piece->only)
      reader.report(laid_on_a_piece(reader, *foreign, *piece));
    if (!foreign || !piece->only)
      continue;
    auto own = std::make_shared<Piece>(*piece);
    keep_for(own->edition, **own->only);
    piece = std::move(own);
  }
}

} // namespace

void take_other_books(Reader &reader) {
  if (reader.edition.runs.empty())
    return;
  settle_pieces(reader);
  Edition &book = reader.edition;
  const Prices prices = prices_by_run(reader);
  price_pieces(reader, prices);
  if (!differ_in_print(reader) && !(differ(prices) && tells_a_price(book)))
    return;
  std::vector<std::shared_ptr<Piece>> others;
  for (std::uint32_t run = 1; run < book.runs.size(); ++run)
    others.push_back(book_of(reader, run));
  keep_for(book, 0);
  find_matter(book, others, prices);
  price_book(reader, book, 0, prices);
  for (std::size_t i = 0; i < others.size(); ++i)
    price_book(reader, others[i]->edition, static_cast<std::uint32_t>(i) + 1, prices);
  for (std::size_t i = 0; i < others.size(); ++i) {
    tell_empty_pages(reader, book, others[i]->edition, book.runs[i + 1]);
    if (i == 0)
      tell_empty_pages(reader, others[i]->edition, book, book.runs[0]);
  }
  book.pieces.insert(book.pieces.end(), others.begin(), others.end());
}

} // namespace bodkin
