// From the model to pages as lists of things to draw. Every page is composed, whatever is wrong
// with it: what cannot be drawn stands as a keyline with its reason.
//
// Problems found here: left-over-text, text-ends-early, text-loop, place-never-reached.
#pragma once

#include "art/gallery.hpp"
#include "page/drawing.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"
#include "type/compositor.hpp"

namespace bodkin {

struct Workshop {
  const Edition &edition;
  const Imposition &imposition;
  const Sources &sources;
  art::Gallery &gallery;
  Compositor &compositor;
};

Drawings compose(const Workshop &workshop, Problems &problems);

} // namespace bodkin
