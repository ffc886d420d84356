#include "money/arranging_works.hpp"

#include "money/charge.hpp"
#include "money/standing.hpp"

#include <map>
#include <utility>

namespace bodkin::arranging {
namespace {

bool good_copies_only(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  return hand && (hand->kind == HandKind::signature || hand->kind == HandKind::number);
}

struct Adding {
  const Edition &edition;
  SheetWork &work;
  Exact copies;

  void rate(const Rate &rate, const Work *time) {
    if (!counts(edition, rate.price.currency))
      return;
    const Exact price = price_of_one(edition, rate) * copies;
    if (rate.per == Per::sheet || rate.per == Per::sheets)
      work.on_sheet += price;
    else if (rate.per == Per::side || rate.per == Per::sides)
      work.on_side += price;
    else if (rate.per == Per::hour && time)
      work.on_sheet += price * hours_a_sheet(*time);
  }

  void labour(const Work &time) {
    if (edition.labour && counts(edition, (*edition.labour)->price.currency))
      work.on_sheet += price_of_one(edition, **edition.labour) * copies * hours_a_sheet(time);
  }

  static Exact hours_a_sheet(const Work &time) {
    if (!time.takes || (*time.takes)->per != TimePer::sheet)
      return {};
    return Exact::ratio((*time.takes)->time.milliseconds, 3'600'000);
  }
};

Exact copies_with(const Edition &edition, const Element &element) {
  const Amount each = good_copies_only(element) ? Amount{0, 1, 0} : Amount{1, 0, 0};
  const auto &only = element.work.only;
  return for_run(edition, only ? std::optional(**only) : std::nullopt, each)
      .of(edition.run->copies, edition.run->spare);
}

bool is_priced(const SheetWork &work) {
  return !work.on_sheet.is_zero() || !work.on_side.is_zero();
}

// Of another run's book only what its run alone has: the rest stands in the first's too.
std::vector<SheetWork> work_in(const Edition &edition, const RunBook &book, std::size_t run,
                               std::map<std::size_t, std::vector<PageOfRun>> &pages_of_sources) {
  std::vector<SheetWork> found;
  for (const StandingCharge &stands : where_work_stands(*book.edition)) {
    const Element &element = (*book.edition)[stands.element];
    if (book.piece != nullptr && !is_own_matter(*book.piece, element))
      continue;
    SheetWork work;
    for (const int page : stands.pages)
      work.pages.push_back({run, page});
    Adding adding{edition, work, copies_with(edition, element)};
    for (const Known<Rate> &rate : element.work.costs)
      adding.rate(*rate, &element.work);
    adding.labour(element.work);
    if (const SourceId source = source_of(edition, element); source != SourceId::none) {
      std::vector<PageOfRun> &pages = pages_of_sources[at(source)];
      pages.insert(pages.end(), work.pages.begin(), work.pages.end());
    }
    if (is_priced(work))
      found.push_back(std::move(work));
  }
  return found;
}

} // namespace

std::vector<SheetWork> work_by_sheet(const Edition &edition) {
  std::vector<SheetWork> found;
  std::map<std::size_t, std::vector<PageOfRun>> pages_of_sources;
  const std::vector<RunBook> books = books_of(edition);
  for (std::size_t run = 0; run < books.size(); ++run)
    for (SheetWork &work : work_in(edition, books[run], run, pages_of_sources))
      found.push_back(std::move(work));
  const Exact all = edition.run->copies + edition.run->spare;
  for (auto &[source, pages] : pages_of_sources) {
    SheetWork work{std::move(pages), {}, {}};
    if (edition.sources[source].costs)
      Adding{edition, work, all}.rate(**edition.sources[source].costs, nullptr);
    if (is_priced(work))
      found.push_back(std::move(work));
  }
  return found;
}

} // namespace bodkin::arranging
