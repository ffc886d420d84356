#pragma once

#include <vector>

// Shapes as a knife would cut them: closed outlines in points (1/72 in), x across, y down.
namespace blade {

struct Point {
  double x;
  double y;
};

using Shape = std::vector<Point>;
using Line = std::vector<Point>;

Shape box(double x, double y, double width, double height);
Shape disc(Point centre, double rx, double ry, int facets);

// A part of a ring's outline, open, from one angle to another (degrees, clockwise from the right).
Line arc(Point centre, double rx, double ry, double from, double to, int facets);

// A closed outline that passes smoothly through the points, in short straight cuts.
Shape round(const Shape &through, int cuts_between = 4);

// The same for a line that stays open.
Line bend(const Line &through, int cuts_between = 4);

// A strip of paper along a line, its width running evenly from one end's to the other's.
Shape strip(const Line &along, double width_from, double width_to);

// One stroke of a lino gouge: it goes in thin, is widest past the middle, and leaves abruptly.
Shape gouge(Point from, Point to, double width);

Shape moved(Shape shape, double across, double down);
Shape turned(Shape shape, double degrees, Point about);
Shape sized(Shape shape, double share, Point about);
Shape mirrored(Shape shape, double about_x);

// The part of the shape inside the rectangle from (0, 0) to (width, height).
Shape within(const Shape &shape, double width, double height);

} // namespace blade
