#include "money/send.hpp"

#include "money/charged.hpp"
#include "money/printing.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace bodkin {
namespace {

// Each is priced for the whole run; so many take a fifth of a second.
constexpr std::size_t most_ways = 1024;

bool feeds(const Machine &machine, const Stock &stock) {
  if (!stock.weight)
    return true;
  const Grammage weight = (*stock.weight)->grammage;
  return (!machine.lightest || (*machine.lightest)->grammage <= weight) &&
         (!machine.heaviest || weight <= (*machine.heaviest)->grammage);
}

bool takes(const Machine &machine, const Size &sheet) {
  return machine.sizes.empty() || std::ranges::any_of(machine.sizes, [&](const Known<Size> &size) {
           return *size == sheet || size->turned() == sheet;
         });
}

bool prices(const Machine &machine, Mode mode) {
  return std::ranges::any_of(machine.prints,
                             [&](const SidePrice &price) { return price.mode == mode; });
}

// Sheets that go together.
struct Load {
  std::vector<int> sheets; // indices, numbered on
  std::vector<MachineId> may;
};

struct Sending {
  const Edition &edition;
  const Sources &sources;
  Imposition imposition;
  std::vector<SheetModes> modes;
  std::vector<std::vector<MachineId>> allowed; // by sheet; empty: it stays where it is
  std::vector<Load> loads{};

  const SheetModes &modes_on(int sheet) const { return modes[static_cast<std::size_t>(sheet)]; }

  bool can(MachineId id, int sheet) const {
    const Machine &machine = edition[id];
    const Sheet &of = imposition.sheets[static_cast<std::size_t>(sheet)];
    const SheetModes &sides = modes_on(sheet);
    if (sides[0] && sides[1] && *machine.duplex == Duplex::none)
      return false;
    for (const SideMode &mode : sides)
      if (mode && !prices(machine, *mode))
        return false;
    return takes(machine, of.size) &&
           (of.stock == StockId::none || feeds(machine, edition[of.stock]));
  }

  // One load for all sheets that `key` holds alike.
  template <typename Key>
  void gather(Key key) {
    loads.clear();
    std::map<decltype(key(0)), std::size_t> known;
    for (int sheet = 0; sheet < static_cast<int>(imposition.sheets.size()); ++sheet) {
      const auto &machines = allowed[static_cast<std::size_t>(sheet)];
      if (machines.size() < 2 || !(modes_on(sheet)[0] || modes_on(sheet)[1]))
        continue;
      const auto [entry, fresh] = known.emplace(key(sheet), loads.size());
      if (fresh)
        loads.push_back({{}, machines});
      loads[entry->second].sheets.push_back(sheet);
    }
    for (Load &load : loads)
      keep_able(load);
  }

  // Where none can, all stay, and what is wrong is told of the first.
  void keep_able(Load &load) const {
    std::vector<MachineId> able = load.may;
    std::erase_if(able, [&](MachineId id) {
      return !std::ranges::all_of(load.sheets, [&](int sheet) { return can(id, sheet); });
    });
    load.may = able.empty() ? std::vector{load.may.front()} : able;
  }

  std::size_t ways() const {
    std::size_t ways = 1;
    for (const Load &load : loads)
      if (ways <= most_ways)
        ways *= load.may.size();
    return ways;
  }

  // A machine that prints one side alone takes the sheets that have no more.
  bool matters_how_many_sides() const {
    return std::ranges::any_of(allowed, [&](const std::vector<MachineId> &machines) {
      return std::ranges::any_of(machines,
                                 [&](MachineId id) { return *edition[id].duplex == Duplex::none; });
    });
  }

  // Sheets of one paper that are alike in ink.
  void gather_finely() {
    const auto mode = [&](int sheet) { return std::max(modes_on(sheet)[0], modes_on(sheet)[1]); };
    const auto on = [&](int sheet) -> const Sheet & {
      return imposition.sheets[static_cast<std::size_t>(sheet)];
    };
    const bool by_sides = matters_how_many_sides();
    const auto both = [&](int sheet) {
      return by_sides && modes_on(sheet)[0] && modes_on(sheet)[1];
    };
    gather([&](int sheet) {
      return std::tuple(on(sheet).stock, on(sheet).piece, mode(sheet), both(sheet));
    });
  }

  void load_up() {
    const auto stock = [&](int sheet) {
      return imposition.sheets[static_cast<std::size_t>(sheet)].stock;
    };
    gather_finely();
    if (ways() > most_ways)
      gather(stock);
    if (ways() > most_ways)
      gather([](int) { return 0; });
  }

  void send(const Load &load, MachineId machine) {
    for (const int sheet : load.sheets)
      for (Side &side : imposition.sheets[static_cast<std::size_t>(sheet)].sides)
        side.machine = machine;
  }

  // None where a side has no price that counts: such a way is no way.
  std::optional<Exact> cost() const {
    Problems said_later;
    const std::vector<Pass> passes = passes_of(edition, imposition, modes, sources, said_later);
    const SideCounts counts =
        count_sides(edition, imposition, charged_sides(imposition, modes, passes));
    const Run &run = *edition.run;
    const Printing printed = printing(edition, counts, run.copies + run.spare);
    if (!printed.unpriced.empty())
      return std::nullopt;
    return (sum(printed.charges) + sum(printed.taxes)).of(run.copies, run.spare);
  }

  void send_all(const std::vector<std::size_t> &choice) {
    for (std::size_t i = 0; i < loads.size(); ++i)
      send(loads[i], loads[i].may[choice[i]]);
  }

  // The cheapest of all ways; of equals the one that keeps most with the machines named first.
  void choose() {
    load_up();
    std::vector<std::size_t> choice(loads.size()), best = choice;
    std::optional<Exact> least;
    do {
      send_all(choice);
      const auto costs = cost();
      if (costs && (!least || *costs < *least)) {
        least = costs;
        best = choice;
      }
    } while (next(choice));
    send_all(best);
    if (least)
      improve(*least);
  }

  // Where there were too many ways to look at all: one load after another goes elsewhere while that
  // costs less.
  void improve(Exact least) {
    const std::size_t coarse = loads.size();
    gather_finely();
    if (loads.size() == coarse)
      return;
    for (bool better = true; better;) {
      better = false;
      for (const Load &load : loads)
        better = improve(load, least) || better;
    }
  }

  bool improve(const Load &load, Exact &least) {
    bool better = false;
    MachineId best = machine_of(load);
    for (const MachineId machine : load.may) {
      send(load, machine);
      if (const auto costs = cost(); costs && *costs < least) {
        least = *costs;
        best = machine;
        better = true;
      }
    }
    send(load, best);
    return better;
  }

  MachineId machine_of(const Load &load) const {
    return imposition.sheets[static_cast<std::size_t>(load.sheets.front())].sides[0].machine;
  }

  bool next(std::vector<std::size_t> &choice) const {
    for (std::size_t i = choice.size(); i-- > 0;) {
      if (++choice[i] < loads[i].may.size())
        return true;
      choice[i] = 0;
    }
    return false;
  }
};

bool asks_for_a_machine(const CopyPart &part, const Sheet &sheet) {
  for (const Side &side : sheet.sides)
    for (const Place &place : side.places)
      if (place.page > 0 && static_cast<std::size_t>(place.page) < part.edition->pages.size() &&
          part.edition->pages[static_cast<std::size_t>(place.page)].asked.machine)
        return true;
  return false;
}

std::vector<MachineId> machines_for(const CopyPart &part, const Sheet &sheet) {
  if (*part.edition->machine == MachineId::none || asks_for_a_machine(part, sheet))
    return {};
  std::vector<MachineId> machines{*part.edition->machine};
  for (const Known<MachineId> &other : part.edition->other_machines)
    if (std::ranges::find(machines, *other) == machines.end())
      machines.push_back(*other);
  return machines;
}

bool draws(const Edition &edition, const std::vector<ElementId> &elements) {
  return std::ranges::any_of(
      elements, [&](ElementId id) { return !std::holds_alternative<Hand>(edition[id].what); });
}

bool asked_to_draw(const Edition &edition, std::size_t number) {
  const Page &page = edition.pages[number];
  if (page.blank || !page.opened.somewhere())
    return false;
  if (draws(edition, page.elements) ||
      (page.spread && draws(edition, edition.spreads[*page.spread].elements)))
    return true;
  return std::ranges::any_of(edition.runnings, [&](const Running &running) {
    return number < running.on_page.size() && running.on_page[number] &&
           draws(edition, running.elements);
  });
}

} // namespace

std::vector<PageInk> inks_asked_for(const std::vector<CopyPart> &parts) {
  std::vector<PageInk> inks(1);
  for (const CopyPart &part : parts)
    for (std::size_t page = 1; page <= static_cast<std::size_t>(part.imposition.page_count); ++page)
      inks.push_back({asked_to_draw(*part.edition, page), *part.edition->pages[page].mode});
  return inks;
}

namespace {

// Each sheet of a part that is made, and where it stands among all.
template <typename Visit>
void each_made(const CopyPart &part, Visit visit) {
  if (part.piece && part.piece->is_reverse())
    return;
  auto index = static_cast<std::size_t>(part.sheets_before);
  for (std::size_t i = 0; i < part.imposition.sheets.size(); ++i)
    if (part.makes(i))
      visit(i, index++);
}

// What another run's book does not make is the sheet of a run before.
void share_machines(std::vector<CopyPart> &parts) {
  for (CopyPart &part : parts)
    for (std::size_t i = 0; i < part.made_with.size(); ++i)
      for (std::size_t side = 0; side < 2 && !part.makes(i); ++side)
        part.imposition.sheets[i].sides[side].machine =
            parts[*part.made_with[i]].imposition.sheets[i].sides[side].machine;
}

} // namespace

void send_to_machines(const Edition &edition, std::vector<CopyPart> &parts,
                      std::span<const PageInk> inks, const Sources &sources) {
  Sending sending{edition, sources, joined(parts), {}, {}};
  sending.allowed.resize(sending.imposition.sheets.size());
  bool any = false;
  for (const CopyPart &part : parts)
    each_made(part, [&](std::size_t own, std::size_t all) {
      sending.allowed[all] = machines_for(part, part.imposition.sheets[own]);
      any = any || sending.allowed[all].size() > 1;
    });
  if (!any)
    return;
  sending.modes = modes_of(sending.imposition, inks);
  sending.choose();
  for (CopyPart &part : parts)
    each_made(part, [&](std::size_t own, std::size_t all) {
      for (std::size_t side = 0; side < 2; ++side)
        part.imposition.sheets[own].sides[side].machine =
            sending.imposition.sheets[all].sides[side].machine;
    });
  share_machines(parts);
}

} // namespace bodkin
