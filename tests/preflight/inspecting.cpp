#include "preflight/inspecting.hpp"

#include "art/gallery.hpp"
#include "page/compose.hpp"
#include "preflight/copy.hpp"
#include "problems/render.hpp"
#include "sheet/impose.hpp"
#include "sheet/passes.hpp"
#include "type/compositor.hpp"
#include "type/faces.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <png.h>
#include <vector>
#include <zlib.h>

namespace bodkin::tests {
namespace {

std::vector<PageInk> inks_of(const Edition &edition, const Drawings &drawings) {
  std::vector<PageInk> inks(drawings.pages.size());
  for (std::size_t page = 1; page < inks.size(); ++page)
    inks[page] = {drawings.pages[page].draws, *edition.pages[page].mode};
  return inks;
}

constexpr std::string_view supplies = R"(
machine copier
  prints black at $0.10 a side
  prints colour at $0.50 a side
  bare {}
  duplex by machine, drift {}

face book from "EB Garamond"
style body
  face book 11/14
style label
  face book 8/10
style sign
  face book 30/34

)";

std::string indented(std::string_view lines) {
  std::string out;
  while (!lines.empty()) {
    const std::size_t end = std::min(lines.find('\n'), lines.size());
    out += fmt::format("  {}\n", lines.substr(0, end));
    lines.remove_prefix(std::min(end + 1, lines.size()));
  }
  return out;
}

std::string picture(int width, int height, std::array<std::uint8_t, 3> colour) {
  std::vector<std::uint8_t> samples;
  for (int i = 0; i < width * height; ++i)
    samples.insert(samples.end(), colour.begin(), colour.end());
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  image.width = static_cast<png_uint_32>(width);
  image.height = static_cast<png_uint_32>(height);
  image.format = PNG_FORMAT_RGB;
  png_alloc_size_t size = PNG_IMAGE_PNG_SIZE_MAX(image);
  std::string bytes(size, '\0');
  REQUIRE(png_image_write_to_memory(&image, bytes.data(), &size, 0, samples.data(), 0, nullptr));
  bytes.resize(size);
  return bytes;
}

} // namespace

std::string Inspected::told(std::string_view check) const {
  Problems of_check;
  std::copy_if(problems.begin(), problems.end(), std::back_inserter(of_check),
               [&](const Problem &problem) { return problem.check == check; });
  return as_text(of_check, *read.sources, false);
}

std::string Inspected::found() const {
  std::string out;
  for (const Problem &problem : problems)
    out += fmt::format("{}{} {}", out.empty() ? "" : ", ", problem.check,
                       read.sources->line_number(problem.range));
  return out;
}

std::string Inspected::edited(std::string_view check) const {
  const auto problem = std::find_if(problems.begin(), problems.end(),
                                    [&](const Problem &p) { return p.check == check; });
  REQUIRE(problem != problems.end());
  return tests::edited(*problem, *read.sources);
}

std::string edited(const Problem &problem, const Sources &sources) {
  std::vector<Edit> edits = problem.edits;
  REQUIRE_FALSE(edits.empty());
  std::sort(edits.begin(), edits.end(),
            [](const Edit &a, const Edit &b) { return a.range.begin > b.range.begin; });
  std::string text(sources.text(edits.front().range.file));
  for (const Edit &edit : edits)
    text.replace(bytes(edit.range.begin), bytes(edit.range.end) - bytes(edit.range.begin),
                 edit.text);
  return text;
}

Inspected walked(std::string_view manuscript, MoreFiles more) {
  Inspected out;
  out.read = read(manuscript, more);
  out.before = out.read.problems;
  const Edition &edition = out.read.edition();
  const Sources &sources = *out.read.sources;
  const Imposition imposition = impose(edition, sources, out.before);
  const auto system = machine_faces();
  FacesOpened opened = open_faces(edition, out.read.files, *system);
  std::move(opened.problems.begin(), opened.problems.end(), std::back_inserter(out.before));
  art::Gallery gallery(out.read.files);
  Compositor compositor(edition, opened.faces);
  const Drawings drawings =
      compose({edition, imposition, sources, gallery, compositor}, out.before);
  const std::vector<SheetModes> modes = modes_of(imposition, inks_of(edition, drawings));
  passes_of(edition, imposition, modes, sources, out.before);
  preflight({edition, imposition, drawings, modes, gallery, sources}, out.problems);
  sort_problems(out.problems);
  return out;
}

Inspected inspected(std::string_view manuscript, MoreFiles more) {
  Inspected out = walked(manuscript, more);
  const bool sound = !any_errors(out.before);
  CAPTURE(as_text(out.before, *out.read.sources, false));
  REQUIRE(sound);
  return out;
}

Inspected copy_inspected(std::string_view manuscript, MoreFiles more) {
  Inspected out;
  out.read = read(manuscript, more);
  out.before = out.read.problems;
  const Edition &edition = out.read.edition();
  const Sources &sources = *out.read.sources;
  const std::vector<CopyPart> parts = impose_parts(edition, sources, out.before);
  const auto system = machine_faces();
  FacesOpened opened = open_faces(edition, out.read.files, *system);
  art::Gallery gallery(out.read.files);
  Compositor compositor(edition, opened.faces);
  std::vector<Drawings> drawings;
  for (const CopyPart &part : parts)
    drawings.push_back(
        compose({*part.edition, part.imposition, sources, gallery, compositor}, out.before));
  std::vector<Inspection> each;
  for (std::size_t i = 0; i < parts.size(); ++i)
    each.push_back({*parts[i].edition, parts[i].imposition, drawings[i], {}, gallery, sources});
  CAPTURE(as_text(out.before, sources, false));
  REQUIRE_FALSE(any_errors(out.before));
  preflight(CopyInspection{parts, each}, out.problems);
  sort_problems(out.problems);
  return out;
}

std::string booklet(std::string_view facts, std::string_view rest) {
  return fmt::format(R"(edition "Test"
  size half-letter
  run 10 copies
  paper plain
  machine copier
{}
stock plain
  weight 20 lb bond
  sheet letter, grain short
{}{})",
                     indented(facts), fmt::format(supplies, "1/4in", "1/16in"), rest);
}

std::string metric_booklet(std::string_view facts, std::string_view rest) {
  return fmt::format(R"(edition "Test"
  size a5
  run 10 copies
  paper plain
  machine copier
{}
stock plain
  weight 90 gsm
  sheet a4, grain short
{}{})",
                     indented(facts), fmt::format(supplies, "5mm", "1mm"), rest);
}

std::string grey_picture(int width, int height) { return picture(width, height, {128, 128, 128}); }
std::string boastful_picture() {
  std::string bytes = grey_picture(8, 8);
  constexpr std::size_t header = 12, size = 17; // "IHDR" and its 13 bytes, which the CRC covers
  bytes.replace(header + 4, 8, std::string("\0\0\xea\x60\0\0\xea\x60", 8));
  const auto *from = reinterpret_cast<const Bytef *>(bytes.data() + header);
  const auto crc = static_cast<std::uint32_t>(crc32(0, from, size));
  for (int i = 0; i < 4; ++i)
    bytes[header + size + static_cast<std::size_t>(i)] = static_cast<char>(crc >> (24 - 8 * i));
  return bytes;
}

std::string red_picture(int width, int height) { return picture(width, height, {200, 0, 0}); }

} // namespace bodkin::tests
