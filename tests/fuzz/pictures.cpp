// Contract: whatever bytes a picture file holds, inspecting and loading it gives a value or a
// refusal, within the bounds handed in; facts that were given are kept by what is loaded. Drawings
// are left out: they are drawn by a child process, which a fuzzer cannot look into, and librsvg and
// poppler are fuzzed by their own makers; the walk over an SVG's tags that comes before is ours and
// is in. The first byte chooses how many samples are asked for.
#include "art/coloured.hpp"
#include "art/jpeg.hpp"
#include "art/load.hpp"
#include "art/sniff.hpp"
#include "art/svg_mentions.hpp"
#include "art/tone.hpp"

#include <cstdint>
#include <cstdlib>

namespace {

using namespace bodkin;
using namespace bodkin::art;

void demand(bool kept) {
  if (!kept)
    std::abort();
}

Bounds small() {
  Bounds bounds;
  bounds.samples = 100'000;
  bounds.edge = 4'000;
  bounds.in_child = false;
  return bounds;
}

void place(std::string_view bytes, const Facts &facts) {
  if (!can_be_placed(facts))
    return;
  std::size_t before = 0;
  for (const ByteSpan &span : facts.jpeg->kept) {
    demand(before <= span.begin && span.begin < span.end && span.end <= bytes.size());
    before = span.end;
  }
  demand(placed_jpeg(bytes, facts).bytes <= bytes.size());
  static_cast<void>(grey_jpeg(bytes, facts));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *input, std::size_t size) {
  if (size == 0)
    return 0;
  const std::int64_t about = input[0] % 2 == 0 ? all_samples : 500;
  const std::string_view bytes(reinterpret_cast<const char *>(input) + 1, size - 1);
  const auto format = sniff(bytes);
  if (!format || *format == Format::svg || *format == Format::pdf) {
    demand(svg_mentions(bytes).outside.size() <= bytes.size());
    return 0;
  }
  const auto facts = inspect(bytes, 1, small());
  if (!facts)
    return 0;
  place(bytes, *facts);
  static_cast<void>(icc_profile(bytes, *facts));
  static_cast<void>(coloured(bytes, *facts, Tone{}, Crop{{0}, {0}, {500'000}, {500'000}}, small()));
  const auto pixels = load(bytes, *facts, about, 1, small());
  if (!pixels)
    return 0;
  demand(pixels->samples.size() == pixels->stride() * static_cast<std::size_t>(pixels->height));
  if (about == all_samples)
    demand(pixels->width == facts->width && pixels->height == facts->height);
  demand(line_art(*pixels, Share{500'000}).width == pixels->width);
  return 0;
}
