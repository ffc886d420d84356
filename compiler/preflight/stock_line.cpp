#include "preflight/stock_line.hpp"

#include "preflight/about.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

bool of_shelf(const Inspection &inspection, const Stock &stock) {
  return stock.range.somewhere() && inspection.sources.is_shelf(stock.range.file);
}

// What asks for a paper, in the order in which sheets look for theirs.
Range asked_for(const Inspection &inspection, StockId id) {
  const Edition &edition = inspection.edition;
  for (const Page &page : edition.pages)
    if (page.asked.stock && **page.asked.stock == id)
      return page.asked.stock->from;
  if (edition.cover_stock && **edition.cover_stock == id)
    return edition.cover_stock->from;
  return *edition.paper == id ? edition.paper.from : edition[id].range;
}

} // namespace

Range stock_range(const Inspection &inspection, StockId id, Range fact) {
  const Stock &stock = inspection.edition[id];
  if (of_shelf(inspection, stock))
    return asked_for(inspection, id);
  return fact.somewhere() && !inspection.sources.is_shelf(fact.file) ? fact : stock.range;
}

void retype_stock(const Inspection &inspection, Problem &problem, StockId id, Range fact,
                  const std::string &part, const std::string &line, const std::string &remark) {
  const Stock &stock = inspection.edition[id];
  if (of_shelf(inspection, stock))
    problem.type.push_back({fmt::format("stock own-{0} like {0}\n  {1}", stock.name, line),
                            fmt::format("and ask for own-{}; {}", stock.name, remark)});
  else if (fact.somewhere() && inspection.sources.is_shelf(fact.file))
    problem.type.push_back({line, fmt::format("under stock {}; {}", stock.name, remark)});
  else
    retype_part(inspection, problem, fact, part, line, remark);
}

} // namespace bodkin
