// A numbered blank of an edition, to print and fold on one's own machine and to measure: every
// sheet, both sides, as a pass prints them; then how to read it.
#pragma once

#include "press/output.hpp"
#include "type/faces.hpp"

namespace bodkin::press {

struct DummyJob {
  const Edition &edition;
  const Imposition &imposition; // of all parts of a copy
  const OpenFaces &faces;
  std::vector<PassPage> sides; // in order, front and back of each sheet, turned for the machine
};

// Every sheet printed on both sides, backs turned as the machine's flip needs.
std::vector<PassPage> dummy_sides(const Edition &edition, const Imposition &imposition,
                                  const Sources &sources);

void write_dummy(const DummyJob &job, const Imprint &imprint, const Sink &sink);

} // namespace bodkin::press
