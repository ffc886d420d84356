#include "paperwork/pass_prices.hpp"

#include "measure/paper.hpp"
#include "money/printing.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin::paperwork {
namespace {

// Sides that a pass prints, and those that it feeds.
struct SidesOfPass {
  std::set<std::pair<int, int>> printed, fed;
  explicit SidesOfPass(const Pass &pass) {
    for (const PassPage &page : pass.pages) {
      const std::pair side{page.sheet, page.side == SideName::back ? 1 : 0};
      fed.insert(side);
      if (page.prints)
        printed.insert(side);
    }
  }
  bool holds(const ChargedSide &side) const {
    return (side.fed_both ? fed : printed).count({side.sheet, side.side}) > 0;
  }
};

// Charges of the run are named by ink and machine, and by size where that has a price of its own.
const Charge *charge_of(const Printing &run, const Edition &edition, const SideCount &count) {
  const std::string name =
      fmt::format("{} sides at {}", spoken::mode_name(count.mode), edition[count.machine].name);
  const std::string sized = name + " on " + written(count.size, edition.ruler);
  const std::string alone = alone_in(edition, count.only);
  for (const std::string &what : {sized + alone, name + alone})
    for (const Charge &charge : run.charges)
      if (charge.what == what)
        return &charge;
  return nullptr;
}

// A blank side that is charged goes by the machine's cheapest price.
const Charge *cheapest_at(const Printing &run, const Edition &edition, SideCount count) {
  const Charge *least = nullptr;
  for (const Mode mode : {Mode::black, Mode::colour}) {
    count.mode = mode;
    const Charge *charge = charge_of(run, edition, count);
    if (charge != nullptr && (least == nullptr || charge->rate < least->rate))
      least = charge;
  }
  return least;
}

} // namespace

// "tax at corner", "black sides at corner on a3, plain alone"
bool is_paid_at(const EstimateLine &line, std::string_view machine) {
  const std::size_t at = line.what.find(" at ");
  if (at == std::string::npos)
    return false;
  const std::string_view rest = std::string_view(line.what).substr(at + 4);
  const std::string_view after = rest.substr(std::min(machine.size(), rest.size()));
  return rest.starts_with(machine) &&
         (after.empty() || after.starts_with(", ") || after.starts_with(" on "));
}

std::vector<PassPrice> prices_of(const Making &making, const Pass &pass) {
  const Edition &edition = making.edition;
  const Printing run =
      printing(edition, count_sides(edition, making.imposition, making.sides), making.printed());
  const SidesOfPass sides(pass);
  ChargedSides of_pass;
  std::copy_if(making.sides.begin(), making.sides.end(), std::back_inserter(of_pass),
               [&](const ChargedSide &side) { return sides.holds(side); });
  const SideCounts counts = count_sides(edition, making.imposition, of_pass);
  std::vector<PassPrice> prices;
  const auto add = [&](const SideCount &count, const Charge *charge) {
    if (charge == nullptr)
      return false;
    const std::int64_t number = count.of(making.printed()).ceiling();
    prices.push_back({count.mode, number, charge->rate, charge->rate * Exact(number)});
    return true;
  };
  for (const SideCount &count : counts.printed)
    if (!add(count, charge_of(run, edition, count)))
      return {};
  for (const SideCount &count : counts.blank)
    if (!add(count, cheapest_at(run, edition, count)))
      return {};
  return prices;
}

} // namespace bodkin::paperwork
