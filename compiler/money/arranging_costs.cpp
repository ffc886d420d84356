#include "money/arranging_costs.hpp"

#include "money/arranging_pieces.hpp"
#include "money/arranging_prices.hpp"

#include <algorithm>
#include <numeric>
#include <optional>
#include <set>

namespace bodkin::arranging {

namespace {

// How many pages of one run's book draw, and in what.
struct Drawing {
  std::int64_t any = 0, colour = 0;
};

class CostsOf {
public:
  CostsOf(const Question &question, Task &task)
      : question_(question), edition_(question.written.edition),
        imposition_(question.written.laid.imposition), task_(task),
        beside_(edition_, question.written.laid) {}

  void take() {
    count();
    Costs &costs = task_.costs;
    const std::size_t stocks = std::max<std::size_t>(edition_.stocks.size(), 1);
    machines_ = std::max<std::size_t>(edition_.machines.size(), 1);
    for (std::size_t machine = 0; machine < machines_; ++machine)
      costs.turns_none.push_back(machine < edition_.machines.size() &&
                                 edition_.other_machines.empty() &&
                                 *edition_.machines[machine].duplex == Duplex::none);
    for (std::size_t stock = 0; stock < stocks; ++stock)
      costs.prints_one_side.push_back(stock < edition_.stocks.size() &&
                                      *edition_.stocks[stock].one_side);
    each_mode(
        [&](std::size_t machine, Mode mode) { costs.steps.push_back(steps_of(machine, mode)); });
    for (std::size_t run = 0; run < question_.books.size(); ++run)
      costs.runs.push_back(of_run(run));
    each_mode([&](std::size_t machine, Mode mode) {
      task_.price_steps.push_back(price_steps(machine, mode));
    });
    for (const SheetWork &work : question_.works) {
      costs.work_on_sheet.push_back(in_nanos(work.on_sheet));
      costs.work_on_side.push_back(in_nanos(work.on_side));
    }
    take_beside();
  }

private:
  template <typename Visit>
  void each_mode(Visit visit) const {
    for (std::size_t machine = 0; machine < machines_; ++machine)
      for (const Mode mode : {Mode::black, Mode::colour})
        visit(machine, mode);
  }

  void count() {
    std::set<MachineId> &machines = machines_asked_;
    machines.insert(*edition_.machine);
    for (std::size_t run = 0; run < question_.books.size(); ++run) {
      Drawing drawing;
      for (int page = 1; page <= task_.pages(); ++page) {
        machines.insert(*question_.page(run, page).machine);
        drawing.any += question_.draws(run, page) ? 1 : 0;
        drawing.colour +=
            question_.draws(run, page) && *question_.page(run, page).mode == Mode::colour ? 1 : 0;
      }
      drawings_.push_back(drawing);
      unit_ = std::gcd(unit_, question_.books[run].printed);
      all_ += question_.books[run].printed;
    }
    if (printed_alike())
      unit_ = all_;
    for (const Sheet &sheet : imposition_.sheets)
      for (const Side &side : sheet.sides)
        if (sheet.piece.empty() && !side.places.empty()) {
          ++sides_;
          a_side_ = std::max(a_side_, static_cast<std::int64_t>(side.places.size()));
        }
    one_machine_ = machines.size() == 1 && edition_.other_machines.empty();
    unit_ = std::max<std::int64_t>(unit_, 1);
  }

  // Runs may differ in paper alone.
  bool printed_alike() const {
    return std::ranges::all_of(task_.kinds, [](const PageKind &kind) {
      return std::ranges::all_of(kind.runs, [&](const PageInRun &page) {
        const PageInRun &first = kind.runs.front();
        return page.draws == first.draws && page.mode == first.mode &&
               page.machine == first.machine;
      });
    });
  }

  // A side that is the same in all runs is counted once, in the first.
  std::int64_t counted_in(std::size_t run) const {
    if (unit_ == all_)
      return run == 0 ? 1 : 0;
    return question_.books[run].printed / unit_;
  }

  // Of one mode, in a copy of a run.
  SideRange in_a_copy(std::size_t run, Mode mode) const {
    const Drawing &drawing = drawings_[run];
    const std::int64_t coloured = std::min(sides_, drawing.colour);
    const auto at_least = [&](std::int64_t pages) { return (pages + a_side_ - 1) / a_side_; };
    SideRange range{mode == Mode::colour ? at_least(drawing.colour)
                                         : at_least(drawing.any) - coloured,
                    mode == Mode::colour ? coloured : sides_ - at_least(drawing.colour)};
    range.fewest = one_machine_ ? std::max<std::int64_t>(range.fewest, 0) : 0;
    return range;
  }

  // A charged blank side goes by the cheapest mode, and so adds to colour's sides where that is it.
  bool blanks_may_be_coloured(MachineId id) const {
    const Machine &machine = edition_[id];
    const auto cheaper = [&](const SidePrice &colour) {
      return colour.mode == Mode::colour &&
             std::ranges::any_of(machine.prints, [&](const SidePrice &black) {
               return black.mode == Mode::black &&
                      price_of_one(edition_, colour.rate) < price_of_one(edition_, black.rate);
             });
    };
    return *machine.blank_charged && std::ranges::any_of(machine.prints, cheaper);
  }

  SideRange range_of(MachineId machine, Mode mode) const {
    Exact fewest = beside_.sides(machine, mode), most = fewest;
    for (std::size_t run = 0; run < question_.books.size(); ++run) {
      SideRange range = in_a_copy(run, mode);
      if (mode == Mode::colour && blanks_may_be_coloured(machine))
        range.most = sides_;
      fewest += question_.of_run(run) * Exact(range.fewest);
      most += Exact(question_.of_run(run).ceiling()) * Exact(range.most);
    }
    return {fewest.floor(), most.ceiling()};
  }

  Size sheet_size(std::size_t stock) const {
    if (stock < edition_.stocks.size() && edition_.stocks[stock].sheet)
      return (*edition_.stocks[stock].sheet)->upright();
    return imposition_.sheets.front().size.upright();
  }

  Nano in_nanos(const Exact &money) {
    const Nano whole = nano(money);
    task_.in_whole_nanos = task_.in_whole_nanos && money * Exact(1'000'000'000) == Exact(whole);
    return whole;
  }

  RunCosts of_run(std::size_t run) {
    RunCosts costs;
    costs.sides = counted_in(run);
    for (std::size_t stock = 0; stock < task_.costs.stocks(); ++stock) {
      costs.sheet.push_back(
          stock < edition_.stocks.size()
              ? nano(price_of_sheet(edition_, edition_.stocks[stock]) * question_.of_run(run))
              : 0);
      each_mode([&](std::size_t machine, Mode mode) {
        costs.side.push_back(in_nanos(least_of_side(stock, machine, mode) * question_.of_run(run)));
      });
    }
    return costs;
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

  // Only where the price of a side is the same on every paper, and printed sides alone count.
  std::vector<PriceStep> price_steps(std::size_t machine, Mode mode) {
    const std::size_t priced = machine * 2 + static_cast<std::size_t>(mode);
    if (task_.costs.steps[priced] != Steps::by_mode || !edition_.other_machines.empty() ||
        *edition_.machines[machine].blank_charged || !on_whole_sheets(question_))
      return {};
    const auto id = static_cast<MachineId>(machine);
    const Exact beside = beside_.sides(id, mode);
    const Exact unit =
        question_.books.size() == 1 ? question_.of_run(0) : question_.share * Exact(unit_);
    // The book's own sides from which on, with those of pieces, the runs reach a step.
    const auto from = [&](std::int64_t sides) {
      return std::max<std::int64_t>(((Exact(sides - 1) - beside) / unit).floor() + 1, 0);
    };
    const std::vector<RunStep> run =
        run_steps(edition_, edition_.machines[machine], mode, range_of(id, mode));
    std::vector<PriceStep> steps;
    for (const RunStep &step : run) {
      PriceStep priced_so{from(step.from), no_limit, {}, nano(step.side * beside)};
      if (step.before != 0)
        priced_so.most = from(step.before) - 1;
      for (std::size_t r = 0; r < question_.books.size(); ++r)
        priced_so.side.push_back(in_nanos(step.side * question_.of_run(r)));
      steps.push_back(std::move(priced_so));
    }
    const auto least = std::ranges::min_element(steps, {}, &PriceStep::beside);
    const Nano at_least = steps.empty() ? 0 : least->beside;
    for (PriceStep &step : steps)
      step.beside -= at_least;
    return steps;
  }

  // By the machine itself, or by those that a pass may go to instead of the edition's own.
  Exact least_of_side(std::size_t stock, std::size_t machine, Mode mode) const {
    if (machine >= edition_.machines.size())
      return {};
    std::vector<MachineId> may_print{static_cast<MachineId>(machine)};
    if (may_print.front() == *edition_.machine)
      for (const Known<MachineId> &other : edition_.other_machines)
        may_print.push_back(*other);
    std::erase_if(may_print, [&](MachineId other) { return !prints(other, mode); });
    if (may_print.empty())
      return {};
    Exact least = least_at(stock, may_print.front(), mode);
    for (const MachineId other : may_print)
      least = std::min(least, least_at(stock, other, mode));
    return least;
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
    Exact all = beside_.papers();
    for (const Job &job : jobs(edition_, imposition_))
      all += money_of(job).of(edition_.run->copies, edition_.run->spare);
    const bool any = std::ranges::any_of(drawings_, [](const Drawing &d) { return d.any > 0; });
    if (any)
      all += setup_anywhere();
    for (const PrintedPieces &sides : beside_.printed())
      all += least_for_side(edition_, edition_[sides.machine], sides.sheet, sides.mode,
                            range_of(sides.machine, sides.mode)) *
             sides.sides;
    if (any)
      task_.sides_least = nano(sides_at_least());
    task_.beside = nano(all);
    for (const SheetWork &work : question_.works)
      task_.beside -= cost_as_written(work);
  }

  // One of the machines that may print it is made ready once.
  Exact setup_anywhere() const {
    std::optional<Exact> least;
    const auto may_print = [&](MachineId machine) {
      const Exact setup =
          machine == MachineId::none ? Exact() : setup_at_least(edition_, edition_[machine]);
      least = least ? std::min(*least, setup) : setup;
    };
    for (const MachineId machine : machines_asked_)
      may_print(machine);
    for (const Known<MachineId> &other : edition_.other_machines)
      may_print(*other);
    return least.value_or(Exact());
  }

  // A machine's least holds for sides and setup together, and those of pieces are beside it.
  Exact sides_at_least() const {
    if (!one_machine_ || *edition_.machine == MachineId::none || !beside_.printed().empty())
      return {};
    const Machine &machine = edition_[*edition_.machine];
    return std::max(least_of_run(edition_, machine) - setup_at_least(edition_, machine), Exact());
  }

  Nano cost_as_written(const SheetWork &work) const {
    std::set<std::pair<std::size_t, int>> sheets;
    std::set<std::tuple<std::size_t, int, int>> sides;
    for (const PageOfRun &there : work.pages) {
      const PagePlaceInBook &place = task_.places[static_cast<std::size_t>(there.page)];
      sheets.insert({there.run, place.sheet});
      sides.insert({there.run, place.sheet, place.side});
    }
    return nano(work.on_sheet * Exact(static_cast<std::int64_t>(sheets.size())) +
                work.on_side * Exact(static_cast<std::int64_t>(sides.size()))) +
           1;
  }

  const Question &question_;
  const Edition &edition_;
  const Imposition &imposition_;
  Task &task_;
  const BesideTheBook beside_;
  std::size_t machines_ = 1;
  std::set<MachineId> machines_asked_; // by pages, and the edition's own
  std::vector<Drawing> drawings_;      // by run
  std::int64_t sides_ = 0, a_side_ = 1;
  std::int64_t unit_ = 0, all_ = 0; // copies in which all runs can be counted, and all there are
  bool one_machine_ = true;
};

} // namespace

void take_costs(const Question &question, Task &task) { CostsOf(question, task).take(); }

} // namespace bodkin::arranging
