#include "edition/laid.hpp"

#include "measure/limits.hpp"

namespace bodkin {
namespace {

struct LaidWalk {
  const Edition &edition;
  const std::function<void(ElementId, int)> &visit;
  std::int64_t seen_on_page = 0;

  void stand(ElementId id, int page, std::size_t depth) {
    if (++seen_on_page > limits::elements_a_page || depth > limits::nesting)
      return;
    const auto *laid = std::get_if<Lay>(&edition[id].what);
    if (laid && laid->standing != StandingId::none)
      for (const ElementId inner : edition.standings[at(laid->standing)].elements)
        stand(inner, page, depth + 1);
    visit(id, page);
  }

  void run_through(int number) {
    for (const Running &running : edition.runnings)
      if (static_cast<std::size_t>(number) < running.on_page.size() &&
          running.on_page[static_cast<std::size_t>(number)])
        for (const ElementId id : running.elements)
          stand(id, number, 0);
  }

  void page(int number) {
    seen_on_page = 0;
    const Page &page = edition.pages[static_cast<std::size_t>(number)];
    for (const ElementId id : page.elements)
      stand(id, number, 0);
    if (page.spread && edition.spreads[*page.spread].left == number)
      for (const ElementId id : edition.spreads[*page.spread].elements)
        stand(id, number, 0);
    if (!page.blank && page.opened.somewhere())
      run_through(number);
  }
};

} // namespace

void each_laid(const Edition &edition, const std::function<void(ElementId, int)> &visit) {
  LaidWalk walk{edition, visit};
  for (std::size_t number = 1; number < edition.pages.size(); ++number)
    walk.page(static_cast<int>(number));
}

} // namespace bodkin
