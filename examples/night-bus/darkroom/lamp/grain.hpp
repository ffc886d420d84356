#pragma once

#include <cstdint>

#include "lamp/light.hpp"

// Smooth chance over the plane, from 0 to 1: the same place and seed give the same value.
double cloud(double x, double y, std::uint64_t seed);

// Several clouds, each half the size and half the weight of the one before.
double clouds(double x, double y, int layers, std::uint64_t seed);

// Silver: fine, a little clumped, strongest in the middle tones. In linear light.
void grain(Film &film, double strength, std::uint64_t seed);
