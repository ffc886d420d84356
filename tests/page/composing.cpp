#include "page/composing.hpp"

#include "sheet/impose.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

constexpr std::string_view types = R"(face book from "EB Garamond"
style body
  face book 10/12

)";

std::vector<PageInk> inks_of(const Edition &edition, const Drawings &drawings) {
  std::vector<PageInk> inks(drawings.pages.size());
  for (std::size_t page = 1; page < inks.size(); ++page)
    inks[page] = {drawings.pages[page].draws, *edition.pages[page].mode};
  return inks;
}

} // namespace

std::string Composed::places(int page) const {
  std::string out;
  for (const Item &item : drawings[page].items)
    out += fmt::format("{}{:g} {:g} {:g}x{:g}", out.empty() ? "" : "; ", item.place.x.in_points(),
                       item.place.y.in_points(), item.place.width.in_points(),
                       item.place.height.in_points());
  return out;
}

std::string Composed::lines(int page) const {
  std::string out;
  for (const Item &item : drawings[page].items)
    if (const auto *words = std::get_if<SetWords>(&item.what))
      for (const Line &line : words->lines) {
        out += out.empty() ? "" : "|";
        for (const GlyphRun &run : line.runs)
          out += run.text;
      }
  return out;
}

std::string Composed::told() const {
  std::string out;
  for (const Problem &problem : problems)
    out += (out.empty() ? "" : " ") + std::string(problem.check);
  return out;
}

std::unique_ptr<Composed> composed(std::string_view facts, std::string_view rest, MoreFiles more) {
  auto out = std::make_unique<Composed>();
  out->read = read(small_edition(facts, std::string(types) + std::string(rest)), more);
  out->problems = out->read.problems;
  const Edition &edition = out->edition();
  const Sources &sources = *out->read.sources;
  out->imposition = impose(edition, sources, out->problems);
  out->system = machine_faces();
  out->faces = std::make_unique<FacesOpened>(open_faces(edition, out->read.files, *out->system));
  REQUIRE(out->faces->problems.empty());
  out->gallery = std::make_unique<art::Gallery>(out->read.files);
  out->compositor = std::make_unique<Compositor>(edition, out->faces->faces);
  out->drawings =
      compose({edition, out->imposition, sources, *out->gallery, *out->compositor}, out->problems);
  out->modes = modes_of(out->imposition, inks_of(edition, out->drawings));
  out->passes = passes_of(edition, out->imposition, out->modes, sources, out->problems);
  return out;
}

} // namespace bodkin::tests
