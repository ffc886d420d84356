#include "paperwork/rights_problems.hpp"

#include "paperwork/duties.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr const char *no_advice = "not legal advice; the law of your country decides";

std::string_view law_words(const Law &law) { return law.title.empty() ? law.name : law.title; }

Range right_range(const ArtSource &source) {
  return source.rights ? source.rights->from : source.range;
}

Problem rights_unknown(const UsedSource &used, const Edition &edition) {
  return {.kind = Kind::warning,
          .check = "rights-unknown",
          .range = right_range(*used.source),
          .message =
              fmt::format("nothing says by what right {} is used, {}, and a copy has a price",
                          used.source->name, used.where()),
          .why = "whoever holds the rights in it may forbid a copy and ask for what it earns; what "
                 "is sold is looked at first",
          .type = {{"rights     permission", "once somebody who may has allowed it"},
                   {"rights     own", "if it is yours"},
                   {"rights     public-domain", "if its term has ended: a `law` under edition "
                                                "reckons it from the source's years"}},
          .related = {{sold_at(edition), "the price"}}};
}

Problem still_in_term(const UsedSource &used, const Law &law, const TermReckoned &term, int year) {
  return {.kind = Kind::warning,
          .check = "still-in-term",
          .range = right_range(*used.source),
          .message =
              fmt::format("{} is called public domain, but by the law {} its term lasts until "
                          "the end of {}",
                          used.source->name, law_words(law), term.last_year),
          .why = fmt::format("{}; the edition is of {}; {}", term.sum, year, no_advice),
          .type = {{"rights     permission", "once its holder has allowed it"},
                   {"rights     public-domain because \"its maker gave it up\"",
                    "where it is free for a reason that no year tells; put yours"}},
          .related = {{law.range, "the law"}}};
}

Problem term_untold(const UsedSource &used, const Law &law, const TermReckoned &term) {
  Problem problem{.kind = Kind::note,
                  .check = "term-untold",
                  .range = right_range(*used.source),
                  .message = fmt::format("whether {} is in the public domain cannot be told by the "
                                         "law {}: its source does not say {}",
                                         used.source->name, law_words(law), term.missing),
                  .why = "the ledger takes it as you say; nothing here can hold your word against "
                         "the years"};
  if (!term.wanted.empty())
    problem.type.push_back({term.wanted, "below the source, with the true one"});
  if (!term.or_else.empty())
    problem.type.push_back({term.or_else, "or this, where it is so"});
  return problem;
}

Problem not_dated(const Edition &edition) {
  return {.kind = Kind::note,
          .check = "terms-need-a-year",
          .range = edition.judged_by.front().from,
          .message = "a law is chosen, but the edition is not dated, so no term is reckoned",
          .why = "whether a term has ended hangs on the year; the year of today is never asked, so "
                 "that the same manuscript says the same tomorrow",
          .type = {{"dated      2026-11", "under edition, with your own"}}};
}

Problem no_letter(const UsedSource &used) {
  return {.kind = Kind::warning,
          .check = "no-letter",
          .range = right_range(*used.source),
          .message = fmt::format("{} is used by permission, and no permission is named",
                                 used.source->name),
          .why = "years later, when somebody asks, a date and a letter are what counts",
          .type = {{"permission 2026-03-02, \"letter from the town museum\"",
                    "below the source, with yours"},
                   {"permission 2026-03-02, on file \"papers/museum.pdf\"",
                    "or with the letter itself"}}};
}

Problem date_ahead(const ArtSource &source, const Edition &edition, const Known<Date> &date,
                   std::string_view what, const Sources &sources) {
  return {.kind = Kind::warning,
          .check = "date-ahead",
          .range = date.from,
          .message = fmt::format("{} {} {}, after the edition itself, which is dated {}",
                                 source.name, what, written(*date), written(**edition.dated)),
          .why =
              fmt::format("one of the two dates is a slip; rights are reckoned at the edition's{}",
                          spoken::on_line(sources, edition.dated->from)),
          .type = {{{}, "put right whichever is wrong"}},
          .related = {{edition.dated->from, "the edition's date"}}};
}

// "was published in 2031-12", "was published on 2031-12-01"
std::string on_date(std::string_view what, const Date &date) {
  return fmt::format("{} {}", what, date.day > 0 ? "on" : "in");
}

struct Dated {
  std::string words;
  Date date;
  Range from;
};

// Of what is written of a source, two dates that cannot both be. Published after a death, or
// allowed long after, is nothing strange.
Problem dates_contradict(const ArtSource &source, const Dated &first, const Dated &second) {
  return {.kind = Kind::warning,
          .check = "dates-contradict",
          .range = second.from,
          .message = fmt::format("{} {} {}, before it {} {}", source.name, second.words,
                                 written(second.date), first.words, written(first.date)),
          .why = "one of the two is a slip, and terms of rights are reckoned with both",
          .type = {{{}, "put right whichever is wrong"}},
          .related = {{first.from, "the other date"}}};
}

void check_order(const ArtSource &source, Problems &problems) {
  const auto &made = source.made;
  if (!made)
    return;
  const Dated making{on_date("was made", **made), **made, made->from};
  const auto later = [&](const std::optional<Known<Date>> &date, const char *what) {
    if (date && surely_before(**date, **made))
      problems.push_back(
          dates_contradict(source, making, {on_date(what, **date), **date, date->from}));
  };
  later(source.published, "was published");
  if (source.author_died && surely_before({**source.author_died, 0, 0}, **made))
    problems.push_back(dates_contradict(
        source, making,
        {"is by somebody who died in", {**source.author_died, 0, 0}, source.author_died->from}));
}

Problem right_unsaid(const UsedSource &used) {
  return {.kind = Kind::note,
          .check = "right-unsaid",
          .range = used.source->permission_date->from,
          .message = fmt::format("{} names a permission, and no line says by what right it is used",
                                 used.source->name),
          .why = "the ledger shows its right as not said; a letter may also refuse",
          .type = {{"rights     permission", "below the source, if the letter allows it"}}};
}

void check_dates(const UsedSource &used, const Edition &edition, const Sources &sources,
                 Problems &problems) {
  const ArtSource &source = *used.source;
  check_order(source, problems);
  if (!edition.dated)
    return;
  const auto look = [&](const std::optional<Known<Date>> &date, std::string_view what) {
    if (date && surely_before(**edition.dated, **date))
      problems.push_back(date_ahead(source, edition, *date, on_date(what, **date), sources));
  };
  look(source.made, "was made");
  look(source.published, "was published");
  look(source.permission_date, "was allowed");
  if (source.author_died)
    look(Known<Date>{{**source.author_died, 0, 0}, source.author_died->from},
         "is by somebody who died");
}

// The law that keeps it longest is the one to tell of; without one, the first that cannot tell.
void check_terms(const UsedSource &used, const Edition &edition, int year, Problems &problems) {
  const ArtSource &source = *used.source;
  if (source.rights.value_or(Known<Rights>{}).value != Rights::public_domain ||
      !source.because.empty())
    return;
  const std::vector<TermReckoned> &terms = used.works.front()->terms;
  const TermReckoned *longest = nullptr, *untold = nullptr;
  const auto law = [&](const TermReckoned *term) -> const Law & {
    return edition[*edition.judged_by[static_cast<std::size_t>(term - terms.data())]];
  };
  for (const TermReckoned &term : terms) {
    if (term.answer == TermAnswer::lasting && (!longest || term.last_year > longest->last_year))
      longest = &term;
    // A law whose terms cannot be read is told where it stands.
    if (term.answer == TermAnswer::untold && !untold && !law(&term).terms.empty())
      untold = &term;
  }
  if (longest)
    problems.push_back(still_in_term(used, law(longest), *longest, year));
  else if (untold && source.whole) // else the line that could not be read may be the very one
    problems.push_back(term_untold(used, law(untold), *untold));
}

void check_claim(const UsedSource &used, const Edition &edition, Problems &problems) {
  const ArtSource &source = *used.source;
  const Rights rights = source.rights ? **source.rights : Rights::unknown;
  if (!source.rights && source.permission_date && source.whole)
    problems.push_back(right_unsaid(used));
  else if (rights == Rights::unknown && (source.rights || source.whole) &&
           sold_at(edition).somewhere())
    problems.push_back(rights_unknown(used, edition));
  if (rights == Rights::permission && !source.permission_date && source.whole)
    problems.push_back(no_letter(used));
}

} // namespace

void check_rights(const Edition &edition, const RightsLedger &ledger, const Sources &sources,
                  Problems &problems) {
  const auto year = year_of(edition);
  const std::vector<UsedSource> all = used_sources(ledger);
  const bool asked = std::any_of(all.begin(), all.end(), [](const UsedSource &used) {
    return used.source->licence_id.has_value();
  });
  // To gather what a whole book says takes its time, and few editions have to.
  const std::optional<CreditsGiven> given =
      asked ? std::optional<CreditsGiven>(edition) : std::nullopt;
  for (const UsedSource &used : all) {
    check_claim(used, edition, problems);
    check_dates(used, edition, sources, problems);
    if (year)
      check_terms(used, edition, *year, problems);
    if (given)
      check_duties(used, edition, *given, problems);
  }
  if (!year && !edition.judged_by.empty())
    problems.push_back(not_dated(edition));
}

} // namespace bodkin::paperwork
