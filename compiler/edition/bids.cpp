#include "edition/like.hpp"
#include "edition/problems.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr PricedBy copy_or_once{
    {Per::copy, Per::each, Per::once, Per::run}, "a bid is priced a copy, or once", "a copy"};

Problem said_twice(Reader &reader, FactLine line, const BidStep &first) {
  return {.check = "same-fact-twice",
          .range = line.range(),
          .message = fmt::format("{} from {} on is written already, on line {}", line.word(),
                                 first.from_copies, reader.sources.line_number(first.range)),
          .why = "one fact is written once, so that there is never a question which line counts",
          .type = {{{}, "keep the line that is right and take the other out"}},
          .related = {{first.range, "the first of them"}}};
}

void add_step(Reader &reader, FactLine line, std::vector<BidStep> &steps, const BidStep &step) {
  const auto same = std::find_if(steps.begin(), steps.end(), [&](const BidStep &other) {
    return other.from_copies == step.from_copies;
  });
  if (same != steps.end())
    return reader.report(said_twice(reader, line, *same));
  const auto place =
      std::upper_bound(steps.begin(), steps.end(), step, [](const BidStep &a, const BidStep &b) {
        return a.from_copies < b.from_copies;
      });
  steps.insert(place, step);
}

void take_step(Reader &reader, FactLine line, Bid &bid) {
  const auto from = count_in(reader, line, "from", 1, "the smallest order is one copy");
  const auto price = rate_by(reader, line, "price", copy_or_once);
  if (price)
    add_step(reader, line, bid.steps, {from ? from->value : 1, price->value, line.range()});
}

void take_postage(Reader &reader, FactLine line, Bid &bid) {
  const auto rate = rate_by(reader, line, "postage", copy_or_once);
  const auto from = count_in(reader, line, "from", 1, "the smallest parcel holds one copy");
  if (rate && (from || !line.has("from")))
    add_step(reader, line, bid.postage, {from ? from->value : 1, rate->value, line.range()});
}

Problem no_pages(const Reader &reader, FactLine line, const BidPages &pages) {
  return {
      .check = "number-too-small",
      .range = line.range("most"),
      .message = fmt::format("{} pages at the least and {} at the most leaves none", pages.least,
                             pages.most),
      .why = "the fewer pages stand first",
      .type = {{typed(reader, line.range(),
                      {line.range("least").file, line.range("least").begin, line.range("most").end},
                      fmt::format("{} to {}", pages.most, pages.least)),
                {}}}};
}

void take_pages(Reader &reader, FactLine line, Bid &bid) {
  if (!line)
    return;
  BidPages pages;
  const std::string_view why = "a booklet has a page at the least";
  if (const auto least = count_in(reader, line, "least", 1, why))
    pages.least = **least;
  if (const auto most = count_in(reader, line, "most", 1, why))
    pages.most = **most;
  if (const auto by = count_in(reader, line, "by", 1, "pages go up by one at the least"))
    pages.by = **by;
  if (pages.most > 0 && pages.most < pages.least)
    return reader.report(no_pages(reader, line, pages));
  bid.pages = known(pages, line.range());
}

// The printer may have papers that no stock of the edition is called by.
void take_papers(FactLine line, Bid &bid) {
  if (!line)
    return;
  BidPapers papers;
  papers.mixed = !line.has("one");
  for (const language::Capture &part : line.in->tree.captured(*line.statement))
    if (const auto *word = std::get_if<language::Word>(&part.value))
      papers.names.emplace_back(word->text);
  bid.papers = known(std::move(papers), line.range());
}

void take_sizes(FactLine line, Bid &bid) {
  if (!line)
    return;
  for (const language::Capture &part : line.in->tree.captured(*line.statement))
    if (const Size *size = std::get_if<Size>(&part.value))
      bid.sizes.push_back(known(*size, line.in->tree.range(part)));
}

Bid bid_of(Reader &reader, const Named &named, const Facts &facts) {
  Bid bid;
  bid.name = named.name;
  bid.title = named.line.words("title");
  bid.range = named.line.range();
  facts.each("prints", [&](FactLine line) {
    if (const auto mode = mode_in(line, "mode"))
      bid.prints.push_back(*mode);
  });
  facts.each("copies", [&](FactLine line) { take_step(reader, line, bid); });
  facts.each("postage", [&](FactLine line) { take_postage(reader, line, bid); });
  take_pages(reader, facts.find("pages"), bid);
  take_papers(facts.find("papers"), bid);
  take_sizes(facts.find("sizes"), bid);
  bid.until = value_in<Date>(facts.find("until"), "date");
  bid.setup = rate_by(reader, facts.find("setup"), "setup", copy_or_once);
  bid.tax = share_in(reader, facts.find("tax"), "tax", of_tax);
  return bid;
}

} // namespace

void take_bids(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::bid);
  const Things &things = reader.things(Family::bid);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.bids.push_back(bid_of(reader, things.all[i], facts[i]));
}

} // namespace bodkin
