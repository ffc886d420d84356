#include "command/papers.hpp"

#include "command/making.hpp"
#include "paperwork/guide.hpp"
#include "paperwork/ticket.hpp"
#include "press/papers_told.hpp"
#include "problems/render.hpp"

namespace bodkin {

Papers::Papers(const WayThrough &way)
    : type(*way.disk.files, *way.system, way.edition(), way.faces->faces) {
  const paperwork::Making making = making_of(way);
  guide = paperwork::assembly_guide(making);
  ticket = paperwork::job_ticket(making);
  if (way.edition().cards)
    cards = paperwork::price_cards(making, way.sources);
}

void tell_papers(WayThrough &way, Papers &papers) {
  const press::PapersAsked asked{way.edition(),
                                 way.sources,
                                 {{"assembly.pdf", &papers.guide}, {"ticket.pdf", &papers.ticket}},
                                 papers.cards ? &*papers.cards : nullptr};
  for (Problem &problem : press::paper_problems(asked, papers.type))
    way.problems.push_back(std::move(problem));
  sort_problems(way.problems);
}

} // namespace bodkin
