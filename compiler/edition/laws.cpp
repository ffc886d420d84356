#include "edition/like.hpp"
#include "edition/problems.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

namespace bodkin {
namespace {

// Each line of each law is asked of every source.
constexpr std::size_t most_laws = 20, most_terms = 200;

std::optional<int> plain_year(Reader &reader, FactLine line, std::string_view part) {
  const auto year = year_in(reader, line, part);
  return year ? std::optional(**year) : std::nullopt;
}

TermFrom term_from(std::string_view word) {
  if (word == "death")
    return TermFrom::death;
  return word == "making" ? TermFrom::making : TermFrom::publication;
}

std::optional<bool> either(FactLine line, std::string_view part, std::string_view yes) {
  if (!line.has(part))
    return std::nullopt;
  return line.words(part) == yes;
}

std::optional<TermRule> term_rule(Reader &reader, FactLine line) {
  TermRule rule;
  rule.range = line.range();
  const auto years = plain_year(reader, line, "years");
  if (!years)
    return std::nullopt;
  rule.span = {*years, term_from(line.words("from"))};
  if (const auto other = plain_year(reader, line, "other"))
    rule.other = TermYears{*other, term_from(line.words("start"))};
  rule.published_since = plain_year(reader, line, "since");
  rule.published_before = plain_year(reader, line, "before");
  rule.made_before = plain_year(reader, line, "made");
  rule.never_published = line.has("never");
  rule.never_within = plain_year(reader, line, "within");
  rule.country = line.words("country");
  rule.author_known = either(line, "author", "known");
  rule.renewed = either(line, "renewed", "yes");
  rule.at_least = plain_year(reader, line, "least");
  return rule;
}

Law law_of(Reader &reader, const Named &named, const Facts &facts) {
  Law law{std::string(named.name), std::string(named.line.words("title")), named.line.range(), {}};
  facts.each("term", [&](FactLine line) {
    if (law.terms.size() == most_terms)
      return;
    if (const auto rule = term_rule(reader, line))
      law.terms.push_back(*rule);
    if (law.terms.size() == most_terms)
      reader.report(too_many_lines(line, most_terms));
  });
  if (!facts.find("term") && facts.whole() && !named.line.statement->broken)
    reader.report({.check = "missing-fact",
                   .range = named.line.range(),
                   .message = "this law has no terms",
                   .why = "what it says of a work follows from its lines alone",
                   .type = {{"  term 70 years from death", "below it"}}});
  return law;
}

} // namespace

void take_laws(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::law);
  const Things &things = reader.things(Family::law);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.laws.push_back(law_of(reader, things.all[i], facts[i]));
  reader.edition_facts.each("law", [&](FactLine line) {
    if (reader.edition.judged_by.size() == most_laws)
      return;
    if (const auto id = id_in<LawId>(reader, Family::law, line, "law"))
      reader.edition.judged_by.push_back(*id);
    if (reader.edition.judged_by.size() == most_laws)
      reader.report(too_many_lines(line, most_laws));
  });
}

} // namespace bodkin
