// The stages of a folding as pictures: what lies on top at each place, how many layers lie there,
// the lines to fold and to cut next. Where the folding cannot be done, the stage at which the paper
// stops, with the panels at fault marked. Data in cells; report_svg.cpp draws it.
#pragma once

#include "edition/folding.hpp"

#include <string>
#include <vector>

namespace bodkin {

struct DrawnPanel {
  int left = 0, top = 0, width = 1, height = 1; // what of it shows, as a box round it
  int layers = 1;                               // that lie there, this one the topmost
  std::string label;                            // its page, or its panel's number with a dot
  int turn = 0;                                 // of the page's head, degrees clockwise
  bool front = true;
  bool at_fault = false;
};

struct DrawnLine {
  enum class Kind { valley, mountain, slit } kind = Kind::valley;
  int x1 = 0, y1 = 0, x2 = 0, y2 = 0;
};

struct DrawnStage {
  std::string caption; // how the paper came to lie so
  int width = 1, height = 1;
  std::vector<DrawnPanel> panels;
  std::vector<DrawnLine> lines;
};

struct FoldingDrawing {
  std::vector<DrawnStage> stages; // flat, then after each step as far as it goes
  std::string trouble;            // what is wrong; empty: nothing
};

FoldingDrawing draw_folding(const Folding &folding);

} // namespace bodkin
