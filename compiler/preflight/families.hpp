// The families of checks, each in a file of its own.
#pragma once

#include "preflight/preflight.hpp"

namespace bodkin {

void check_edges(const Inspection &inspection, Problems &problems);
void check_fills(const Inspection &inspection, Problems &problems);
void check_spreads(const Inspection &inspection, Problems &problems);
void check_pictures(const Inspection &inspection, Problems &problems);
void check_type(const Inspection &inspection, Problems &problems);
void check_ground(const Inspection &inspection, Problems &problems);
void check_overlaps(const Inspection &inspection, Problems &problems);
void check_machines(const Inspection &inspection, Problems &problems);
void check_folds(const Inspection &inspection, Problems &problems);
void check_staples(const Inspection &inspection, Problems &problems);
void check_holes(const Inspection &inspection, Problems &problems);
void check_corners(const Inspection &inspection, Problems &problems);
void check_stocks(const Inspection &inspection, Problems &problems);
void check_show_through(const Inspection &inspection, Problems &problems);
void check_paste_ups(const Inspection &inspection, Problems &problems);
void check_hands(const Inspection &inspection, Problems &problems);
void check_knife(const Inspection &inspection, Problems &problems);
void check_order(const Inspection &inspection, Problems &problems);
void check_colour(const Inspection &inspection, Problems &problems);
void check_unnamed(const Inspection &inspection, Problems &problems);

} // namespace bodkin
