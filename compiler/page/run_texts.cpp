#include "page/left_over.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// The order in which a text reaches its boxes, and the problems of the way.
std::vector<std::size_t> way_through(TextId text, const std::vector<TextBox> &boxes,
                                     std::span<const Workshop> workshops, Problems &problems) {
  std::vector<std::size_t> way;
  std::vector<bool> reached(boxes.size(), false);
  std::size_t next = 0;
  while (next < boxes.size()) {
    reached[next] = true;
    way.push_back(next);
    const TextBox &box = boxes[next];
    ++next;
    if (const auto &continues = box.place.words->continues) {
      const Workshop &workshop = workshops[box.part];
      const auto found = std::find_if(boxes.begin(), boxes.end(), [&](const TextBox &other) {
        return other.part == box.part && other.page == **continues;
      });
      if (found == boxes.end()) {
        problems.push_back(continues_nowhere(workshop, text, box, **continues));
        break;
      }
      next = static_cast<std::size_t>(found - boxes.begin());
      if (reached[next]) {
        problems.push_back(continues_in_a_loop(workshop, text, box));
        break;
      }
    }
    if (next < boxes.size() && reached[next])
      break; // page order came back to a box that a jump had filled
  }
  for (std::size_t i = 0; i < boxes.size(); ++i)
    if (!reached[i])
      problems.push_back(never_reached(workshops[boxes[i].part], text, boxes[i]));
  return way;
}

void show(const TextBox &box, const std::vector<Line> &lines, std::vector<Drawings> &drawings) {
  for (const TextBox::Shown &shown : box.shown) {
    auto &item = drawings[box.part].pages[static_cast<std::size_t>(shown.page)].items[shown.item];
    std::get<SetWords>(item.what).lines = lines;
  }
}

void run_text(TextId text, const std::vector<TextBox> &boxes, std::span<const Workshop> workshops,
              std::vector<Drawings> &drawings, Problems &problems) {
  // Of the book or, where another run's has it otherwise, of that one.
  const Prose &prose = workshops[boxes.front().part].edition.texts[at(text)].prose;
  const std::vector<std::size_t> way = way_through(text, boxes, workshops, problems);
  Flow flow;
  StyleId style = StyleId::none;
  Mark mark;
  const TextBox *last = nullptr;
  std::vector<const TextBox *> empty;
  bool any_set = false;
  for (const std::size_t index : way) {
    const TextBox &box = boxes[index];
    const Workshop &workshop = workshops[box.part];
    if (*box.place.words->style == StyleId::none)
      continue;
    if (!last || *box.place.words->style != style) {
      style = *box.place.words->style;
      flow = workshop.compositor.flow(prose, style);
    }
    if (any_set && flow.ends_at(mark) && !prose.blocks.empty())
      empty.push_back(&box);
    std::vector<Line> lines;
    mark = fill_place(box.place, workshop.compositor, workshop.edition[style], flow, mark, lines);
    // In a face that is missing no word is set: that was told, and this is no end.
    any_set = any_set || !lines.empty();
    show(box, lines, drawings);
    last = &box;
  }
  for (auto begin = empty.begin(); begin != empty.end();) { // a problem for each part of the copy
    const auto end = std::find_if(begin, empty.end(),
                                  [&](const TextBox *box) { return box->part != (*begin)->part; });
    problems.push_back(ends_early(workshops[(*begin)->part], text, {begin, end}));
    begin = end;
  }
  if (last && !flow.ends_at(mark)) {
    const Workshop &workshop = workshops[last->part];
    const Words &words = *last->place.words;
    const Length measure =
        (last->place.place.width - words.gap * (words.columns - 1)) / words.columns;
    problems.push_back(left_over_run(workshop, text, boxes, *last,
                                     workshop.compositor.left_over(flow, mark, measure),
                                     flow.words()));
  }
}

} // namespace

void run_texts(const TextBoxes &boxes, std::span<const Workshop> workshops,
               std::vector<Drawings> &drawings, Problems &problems) {
  for (const auto &[text, places] : boxes)
    run_text(text, places, workshops, drawings, problems);
}

} // namespace bodkin
