// Sides of sheets and pages as small pictures, in grey, on the grey of their papers: what stands
// below the lines of a leaflet's pictures.
#pragma once

#include "press/images.hpp"
#include "press/leaflet_layout.hpp"
#include "press/side_drawing.hpp"

#include <map>

namespace bodkin::press {

// Turns the plates' own forms grey as they are asked for: whatever is printed in colour from the
// same plates must have been written before.
class Grounds {
public:
  explicit Grounds(Plates &plates);
  // On a page of the leaflet so many points high.
  void draw(Contents &contents, const PlacedPicture &picture, double page_height);

private:
  const std::vector<Layer> &layers(int page);
  std::optional<Layer> grey(const Layer &layer, bool coloured);
  void draw(Contents &contents, const paperwork::SideGround &side);
  void draw(Contents &contents, const paperwork::PageGround &page);
  void draw(Contents &, const paperwork::EmptyGround &) {}
  void paper(Contents &contents, const Sheet &sheet, const Size &size) const;

  Plates &plates_;
  Images images_;
  std::map<int, std::vector<Layer>> made_;
};

} // namespace bodkin::press
