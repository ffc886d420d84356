#include "paperwork/ticket.hpp"

#include "paperwork/own_words.hpp"
#include "paperwork/ticket_writer.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string aside_of(const TicketWriter &writer) {
  const Run &run = *writer.edition().run;
  std::string text = runs_words(writer.edition());
  if (run.spare > 0)
    text +=
        fmt::format("{} {} spare", writer.edition().runs.empty() ? " and" : ", with", run.spare);
  if (writer.edition().maker)
    text += fmt::format(". For {}", harmless(**writer.edition().maker));
  std::string machines;
  for (const Counter &counter : writer.counters)
    if (counter.machine != MachineId::none)
      machines += (machines.empty() ? "" : ", ") + machine_words(writer.edition(), counter.machine);
  return text + (machines.empty() ? "" : ". On: " + machines) + ".";
}

std::vector<const Pass *> sharing_sheets(const Making &making, const Pass &pass, bool earlier) {
  std::vector<const Pass *> found;
  for (const Pass &other : making.passes)
    if (earlier ? other.number < pass.number : other.number > pass.number)
      if (std::find_first_of(other.sheets.begin(), other.sheets.end(), pass.sheets.begin(),
                             pass.sheets.end()) != other.sheets.end())
        found.push_back(&other);
  return found;
}

void tell_counter(TicketWriter &writer, const Counter &counter) {
  tell_passes(writer, counter);
  tell_feeding(writer, counter);
  tell_papers(writer, counter);
  tell_checks(writer, counter);
}

} // namespace

std::vector<const Pass *> earlier_on(const Making &making, const Pass &pass) {
  return sharing_sheets(making, pass, true);
}

std::vector<const Pass *> later_on(const Making &making, const Pass &pass) {
  return sharing_sheets(making, pass, false);
}

std::vector<Counter> counters_of(const Making &making) {
  std::vector<Counter> counters;
  for (const Pass &pass : making.passes) {
    auto at = std::find_if(counters.begin(), counters.end(),
                           [&](const Counter &counter) { return counter.machine == pass.machine; });
    if (at == counters.end())
      at = counters.insert(at, {pass.machine, {}});
    at->passes.push_back(&pass);
  }
  return counters;
}

Leaflet job_ticket(const Making &making) {
  TicketWriter writer{making, piles(making), counters_of(making)};
  writer.leaflet.kind = "Ticket for the counter";
  writer.leaflet.title = harmless(*making.edition.title);
  writer.leaflet.aside = aside_of(writer);
  writer.leaflet.paper = home_paper(making.edition.ruler);
  writer.leaflet.ruler = making.edition.ruler;
  writer.leaflet.hanging = false;
  if (writer.one_machine()) {
    writer.leaflet.add(Headline{"Passes", 2, {}});
    tell_counter(writer, writer.counters.empty() ? Counter{} : writer.counters.front());
    return std::move(writer.leaflet);
  }
  tell_machines(writer);
  tell_papers_in_all(writer);
  for (const Counter &counter : writer.counters) {
    writer.leaflet.add(NewPage{});
    writer.leaflet.add(Headline{"At " + machine_in_text(making.edition, counter.machine), 1, {}});
    tell_counter(writer, counter);
  }
  return std::move(writer.leaflet);
}

} // namespace bodkin::paperwork
