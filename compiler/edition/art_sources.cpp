#include "edition/like.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

namespace bodkin {
namespace {

Rights rights_of(std::string_view word) {
  if (word == "own")
    return Rights::own;
  if (word == "public-domain")
    return Rights::public_domain;
  if (word == "permission")
    return Rights::permission;
  return word == "licence" ? Rights::licence : Rights::unknown;
}

ArtSource source_of(Reader &reader, const Named &named, const Facts &facts) {
  ArtSource source;
  source.name = named.name;
  source.heading = named.line.words("title");
  source.range = named.line.range();
  source.title = text_in(facts.find("title"), "title");
  source.author = text_in(facts.find("author"), "author");
  if (const auto died = count_in(reader, facts.find("author"), "died", 1, "years count from 1"))
    source.author_died = known(static_cast<int>(died->value), died->from);
  source.published = value_in<Date>(facts.find("published"), "date");
  source.country = text_in(facts.find("published"), "country");
  source.kept_by = text_in(facts.find("kept-by"), "keeper");
  if (const auto rights = text_in(facts.find("rights"), "rights"))
    source.rights = known(rights_of(rights->value), rights->from);
  if (const FactLine rights = facts.find("rights"))
    source.licence = rights.words("licence");
  source.credit = text_in(facts.find("credit"), "credit");
  source.permission_date = value_in<Date>(facts.find("permission"), "date");
  if (const FactLine permission = facts.find("permission"))
    source.permission = permission.words("permission");
  source.costs = rate_in(reader, facts.find("costs"), "costs");
  source.link = text_in(facts.find("link"), "link");
  return source;
}

} // namespace

void take_sources(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::source);
  const Things &things = reader.things(Family::source);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.sources.push_back(source_of(reader, things.all[i], facts[i]));
}

} // namespace bodkin
