#include "paperwork/ledger.hpp"

#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

// RFC 4180: a field with a comma, a quote or a line end stands in quotes, its quotes doubled.
std::string field(std::string_view text) {
  if (text.find_first_of(",\"\r\n") == std::string_view::npos)
    return std::string(text);
  std::string quoted = "\"";
  for (const char c : text)
    quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
  return quoted + "\"";
}

std::string record(const std::vector<std::string> &fields) {
  std::string line;
  for (std::size_t i = 0; i < fields.size(); ++i)
    line += (i == 0 ? "" : ",") + field(fields[i]);
  return line + "\r\n";
}

std::string of(const std::optional<Known<std::string>> &text) { return text ? **text : ""; }
std::string of(const std::optional<Known<Date>> &date) { return date ? written(**date) : ""; }

std::vector<std::string> head(const Edition &edition) {
  std::vector<std::string> fields{
      "kind",        "what",   "pages",     "changed", "source",  "title",  "author",
      "author_died", "made",   "published", "country", "kept_by", "rights", "permission_date",
      "permission",  "credit", "costs",     "link"};
  for (const Known<LawId> &law : edition.judged_by)
    for (const char *column : {"answer", "last_year", "sum"})
      fields.push_back(fmt::format("{}_{}", edition[*law].name, column));
  return fields;
}

void add_source(const ArtSource &source, std::vector<std::string> &fields) {
  fields.insert(fields.end(),
                {source.name, source.title ? **source.title : source.heading,
                 source.author_unknown ? "unknown" : of(source.author),
                 source.author_died ? std::to_string(**source.author_died) : "", of(source.made),
                 source.never_published ? "never" : of(source.published), of(source.country),
                 of(source.kept_by), right_in_words(source), of(source.permission_date),
                 source.permission, of(source.credit), source.costs ? written(**source.costs) : "",
                 of(source.link)});
}

std::string_view answer_word(TermAnswer answer) {
  if (answer == TermAnswer::ended)
    return "ended";
  return answer == TermAnswer::lasting ? "lasting" : "untold";
}

void add_term(const TermReckoned &term, std::vector<std::string> &fields) {
  fields.emplace_back(answer_word(term.answer));
  fields.push_back(term.answer == TermAnswer::untold ? "" : std::to_string(term.last_year));
  fields.push_back(term.answer == TermAnswer::untold ? "not said: " + term.missing : term.sum);
}

std::vector<std::string> row(const LedgerWork &work, std::size_t columns) {
  std::string changes;
  for (const Change &change : work.changes)
    changes += (changes.empty() ? "" : ", ") + change.words;
  std::vector<std::string> fields{std::string(word_for(work.kind)), work.what, written(work.pages),
                                  changes};
  if (work.source)
    add_source(*work.source, fields);
  else if (work.kind == WorkKind::face)
    fields.insert(fields.end(), {"", "", "", "", "", "", "", "", "licence " + work.licence});
  for (const TermReckoned &term : work.terms)
    add_term(term, fields);
  fields.resize(columns);
  return fields;
}

} // namespace

std::string ledger_as_csv(const Edition &edition, const RightsLedger &ledger) {
  const std::vector<std::string> names = head(edition);
  std::string text = record(names);
  for (const LedgerWork &work : ledger.works)
    text += record(row(work, names.size()));
  return text;
}

} // namespace bodkin::paperwork
