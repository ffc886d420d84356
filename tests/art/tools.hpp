// Pictures made for a test by reference programs, in a folder that goes when the test ends.
#pragma once

#include "art/inspect.hpp"
#include "art/load.hpp"
#include "art/pixels.hpp"

#include <string>
#include <string_view>

namespace bodkin::art::testing {

class Folder {
public:
  Folder();
  Folder(const Folder &) = delete;
  Folder &operator=(const Folder &) = delete;
  ~Folder();

  // Runs a shell command with this as its folder; the test fails where the command does.
  std::string run(const std::string &command) const; // gives what it printed
  std::string read(const std::string &name) const;
  void write(const std::string &name, std::string_view bytes) const;
  // What ImageMagick's convert makes of a file, as raw samples of the given kind (rgb, rgba, gray).
  std::string converted(const std::string &name, const std::string &options,
                        const std::string &kind) const;

private:
  std::string path_;
};

// 37 by 23 samples, none like its neighbours, so that a wrong turn or a lost row shows.
Pixels motley();
// As a portable pixmap, which needs no encoder to be right.
std::string ppm(const Pixels &pixels);

// Inspected and loaded, as a test that is not about refusals wants it.
Facts facts_of(std::string_view bytes, int page = 1);
Pixels loaded(std::string_view bytes, std::int64_t about = all_samples);
std::string samples_of(const Pixels &pixels);
// The largest difference between two rows of samples; 256 where their numbers differ.
int furthest(std::string_view a, std::string_view b);

std::string reason_of(std::string_view bytes, int page = 1, const Bounds &bounds = {});

} // namespace bodkin::art::testing
