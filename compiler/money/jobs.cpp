#include "money/jobs.hpp"

#include "edition/piece.hpp"
#include "money/standing.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>
#include <utility>

namespace bodkin {
namespace {

// The same number for every copy printed, or for good copies only.
Amount each_copy(const Exact &number, bool good_only) {
  return good_only ? Amount{0, number, 0} : Amount{number, 0, 0};
}

Amount amount_of(Per per, const Job &job, bool good_only) {
  switch (per) {
  case Per::side:
  case Per::sides:
    return each_copy(job.sides, good_only);
  case Per::sheet:
  case Per::sheets:
    return each_copy(job.sheets, good_only);
  case Per::copy:
  case Per::each:
    return each_copy(job.places, good_only);
  case Per::hour: {
    const Exact hour = 60;
    return {job.minutes.printed / hour, job.minutes.good / hour, job.minutes.once / hour};
  }
  case Per::plate:
  case Per::pass:
  case Per::run:
  case Per::once:
    break;
  }
  return {0, 0, 1};
}

Amount minutes_of(const Takes &takes, const Job &job, bool good_only) {
  const Exact minutes = Exact::ratio(takes.time.milliseconds, 60'000);
  switch (takes.per) {
  case TimePer::copy:
    return each_copy(minutes * Exact(job.places), good_only);
  case TimePer::sheet:
    return each_copy(minutes * Exact(job.sheets), good_only);
  case TimePer::once:
    break;
  }
  return {0, 0, minutes};
}

struct Making {
  const Edition &edition;
  const Imposition &imposition;
  std::vector<Job> made{};

  void stand_on(Job &job, const std::vector<int> &pages) const {
    std::set<int> sheets;
    std::set<std::pair<int, int>> sides;
    for (const int page : pages)
      if (static_cast<std::size_t>(page) < imposition.where.size()) {
        const Spotted &spot = imposition.where[static_cast<std::size_t>(page)];
        sheets.insert(spot.sheet);
        sides.insert({spot.sheet, spot.side});
      }
    job.places = static_cast<std::int64_t>(pages.size());
    job.sheets = static_cast<std::int64_t>(sheets.size());
    job.sides = static_cast<std::int64_t>(sides.size());
  }

  void cost(Job &job, const Known<Rate> &rate, bool good_only) const {
    const Amount amount = amount_of(rate->per, job, good_only);
    if (!counts(edition, rate->price.currency)) {
      job.unpriced.push_back({Unpriced::Reason::other_currency, StockId::none, MachineId::none,
                              Mode::black, job.what,
                              amount.of(edition.run->copies, edition.run->spare).ceiling()});
      return;
    }
    job.charges.push_back({job.what, job.group, amount, price_of_one(edition, *rate), rate.from});
    job.charges.back().counted.amount = amount;
  }

  void work(Job &job, const Work &work, bool good_only) const {
    if (work.takes)
      job.minutes = minutes_of(**work.takes, job, good_only);
    for (const Known<Rate> &rate : work.costs)
      cost(job, rate, good_only);
    for (const Known<Rate> &rate : work.kept)
      if (counts(edition, rate->price.currency))
        job.kept += (amount_of(rate->per, job, good_only) * price_of_one(edition, *rate))
                        .of(edition.run->copies, edition.run->spare);
    const Amount minutes = job.minutes;
    if (work.only)
      keep_to(job, **work.only);
    pay(job, work.only ? RunSet(**work.only) : RunSet(), minutes);
  }

  // What is done on a piece is done for the copies that hold it.
  static Work on_piece(Work work, const std::optional<Known<std::uint32_t>> &only) {
    if (!work.only)
      work.only = only;
    return work;
  }

  // Only the copies of one run have it.
  void keep_to(Job &job, std::uint32_t run) const {
    job.what += alone_in(edition, run);
    job.minutes = for_run(edition, run, job.minutes);
    for (Charge &charge : job.charges) {
      charge.what = job.what;
      charge.amount = for_run(edition, run, charge.amount);
      charge.only = run;
    }
  }

  // `each` is what the work takes before it is that of one run.
  void pay(Job &job, const RunSet &only, const Amount &each) const {
    const auto &wage = edition.labour;
    const bool takes = !(job.minutes.printed.is_zero() && job.minutes.good.is_zero() &&
                         job.minutes.once.is_zero());
    if (!wage || !takes || !counts(edition, (*wage)->price.currency))
      return;
    job.labour = Charge{"labour hours", Group::hand, job.minutes * Exact::ratio(1, 60),
                        price_of_one(edition, **wage), wage->from};
    job.labour->only = only;
    job.labour->counted.amount = each * Exact::ratio(1, 60);
  }

  static std::string name_of_matter(const Element &element, int page) {
    if (const auto *hand = std::get_if<Hand>(&element.what))
      return fmt::format("{} {}", name_of(hand->kind), hand->text);
    if (const auto *glued = std::get_if<PasteUp>(&element.what))
      return fmt::format("paste-up {}", glued->text);
    if (const auto *picture = std::get_if<Picture>(&element.what))
      return fmt::format("picture {}", *picture->path);
    return fmt::format("{} on page {}", name_of(element), page);
  }

  void matter(const StandingCharge &stands) {
    const Element &element = edition[stands.element];
    const auto *hand = std::get_if<Hand>(&element.what);
    const bool glued = std::holds_alternative<PasteUp>(element.what);
    if (!hand && !glued && !element.work.takes && element.work.costs.empty())
      return;
    Job job;
    job.what = name_of_matter(element, stands.pages.front());
    job.group = hand || glued ? Group::hand : Group::other;
    stand_on(job, stands.pages);
    work(job, on_piece(element.work, stands.only),
         hand && (hand->kind == HandKind::signature || hand->kind == HandKind::number));
    made.push_back(std::move(job));
  }

  // What one run has in place of a sheet is no sheet more.
  std::int64_t sheets_in_a_copy() const {
    return std::count_if(imposition.sheets.begin(), imposition.sheets.end(),
                         [](const Sheet &sheet) { return sheet.in_place_of == 0; });
  }

  void step(const FinishStep &step) {
    Job job;
    job.what = name_of(step.kind);
    job.group = Group::finish;
    // A printer's copies are cut to size.
    job.covered_by_bids = comes_with_a_bid(step.kind) || cuts_sheets(step);
    job.sheets = step.all ? sheets_in_a_copy() : 1;
    job.sides = 2 * job.sheets;
    work(job, step.work, false);
    if (!job.charges.empty() || !job.unpriced.empty() || step.work.takes)
      made.push_back(std::move(job));
  }

  // A finish of its own is done to each of a piece; the rest is done with the book's.
  void steps_of(const Piece &piece) {
    std::int64_t sheets = 0;
    for (const Sheet &sheet : imposition.sheets)
      sheets += sheet.piece == piece.name ? *piece.count : 0;
    for (std::size_t i = 0; i < piece.own_steps; ++i) {
      const FinishStep &step = piece.edition.finish[i];
      Job job;
      job.what = fmt::format("{} {}", name_of(step.kind), piece.name);
      job.group = Group::finish;
      job.places = *piece.count;
      job.sheets = sheets;
      job.sides = 2 * sheets;
      work(job, on_piece(step.work, piece.only), false);
      if (!job.charges.empty() || !job.unpriced.empty() || step.work.takes)
        made.push_back(std::move(job));
    }
  }

  void fee(const ArtSource &source, const std::vector<int> &pages) {
    Job job;
    job.what = source.name;
    job.group = Group::other;
    stand_on(job, pages);
    job.places = 1; // a fee is paid for the work, not for each place that shows it
    cost(job, *source.costs, false);
    made.push_back(std::move(job));
  }
};

} // namespace

Amount money_of(const Job &job) {
  const Amount money = sum(job.charges);
  return job.labour ? money + job.labour->amount * job.labour->rate : money;
}

std::vector<Job> jobs(const Edition &edition, const Imposition &imposition) {
  Making making{edition, imposition};
  std::map<std::size_t, std::vector<int>> pages_of_sources;
  std::vector<std::size_t> used;
  for (const StandingCharge &stands : where_work_stands_in_all(edition)) {
    making.matter(stands);
    const SourceId source = source_of(edition, edition[stands.element]);
    if (source == SourceId::none || !edition.sources[at(source)].costs)
      continue;
    auto &pages = pages_of_sources[at(source)];
    if (pages.empty())
      used.push_back(at(source));
    pages.insert(pages.end(), stands.pages.begin(), stands.pages.end());
  }
  for (const FinishStep &step : edition.finish)
    making.step(step);
  for (const auto &piece : edition.pieces)
    making.steps_of(*piece);
  for (const std::size_t source : used)
    making.fee(edition.sources[source], pages_of_sources[source]);
  return std::move(making.made);
}

} // namespace bodkin
