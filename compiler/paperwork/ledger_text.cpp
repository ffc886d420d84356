#include "paperwork/duties.hpp"
#include "problems/characters.hpp"
#include "problems/wrap.hpp"

#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr int columns = 80, fact_column = 16;

class Telling {
public:
  Telling(const Edition &edition, const RightsLedger &ledger)
      : edition_(edition), ledger_(ledger) {}

  std::string run() {
    prose(0, harmless(*edition_.title));
    prose(0, "Rights: where everything comes from, and by what right it is here.");
    prose(0, how_reckoned());
    out_ += '\n';
    for (const UsedSource &used : used_sources(ledger_))
      tell(used);
    nameless();
    faces();
    prose(0, "Not legal advice; the law of your country decides.");
    return std::move(out_);
  }

private:
  void prose(int indent, std::string_view text) {
    out_.append(static_cast<std::size_t>(indent), ' ');
    out_ += wrapped(text, columns, indent) + "\n";
  }

  std::string how_reckoned() const {
    if (edition_.judged_by.empty())
      return "No law is chosen, so no term is reckoned: say `law` under edition.";
    const auto year = year_of(edition_);
    if (!year)
      return "The edition is not dated, so no term is reckoned: say `dated` under edition.";
    std::string laws;
    for (const Known<LawId> &law : edition_.judged_by)
      laws += (laws.empty() ? "" : "; ") + law_words(edition_[*law]);
    return fmt::format("Terms are reckoned at {}, by the law {}.", *year, laws);
  }

  static std::string law_words(const Law &law) {
    return harmless(law.title.empty() ? law.name : law.title);
  }

  void fact(std::string_view name, std::string_view text) {
    if (text.empty())
      return;
    std::string line = fmt::format("    {}", name);
    line.resize(fact_column, ' ');
    out_ += line + wrapped(harmless(text), columns, fact_column) + "\n";
  }

  void tell(const UsedSource &used) {
    const ArtSource &source = *used.source;
    prose(2, harmless(what_it_is(source)));
    fact("by", author_words(source));
    fact("published", published_words(source));
    if (source.made)
      fact("made", written(**source.made));
    if (source.kept_by)
      fact("kept by", **source.kept_by);
    fact("right", right_in_words(source));
    fact("asks", asked(source));
    fact("letter", letter_words(source));
    if (source.credit)
      fact("credit", **source.credit);
    if (source.costs)
      fact("costs", written(**source.costs));
    if (source.link)
      fact("link", **source.link);
    const std::vector<TermReckoned> &terms = used.works.front()->terms;
    for (std::size_t i = 0; i < terms.size(); ++i)
      fact(i == 0 ? "term" : "", term_words(terms[i], edition_[*edition_.judged_by[i]]));
    show(used);
    out_ += '\n';
  }

  void show(const UsedSource &used) {
    std::string_view before;
    for (const LedgerWork *work : used.works) {
      const std::string_view kind = word_for(work->kind);
      fact(kind == before ? "" : kind, fmt::format("{}, {}", work->what, pages_words(*work)));
      before = kind;
    }
  }

  static std::string pages_words(const LedgerWork &work) {
    std::string text = on_pages(work.pages);
    for (const Change &change : work.changes)
      text += ", " + change.words;
    return text;
  }

  static std::string what_it_is(const ArtSource &source) {
    if (source.title)
      return **source.title;
    return source.heading.empty() ? source.name : source.heading;
  }

  static std::string author_words(const ArtSource &source) {
    if (source.author_unknown)
      return "nobody knows whom";
    if (!source.author)
      return {};
    return **source.author + (source.author_died
                                  ? fmt::format(", who died in {}", **source.author_died)
                                  : std::string{});
  }

  static std::string published_words(const ArtSource &source) {
    if (source.never_published)
      return "never";
    if (!source.published)
      return {};
    return written(**source.published) + (source.country ? ", " + **source.country : "");
  }

  std::string asked(const ArtSource &source) const {
    if (!source.licence_id)
      return {};
    const Licence &licence = edition_[*source.licence_id];
    std::string text;
    const auto add = [&](bool holds, const char *what) {
      if (holds)
        text += (text.empty() ? "" : "; ") + std::string(what);
    };
    add(licence.asks_credit, "that its maker is credited");
    add(licence.asks_changes_said, "that changes are said");
    add(licence.asks_same_licence, "that what is made of it goes out under the same licence");
    add(licence.forbids_sale, "that nothing with it is sold");
    add(licence.forbids_changes, "that it is not changed");
    return text.empty() ? "nothing" : text;
  }

  static std::string letter_words(const ArtSource &source) {
    if (!source.permission_date)
      return {};
    return fmt::format("{}, {}{}", written(**source.permission_date),
                       source.letter_on_file ? "on file: " : "", source.permission);
  }

  static std::string term_words(const TermReckoned &term, const Law &law) {
    const std::string name = law_words(law);
    if (term.answer == TermAnswer::untold)
      return fmt::format("{}: cannot be told; the source does not say {}", name, term.missing);
    return fmt::format(
        "{}: {}; {}", name,
        term.answer == TermAnswer::ended ? "ended" : fmt::format("lasts until {}", term.last_year),
        term.sum);
  }

  void nameless() {
    bool any = false;
    for (const LedgerWork &work : ledger_.works) {
      if (work.source || work.kind == WorkKind::face)
        continue;
      if (!any)
        prose(2, "These name no source:");
      any = true;
      prose(4,
            harmless(fmt::format("{} {}, {}", word_for(work.kind), work.what, pages_words(work))));
    }
    if (ledger_.own_words > 0)
      prose(2, fmt::format("{} place{} of words {} written in the manuscript itself.",
                           ledger_.own_words, ledger_.own_words == 1 ? "" : "s",
                           ledger_.own_words == 1 ? "is" : "are"));
    if (any || ledger_.own_words > 0)
      out_ += '\n';
  }

  void faces() {
    bool any = false;
    for (const LedgerWork &work : ledger_.works)
      if (work.kind == WorkKind::face) {
        if (!any)
          prose(2, "Faces of type:");
        any = true;
        prose(4, harmless(fmt::format("{}: {}", work.what,
                                      work.licence.empty() ? "its licence is not known here"
                                                           : "licence " + work.licence)));
      }
    if (any)
      out_ += '\n';
  }

  const Edition &edition_;
  const RightsLedger &ledger_;
  std::string out_;
};

} // namespace

std::string ledger_as_text(const Edition &edition, const RightsLedger &ledger) {
  return Telling(edition, ledger).run();
}

} // namespace bodkin::paperwork
