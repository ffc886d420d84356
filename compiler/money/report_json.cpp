#include "money/report.hpp"

#include "edition/read.hpp"
#include "money/json.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

using json::list;
using json::money;
using json::quoted;
using json::tall_list;

std::string line(const EstimateLine &of, const Sources &sources) {
  return fmt::format("{{\"what\": {}, \"group\": {}, \"quantity\": {}, \"rate\": {}, \"total\": "
                     "{}, \"from\": {}}}",
                     quoted(of.what), quoted(name_of(of.group)), of.quantity.rounded(0, 12),
                     quoted(of.rate.rounded(2, 12)), money(of.total),
                     of.from.somewhere() ? quoted(origin_words(of.from, sources)) : "null");
}

std::string purchase(const Purchase &of) {
  return fmt::format("{{\"what\": {}, \"needed\": {}, \"at_hand\": {}, \"bought\": {}, "
                     "\"cut_out_of_each\": {}, \"packs\": {}, \"total\": {}}}",
                     quoted(of.what), of.needed.ceiling(), of.order.have, of.bought(), of.order.out,
                     of.order.pack > 0 ? std::to_string(of.packs()) : "null", money(of.total()));
}

std::string budget(const std::optional<BudgetHeld> &held) {
  if (!held)
    return "null";
  return fmt::format("{{\"limit\": {}, \"of\": {}, \"over\": {}}}",
                     quoted(held->limit.rounded(2, 6)), held->of_run ? "\"run\"" : "\"copy\"",
                     held->over);
}

std::string bid(const BidFigures &of) {
  return fmt::format("{{\"name\": {}, \"run_total\": {}, \"per_copy\": {}, \"like_for_like\": {}, "
                     "\"setup\": {}, \"postage\": {}, \"tax\": {}, \"until\": {}, \"left_out\": "
                     "{}, \"cannot\": {}, "
                     "\"still_yours\": {}}}",
                     quoted(of.name), money(of.run_total), money(of.per_copy),
                     money(of.like_for_like), money(of.setup), money(of.postage), money(of.tax),
                     of.until.empty() ? "null" : quoted(of.until),
                     of.left_out.empty() ? "null" : quoted(of.left_out), list(of.cannot, quoted),
                     list(of.still_yours, quoted));
}

std::string crossing(const Crossing &of) {
  return fmt::format("{{\"copies\": {}, \"from\": {}, \"to\": {}}}", of.copies, quoted(of.from),
                     quoted(of.to));
}

std::string run(const RunFigures &of) {
  return fmt::format("{{\"name\": {}, \"copies\": {}, \"spare\": {}, \"per_copy\": {}, "
                     "\"price\": {}}}",
                     quoted(of.name), of.copies, of.spare, money(of.per_copy), money(of.price));
}

std::string machine_time(const MachineTime &of) {
  return fmt::format("{{\"machine\": {}, \"sides\": {}, \"minutes\": {}}}", quoted(of.machine),
                     of.sides.rounded(0, 6), quoted(of.minutes.rounded(1)));
}

std::string after(const std::optional<std::int64_t> &copies) {
  return copies ? std::to_string(*copies) : "null";
}

std::string sale(const SaleFigures &of) {
  return fmt::format(
      "{{\"where\": {}, \"run\": {}, \"copies\": {}, \"price\": {}, \"keeps\": {}, \"costs\": "
      "{}, \"brings\": {}, \"margin\": {}, \"income\": {}, \"paid_after\": {}}}",
      quoted(of.where), of.run.empty() ? "null" : quoted(of.run), of.copies, money(of.price),
      money(of.keeps), money(of.costs), money(of.brings), money(of.margin), money(of.income),
      after(of.paid_after));
}

std::string sales(const std::optional<Sales> &of) {
  if (!of)
    return "null";
  return fmt::format("{{\"ways\": {}, \"sold\": {}, \"given\": {}, \"left\": {}, \"income\": {}, "
                     "\"remains\": {}, \"paid_after\": {}}}",
                     tall_list(of->ways, sale), of->sold, of->given, of->left, money(of->income),
                     money(of->remains), after(of->paid_after));
}

std::string paid(const PaidFigures &of) {
  return fmt::format("{{\"what\": {}, \"paid\": {}, \"estimated\": {}}}", quoted(of.what),
                     money(of.paid), money(of.estimated));
}

} // namespace

std::string estimate_as_json(const Estimate &estimate, const Sources &sources,
                             const std::string &post) {
  std::string out = "{\n";
  const auto key = [&](std::string_view name, const std::string &value, bool last = false) {
    out += fmt::format("  \"{}\": {}{}\n", name, value, last ? "" : ",");
  };
  key("currency", estimate.currency.empty() ? "null" : quoted(estimate.currency.code()));
  key("copies", std::to_string(estimate.copies));
  key("spare", std::to_string(estimate.spare));
  key("one_more_copy", money(estimate.one_more_copy));
  key("per_copy", money(estimate.per_copy));
  key("run_total", money(estimate.run_total));
  key("purse_total", money(estimate.purse_total));
  key("minutes", quoted(estimate.minutes.rounded(1)));
  key("lines", tall_list(estimate.lines, [&](const auto &of) { return line(of, sources); }));
  key("purchases", tall_list(estimate.purchases, purchase));
  key("budget", budget(estimate.budget));
  key("bids", tall_list(estimate.bids, bid));
  key("crossings", tall_list(estimate.crossings, crossing));
  key("runs", tall_list(estimate.runs, run));
  key("machine_times", tall_list(estimate.machines, machine_time));
  key("kept", list(estimate.kept, quoted));
  key("sales", sales(estimate.sales));
  key("paid", tall_list(estimate.paid, paid));
  key("post", post, true);
  return out + "}\n";
}

} // namespace bodkin
