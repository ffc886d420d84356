// A drawing as a list of what stands on it, in points, y down: sheets and the stages of foldings
// are drawn so once, and written as SVG (svg_page.hpp) or as PDF (press/figures.hpp).
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace bodkin {

enum class BoxLook { paper, back, page, tab, fault };
enum class LineLook { valley, mountain, slit, cut };
enum class WordLook { title, small, trouble, over_lines }; // the last on a ground that hides them

struct FigureBox {
  double x, y, width, height;
  BoxLook look;
};
struct FigureLine {
  double x1, y1, x2, y2;
  LineLook look;
};
// Centred, turned clockwise about its middle. Where a number reads as another head down, as 6 and 9
// do, a line under it says where its foot is.
struct FigureNumber {
  double x, y;
  std::string text;
  int turn;
};
// From x to the right, y the baseline's.
struct FigureWords {
  double x, y;
  std::string text;
  WordLook look;
};
// A line through many points, in black that a copier keeps: told apart by its dashes.
enum class CurveLook { plain, dashed, dotted, dash_dotted, hair };
struct FigurePoint {
  double x, y;
};
struct FigureCurve {
  std::vector<FigurePoint> points;
  CurveLook look;
};
using FigureItem = std::variant<FigureBox, FigureLine, FigureNumber, FigureWords, FigureCurve>;

inline constexpr double figure_width = 620; // of them all
inline constexpr double figure_margin = 24; // left and right, within that width

// One sheet, or one stage of a folding: what stays together where drawings are parted into pages.
struct Figure {
  double height = 0;
  std::vector<FigureItem> items;
};

// "6", "9", "68", "109": another number, or itself, when it stands on its head.
bool needs_foot(std::string_view number);

} // namespace bodkin
