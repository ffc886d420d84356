#include "edition/dates.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem date_ahead(const Reader &reader, const Known<Date> &date, std::string_view happened) {
  const Known<Date> &dated = *reader.edition.dated;
  return {.kind = Kind::warning,
          .check = "date-ahead",
          .range = date.from,
          .message = fmt::format("{} {}, and this edition is dated {}", happened, written(*date),
                                 written(*dated)),
          .why = "nothing is shown before it is made; one of the two years is a slip",
          .type = {{{}, "mend the date here, or that of the edition"}},
          .related = {{dated.from, "the edition's date"}}};
}

} // namespace

void judge_dates(Reader &reader) {
  const auto &dated = reader.edition.dated;
  if (!dated)
    return;
  const auto judge = [&](const std::optional<Known<Date>> &date, std::string_view happened) {
    if (date && date->from.somewhere() && surely_before(**dated, **date))
      reader.report(date_ahead(reader, *date, happened));
  };
  for (const ArtSource &source : reader.edition.sources) {
    judge(source.published, "published");
    judge(source.permission_date, "allowed");
  }
}

} // namespace bodkin
