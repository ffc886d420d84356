#include "sheet/feeding.hpp"

#include "problems/characters.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>

namespace bodkin {
namespace {

using spoken::sheets_listed;

std::vector<int> numbers_of(const Imposition &imposition, const std::vector<int> &sheets) {
  std::vector<int> numbers;
  numbers.reserve(sheets.size());
  for (const int sheet : sheets)
    numbers.push_back(imposition.sheets[static_cast<std::size_t>(sheet)].number);
  return numbers;
}

std::vector<int> without(const std::vector<int> &from, const std::vector<int> &these) {
  std::vector<int> rest;
  std::set_difference(from.begin(), from.end(), these.begin(), these.end(),
                      std::back_inserter(rest));
  return rest;
}

std::vector<int> sharing(const std::vector<int> &a, const std::vector<int> &b) {
  std::vector<int> both;
  std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(both));
  return both;
}

std::string_view edge_name(const Machine &machine) {
  return *machine.flip == SheetEdge::long_edge ? "long" : "short";
}

std::string_view its(const std::vector<int> &sheets, std::string_view one, std::string_view more) {
  return sheets.size() == 1 ? one : more;
}

// The latest pass that printed any of these sheets, those that the sheets come from, each sheet
// from its latest, and every sheet that any pass has printed.
struct Before {
  const Pass *last = nullptr;
  std::vector<const Pass *> from;
  std::vector<int> sheets;
};
Before before(std::span<const Pass> earlier, const Pass &pass) {
  Before result;
  for (const Pass &other : earlier) {
    if (other.stock != pass.stock || sharing(other.sheets, pass.sheets).empty())
      continue;
    result.last = &other;
    std::vector<int> all;
    std::set_union(result.sheets.begin(), result.sheets.end(), other.sheets.begin(),
                   other.sheets.end(), std::back_inserter(all));
    result.sheets = std::move(all);
  }
  for (const int sheet : pass.sheets)
    for (auto other = earlier.rbegin(); other != earlier.rend(); ++other)
      if (std::find(other->sheets.begin(), other->sheets.end(), sheet) != other->sheets.end()) {
        if (std::find(result.from.begin(), result.from.end(), &*other) == result.from.end())
          result.from.push_back(&*other);
        break;
      }
  return result;
}

// Sheets come back to the machine that they have been through, or on to another.
std::string come_from(const Edition &edition, const Pass &from, const Pass &pass) {
  if (from.machine == pass.machine || from.machine == MachineId::none)
    return from.file;
  const Machine &machine = edition[from.machine];
  std::string name = harmless(machine.title.empty() ? machine.name : machine.title);
  if (name.starts_with("The "))
    name[0] = 't';
  return fmt::format("{}, which come from {},", from.file, name);
}

// With the order that they lie in.
std::string put_in(const Edition &edition, const Before &was, const Pass &pass,
                   const std::vector<int> &numbers) {
  if (was.from.size() == 1)
    return fmt::format("Put the sheets of {} {}, in the same order",
                       come_from(edition, *was.from.front(), pass),
                       was.from.front()->machine == pass.machine ? "back in" : "into the machine");
  std::string files;
  for (const Pass *from : was.from)
    files += (files.empty() ? "" : " and of ") + come_from(edition, *from, pass);
  return fmt::format("Put the sheets of {} on one pile, in the order {}, and that into the machine",
                     files, spoken::listed(numbers));
}

std::string back_in(const Edition &edition, const Before &was, const Pass &pass,
                    const std::vector<int> &numbers) {
  const Pass &last = *was.last;
  const std::string put = put_in(edition, was, pass, numbers);
  const std::string_view edge = edge_name(machine_of(edition, pass.machine));
  if (last.sides == PassSides::fronts && pass.sides == PassSides::backs)
    return fmt::format("{}, turned over their {} edge: their backs are printed now.", put, edge);
  if (last.sides == PassSides::backs && pass.sides != PassSides::backs)
    return fmt::format("{}, turned over their {} edge again: their fronts are printed now.", put,
                       edge);
  return put + " and the same way up as before.";
}

} // namespace

std::vector<std::string> feeding(const Edition &edition, const Imposition &imposition,
                                 std::span<const Pass> earlier, const Pass &pass) {
  const Machine &machine = machine_of(edition, pass.machine);
  const std::string paper = pass.stock == StockId::none ? "paper" : edition[pass.stock].name;
  const Before was = before(earlier, pass);
  const std::vector<int> now = numbers_of(imposition, pass.sheets);
  std::vector<std::string> lines;
  if (was.last == nullptr) {
    lines.push_back(fmt::format("Load unprinted {} for {}.", paper, sheets_listed(now)));
  } else {
    const std::vector<int> out = numbers_of(imposition, without(was.sheets, pass.sheets));
    const std::vector<int> plain = numbers_of(imposition, without(pass.sheets, was.sheets));
    lines.push_back(back_in(edition, was, pass, now));
    if (!out.empty())
      lines.push_back(fmt::format("Lift out {} first: {} not printed in this pass.",
                                  sheets_listed(out), its(out, "it is", "they are")));
    if (!plain.empty())
      lines.push_back(fmt::format("Lay in unprinted {} for {}, at {} in the order: {}.", paper,
                                  sheets_listed(plain), its(plain, "its place", "their places"),
                                  spoken::listed(now)));
  }
  if (pass.numbered)
    lines.emplace_back("Print all pages of the file once, in their order: each sheet has a number "
                       "of its own, and the pile stays in the order that it comes out in.");
  if (pass.sides == PassSides::both)
    lines.push_back(fmt::format("Both sides are printed; {} turns each sheet over its {} edge.",
                                machine.name.empty() ? "the machine" : machine.name,
                                edge_name(machine)));
  return lines;
}

} // namespace bodkin
