#include "art/tools.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace bodkin::art::testing {

Folder::Folder() : path_("/tmp/bodkin-art-XXXXXX") { REQUIRE(mkdtemp(path_.data()) != nullptr); }
Folder::~Folder() { std::filesystem::remove_all(path_); }

std::string Folder::run(const std::string &command) const {
  CAPTURE(command);
  std::FILE *pipe = popen(("cd " + path_ + " && " + command).c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string printed;
  char some[65'536];
  while (const std::size_t count = fread(some, 1, sizeof some, pipe))
    printed.append(some, count);
  REQUIRE(pclose(pipe) == 0);
  return printed;
}

std::string Folder::read(const std::string &name) const {
  std::ifstream file(path_ + "/" + name, std::ios::binary);
  REQUIRE(file.good());
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

void Folder::write(const std::string &name, std::string_view bytes) const {
  std::ofstream(path_ + "/" + name, std::ios::binary) << bytes;
}

std::string Folder::converted(const std::string &name, const std::string &options,
                              const std::string &kind) const {
  return run("convert " + name + " " + options + " -depth 8 " + kind + ":-");
}

Pixels motley() {
  Pixels pixels{37, 23, 3, {}};
  for (int y = 0; y < pixels.height; ++y)
    for (int x = 0; x < pixels.width; ++x)
      for (const int v : {x * 7, y * 11, 255 - x * 3 - y * 5})
        pixels.samples.push_back(static_cast<std::uint8_t>(v));
  return pixels;
}

std::string ppm(const Pixels &pixels) {
  return "P6 " + std::to_string(pixels.width) + " " + std::to_string(pixels.height) + " 255\n" +
         samples_of(pixels);
}

Facts facts_of(std::string_view bytes, int page) {
  const auto facts = inspect(bytes, page);
  if (!facts)
    FAIL("refused: " << facts.refusal().reason);
  return *facts;
}

Pixels loaded(std::string_view bytes, std::int64_t about) {
  const auto pixels = load(bytes, facts_of(bytes), about);
  if (!pixels)
    FAIL("refused: " << pixels.refusal().reason);
  return *pixels;
}

std::string samples_of(const Pixels &pixels) {
  return {reinterpret_cast<const char *>(pixels.samples.data()), pixels.samples.size()};
}

int furthest(std::string_view a, std::string_view b) {
  if (a.size() != b.size())
    return 256;
  int far = 0;
  for (std::size_t i = 0; i < a.size(); ++i)
    far =
        std::max(far, std::abs(static_cast<std::uint8_t>(a[i]) - static_cast<std::uint8_t>(b[i])));
  return far;
}

std::string reason_of(std::string_view bytes, int page, const Bounds &bounds) {
  const auto facts = inspect(bytes, page, bounds);
  if (!facts)
    return facts.refusal().reason;
  const auto pixels = load(bytes, *facts, all_samples, page, bounds);
  return pixels ? "was read" : pixels.refusal().reason;
}

} // namespace bodkin::art::testing
