// From the model to pages as lists of things to draw. Every page is composed, whatever is wrong
// with it: what cannot be drawn stands as a keyline with its reason.
//
// Problems found here: left-over-text, text-ends-early, text-loop, place-never-reached.
#pragma once

#include "art/gallery.hpp"
#include "page/drawing.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/parts.hpp"
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

// All parts of a copy, by part. A text that boxes of several parts ask for runs through them as a
// reader comes to them: a wrap's front, the book, what lies between its pages where it lies, the
// wrap's back, then what is loose, in the order written.
std::vector<Drawings> compose_copy(const std::vector<CopyPart> &parts, const Sources &sources,
                                   art::Gallery &gallery, Compositor &compositor,
                                   Problems &problems);

} // namespace bodkin
