// A step as a band across the page: its words at the left, at the right what it looks like.
#include "press/leaflet_slices.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace bodkin::press {
namespace {

using namespace paperwork;

constexpr double gutter = 24;
constexpr double highest = 330; // of what stands beside words; points

bool is_words(const LeafletBlock &block) {
  return std::holds_alternative<Passage>(block) || std::holds_alternative<Care>(block);
}

bool is_step_with_pictures(std::span<const LeafletBlock> step) {
  const auto *head = step.empty() ? nullptr : std::get_if<Headline>(&step.front());
  if (head == nullptr || head->level > 2)
    return false;
  const auto body = step.subspan(1);
  const auto pictures = std::count_if(body.begin(), body.end(), [](const LeafletBlock &block) {
    return std::holds_alternative<Pictures>(block);
  });
  return pictures > 0 &&
         std::count_if(body.begin(), body.end(), is_words) + pictures == std::ssize(body);
}

// Slices one below the other.
struct Column {
  std::vector<Slice> slices;
  double height = 0;

  void add(std::vector<Slice> more) {
    for (Slice &slice : more) {
      height += (slices.empty() ? 0 : slice.before) + slice.height;
      slices.push_back(std::move(slice));
    }
  }
  void put(LeafletPage &page, double y) const {
    for (const Slice &slice : slices) {
      y += &slice == slices.data() ? 0 : slice.before;
      slice.put(page, y);
      y += slice.height;
    }
  }
};

} // namespace

std::optional<Slice> step_beside(std::span<const LeafletBlock> step, const Band &band,
                                 LeafletType &type) {
  if (!is_step_with_pictures(step))
    return std::nullopt;
  constexpr double below_head = 4;
  const double left = band.left + band.hanging;
  const double wide = (band.right - left - gutter) / 2;
  const Band half{band.left, left + wide, band.hanging};
  Column words, pictures;
  for (const LeafletBlock &block : step.subspan(1))
    if (const auto *shown = std::get_if<Pictures>(&block))
      pictures.add(picture_slices(*shown, left + wide + gutter, band.right, type));
    else
      words.add(slices_of(block, half, type));
  if (pictures.height > highest)
    return std::nullopt;
  Slice head = std::move(slices_of(step.front(), band, type).front());
  const double before = head.before, under = head.height + below_head;
  const double height = under + std::max(words.height, pictures.height);
  return Slice{before, height, false, false,
               [head = std::move(head), words = std::move(words), pictures = std::move(pictures),
                under](LeafletPage &page, double y) {
                 head.put(page, y);
                 words.put(page, y + under);
                 pictures.put(page, y + under);
               }};
}

} // namespace bodkin::press
