// How the chapters of the ticket are written, for each machine that passes are taken to.
#pragma once

#include "paperwork/leaflet.hpp"
#include "paperwork/making.hpp"

namespace bodkin::paperwork {

// One machine, and its passes in order.
struct Counter {
  MachineId machine = MachineId::none;
  std::vector<const Pass *> passes;
};
std::vector<Counter> counters_of(const Making &making); // as first met

struct TicketWriter {
  const Making &making;
  std::vector<Pile> all;
  std::vector<Counter> counters;
  Leaflet leaflet{};

  const Edition &edition() const { return making.edition; }
  const Sheet &sheet(int index) const {
    return making.imposition.sheets[static_cast<std::size_t>(index)];
  }
  // A price a side may go beyond the cent; what is paid does not.
  std::string price(const Exact &rate) const { return shown(rate, making.estimate.currency, 4); }
  std::string money(const Exact &amount) const { return shown(amount, making.estimate.currency); }
  bool one_machine() const { return counters.size() < 2; }
  void say(std::string text, bool small = false) {
    leaflet.add(Passage{"", std::move(text), small});
  }
};

// The passes before and after one that print on some of its sheets too.
std::vector<const Pass *> earlier_on(const Making &making, const Pass &pass);
std::vector<const Pass *> later_on(const Making &making, const Pass &pass);

// Where several machines print, which pass goes to which, and what is expected of each.
void tell_machines(TicketWriter &writer);
void tell_passes(TicketWriter &writer, const Counter &counter); // a line each, and what they cost
void tell_feeding(TicketWriter &writer, const Counter &counter);
void tell_papers(TicketWriter &writer, const Counter &counter);
void tell_papers_in_all(TicketWriter &writer); // where one paper is taken to two machines
void tell_checks(TicketWriter &writer, const Counter &counter);

} // namespace bodkin::paperwork
