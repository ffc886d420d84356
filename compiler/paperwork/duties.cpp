#include "paperwork/duties.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>
#include <unordered_map>
#include <utility>

namespace bodkin::paperwork {
namespace {

std::string_view licence_words(const Licence &licence) {
  return licence.title.empty() ? licence.name : licence.title;
}

std::string changes_of(const LedgerWork &work) {
  std::vector<std::string> words;
  for (const Change &change : work.changes)
    words.push_back(change.words);
  return in_a_row(words);
}

bool is_own_line(const LedgerWork &work, const Change &change) {
  return std::none_of(work.elements.begin(), work.elements.end(),
                      [&](const Element *element) { return element->range == change.line; });
}

std::string_view area_word(Area area) {
  switch (area) {
  case Area::page:
    return "page";
  case Area::live:
    return "live";
  case Area::margins:
    return "margins";
  case Area::place:
    break;
  }
  return "place";
}

std::vector<WayOut> ways_out(const LedgerWork &work, const Change &change) {
  if (change.words == "printed in grey")
    return {{{}, "print its page in colour"}};
  const bool filled =
      std::any_of(work.elements.begin(), work.elements.end(), [&](const Element *element) {
        return element->placement.fills &&
               (element->placement.area.from == change.line || element->range == change.line);
      });
  if (filled && change.words == "cropped")
    return {{fmt::format("fits       {}", area_word(*work.elements.front()->placement.area)),
             "to show all of it"}};
  return {{{}, is_own_line(work, change) ? "take this line out" : "show it as it is"}};
}

Problem not_for_sale(const UsedSource &used, const Edition &edition, const Licence &licence) {
  return {.kind = Kind::warning,
          .check = "not-for-sale",
          .range = used.source->rights->from,
          .message = fmt::format("{}, {}, is lent under {}, which allows no sale, and a copy has a "
                                 "price",
                                 used.source->name, used.where(), licence_words(licence)),
          .why = "its maker lends it to those who give it away; a price, even one that pays for "
                 "the paper alone, is a matter to ask them about",
          .type = {{"rights     permission", "once its maker has allowed the sale"},
                   {{}, "or give the edition away: take the price out"}},
          .related = {{sold_at(edition), "the price"}, {licence.range, "the licence"}}};
}

// Each line that changes the work is a problem of its own.
Problem not_to_be_changed(const LedgerWork &work, const Change &change, const Licence &licence) {
  Problem problem{
      .kind = Kind::warning,
      .check = "not-to-be-changed",
      .range = change.line,
      .message = fmt::format("{} is {} here, and {} allows no changes", work.what, change.words,
                             licence_words(licence)),
      .why = "its maker lends it as it is: whole and in its own tones; what is a change, they or "
             "the law of your country say",
      .related = {{work.source->rights->from, "the licence of its source"}}};
  problem.type = ways_out(work, change);
  problem.type.push_back({{}, "or ask its maker"});
  return problem;
}

Problem same_licence(const LedgerWork &work, const Change &change, const Edition &edition,
                     const Licence &licence) {
  return {.kind = Kind::warning,
          .check = "same-licence",
          .range = edition.given_under ? edition.given_under->from : change.line,
          .message =
              fmt::format("{} is {} here, and {} asks that what is made of it goes out under "
                          "the same licence",
                          work.what, changes_of(work), licence_words(licence)),
          .why = edition.given_under
                     ? fmt::format("the edition goes out under {}", **edition.given_under)
                     : std::string("the edition does not say under what licence it goes out"),
          .type = {{fmt::format("licence    \"{}\"", licence_words(licence)), "under edition"},
                   {{}, "or show the picture whole and as it is"}},
          .related = {{work.source->rights->from, "the licence of its source"}}};
}

Problem nobody_to_credit(const UsedSource &used, const Licence &licence) {
  return {.kind = Kind::warning,
          .check = "no-credit",
          .range = used.source->rights->from,
          .message = fmt::format("{} asks for a credit, and {} names nobody",
                                 licence_words(licence), used.source->name),
          .why = "to be named is the price of it",
          .type = {{"author     \"A. Ferrier\"", "below the source, with the true one"},
                   {"credit     \"Photograph by A. Ferrier.\"", "or in the words that they ask"}}};
}

Problem not_credited(const UsedSource &used, const Licence &licence) {
  return {.kind = Kind::warning,
          .check = "not-credited",
          .range = used.source->rights->from,
          .message = fmt::format("{} asks for a credit, and no page names who made {}, {}",
                                 licence_words(licence), used.source->name, used.where()),
          .why = "to be named is the price of it; a line in small type inside the cover pays it",
          .type = {{"credits in label\n  at       1/2in 6in, 4 1/2in x 2in",
                    "on a page, in a style of yours"}},
          .related = {{licence.range, "the licence"}}};
}

} // namespace

std::vector<PageSeen> pages_of(const UsedSource &used) {
  std::vector<PageSeen> pages;
  std::set<std::pair<const Piece *, int>> seen;
  for (const LedgerWork *work : used.works)
    for (const PageSeen &page : work->pages)
      if (seen.insert({page.piece, page.page}).second)
        pages.push_back(page);
  const auto earlier = [](const PageSeen &a, const PageSeen &b) { return a.page < b.page; };
  if (std::all_of(pages.begin(), pages.end(), [](const PageSeen &p) { return !p.piece; }))
    std::sort(pages.begin(), pages.end(), earlier);
  return pages;
}

std::string UsedSource::where() const { return on_pages(pages_of(*this)); }

std::vector<UsedSource> used_sources(const RightsLedger &ledger) {
  std::vector<UsedSource> used;
  std::unordered_map<const ArtSource *, std::size_t> places;
  for (const LedgerWork &work : ledger.works) {
    if (!work.source)
      continue;
    const auto [place, added] = places.emplace(work.source, used.size());
    if (added)
      used.push_back({work.source, {}});
    used[place->second].works.push_back(&work);
  }
  return used;
}

Range sold_at(const Edition &edition) {
  const auto costs = [](const auto &price) { return price.amount.digits > 0; };
  if (edition.price && costs(**edition.price))
    return edition.price->from;
  for (const NamedRun &run : edition.runs)
    if (run.price && costs(**run.price))
      return run.price->from;
  for (const Sale &sale : edition.sales)
    if (sale.price && costs((*sale.price)->price))
      return sale.price->from;
  return {};
}

void check_duties(const UsedSource &used, const Edition &edition, const CreditsGiven &given,
                  Problems &problems) {
  const ArtSource &source = *used.source;
  if (!source.licence_id)
    return;
  const Licence &licence = edition[*source.licence_id];
  if (licence.forbids_sale && sold_at(edition).somewhere())
    problems.push_back(not_for_sale(used, edition, licence));
  if (licence.asks_credit && !source.author && !source.credit)
    problems.push_back(nobody_to_credit(used, licence));
  else if (licence.asks_credit && !given.name(source))
    problems.push_back(not_credited(used, licence));
  for (const LedgerWork *work : used.works) {
    if (work->changes.empty())
      continue;
    if (licence.forbids_changes)
      for (const Change &change : work->changes)
        problems.push_back(not_to_be_changed(*work, change, licence));
    if (licence.asks_same_licence && edition.licence_id != source.licence_id)
      problems.push_back(same_licence(*work, work->changes.front(), edition, licence));
  }
}

} // namespace bodkin::paperwork
