#include "edition/copy_numbers.hpp"
#include "money/send.hpp"
#include "paperwork/in_a_sentence.hpp"
#include "paperwork/own_words.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr std::array<const char *, 12> months{"January",   "February", "March",    "April",
                                              "May",       "June",     "July",     "August",
                                              "September", "October",  "November", "December"};

bool is_american(const Edition &edition) { return **edition.languages.begin() == "en-US"; }

void add_new(std::vector<std::string> &names, std::string name) {
  if (std::find(names.begin(), names.end(), name) == names.end())
    names.push_back(std::move(name));
}

// "40 plain and 10 de-luxe"
std::string counted_runs(const Edition &edition, const RunSet &runs) {
  std::vector<std::string> all;
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
    if (runs.holds(run))
      all.push_back(fmt::format("{} {}", edition.runs[run].run.copies, edition.runs[run].name));
  return in_a_row(all);
}

// Of which runs the copies are that this stands in.
std::string among_runs(const Edition &edition, const RunSet &runs) {
  if (edition.runs.empty())
    return {};
  if (!runs)
    return ", " + counted_runs(edition, runs);
  const bool alone = copies_of(edition, runs).good == 1;
  return alone ? fmt::format(", of which this is the one {}", names_of(edition, runs))
               : fmt::format(", of which this is one of the {}", counted_runs(edition, runs));
}

std::string title_words(const Edition &edition, const RunSet &runs) {
  std::string text;
  if (edition.number)
    text += fmt::format(", number {}", **edition.number);
  if (edition.series)
    text += fmt::format(" of {}", **edition.series);
  if (edition.dated)
    text += ", " + date_words(edition, **edition.dated);
  if (edition.impression && **edition.impression > 1)
    text += fmt::format(", {} printing", spoken::ordinal(static_cast<int>(**edition.impression)));
  const std::int64_t copies = edition.run->copies;
  return fmt::format("{}, in {} {}{}.", text, copies, copies == 1 ? "copy" : "copies",
                     among_runs(edition, runs));
}

std::string inks_in_a_row(const Edition &edition, std::vector<Mode> inks) {
  std::sort(inks.begin(), inks.end());
  std::vector<std::string> names;
  for (const Mode ink : inks)
    names.emplace_back(ink == Mode::black ? "black" : is_american(edition) ? "color" : "colour");
  return in_a_row(names);
}

// "printed in black on the copier"; with `also`, beside what is told of all copies.
std::string printed(const Edition &edition, const CopyFacts &facts, bool also) {
  if (facts.inks.empty() && facts.machines.empty())
    return {};
  std::string text = also ? "printed also" : "printed";
  if (!facts.inks.empty())
    text += " in " + inks_in_a_row(edition, facts.inks);
  if (!facts.machines.empty())
    text += " on " + in_a_row(facts.machines);
  return text;
}

std::string capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string printing_sentence(const Edition &edition, const CopyFacts &facts) {
  const std::string text = capital(printed(edition, facts, false));
  std::string sentences = text.empty() ? text : fmt::format(" {}.", text);
  if (!facts.papers.empty())
    sentences += fmt::format(" {}: {}.", facts.papers.size() == 1 ? "Paper" : "Papers",
                             in_a_row(facts.papers));
  return sentences;
}

// "folded and stapled by hand"; "stamped on page 5"; the first that is done by hand says so.
std::vector<std::string> work_done(const CopyFacts &facts, bool said) {
  std::vector<std::string> clauses, steps;
  for (const Done &step : facts.steps)
    steps.push_back(step.what);
  if (!steps.empty())
    clauses.push_back(in_a_row(steps) + (said ? "" : " by hand"));
  said = said || !steps.empty();
  for (const Done &work : facts.work) {
    const bool say = work.by_hand && !said;
    clauses.push_back(work.what + (say ? " by hand" : "") + work.where);
    said = said || say;
  }
  return clauses;
}

std::string work_sentence(const CopyFacts &facts) {
  const std::vector<std::string> clauses = work_done(facts, false);
  return clauses.empty()
             ? std::string()
             : fmt::format(" {}.", capital(fmt::format("{}", fmt::join(clauses, "; "))));
}

// What one run has and not all: "also on board; stapled; $6 a copy".
std::string own_clauses(const Edition &edition, const CopyFacts &own, const CopyFacts &common) {
  std::vector<std::string> clauses;
  const bool also = !common.inks.empty() || !common.machines.empty();
  if (std::string text = printed(edition, own, also); !text.empty())
    clauses.push_back(std::move(text));
  if (!own.papers.empty())
    clauses.push_back((common.papers.empty() ? "on " : "also on ") + in_a_row(own.papers));
  for (std::string &work : work_done(own, !common.steps.empty() || !common.work.empty()))
    clauses.push_back(std::move(work));
  if (!own.price.empty())
    clauses.push_back(own.price + " a copy");
  return fmt::format("{}", fmt::join(clauses, "; "));
}

// " Plain: also on board; stapled; $6 a copy. De-luxe: sewn; $14 a copy."
std::string told_by_run(const Edition &edition, const std::vector<std::uint32_t> &runs,
                        const std::vector<CopyFacts> &facts, const CopyFacts &common) {
  std::vector<std::pair<std::string, RunSet>> told;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const std::string own = own_clauses(edition, beyond(facts[i], common), common);
    const auto same = std::find_if(told.begin(), told.end(),
                                   [&](const auto &other) { return other.first == own; });
    if (same == told.end())
      told.emplace_back(own, runs[i]);
    else
      same->second = same->second.with(runs[i]);
  }
  std::string text;
  for (const auto &[own, whose] : told)
    if (!own.empty())
      text += fmt::format(" {}: {}.", capital(names_of(edition, whose)), own);
  return text;
}

std::string set_in(const RightsLedger &ledger) {
  std::vector<std::string> faces;
  for (const LedgerWork &work : ledger.works)
    if (work.kind == WorkKind::face)
      add_new(faces, work.what);
  return faces.empty() ? std::string{} : fmt::format(" Set in {}.", in_a_row(faces));
}

std::string given_under(const Edition &edition) {
  if (!edition.given_under)
    return {};
  const bool known = edition.licence_id.has_value();
  const std::string name = known && !edition[*edition.licence_id].called.empty()
                               ? edition[*edition.licence_id].called
                               : **edition.given_under;
  const std::string link = known ? edition[*edition.licence_id].link : std::string{};
  return link.empty() ? fmt::format(" Given out under {}.", name)
                      : fmt::format(" Given out under {}: {}.", name, link);
}

} // namespace

std::string date_words(const Edition &edition, const Date &date) {
  if (date.month < 1 || date.month > 12)
    return std::to_string(date.year);
  const char *month = months[static_cast<std::size_t>(date.month) - 1];
  if (date.day == 0)
    return fmt::format("{} {}", month, date.year);
  return is_american(edition) ? fmt::format("{} {}, {}", month, date.day, date.year)
                              : fmt::format("{} {} {}", date.day, month, date.year);
}

std::vector<std::string> paper_names(const std::vector<CopyPart> &parts) {
  std::vector<std::string> papers;
  for (const CopyPart &part : parts)
    for (const Sheet &sheet : part.imposition.sheets)
      if (sheet.stock != StockId::none) {
        const Stock &stock = (*part.edition)[sheet.stock];
        add_new(papers, paper_in_a_sentence(stock.title, stock.name));
      }
  return papers;
}

std::string asked_price(const std::optional<Known<Price>> &price, const Sources &sources) {
  if (!price || (*price)->amount.digits == 0)
    return {};
  const std::string_view asked = sources.text(price->from);
  return std::string(asked.substr(0, std::min(asked.find(" a "), asked.find(" each"))));
}

std::string in_a_row(const std::vector<std::string> &names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

Colophons::Colophons(const Edition &edition, const RightsLedger &ledger,
                     std::vector<CopyPart> parts, const Sources &sources)
    : edition_(edition), set_in_(set_in(ledger)) {
  send_to_machines(edition, parts, inks_asked_for(parts), sources);
  const std::vector<PageInk> inks = inks_asked_for(parts);
  if (edition.runs.empty())
    facts_.push_back(facts_of(edition, parts, inks, sources, std::nullopt));
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
    facts_.push_back(facts_of(edition, parts, inks, sources, run));
}

Prose Colophons::of(const RunSet &runs) const {
  std::vector<CopyFacts> facts;
  std::vector<std::uint32_t> told;
  for (std::uint32_t run = 0; run < facts_.size(); ++run)
    if (runs.holds(run)) {
      facts.push_back(facts_[run]);
      told.push_back(run);
    }
  const CopyFacts common = in_common(facts);
  Block block;
  Span title;
  title.text = *edition_.title;
  title.emphasis = true;
  Span rest;
  rest.text = title_words(edition_, runs) + printing_sentence(edition_, common) + set_in_ +
              work_sentence(common);
  if (edition_.maker)
    rest.text += fmt::format(" Made by {}.", **edition_.maker);
  if (!common.price.empty())
    rest.text += fmt::format(" {} a copy.", common.price);
  rest.text += told_by_run(edition_, told, facts, common) + given_under(edition_);
  block.spans = {std::move(title), std::move(rest)};
  Prose prose;
  prose.blocks.push_back(std::move(block));
  return prose;
}

} // namespace bodkin::paperwork
