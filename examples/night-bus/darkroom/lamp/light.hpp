#pragma once

#include <cstddef>
#include <vector>

// Linear light, red, green and blue; 1 is paper white once printed.
struct Light {
  double r = 0;
  double g = 0;
  double b = 0;
};

inline Light operator+(Light a, Light b) { return {a.r + b.r, a.g + b.g, a.b + b.b}; }
inline Light operator*(Light a, double share) { return {a.r * share, a.g * share, a.b * share}; }
inline Light operator*(Light a, Light b) { return {a.r * b.r, a.g * b.g, a.b * b.b}; }
inline Light mix(Light a, Light b, double share) { return a * (1 - share) + b * share; }

// Zero below `low`, one above `high`, an S between.
double ease(double low, double high, double value);

// What falls on the film: rows from the top. Coordinates are in samples.
class Film {
public:
  Film(int width, int height);

  int width() const { return width_; }
  int height() const { return height_; }
  Light &at(int x, int y) { return light_[index(x, y)]; }
  const Light &at(int x, int y) const { return light_[index(x, y)]; }

  // Between samples, and past the edges as if the edge went on.
  Light seen(double x, double y) const;

private:
  std::size_t index(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
           static_cast<std::size_t>(x);
  }

  int width_;
  int height_;
  std::vector<Light> light_;
};
