#pragma once

#include "lamp/light.hpp"

// What glass does to light before it reaches the film.

// A lamp out of focus: a disc of even light with a slightly brighter rim.
void lay_disc(Film &film, double x, double y, double radius, Light light);

// A soft glow that falls off as a bell does.
void lay_glow(Film &film, double x, double y, double radius_x, double radius_y, Light light);

// Blurs by three box passes, close to a Gaussian of that radius.
Film blurred(const Film &film, int radius);

// Bright places spill into their surroundings.
void bloom(Film &film, int radius, double share);

// Corners get less light than the middle: cos to the fourth of the angle, more or less.
void vignette(Film &film, double strength);
