#include "edition/licences.hpp"
#include "edition/like.hpp"
#include "edition/named_file.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

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

// Else what seems to be missing may stand in the line that could not be read.
bool all_read(FactLine thing) {
  bool read = true;
  thing.each_child(
      [&](FactLine line) { read = read && (!line.statement->broken || line.statement->meant); });
  return read;
}

void take_author(Reader &reader, FactLine line, ArtSource &source) {
  source.author = text_in(line, "author");
  source.author_unknown = line && line.has("nobody");
  source.author_died = year_in(reader, line, "died");
  source.whole = source.whole && !(line && line.has("died") && !source.author_died);
}

void take_rights(Reader &reader, FactLine line, ArtSource &source) {
  const auto rights = text_in(line, "rights");
  if (!rights)
    return;
  source.rights = known(rights_of(rights->value), rights->from);
  source.because = line.words("because");
  source.licence = line.words("licence");
  source.licence_id = licence_named(reader, line);
}

void take_permission(Reader &reader, FactLine line, ArtSource &source) {
  source.permission_date = value_in<Date>(line, "date");
  if (!line)
    return;
  source.permission = line.words("permission");
  if (!line.has("file"))
    return;
  source.letter_on_file = true;
  source.permission = line.words("file");
  find_file(reader, line, "file", limits::picture_file_bytes, FileRole::letter);
}

constexpr PricedBy a_fee{
    {Per::once, Per::run, Per::copy, Per::each}, "a fee is paid once, or so much a copy", "once"};

ArtSource source_of(Reader &reader, const Named &named, const Facts &facts) {
  ArtSource source;
  source.name = named.name;
  source.heading = named.line.words("title");
  source.range = named.line.range();
  source.title = text_in(facts.find("title"), "title");
  take_author(reader, facts.find("author"), source);
  source.made = value_in<Date>(facts.find("made"), "date");
  const FactLine published = facts.find("published");
  source.published = value_in<Date>(published, "date");
  source.never_published = published && published.has("never");
  source.country = text_in(published, "country");
  if (const auto renewed = text_in(facts.find("renewed"), "renewed"))
    source.renewed = known(renewed->value == "yes", renewed->from);
  source.kept_by = text_in(facts.find("kept-by"), "keeper");
  take_rights(reader, facts.find("rights"), source);
  source.credit = text_in(facts.find("credit"), "credit");
  take_permission(reader, facts.find("permission"), source);
  source.costs = rate_by(reader, facts.find("costs"), "costs", a_fee);
  source.link = text_in(facts.find("link"), "link");
  source.whole = source.whole && facts.whole() && all_read(named.line);
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
