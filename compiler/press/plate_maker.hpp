// How a page is parted into layers: runs of vector matter drawn together, and between them
// pictures, foreign pages and drawings that need a layer of their own.
#pragma once

#include "art/svg.hpp"
#include "press/fonts.hpp"
#include "press/plates.hpp"
#include "press/vectors.hpp"

#include <map>
#include <optional>
#include <variant>
#include <vector>

namespace bodkin::press {

// Layers as planned while drawing, before there is a PDF to take them from.
struct DrawnLayer {
  int vector_page = 0;
  double scale = 1; // drawn so many times too large
  bool grey = false;
  double beside = 0; // points of room left and right of the page
};
struct PictureLayer {
  ElementId element = ElementId::none;
  Box whole;
  Transform to_page;
  Polygon clip;
  bool grey = false;
  bool foreign = false; // a page of a PDF
};
struct PlannedLayer {
  std::variant<DrawnLayer, PictureLayer> what;
  bool shifted = true;
  std::optional<std::int64_t> copy{}; // the only one that has it
};

class PageParter {
public:
  PageParter(const PrintJob &job, Vectors &vectors, Fonts &fonts)
      : job_(job), vectors_(vectors), fonts_(fonts) {}

  std::vector<PlannedLayer> part(int page);

private:
  struct Open {
    cairo_t *cairo = nullptr;
    bool shifted = true;
  };
  void vector_item(const Item &item);
  void words_of_copies(const Item &item, const std::vector<LinesOfCopy> &copies);
  void picture_item(const Item &item);
  bool draw_inline(const Item &item, const SetPicture &set, const Picture &picture);
  void drawing_alone(const Item &item, const SetPicture &set, const Picture &picture);
  cairo_t *open(bool shifted);
  void close();
  const art::SvgDrawing *svg(const std::string &path);

  const PrintJob &job_;
  Vectors &vectors_;
  Fonts &fonts_;
  std::map<std::string, std::optional<art::SvgDrawing>> svgs_;
  bool grey_ = true; // of the page at hand
  Size size_;
  Open open_;
  std::vector<PlannedLayer> planned_;
};

} // namespace bodkin::press
