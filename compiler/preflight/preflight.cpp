#include "preflight/families.hpp"

namespace bodkin {

void preflight(const Inspection &inspection, Problems &problems) {
  // Where pages do not lie as they should, their edges are no edges of paper yet.
  const Edition &edition = inspection.edition;
  if (!inspection.imposition.wrong_size && !edition.size_guessed && !edition.folding_guessed) {
    check_fills(inspection, problems);
    check_edges(inspection, problems);
  }
  check_spreads(inspection, problems);
  check_pictures(inspection, problems);
  check_type(inspection, problems);
  check_ground(inspection, problems);
  check_overlaps(inspection, problems);
  check_machines(inspection, problems);
  check_stocks(inspection, problems);
  check_show_through(inspection, problems);
  check_folds(inspection, problems);
  check_staples(inspection, problems);
  check_holes(inspection, problems);
  check_corners(inspection, problems);
  check_hands(inspection, problems);
  check_knife(inspection, problems);
  check_order(inspection, problems);
  check_paste_ups(inspection, problems);
  check_colour(inspection, problems);
  check_unnamed(inspection, problems);
}

} // namespace bodkin
