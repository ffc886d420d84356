#include "edition/read.hpp"

#include "edition/borrow.hpp"
#include "edition/currency.hpp"
#include "edition/gather.hpp"
#include "edition/other_books.hpp"
#include "edition/own_facts.hpp"
#include "edition/own_folding.hpp"
#include "edition/own_money.hpp"
#include "edition/pages.hpp"
#include "edition/pieces.hpp"
#include "edition/repeated.hpp"
#include "edition/supplies.hpp"
#include "edition/texts.hpp"
#include "edition/unused.hpp"
#include "edition/work.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Problem missing_edition(const Reader &reader) {
  const FileId file = reader.strongest_first.front()->tree.file;
  return {.check = "missing-edition",
          .range = {file, Offset{0}, Offset{0}},
          .message = fmt::format("{} holds no edition", reader.sources.name(file)),
          .why = "a file that is compiled says what edition it is; a file that others borrow from "
                 "cannot be compiled by itself",
          .type = {{"edition \"A Title\"\n"
                    "  size       half-letter\n"
                    "  run        50 copies\n"
                    "  paper      plain\n"
                    "  machine    copier",
                    {}}}};
}

bool bytes_hide_it(const Problems &problems, FileId file) {
  return std::any_of(problems.begin(), problems.end(), [file](const Problem &problem) {
    return problem.range.file == file && problem.check == "malformed-bytes";
  });
}

} // namespace

Reading read_edition(std::string_view path, const Files &files, Sources &sources,
                     Problems &problems) {
  Reading reading;
  Reader reader(files, sources, problems, reading);
  if (!take_in_manuscripts(reader, path))
    return reading;
  if (tell_no_manuscript(problems, reader.strongest_first.front()->tree.file, sources))
    return reading;
  gather(reader);
  if (!reader.edition_line && !bytes_hide_it(problems, reader.strongest_first.front()->tree.file))
    reader.report(missing_edition(reader));
  take_written_currency(reader);
  take_own_facts(reader);
  take_stocks(reader);
  take_machines(reader);
  take_bids(reader);
  take_faces(reader);
  take_styles(reader);
  take_mail(reader);
  take_laws(reader);
  take_licences(reader);
  take_sources(reader);
  take_own_supplies(reader);
  take_folding(reader);
  count_pages(reader);
  take_texts(reader);
  take_standings(reader);
  open_pages(reader);
  take_runnings(reader);
  settle_pages(reader.edition);
  take_finish(reader);
  // Grown by doubling, and the largest of what an edition of ten thousand pages keeps.
  reader.edition.elements.shrink_to_fit();
  take_pieces(reader);
  take_other_books(reader);
  settle_currency(reader);
  settle_exchanges(reader);
  note_nothing_kept(reader);
  note_unused(reader);
  tell_names_once(problems, sources);
  return reading;
}

std::string origin_words(Range from, const Sources &sources) {
  if (!from.somewhere())
    return "default";
  return fmt::format("{}:{}", sources.name(from.file), sources.line_number(from));
}

} // namespace bodkin
