// A step as a band across the page: its words at the left, at the right what it looks like.
#include "press/leaflet_slices.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace bodkin::press {
namespace {

using namespace paperwork;

constexpr double gutter = 24;
constexpr double highest = 360; // of what stands beside words; points

bool is_words(const LeafletBlock &block) {
  return std::holds_alternative<Passage>(block) || std::holds_alternative<Care>(block);
}

bool is_step_with_pictures(std::span<const LeafletBlock> step) {
  const auto *head = step.empty() ? nullptr : std::get_if<Headline>(&step.front());
  if (head == nullptr)
    return false;
  const auto body = step.subspan(1);
  const auto pictures = std::count_if(body.begin(), body.end(), [](const LeafletBlock &block) {
    const auto *shown = std::get_if<Pictures>(&block);
    return shown != nullptr && !shown->wide;
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

namespace {

// What to take care of, and below it words and pictures of a step in their columns.
struct StepColumns {
  Column words, pictures, cares;
  double below_cares() const { return cares.slices.empty() ? 0 : cares.height + under_cares; }
  double height() const { return below_cares() + std::max(words.height, pictures.height); }

  static constexpr double under_cares = 6;
};

// `words`: the share of the width that words have.
StepColumns columns_of(std::span<const LeafletBlock> body, const Band &band, double words,
                       double share, LeafletType &type) {
  const double left = band.left + band.hanging;
  const double wide = (band.right - left - gutter) * words;
  const Band half{band.left, left + wide, band.hanging};
  StepColumns columns;
  for (const LeafletBlock &block : body)
    if (const auto *shown = std::get_if<Pictures>(&block))
      columns.pictures.add(picture_slices(*shown, left + wide + gutter, band.right, type, share));
    else if (std::holds_alternative<Care>(block))
      columns.cares.add(slices_of(block, band, type));
    else
      columns.words.add(slices_of(block, half, type));
  return columns;
}

// Many words have more of the width than few.
StepColumns lowest(std::span<const LeafletBlock> body, const Band &band, double share,
                   LeafletType &type) {
  StepColumns even = columns_of(body, band, 0.5, share, type);
  StepColumns wordy = columns_of(body, band, 0.6, share, type);
  constexpr double worth_it = 12; // of height
  return wordy.height() + worth_it < even.height() ? std::move(wordy) : std::move(even);
}

} // namespace

std::optional<Slice> step_beside(std::span<const LeafletBlock> step, const Band &band, double room,
                                 LeafletType &type) {
  if (!is_step_with_pictures(step))
    return std::nullopt;
  constexpr double below_head = 4;
  Slice head = std::move(slices_of(step.front(), band, type).front());
  const double before = head.before, under = head.height + below_head;
  StepColumns columns = lowest(step.subspan(1), band, 1, type);
  const auto fits = [&](const StepColumns &of) {
    return of.pictures.height <= highest && before + under + of.height() <= room;
  };
  // Smaller pictures where that keeps it on the page that has been begun; never very small ones.
  for (const double smaller : {0.85, 0.7, 0.6}) {
    if (fits(columns))
      break;
    StepColumns tried = lowest(step.subspan(1), band, smaller, type);
    if (columns.pictures.height > highest || fits(tried))
      columns = std::move(tried);
  }
  if (columns.pictures.height > highest)
    return std::nullopt;
  const double height = under + columns.height();
  return Slice{
      before, height, false, false,
      [head = std::move(head), columns = std::move(columns), under](LeafletPage &page, double y) {
        head.put(page, y);
        columns.cares.put(page, y + under);
        columns.words.put(page, y + under + columns.below_cares());
        columns.pictures.put(page, y + under + columns.below_cares());
      }};
}

} // namespace bodkin::press
