#include "knife/sheet.hpp"

#include <cmath>
#include <cstddef>
#include <fstream>
#include <stdexcept>

namespace {

// Tenths of a point (1/720 in) are finer than any copier, and read the same in every locale.
std::string tenths(double value) {
  const long rounded = std::lround(value * 10);
  const long size = rounded < 0 ? -rounded : rounded;
  std::string out;
  if (rounded < 0)
    out += '-';
  out += std::to_string(size / 10);
  if (size % 10 != 0)
    out.append(".").append(std::to_string(size % 10));
  return out;
}

std::string inches(double points) {
  const long thousandths = std::lround(points / 72 * 1000);
  std::string fraction = std::to_string(1000 + thousandths % 1000).substr(1);
  return std::to_string(thousandths / 1000) + "." + fraction + "in";
}

} // namespace

Sheet::Sheet(double width, double height, std::uint64_t seed)
    : width_(width), height_(height), dice_(seed) {}

// A straight edge longer than about 20 points becomes several short ones, each a little off.
std::string Sheet::outline(const blade::Shape &shape, double rough) {
  blade::Shape wandering;
  for (std::size_t i = 0; i < shape.size(); ++i) {
    const blade::Point a = shape[i];
    const blade::Point b = shape[(i + 1) % shape.size()];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    const int pieces = rough > 0 ? 1 + static_cast<int>(length / dice_.between(14, 26)) : 1;
    for (int k = 0; k < pieces; ++k) {
      const double t = static_cast<double>(k) / pieces;
      wandering.push_back({a.x + (b.x - a.x) * t + dice_.between(-rough, rough),
                           a.y + (b.y - a.y) * t + dice_.between(-rough, rough)});
    }
  }
  const blade::Shape clipped = blade::within(wandering, width_, height_);
  std::string out;
  for (std::size_t i = 0; i < clipped.size(); ++i) {
    out += i == 0 ? 'M' : 'L';
    out += tenths(clipped[i].x);
    out += ' ';
    out += tenths(clipped[i].y);
  }
  return out.empty() ? out : out.append("Z");
}

void Sheet::cut(const blade::Shape &shape, const std::string &colour, double rough) {
  cut_open({shape}, colour, rough);
}

void Sheet::cut_open(const std::vector<blade::Shape> &outlines, const std::string &colour,
                     double rough) {
  std::string d;
  for (const blade::Shape &shape : outlines)
    d += outline(shape, rough);
  if (d.empty())
    return;
  paths_ += "<path fill=\"" + colour + "\" fill-rule=\"evenodd\" d=\"" + d + "\"/>\n";
}

void Sheet::draw(const blade::Line &along, double width, const std::string &colour, double rough) {
  cut(blade::strip(along, width, width), colour, rough);
}

void Sheet::save(const std::filesystem::path &file) const {
  std::ofstream out(file, std::ios::binary);
  out << "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" << inches(width_) << "\" height=\""
      << inches(height_) << "\" viewBox=\"0 0 " << tenths(width_) << " " << tenths(height_)
      << "\">\n"
      << paths_ << "</svg>\n";
  if (!out.flush())
    throw std::runtime_error("cannot write " + file.string());
}
