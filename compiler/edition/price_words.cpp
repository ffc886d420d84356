#include "edition/price_words.hpp"

#include "edition/laid.hpp"
#include "edition/own_runs.hpp"
#include "edition/piece.hpp"
#include "edition/reader.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <memory>

namespace bodkin {
namespace {

constexpr std::string_view price_fact = "price";

const Prose *prose_of(const Edition &edition, const Words &words) {
  if (const auto *prose = std::get_if<Prose>(&words.words))
    return prose;
  const TextId text = std::get<TextId>(words.words);
  return text == TextId::none ? nullptr : &edition.texts[at(text)].prose;
}

void fill(Prose &prose, const std::string &price) {
  for (Block &block : prose.blocks)
    for (Span &span : block.spans)
      if (span.fact == price_fact)
        span.text = price;
}

} // namespace

std::optional<std::string> price_in_words(const Reader &reader, std::uint32_t run) {
  const FactLine line = line_for(reader, "price", run);
  if (!line || !line.has("price"))
    return std::nullopt;
  // "$5 a copy" is the price $5.
  const std::string_view rate = reader.sources.text(line.range("price"));
  return std::string(rate.substr(0, std::min(rate.find(" a "), rate.find(" each"))));
}

const Span *told_price(const Edition &edition, const Element &element) {
  const auto *words = std::get_if<Words>(&element.what);
  const Prose *prose = words ? prose_of(edition, *words) : nullptr;
  if (prose)
    for (const Block &block : prose->blocks)
      for (const Span &span : block.spans)
        if (span.fact == price_fact)
          return &span;
  return nullptr;
}

namespace {

// Puts the price into all words that tell it.
void tell_price(Edition &edition, const std::string &price) {
  for (Element &element : edition.elements)
    if (auto *words = std::get_if<Words>(&element.what))
      if (auto *prose = std::get_if<Prose>(&words->words))
        fill(*prose, price);
  for (auto &text : edition.texts)
    fill(text.prose, price);
}

Problem priced_on_a_piece(const Reader &reader, const Span &told, const Piece &piece) {
  return {.check = "only-in-a-piece",
          .range = told.from,
          .message = fmt::format("{} tells a price, which is not the same in all copies that have "
                                 "it",
                                 piece.name),
          .why = "what differs from run to run is laid for each of them, and a piece is laid once",
          .type = piece_for_each_run(reader, piece.range, piece.name),
          .related = {{piece.range, "the piece"}}};
}

Problem no_price(const Span &told, const NamedRun &run) {
  return {.check = "unknown-fact",
          .range = told.from,
          .message = fmt::format("the copies {} have no price, and this is in them", run.name),
          .why = "a fact in prose is filled in from the line of the edition that states it",
          .type = {{"price      $5 a copy",
                    fmt::format("under edition, and `only {}` below it; or `only` below these "
                                "words, for the copies that have one",
                                run.name)}}};
}

// The first link to the price in what is laid in an edition; null: none.
const Span *price_laid(const Edition &edition) {
  const Span *told = nullptr;
  each_laid(edition, [&](ElementId id, int) {
    if (!told)
      told = told_price(edition, edition[id]);
  });
  return told;
}

} // namespace

Prices prices_by_run(const Reader &reader) {
  Prices prices;
  for (std::uint32_t run = 0; run < reader.edition.runs.size(); ++run)
    prices.push_back(price_in_words(reader, run).value_or(""));
  return prices;
}

bool differ(const Prices &prices) {
  return std::any_of(prices.begin(), prices.end(),
                     [&](const std::string &price) { return price != prices.front(); });
}

bool tells_a_price(const Edition &edition) { return price_laid(edition) != nullptr; }

void price_book(Reader &reader, Edition &book, std::uint32_t run, const Prices &prices) {
  const Span *told = price_laid(book);
  if (told && prices[run].empty() &&
      std::any_of(prices.begin(), prices.end(), [](const auto &price) { return !price.empty(); }))
    reader.report(no_price(*told, reader.edition.runs[run]));
  if (told)
    tell_price(book, prices[run]);
}

void price_pieces(Reader &reader, const Prices &prices) {
  for (std::shared_ptr<const Piece> &piece : reader.edition.pieces) {
    const Span *told = price_laid(piece->edition);
    if (!told || !differ(prices))
      continue;
    if (!piece->only) {
      reader.report(priced_on_a_piece(reader, *told, *piece));
      continue;
    }
    auto own = std::make_shared<Piece>(*piece);
    price_book(reader, own->edition, **own->only, prices);
    piece = std::move(own);
  }
}

} // namespace bodkin
