#include "money/arranging_question.hpp"

#include "money/arranging_prices.hpp"
#include "money/arranging_works.hpp"
#include "money/saving.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace bodkin::arranging {
namespace {

class Asking {
public:
  Asking(const AsWritten &written, const std::vector<PageBlock> &blocks)
      : written_(written), edition_(written.edition), imposition_(written.laid.imposition),
        count_(*edition_.page_count), printed_(edition_.run->copies + edition_.run->spare),
        share_(Exact::ratio(imposition_.sheets.front().in_a_copy, imposition_.sheets.front().up)),
        works_(work_by_sheet(edition_)) {
    works_.resize(std::min(works_.size(), most_works));
    take_places();
    take_blocks(blocks);
    take_sheets();
    count_run();
    take_costs();
    take_beside();
  }

  Task task() && { return std::move(task_); }

private:
  void take_places() {
    std::map<std::pair<Length, Length>, int> shapes;
    task_.places.resize(static_cast<std::size_t>(count_) + 1);
    for (int page = 1; page <= count_; ++page) {
      const Spotted &spot = imposition_.where[static_cast<std::size_t>(page)];
      const Size size = imposition_.size_of(page);
      const int shape =
          shapes.emplace(std::pair(size.width, size.height), static_cast<int>(shapes.size()))
              .first->second;
      task_.places[static_cast<std::size_t>(page)] = {spot.sheet, spot.side, shape};
    }
  }

  PageKind kind_of(int number) const {
    const Page &page = edition_.pages[static_cast<std::size_t>(number)];
    PageKind kind;
    kind.draws = draws(number);
    kind.mode = kind.draws ? *page.mode : Mode::black;
    if (page.asked.stock && **page.asked.stock != StockId::none)
      kind.stock = static_cast<int>(**page.asked.stock);
    if (page.asked.machine && **page.asked.machine != MachineId::none)
      kind.machine = static_cast<int>(**page.asked.machine);
    kind.shape = task_.places[static_cast<std::size_t>(number)].shape;
    for (std::size_t work = 0; work < works_.size(); ++work)
      if (std::ranges::find(works_[work].pages, number) != works_[work].pages.end())
        kind.works |= 1U << work;
    return kind;
  }

  void take_blocks(const std::vector<PageBlock> &blocks) {
    std::map<PageKind, int> known;
    for (const PageBlock &block : blocks) {
      MovingBlock moving;
      moving.first = block.first;
      moving.stays = block.stays;
      moving.from_left = block.holds_spread && block.first % 2 == 0;
      moving.from_right = block.holds_spread && block.first % 2 != 0;
      for (int page = block.first; page < block.first + block.length; ++page) {
        const auto [entry, fresh] =
            known.emplace(kind_of(page), static_cast<int>(task_.kinds.size()));
        if (fresh)
          task_.kinds.push_back(entry->first);
        moving.kinds.push_back(entry->second);
      }
      task_.blocks.push_back(std::move(moving));
    }
  }

  // The paper and machines of a sheet whose pages ask for none.
  void take_sheets() {
    Edition unasking = without_matter(edition_);
    for (Page &page : unasking.pages)
      page.asked.stock = {}, page.asked.machine = {};
    const Laid plain = lay(unasking, written_.draws, written_.sources);
    for (const Sheet &sheet : plain.imposition.sheets)
      if (sheet.piece.empty())
        task_.sheets.push_back(
            {index(sheet.stock), {index(*edition_.machine), index(*edition_.machine)}});
  }

  // A name that nothing bears has been told of; any other stands in its place.
  template <typename Id>
  static int index(Id id) {
    return id == Id::none ? 0 : static_cast<int>(id);
  }

  bool draws(int page) const {
    return static_cast<std::size_t>(page) < written_.draws.size() &&
           written_.draws[static_cast<std::size_t>(page)];
  }

  bool of_the_book(const ChargedSide &side) const {
    const Sheet &sheet = imposition_.sheets[static_cast<std::size_t>(side.sheet)];
    return sheet.piece.empty() && (sheet.reverse == 0 || side.side == 0);
  }

  void count_run() {
    for (int page = 1; page <= count_; ++page) {
      drawing_ += draws(page) ? 1 : 0;
      colour_ += draws(page) && *edition_.pages[static_cast<std::size_t>(page)].mode == Mode::colour
                     ? 1
                     : 0;
    }
    for (const Sheet &sheet : imposition_.sheets)
      for (const Side &side : sheet.sides) {
        if (!sheet.piece.empty() || side.places.empty())
          continue;
        ++sides_;
        a_side_ = std::max<std::int64_t>(a_side_, static_cast<std::int64_t>(side.places.size()));
      }
    std::set<MachineId> machines{*edition_.machine};
    for (const Page &page : edition_.pages)
      machines.insert(*page.machine);
    one_machine_ = machines.size() == 1 && edition_.other_machines.empty();
  }

  // Pieces print what they print in any order.
  // Sheets of a piece in the run, for each printed copy; where one run alone has it, on the
  // average.
  Exact sheets_a_copy(const Sheet &sheet) const {
    return for_run(edition_, sheet.only, {Exact::ratio(sheet.in_a_copy, sheet.up), 0, 0})
               .of(edition_.run->copies, edition_.run->spare) /
           Exact(printed_);
  }

  Exact sides_of_pieces(MachineId machine, Mode mode) const {
    Exact beside;
    for (const ChargedSide &side : written_.laid.sides)
      if (!of_the_book(side) && side.printed && side.machine == machine && side.mode == mode)
        beside += sheets_a_copy(imposition_.sheets[static_cast<std::size_t>(side.sheet)]);
    return beside;
  }

  // Sheets of the run for one of a copy of the book.
  Exact book_run() const { return share_ * Exact(printed_); }

  SideRange range_of(MachineId machine, Mode mode) const {
    const Exact beside = sides_of_pieces(machine, mode);
    std::int64_t most = mode == Mode::colour ? std::min(sides_, colour_) : sides_;
    std::int64_t fewest = mode == Mode::colour
                              ? (colour_ + a_side_ - 1) / a_side_
                              : (drawing_ + a_side_ - 1) / a_side_ - std::min(sides_, colour_);
    if (!one_machine_)
      fewest = 0;
    fewest = std::max<std::int64_t>(fewest, 0);
    const Exact printed = printed_;
    return {((beside + share_ * Exact(fewest)) * printed).floor(),
            ((beside + share_ * Exact(most)) * printed).ceiling()};
  }

  Size sheet_size(std::size_t stock) const {
    if (stock < edition_.stocks.size() && edition_.stocks[stock].sheet)
      return (*edition_.stocks[stock].sheet)->upright();
    return imposition_.sheets.front().size.upright();
  }

  void take_costs() {
    Costs &costs = task_.costs;
    const std::size_t stocks = std::max<std::size_t>(edition_.stocks.size(), 1);
    const std::size_t machines = std::max<std::size_t>(edition_.machines.size(), 1);
    costs.turns_none.resize(machines);
    for (std::size_t machine = 0; machine < edition_.machines.size(); ++machine) {
      costs.turns_none[machine] =
          edition_.other_machines.empty() && *edition_.machines[machine].duplex == Duplex::none;
      const Machine &of = edition_.machines[machine];
      task_.sheets_matter = task_.sheets_matter || *of.blank_charged || of.least.has_value() ||
                            (of.setup && (*of.setup)->per == Per::pass);
    }
    task_.sheets_matter = task_.sheets_matter || !edition_.other_machines.empty();
    for (std::size_t machine = 0; machine < machines; ++machine)
      for (const Mode mode : {Mode::black, Mode::colour})
        costs.steps.push_back(steps_of(machine, mode));
    for (std::size_t machine = 0; machine < machines; ++machine)
      for (const Mode mode : {Mode::black, Mode::colour})
        task_.price_steps.push_back(price_steps(machine, mode));
    for (std::size_t stock = 0; stock < stocks; ++stock) {
      const bool known = stock < edition_.stocks.size();
      costs.sheet.push_back(
          known ? nano(price_of_sheet(edition_, edition_.stocks[stock]) * book_run()) : 0);
      costs.prints_one_side.push_back(known && *edition_.stocks[stock].one_side);
      for (std::size_t machine = 0; machine < machines; ++machine)
        for (const Mode mode : {Mode::black, Mode::colour})
          costs.side.push_back(least_of_side(stock, machine, mode));
    }
    for (const SheetWork &work : works_) {
      costs.work_on_sheet.push_back(nano(work.on_sheet));
      costs.work_on_side.push_back(nano(work.on_side));
    }
  }

  Steps steps_of(std::size_t machine, Mode mode) const {
    if (machine >= edition_.machines.size())
      return Steps::none;
    int prices = 0;
    bool sized = false;
    for (const SidePrice &price : edition_.machines[machine].prints)
      if (price.mode == mode) {
        ++prices;
        sized = sized || price.size.has_value();
      }
    return prices < 2 ? Steps::none : sized ? Steps::by_paper : Steps::by_mode;
  }

  // Only where the price of a side is the same on every paper.
  std::vector<PriceStep> price_steps(std::size_t machine, Mode mode) const {
    const std::size_t priced = machine * 2 + static_cast<std::size_t>(mode);
    if (task_.costs.steps[priced] != Steps::by_mode)
      return {};
    const auto id = static_cast<MachineId>(machine);
    const SideRange range = range_of(id, mode);
    const Exact beside = sides_of_pieces(id, mode);
    std::vector<PriceStep> steps;
    Exact least;
    for (const RunStep &step : run_steps(edition_, edition_.machines[machine], mode, range)) {
      const Exact of_pieces = step.side * beside * Exact(printed_);
      if (steps.empty() || of_pieces < least)
        least = of_pieces;
      // The book's own sides from which on, with those of pieces, the run reaches the step.
      const auto from = [&](std::int64_t sides) {
        return ((Exact(sides - 1) / Exact(printed_) - beside) / share_).floor() + 1;
      };
      steps.push_back({std::max<std::int64_t>(from(step.from), 0),
                       step.before == 0 ? sides_ : from(step.before) - 1,
                       nano(step.side * book_run()), nano(of_pieces)});
    }
    const Nano at_least = nano(least);
    for (PriceStep &step : steps)
      step.beside -= at_least;
    return steps;
  }

  // By the machine itself, or by those that a pass may go to instead of the edition's own.
  Nano least_of_side(std::size_t stock, std::size_t machine, Mode mode) const {
    if (machine >= edition_.machines.size())
      return 0;
    std::vector<MachineId> may_print{static_cast<MachineId>(machine)};
    if (may_print.front() == *edition_.machine)
      for (const Known<MachineId> &other : edition_.other_machines)
        may_print.push_back(*other);
    std::erase_if(may_print, [&](MachineId other) { return !prints(other, mode); });
    if (may_print.empty())
      return 0;
    Exact least = least_at(stock, may_print.front(), mode);
    for (const MachineId other : may_print)
      least = std::min(least, least_at(stock, other, mode));
    return nano(least * book_run());
  }

  bool prints(MachineId machine, Mode mode) const {
    return machine != MachineId::none &&
           std::ranges::any_of(edition_[machine].prints,
                               [&](const SidePrice &price) { return price.mode == mode; });
  }

  Exact least_at(std::size_t stock, MachineId machine, Mode mode) const {
    return least_for_side(edition_, edition_[machine], sheet_size(stock), mode,
                          range_of(machine, mode));
  }

  // Work, fees and pieces: as the estimate has them, less what is counted sheet by sheet.
  void take_beside() {
    const Bill used = bill(edition_, imposition_, written_.laid.sides, jobs(edition_, imposition_));
    Exact all = used.papers_of_pieces.of(edition_.run->copies, edition_.run->spare);
    for (const Job &job : used.jobs)
      all += money_of(job).of(edition_.run->copies, edition_.run->spare);
    if (one_machine_ && drawing_ > 0 && *edition_.machine != MachineId::none)
      all += setup_at_least(edition_, edition_[*edition_.machine]);
    task_.beside = nano(all);
    for (const ChargedSide &side : written_.laid.sides) {
      const Sheet &sheet = imposition_.sheets[static_cast<std::size_t>(side.sheet)];
      if (of_the_book(side) || !side.printed || side.machine == MachineId::none)
        continue;
      task_.beside += nano(least_for_side(edition_, edition_[side.machine], sheet.size.upright(),
                                          side.mode, range_of(side.machine, side.mode)) *
                           Exact(printed_) * sheets_a_copy(sheet));
    }
    for (const SheetWork &work : works_)
      task_.beside -= cost_as_written(work);
  }

  Nano cost_as_written(const SheetWork &work) const {
    std::set<int> sheets;
    std::set<std::pair<int, int>> sides;
    for (const int page : work.pages) {
      const PagePlaceInBook &place = task_.places[static_cast<std::size_t>(page)];
      sheets.insert(place.sheet);
      sides.insert({place.sheet, place.side});
    }
    return nano(work.on_sheet * Exact(static_cast<std::int64_t>(sheets.size())) +
                work.on_side * Exact(static_cast<std::int64_t>(sides.size()))) +
           1;
  }

  const AsWritten &written_;
  const Edition &edition_;
  const Imposition &imposition_;
  int count_;
  std::int64_t printed_;
  Exact share_; // of a sheet for each sheet of a copy, where the book is laid several up
  std::vector<SheetWork> works_;
  std::int64_t drawing_ = 0, colour_ = 0, sides_ = 0, a_side_ = 1;
  bool one_machine_ = true;
  Task task_;
};

} // namespace

Task task_of(const AsWritten &written, const std::vector<PageBlock> &blocks) {
  return Asking(written, blocks).task();
}

} // namespace bodkin::arranging
