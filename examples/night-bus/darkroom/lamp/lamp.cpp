#include <cstdio>
#include <exception>
#include <filesystem>

#include "lamp/grain.hpp"
#include "lamp/lens.hpp"
#include "lamp/paper.hpp"
#include "lamp/photographs.hpp"

namespace {

void develop(Film film, Toning toning, double exposure, double silver,
             const std::filesystem::path &file) {
  bloom(film, 7, 0.22);
  vignette(film, 0.5);
  grain(film, silver, 4);
  print(film, toning, exposure, file);
}

} // namespace

int main(int count, char **arguments) {
  if (count != 2) {
    std::fputs("usage: lamp FOLDER   makes the almanac's photographs in FOLDER\n", stderr);
    return 2;
  }
  try {
    const std::filesystem::path folder = arguments[1];
    develop(rain_on_window(), Toning::colour, 1.7, 0.3, folder / "window.jpg");
    develop(wet_street(), Toning::grey, 1.5, 0.42, folder / "wet-street.jpg");
    develop(empty_seats(), Toning::grey, 1.75, 0.4, folder / "seats.jpg");
    develop(last_stop(), Toning::grey, 1.45, 0.45, folder / "last-stop.jpg");
    print(stamped_moon(), Toning::grey, 2.2, folder / "spare-moon.jpg");
  } catch (const std::exception &wrong) {
    std::fprintf(stderr, "lamp: %s\n", wrong.what());
    return 1;
  }
  return 0;
}
