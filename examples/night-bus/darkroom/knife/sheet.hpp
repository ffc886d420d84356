#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "dice.hpp"
#include "knife/blade.hpp"

// A drawing in flat colours, made by laying cut shapes on one another, later ones on top.
class Sheet {
public:
  // Width and height in points; the seed is the cutter's hand.
  Sheet(double width, double height, std::uint64_t seed);

  // Lays a shape whose edges wander by up to `rough` points, as a hand's do.
  void cut(const blade::Shape &shape, const std::string &colour, double rough = 0.7);

  // One shape with windows cut into it, through which what lies below is seen.
  void cut_open(const std::vector<blade::Shape> &outlines, const std::string &colour,
                double rough = 0.7);

  // A strip along a line: strip() and cut() in one.
  void draw(const blade::Line &along, double width, const std::string &colour, double rough = 0.4);

  Dice &dice() { return dice_; }
  double width() const { return width_; }
  double height() const { return height_; }

  // Writes an SVG whose size is given in inches. Throws std::runtime_error if that fails.
  void save(const std::filesystem::path &file) const;

private:
  std::string outline(const blade::Shape &shape, double rough);

  double width_;
  double height_;
  Dice dice_;
  std::string paths_;
};

// The zine's inks. Black pages use black and paper alone.
inline const std::string kBlack = "#000000";
inline const std::string kWhite = "#ffffff";
inline const std::string kTomato = "#d8432b";
inline const std::string kDeep = "#0e3d47";
inline const std::string kYellow = "#f4bd3a";
