#pragma once

#include <string>
#include <utility>
#include <vector>

#include "knife/sheet.hpp"

using Drawing = std::pair<std::string, Sheet>; // a file's name, and what is on it

// Full pages: 5 1/4 by 8 in is what the copier's bare edge leaves of a half-letter page.
constexpr double kLiveWidth = 378;
constexpr double kLiveHeight = 576;

Sheet cover();
Sheet back();
Sheet shelter();
Sheet street();
Sheet umbrella_poster();
Sheet map();
Sheet rain();
Sheet quince();
Sheet lamp_post();
Sheet little_bus();
Sheet flask();
Sheet moth();
Sheet way();
std::vector<Drawing> boat_steps();
std::vector<Drawing> lost_things();

// Parts that several drawings share.
struct Inks {
  std::string body;  // the painted metal
  std::string dark;  // glass, tyres, lines
  std::string light; // paint above the waist
  std::string glow;  // lamps and lit windows
  std::string roof;  // of the bus seen from the side
  std::string arch;  // round its wheels
};
void bus_front(Sheet &sheet, blade::Point middle_foot, double width, const Inks &inks,
               bool destination);
void bus_side(Sheet &sheet, blade::Point front_foot, double length, const Inks &inks);
void sitting_fox(Sheet &sheet, blade::Point foot, double height, const std::string &fur,
                 const std::string &lines);
