#include <cstdio>
#include <exception>
#include <filesystem>

#include "knife/drawings.hpp"

namespace {

void cut_everything(const std::filesystem::path &folder) {
  const std::vector<Drawing> pages = {
      {"cover", cover()},
      {"back", back()},
      {"shelter", shelter()},
      {"street", street()},
      {"umbrella", umbrella_poster()},
      {"map", map()},
      {"rain", rain()},
      {"quince", quince()},
      {"lamp-post", lamp_post()},
      {"little-bus", little_bus()},
      {"flask", flask()},
      {"moth", moth()},
      {"way", way()},
  };
  for (const std::vector<Drawing> &group : {pages, boat_steps(), lost_things()}) {
    for (const auto &[name, sheet] : group)
      sheet.save(folder / (name + ".svg"));
  }
}

} // namespace

int main(int count, char **arguments) {
  if (count != 2) {
    std::fputs("usage: knife FOLDER   cuts the almanac's drawings into FOLDER\n", stderr);
    return 2;
  }
  try {
    cut_everything(arguments[1]);
  } catch (const std::exception &wrong) {
    std::fprintf(stderr, "knife: %s\n", wrong.what());
    return 1;
  }
  return 0;
}
