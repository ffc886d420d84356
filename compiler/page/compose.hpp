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

#include <string_view>

namespace bodkin {

struct Workshop {
  const Edition &edition;
  const Imposition &imposition;
  const Sources &sources;
  art::Gallery &gallery;
  Compositor &compositor;
  std::string_view piece{}; // whose pages these are by their own numbers; empty: the book's
};

Drawings compose(const Workshop &workshop, Problems &problems);

} // namespace bodkin
