#include "edition/elements.hpp"
#include "edition/page_list.hpp"
#include "edition/pages.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

namespace bodkin {
namespace {

std::vector<bool> pages_of_running(Reader &reader, FactLine running) {
  const Edition &edition = reader.edition;
  std::vector<bool> on(static_cast<std::size_t>(*edition.page_count) + 1, false);
  if (const FactLine pages = Facts(running).find("pages")) {
    const PageScope scope{.count = *edition.page_count, .next = 0, .count_written = true};
    for (const int page : pages_of(reader, pages, "pages", scope).pages)
      if (page <= *edition.page_count)
        on[static_cast<std::size_t>(page)] = true;
    return on;
  }
  for (int page = 1; page <= *edition.page_count; ++page)
    on[static_cast<std::size_t>(page)] = !edition.is_cover(page);
  return on;
}

} // namespace

void take_runnings(Reader &reader) {
  Edition &edition = reader.edition;
  for (const Named &named : reader.things(Family::running).all) {
    if (edition.runnings.size() == limits::runnings) {
      reader.report(too_many_things(named.line.range(), limits::runnings));
      return;
    }
    Running running;
    running.name = named.name;
    running.range = named.line.range();
    running.elements = take_elements(reader, named.line, Stands::on_running);
    running.on_page = pages_of_running(reader, named.line);
    // Pages that are left blank, by word or by saying nothing, stay blank.
    for (std::size_t page = 1; page < running.on_page.size(); ++page)
      if (!edition.pages[page].opened.somewhere() || edition.pages[page].blank)
        running.on_page[page] = false;
    edition.runnings.push_back(std::move(running));
  }
}

} // namespace bodkin
