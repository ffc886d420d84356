#include "press/leaflet_layout.hpp"

#include "press/leaflet_figures.hpp"
#include "press/leaflet_slices.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::press {
namespace {

using namespace paperwork;

constexpr double edge = 54, foot_room = 21;

class Paginator {
public:
  Paginator(const Leaflet &leaflet, LeafletType &type)
      : leaflet_(leaflet), type_(type), width_(leaflet.paper.width.in_points()),
        height_(leaflet.paper.height.in_points()) {}

  std::vector<LeafletPage> lay() {
    std::size_t whole_to = 0; // past what is kept together
    for (std::size_t i = 0; i < leaflet_.blocks.size(); ++i) {
      const std::size_t end = end_of_part(i);
      if (const auto *head = std::get_if<Headline>(&leaflet_.blocks[i]);
          head && (head->whole || is_short(i, end)))
        whole_to = end;
      if (auto whole = step_beside(std::span(leaflet_.blocks).subspan(i, end - i), band(),
                                   room_left(), type_);
          whole && whole->height <= bottom() - edge) {
        add({*std::move(whole)});
        i = end - 1;
        continue;
      }
      std::vector<Slice> slices = slices_of(leaflet_.blocks[i], band(), type_);
      if (!slices.empty() && introduces(i))
        slices.back().keep = true;
      for (Slice &slice : slices)
        slice.keep = slice.keep || i < whole_to;
      if (i + 1 == whole_to && !slices.empty())
        slices.back().keep = false;
      add(std::move(slices));
    }
    place_kept();
    number_pages();
    return std::move(pages_);
  }

  void add(std::vector<Slice> slices) {
    for (Slice &slice : slices) {
      if (slice.new_page) {
        place_kept();
        y_ = bottom();
        fresh_ = true;
        continue;
      }
      const bool keep = slice.keep;
      kept_.push_back(std::move(slice));
      if (!keep)
        place_kept();
    }
  }

private:
  // Below what stands on the page, and what waits to be put there.
  double room_left() const {
    if (pages_.empty() || fresh_)
      return bottom() - edge;
    double left = bottom() - y_;
    for (const Slice &slice : kept_)
      left -= slice.before + slice.height;
    return left;
  }

  // Up to the next headline, of whatever level.
  std::size_t end_of_part(std::size_t begin) const {
    if (!std::holds_alternative<Headline>(leaflet_.blocks[begin]))
      return begin + 1;
    std::size_t end = begin + 1;
    while (end < leaflet_.blocks.size() &&
           !std::holds_alternative<Headline>(leaflet_.blocks[end]) &&
           !std::holds_alternative<NewPage>(leaflet_.blocks[end]))
      ++end;
    return end;
  }

  // A few words under a headline, which nobody wants to turn a page in.
  bool is_short(std::size_t begin, std::size_t end) const {
    constexpr std::size_t most = 6;
    const auto from = leaflet_.blocks.begin() + static_cast<std::ptrdiff_t>(begin + 1);
    const auto to = leaflet_.blocks.begin() + static_cast<std::ptrdiff_t>(end);
    return end - begin > 1 && end - begin <= most &&
           std::all_of(from, to, [](const LeafletBlock &block) {
             const auto *pictures = std::get_if<Pictures>(&block);
             return std::holds_alternative<Passage>(block) || std::holds_alternative<Care>(block) ||
                    (pictures != nullptr && pictures->wide);
           });
  }

  // In a part that says what to take care of, from which none of it is parted.
  bool is_careful(std::size_t block) const {
    std::size_t begin = block;
    while (begin > 0 && !std::holds_alternative<Headline>(leaflet_.blocks[begin]))
      --begin;
    const auto from = leaflet_.blocks.begin() + static_cast<std::ptrdiff_t>(begin);
    const auto to = leaflet_.blocks.begin() + static_cast<std::ptrdiff_t>(end_of_part(begin));
    return std::any_of(from, to,
                       [](const LeafletBlock &of) { return std::holds_alternative<Care>(of); });
  }

  // Words before more words, a table or a picture that they speak of; anything before a remark; and
  // what to take care of before what it is taken care in.
  bool introduces(std::size_t block) const {
    if (block + 1 == leaflet_.blocks.size())
      return false;
    const LeafletBlock &next = leaflet_.blocks[block + 1];
    if (const auto *passage = std::get_if<Passage>(&next); passage && passage->small)
      return true;
    if (std::holds_alternative<Care>(leaflet_.blocks[block]))
      return !std::holds_alternative<Headline>(next) && !std::holds_alternative<NewPage>(next);
    return std::holds_alternative<Passage>(leaflet_.blocks[block]) &&
           ((std::holds_alternative<Passage>(next) && is_careful(block)) ||
            std::holds_alternative<Table>(next) || std::holds_alternative<Pictures>(next) ||
            std::holds_alternative<Checklist>(next));
  }

  Band band() const {
    Band band{edge, width_ - edge};
    if (!leaflet_.hanging)
      band.hanging = 0;
    return band;
  }

  double bottom() const { return height_ - edge - foot_room; }

  // What must stay together goes to the next page together, unless no page holds it.
  void place_kept() {
    double high = 0;
    for (const Slice &slice : kept_)
      high += slice.before + slice.height;
    bool anew = pages_.empty() || fresh_ || y_ + high > bottom();
    for (const Slice &slice : kept_) {
      if (anew || y_ + slice.before + slice.height > bottom()) {
        pages_.emplace_back();
        y_ = edge;
        anew = fresh_ = false;
        if (slice.heads != nullptr) {
          slice.heads->put(pages_.back(), y_);
          y_ += slice.heads->height;
        }
      } else {
        y_ += slice.before;
      }
      slice.put(pages_.back(), y_);
      y_ += slice.height;
    }
    kept_.clear();
  }

  void number_pages() {
    const double y = height_ - edge - type_.leading(LeafletRole::foot) + 8;
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      const std::string number = fmt::format("{} of {}", i + 1, pages_.size());
      const double wide = type_.width(number, LeafletRole::foot);
      pages_[i].rules.push_back({edge, y - 4, width_ - edge, y - 4, 0.4});
      pages_[i].words.push_back(
          words_at({type_.line(foot_words(wide), LeafletRole::foot)}, edge, y));
      pages_[i].words.push_back(
          words_at({type_.line(number, LeafletRole::foot)}, width_ - edge - wide, y));
    }
  }

  std::string foot_words(double number_width) {
    const double room = width_ - 2 * edge - number_width - 12;
    std::string both = fmt::format("{}: {}", leaflet_.title, leaflet_.kind);
    return type_.width(both, LeafletRole::foot) <= room ? both : leaflet_.kind;
  }

  const Leaflet &leaflet_;
  LeafletType &type_;
  double width_, height_, y_ = 0;
  bool fresh_ = false; // a new page is asked for
  std::vector<Slice> kept_;
  std::vector<LeafletPage> pages_;
};

} // namespace

Item words_at(std::vector<Line> lines, double x, double y) {
  Item item;
  item.place.x = Length::nearest_points(x);
  item.place.y = Length::nearest_points(y);
  item.what = SetWords{std::move(lines)};
  return item;
}

std::vector<LeafletPage> lay_out(const Leaflet &leaflet, LeafletType &type) {
  Paginator paginator(leaflet, type);
  paginator.add(title_slices(leaflet, {edge, leaflet.paper.width.in_points() - edge}, type));
  return paginator.lay();
}

} // namespace bodkin::press
