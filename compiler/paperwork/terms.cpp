#include "paperwork/terms.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

enum class Fits { yes, no, untold };

struct Missing {
  std::string what, line, or_else{};
};

// Longer than any life on record, which ended after 122 years (from memory).
constexpr int longest_life = 125;

Missing missing_author() {
  return {"who made it, or that nobody knows", "author unknown",
          "author \"A. Ferrier\", died 1931"};
}
Missing missing_publication() {
  return {"when it was published", "published 1907", "published never"};
}
Missing missing_making() { return {"when it was made", "made 1899"}; }

Missing missing_death(const ArtSource &source) {
  return {"when its author died",
          fmt::format("author \"{}\", died 1931", source.author ? **source.author : "…")};
}

std::optional<int> year_of(const std::optional<Known<Date>> &date) {
  return date ? std::optional((*date)->year) : std::nullopt;
}

// Puts a source to the conditions of one rule; the first that it says too little for is kept.
class Asking {
public:
  Asking(const ArtSource &source, const TermRule &rule) : source_(source), rule_(rule) {}

  Fits fits() {
    for (const Fits one : {reckonable(), published(), made(), author(), renewed()}) {
      if (one == Fits::no)
        return Fits::no;
      untold_ |= one == Fits::untold;
    }
    return untold_ ? Fits::untold : Fits::yes;
  }
  const Missing &missing() const { return missing_; }

private:
  Fits want(Missing missing) {
    if (missing_.what.empty())
      missing_ = std::move(missing);
    return Fits::untold;
  }

  // Years from a publication that never was have no beginning.
  Fits reckonable() const {
    const auto begins = [&](const TermYears &span) {
      return !source_.never_published || span.from != TermFrom::publication;
    };
    return begins(rule_.span) || (rule_.other && begins(*rule_.other)) ? Fits::yes : Fits::no;
  }

  // Without the year of its making a work is taken as published in time, the longer term.
  bool published_too_late(int year) const {
    const auto made = year_of(source_.made);
    return rule_.never_within && made && year > *made + *rule_.never_within;
  }

  Fits published() {
    if (!rule_.published_since && !rule_.published_before && rule_.country.empty() &&
        !rule_.never_published)
      return Fits::yes;
    if (source_.never_published)
      return rule_.never_published ? Fits::yes : Fits::no;
    const auto year = year_of(source_.published);
    if (!year)
      return want(missing_publication());
    if (rule_.never_published)
      return published_too_late(*year) ? Fits::yes : Fits::no;
    if ((rule_.published_since && *year < *rule_.published_since) ||
        (rule_.published_before && *year >= *rule_.published_before))
      return Fits::no;
    if (rule_.country.empty())
      return Fits::yes;
    // A country that is not said is not taken for the one that would set the work free earlier.
    return source_.country && **source_.country == rule_.country ? Fits::yes : Fits::no;
  }

  // Nobody makes anything after dying, and nothing is published before it is made.
  Fits made() {
    if (!rule_.made_before)
      return Fits::yes;
    if (const auto year = year_of(source_.made))
      return *year < *rule_.made_before ? Fits::yes : Fits::no;
    const auto published = year_of(source_.published);
    if ((published && *published < *rule_.made_before) ||
        (source_.author_died && **source_.author_died < *rule_.made_before))
      return Fits::yes;
    return want(missing_making());
  }

  Fits author() {
    if (!rule_.author_known)
      return Fits::yes;
    if (!source_.author && !source_.author_unknown)
      return want(missing_author());
    return source_.author.has_value() == *rule_.author_known ? Fits::yes : Fits::no;
  }

  // What is not said is taken as renewed, the longer term.
  Fits renewed() const {
    if (!rule_.renewed)
      return Fits::yes;
    return (!source_.renewed || **source_.renewed) == *rule_.renewed ? Fits::yes : Fits::no;
  }

  const ArtSource &source_;
  const TermRule &rule_;
  Missing missing_;
  bool untold_ = false;
};

struct Start {
  std::optional<int> year;
  std::string words; // "published in 1907"
  Missing missing;
};

Start start_of(const ArtSource &source, TermFrom from) {
  if (from == TermFrom::publication) {
    const auto year = year_of(source.published);
    return {year, year ? fmt::format("published in {}", *year) : "", missing_publication()};
  }
  if (from == TermFrom::making) {
    const auto year = year_of(source.made);
    return {year, year ? fmt::format("made in {}", *year) : "", missing_making()};
  }
  if (source.author_died)
    return {**source.author_died, fmt::format("its author died in {}", **source.author_died), {}};
  return {std::nullopt, {}, source.author ? missing_death(source) : missing_author()};
}

struct Ending {
  std::optional<int> year;
  std::string words;
  Missing missing;
};

Ending ending_of(const ArtSource &source, const TermYears &span) {
  const Start start = start_of(source, span.from);
  if (!start.year)
    return {std::nullopt, {}, start.missing};
  return {*start.year + span.years, fmt::format("{}, and {} years", start.words, span.years), {}};
}

// The span that ends first; of one that is not known the other alone, which can only end later.
Ending first_ending(const ArtSource &source, const TermRule &rule) {
  Ending one = ending_of(source, rule.span);
  if (!rule.other)
    return one;
  const Ending other = ending_of(source, *rule.other);
  if (!other.year)
    return one;
  return !one.year || *other.year < *one.year ? other : one;
}

TermReckoned untold(const Missing &missing) {
  return {TermAnswer::untold, 0, {}, missing.line, missing.what, missing.or_else};
}

// Of a named author whose death is not known: whoever made a thing cannot outlive it by more than a
// life. That tells only of what is long past; else the year is asked for.
std::optional<TermReckoned> long_past(const ArtSource &source, const TermRule &rule, int year) {
  const bool made = source.made.has_value();
  const auto begun = made ? year_of(source.made) : year_of(source.published);
  if (rule.span.from != TermFrom::death || rule.other || !source.author || !begun)
    return std::nullopt;
  const int last = std::max(*begun + longest_life + rule.span.years, rule.at_least.value_or(0));
  if (last >= year)
    return std::nullopt;
  return TermReckoned{TermAnswer::ended,
                      last,
                      fmt::format("{} in {}, so its author died by {}, for nobody lives {} years; "
                                  "and {} years: to the end of {} at the latest",
                                  made ? "made" : "published", *begun, *begun + longest_life,
                                  longest_life, rule.span.years, last),
                      {},
                      {},
                      {}};
}

TermReckoned by_rule(const ArtSource &source, const TermRule &rule, int year) {
  const Ending ending = first_ending(source, rule);
  if (!ending.year) {
    const auto past = long_past(source, rule, year);
    return past ? *past : untold(ending.missing);
  }
  const int last = std::max(*ending.year, rule.at_least.value_or(0));
  std::string sum = fmt::format("{}: to the end of {}", ending.words, *ending.year);
  if (last != *ending.year)
    sum += fmt::format(", and to that of {} at the least", last);
  return {last < year ? TermAnswer::ended : TermAnswer::lasting, last, std::move(sum), {}, {}, {}};
}

} // namespace

TermReckoned reckoned(const ArtSource &source, const Law &law, int year) {
  for (const TermRule &rule : law.terms) {
    Asking asking(source, rule);
    const Fits fits = asking.fits();
    if (fits == Fits::untold)
      return untold(asking.missing());
    if (fits == Fits::yes)
      return by_rule(source, rule, year);
  }
  return untold({"anything that a line of this law speaks of", {}, {}});
}

} // namespace bodkin::paperwork
