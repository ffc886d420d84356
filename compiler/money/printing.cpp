#include "money/printing.hpp"

#include "measure/limits.hpp"
#include "measure/paper.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <limits>
#include <map>
#include <utility>

namespace bodkin {
namespace {

constexpr std::int64_t without_end = std::numeric_limits<std::int64_t>::max();

std::span<const SidePrice> steps_of(const Machine &machine) {
  return first_of(machine.prints, limits::price_steps);
}

bool is_whole(const Exact &number) { return Exact(number.floor()) == number; }

// What grows with the run is rounded up anew for another; the rest is what it is.
void add_rounded(std::vector<RoundedUp> &rounded, const std::vector<InWhole> &whole,
                 const Exact &rate) {
  for (const InWhole &of : whole)
    if (!is_whole(of.each))
      rounded.push_back({of.each, of.once, rate * of.alike});
}

std::string_view name_of(Mode mode) { return mode == Mode::colour ? "colour" : "black"; }

// Prices of a size stand in place of those for any size.
bool priced_by_size(const Machine &machine, Mode mode, const Size &size) {
  return std::ranges::any_of(steps_of(machine), [&](const SidePrice &price) {
    return price.mode == mode && price.size && price.size->upright() == size;
  });
}

// The highest step that a run of so many sides has reached; of two alike the later line.
const SidePrice *step_reached(const Machine &machine, Mode mode, const Size &size,
                              std::int64_t run_sides) {
  const bool by_size = priced_by_size(machine, mode, size);
  const SidePrice *reached = nullptr;
  for (const SidePrice &price : steps_of(machine)) {
    const bool speaks = price.mode == mode && price.size.has_value() == by_size &&
                        (!by_size || price.size->upright() == size);
    if (speaks && price.from_sides <= run_sides &&
        (!reached || price.from_sides >= reached->from_sides))
      reached = &price;
  }
  return reached;
}

// Sides of a run: so many a printed copy, and so many beside.
struct InkSides {
  Exact each, once;
  std::vector<InWhole> whole{};
  std::int64_t of(std::int64_t printed_copies) const {
    return (each * Exact(printed_copies) + once + unused(whole, printed_copies)).ceiling();
  }
  // The most printed copies that need no more than `most`.
  std::int64_t last_within(std::int64_t most) const {
    std::int64_t copies = ((Exact(most) - once) / each).floor();
    while (copies > 0 && of(copies) > most)
      --copies;
    return copies;
  }
};

InkSides sides_of(const std::vector<SideCount> &counts, MachineId machine, Mode mode) {
  InkSides sides;
  for (const SideCount &count : counts)
    if (count.machine == machine && count.mode == mode) {
      sides.each += count.sides;
      sides.once += count.once;
      for (const InWhole &whole : count.whole)
        add_whole(sides.whole, whole);
    }
  return sides;
}

// The last number of printed copies before a further step of this machine's ink is reached.
std::int64_t before_next_step(const Machine &machine, Mode mode, const InkSides &sides,
                              std::int64_t printed_copies) {
  std::int64_t last = without_end;
  if (sides.each <= Exact())
    return last;
  for (const SidePrice &price : steps_of(machine))
    if (price.mode == mode && price.from_sides > sides.of(printed_copies))
      last = std::min(last, sides.last_within(price.from_sides - 1));
  return last;
}

struct Pricing {
  const Edition &edition;
  std::int64_t printed_copies;
  Printing out{};

  void hold(MachineId machine, Mode mode, const InkSides &sides) {
    out.holds_to =
        std::min(out.holds_to, before_next_step(edition[machine], mode, sides, printed_copies));
  }

  // The machine's cheapest mode at the steps that its printed sides reach; black of two alike.
  Mode cheapest(const SideCounts &counts, MachineId machine, const Size &size) {
    Mode best = Mode::black;
    std::optional<Exact> least;
    for (const Mode mode : {Mode::black, Mode::colour}) {
      const InkSides sides = sides_of(counts.printed, machine, mode);
      hold(machine, mode, sides);
      const SidePrice *price = step_reached(edition[machine], mode, size,
                                            std::max<std::int64_t>(sides.of(printed_copies), 1));
      if (price && (!least || price_of_one(edition, price->rate) < *least)) {
        least = price_of_one(edition, price->rate);
        best = mode;
      }
    }
    return best;
  }

  std::vector<SideCount> with_blanks(const SideCounts &counts) {
    std::vector<SideCount> all = counts.printed;
    for (SideCount blank : counts.blank) {
      blank.mode = cheapest(counts, blank.machine, blank.size);
      add(all, blank);
    }
    return all;
  }

  void charge(const SideCount &count, const InkSides &sides_of_ink) {
    const Machine &machine = edition[count.machine];
    const bool by_size = priced_by_size(machine, count.mode, count.size);
    std::string what = fmt::format("{} sides at {}", name_of(count.mode), machine.name);
    if (by_size)
      what += " on " + written(count.size, edition.ruler);
    what += alone_in(edition, count.only);
    const SidePrice *price =
        step_reached(machine, count.mode, count.size, sides_of_ink.of(printed_copies));
    if (!price || !counts(edition, price->rate.price.currency))
      return leave_out(count, what, price != nullptr);
    const Exact rate = price_of_one(edition, price->rate);
    for (Charge &line : out.charges)
      if (line.what == what && line.rate == rate) {
        line.amount.printed += count.sides;
        line.amount.once += count.once;
        for (const InWhole &whole : count.whole)
          add_whole(line.whole, whole);
        add(line.counted, count.counted);
        return;
      }
    Charge line{what, Group::printing, {count.sides, 0, count.once}, rate, price->range};
    line.only = count.only;
    line.whole = count.whole;
    line.counted = count.counted;
    line.counted.machine = count.machine;
    line.counted.mode = count.mode;
    if (by_size)
      line.counted.size = count.size;
    out.charges.push_back(std::move(line));
  }

  // The last of each sheet is printed whole, though not all that is cut out of it is wanted.
  void fill_sheets(std::size_t first_charge) {
    for (std::size_t i = first_charge; i < out.charges.size(); ++i) {
      Charge &line = out.charges[i];
      add_rounded(out.rounded, line.whole, line.rate);
      line.amount.once += unused(line.whole, printed_copies);
    }
  }

  // What is paid before a side is printed.
  void set_up(MachineId machine, const std::map<RunSet, std::int64_t> &passes) {
    const auto &setup = edition[machine].setup;
    if (!setup || !counts(edition, (*setup)->price.currency))
      return;
    if ((*setup)->per != Per::pass)
      return set_up(machine, RunSet(), 1);
    for (const auto &[only, times] : passes)
      set_up(machine, only, times);
  }

  void set_up(MachineId machine, const RunSet &only, std::int64_t times) {
    const auto &setup = edition[machine].setup;
    Charge line{"setup at " + edition[machine].name + alone_in(edition, only),
                Group::printing,
                {0, 0, Exact(times)},
                price_of_one(edition, **setup),
                setup->from};
    line.only = only;
    line.counted = {{0, 0, Exact(times)}, {}, machine};
    out.charges.push_back(std::move(line));
  }

  // Where sides and setup come to less than the machine's least, the rest is paid too, and a few
  // copies more cost nothing more.
  void fill_up(MachineId machine, std::size_t first_charge, std::size_t first_rounded) {
    const auto &least = edition[machine].least;
    if (!least || !counts(edition, (*least)->price.currency))
      return;
    const Amount now =
        sum({out.charges.begin() + static_cast<std::ptrdiff_t>(first_charge), out.charges.end()});
    const Exact price = price_of_one(edition, **least);
    if (now.of(printed_copies, 0) >= price)
      return;
    Charge rest{"least at " + edition[machine].name,
                Group::printing,
                {Exact() - now.printed, 0, price - now.once},
                1,
                least->from};
    rest.in_one_sum = true;
    rest.counted.machine = machine;
    out.charges.push_back(std::move(rest));
    out.rounded.resize(first_rounded);
    if (now.printed > Exact())
      out.holds_to = std::min(out.holds_to, least_holds_to(price, now, first_charge));
  }

  // Below the least whatever of its sheets goes unused.
  std::int64_t least_holds_to(const Exact &price, const Amount &now,
                              std::size_t first_charge) const {
    Exact most_unused;
    for (std::size_t i = first_charge; i + 1 < out.charges.size(); ++i)
      for (const InWhole &whole : out.charges[i].whole)
        most_unused += is_whole(whole.each) ? Exact() : out.charges[i].rate * whole.alike;
    const Exact last = (price - now.once - most_unused) / now.printed;
    return std::max(printed_copies, last.floor());
  }

  void leave_out(const SideCount &count, const std::string &what, bool has_price) {
    const bool has_steps = std::ranges::any_of(
        steps_of(edition[count.machine]), [&](const SidePrice &p) { return p.mode == count.mode; });
    const auto reason = has_price   ? Unpriced::Reason::other_currency
                        : has_steps ? Unpriced::Reason::below_least_step
                                    : Unpriced::Reason::no_price;
    out.unpriced.push_back({reason, StockId::none, count.machine, count.mode, what,
                            count.of(printed_copies).ceiling()});
  }

  // A line for what all copies have, and one for each run that has something of its own.
  void tax(MachineId machine, std::size_t first_charge) {
    const auto &share = edition[machine].tax;
    if (!share)
      return;
    std::map<RunSet, std::vector<Charge>> taxed;
    for (std::size_t i = first_charge; i < out.charges.size(); ++i)
      taxed[out.charges[i].only].push_back(out.charges[i]);
    for (const auto &[only, charges] : taxed) {
      Charge line{"tax at " + edition[machine].name + alone_in(edition, only), Group::tax,
                  sum(charges), Exact(**share), share->from};
      line.only = only;
      line.counted.machine = machine;
      out.taxes.push_back(std::move(line));
    }
  }

  // What is rounded up is taxed too.
  void tax_rounded(MachineId machine, std::size_t first_rounded) {
    if (const auto &share = edition[machine].tax)
      for (std::size_t i = first_rounded; i < out.rounded.size(); ++i)
        out.rounded[i].rate *= Exact(1) + Exact(**share);
  }
};

std::vector<MachineId> machines_of(const std::vector<SideCount> &counts) {
  std::vector<MachineId> machines;
  for (const SideCount &count : counts)
    if (std::ranges::find(machines, count.machine) == machines.end())
      machines.push_back(count.machine);
  return machines;
}

} // namespace

Printing printing(const Edition &edition, const SideCounts &counts, std::int64_t printed_copies) {
  Pricing pricing{edition, printed_copies};
  pricing.out.holds_to = without_end;
  const std::vector<SideCount> all = pricing.with_blanks(counts);
  for (const MachineId machine : machines_of(all)) {
    const std::size_t first = pricing.out.charges.size();
    const std::size_t first_rounded = pricing.out.rounded.size();
    for (const Mode mode : {Mode::colour, Mode::black}) {
      const InkSides sides_of_ink = sides_of(all, machine, mode);
      pricing.hold(machine, mode, sides_of_ink);
      for (const SideCount &count : all)
        if (count.machine == machine && count.mode == mode)
          pricing.charge(count, sides_of_ink);
    }
    pricing.fill_sheets(first);
    const auto passes = counts.passes.find(machine);
    pricing.set_up(machine, passes == counts.passes.end()
                                ? std::map<RunSet, std::int64_t>{{RunSet(), 1}}
                                : passes->second);
    pricing.fill_up(machine, first, first_rounded);
    pricing.tax(machine, first);
    pricing.tax_rounded(machine, first_rounded);
  }
  return std::move(pricing.out);
}

} // namespace bodkin
