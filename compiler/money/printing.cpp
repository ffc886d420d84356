#include "money/printing.hpp"

#include "measure/limits.hpp"
#include "measure/paper.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <limits>
#include <utility>

namespace bodkin {
namespace {

constexpr std::int64_t without_end = std::numeric_limits<std::int64_t>::max();

Size upright(const Size &size) { return size.width > size.height ? size.turned() : size; }

std::span<const SidePrice> steps_of(const Machine &machine) {
  return first_of(machine.prints, limits::price_steps);
}

std::string_view name_of(Mode mode) { return mode == Mode::colour ? "colour" : "black"; }

void add(std::vector<SideCount> &counts, MachineId machine, const Size &size, Mode mode,
         const Exact &sides) {
  for (SideCount &count : counts)
    if (count.machine == machine && count.size == size && count.mode == mode) {
      count.sides += sides;
      return;
    }
  counts.push_back({machine, size, mode, sides});
}

// Prices of a size stand in place of those for any size.
bool priced_by_size(const Machine &machine, Mode mode, const Size &size) {
  return std::ranges::any_of(steps_of(machine), [&](const SidePrice &price) {
    return price.mode == mode && price.size && upright(*price.size) == size;
  });
}

// The highest step that a run of so many sides has reached; of two alike the later line.
const SidePrice *step_reached(const Machine &machine, Mode mode, const Size &size,
                              std::int64_t run_sides) {
  const bool by_size = priced_by_size(machine, mode, size);
  const SidePrice *reached = nullptr;
  for (const SidePrice &price : steps_of(machine)) {
    const bool speaks = price.mode == mode && price.size.has_value() == by_size &&
                        (!by_size || upright(*price.size) == size);
    if (speaks && price.from_sides <= run_sides &&
        (!reached || price.from_sides >= reached->from_sides))
      reached = &price;
  }
  return reached;
}

Exact sides_of(const std::vector<SideCount> &counts, MachineId machine, Mode mode) {
  Exact sides;
  for (const SideCount &count : counts)
    if (count.machine == machine && count.mode == mode)
      sides += count.sides;
  return sides;
}

// Whole sides of a run.
std::int64_t run_of(const Exact &sides_a_copy, std::int64_t printed_copies) {
  return (sides_a_copy * Exact(printed_copies)).ceiling();
}

// The last number of printed copies before a further step of this machine's ink is reached.
std::int64_t before_next_step(const Machine &machine, Mode mode, const Exact &sides_a_copy,
                              std::int64_t printed_copies) {
  std::int64_t last = without_end;
  if (sides_a_copy <= Exact())
    return last;
  for (const SidePrice &price : steps_of(machine))
    if (price.mode == mode && price.from_sides > run_of(sides_a_copy, printed_copies))
      last = std::min(last, (Exact(price.from_sides - 1) / sides_a_copy).floor());
  return last;
}

struct Pricing {
  const Edition &edition;
  std::int64_t printed_copies;
  Printing out{};

  void hold(MachineId machine, Mode mode, const Exact &sides_a_copy) {
    out.holds_to = std::min(out.holds_to,
                            before_next_step(edition[machine], mode, sides_a_copy, printed_copies));
  }

  // The machine's cheapest mode at the steps that its printed sides reach; black of two alike.
  Mode cheapest(const SideCounts &counts, MachineId machine, const Size &size) {
    Mode best = Mode::black;
    std::optional<Exact> least;
    for (const Mode mode : {Mode::black, Mode::colour}) {
      const Exact sides = sides_of(counts.printed, machine, mode);
      hold(machine, mode, sides);
      const SidePrice *price = step_reached(
          edition[machine], mode, size, std::max<std::int64_t>(run_of(sides, printed_copies), 1));
      if (price && (!least || price_of_one(price->rate) < *least)) {
        least = price_of_one(price->rate);
        best = mode;
      }
    }
    return best;
  }

  std::vector<SideCount> with_blanks(const SideCounts &counts) {
    std::vector<SideCount> all = counts.printed;
    for (const SideCount &blank : counts.blank)
      add(all, blank.machine, blank.size, cheapest(counts, blank.machine, blank.size), blank.sides);
    return all;
  }

  void charge(const SideCount &count, const Exact &sides_of_ink) {
    const Machine &machine = edition[count.machine];
    const bool by_size = priced_by_size(machine, count.mode, count.size);
    std::string what = fmt::format("{} sides at {}", name_of(count.mode), machine.name);
    if (by_size)
      what += " on " + written(count.size, edition.ruler);
    const SidePrice *price =
        step_reached(machine, count.mode, count.size, run_of(sides_of_ink, printed_copies));
    if (!price || !same_money(*edition.currency, price->rate.price.currency))
      return leave_out(count, what, price != nullptr);
    const Exact rate = price_of_one(price->rate);
    for (Charge &line : out.charges)
      if (line.what == what && line.rate == rate) {
        line.amount.printed += count.sides;
        return;
      }
    out.charges.push_back({what, Group::printing, {count.sides, 0, 0}, rate, price->range});
  }

  // The last sheet of a run is printed whole, though not all that is cut out of it is wanted.
  void fill_sheets(std::size_t first_charge) {
    for (std::size_t i = first_charge; i < out.charges.size(); ++i) {
      const Exact sides = out.charges[i].amount.printed * Exact(printed_copies);
      out.charges[i].amount.once += Exact(sides.ceiling()) - sides;
    }
  }

  void leave_out(const SideCount &count, const std::string &what, bool has_price) {
    const bool has_steps = std::ranges::any_of(
        steps_of(edition[count.machine]), [&](const SidePrice &p) { return p.mode == count.mode; });
    const auto reason = has_price   ? Unpriced::Reason::other_currency
                        : has_steps ? Unpriced::Reason::below_least_step
                                    : Unpriced::Reason::no_price;
    out.unpriced.push_back({reason, StockId::none, count.machine, count.mode, what,
                            run_of(count.sides, printed_copies)});
  }

  void tax(MachineId machine, std::size_t first_charge) {
    const auto &share = edition[machine].tax;
    if (!share)
      return;
    const std::vector<Charge> taxed(out.charges.begin() + static_cast<std::ptrdiff_t>(first_charge),
                                    out.charges.end());
    if (!taxed.empty())
      out.taxes.push_back(
          {"tax at " + edition[machine].name, Group::tax, sum(taxed), Exact(**share), share->from});
  }
};

std::vector<MachineId> machines_of(const std::vector<SideCount> &counts) {
  std::vector<MachineId> machines;
  for (const SideCount &count : counts)
    if (std::ranges::find(machines, count.machine) == machines.end())
      machines.push_back(count.machine);
  return machines;
}

Exact in_a_copy(const Sheet &sheet) { return Exact::ratio(sheet.in_a_copy, sheet.up); }

} // namespace

SideCounts count_sides(const Edition &edition, const Imposition &imposition,
                       const ChargedSides &sides, Whose whose) {
  SideCounts counts;
  for (const ChargedSide &side : sides) {
    if (side.machine == MachineId::none)
      continue;
    const Sheet &sheet = imposition.sheets[static_cast<std::size_t>(side.sheet)];
    if (whose == Whose::pieces && sheet.piece.empty())
      continue;
    const Size size = upright(sheet.size);
    if (side.printed)
      add(counts.printed, side.machine, size, side.mode, in_a_copy(sheet));
    else if (*edition[side.machine].blank_charged && side.fed_both)
      add(counts.blank, side.machine, size, Mode::black, in_a_copy(sheet));
  }
  return counts;
}

Printing printing(const Edition &edition, const SideCounts &counts, std::int64_t printed_copies) {
  Pricing pricing{edition, printed_copies};
  pricing.out.holds_to = without_end;
  const std::vector<SideCount> all = pricing.with_blanks(counts);
  for (const MachineId machine : machines_of(all)) {
    const std::size_t first = pricing.out.charges.size();
    for (const Mode mode : {Mode::colour, Mode::black}) {
      const Exact sides_of_ink = sides_of(all, machine, mode);
      pricing.hold(machine, mode, sides_of_ink);
      for (const SideCount &count : all)
        if (count.machine == machine && count.mode == mode)
          pricing.charge(count, sides_of_ink);
    }
    pricing.fill_sheets(first);
    pricing.tax(machine, first);
  }
  return std::move(pricing.out);
}

} // namespace bodkin
