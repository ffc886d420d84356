#include "page/left_over.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// A place may go down as far as this from the page's foot: what most copiers leave bare, by common
// practice, no source.
constexpr Length least_foot = Length::inches(1, 4);

std::string counted(std::int64_t n, std::string_view thing) {
  return fmt::format("{} {}{}", n, thing, n == 1 ? "" : "s");
}

// The line's own words, without its indentation.
std::string line_of(const Workshop &workshop, Range range) {
  return range.somewhere() ? std::string(workshop.sources.text(range)) : std::string();
}

const Element &element_of(const Workshop &workshop, const TextBox &box) {
  return workshop.edition[box.place.element];
}

// "page 1 of card"
std::string page_in_words(const Workshop &workshop, int page) {
  return workshop.piece.empty() ? fmt::format("page {}", page)
                                : fmt::format("page {} of {}", page, workshop.piece);
}

std::string breaking_off(const LeftOver &left) {
  return left.last_words.empty() ? std::string("not one line of it fits")
                                 : fmt::format("it breaks off at “{}”", left.last_words);
}

// A page that nothing names, where a further box could go.
int first_unnamed(const Edition &edition) {
  for (int page = 1; page <= *edition.page_count; ++page)
    if (!edition.pages[static_cast<std::size_t>(page)].opened.somewhere())
      return page;
  return 0;
}

// "pages 2, 5", of the book's; "page 1 of card" of a piece's.
std::string pages_of_part(const std::vector<TextBox> &boxes, std::size_t part) {
  std::vector<int> pages;
  for (const TextBox &box : boxes)
    if (box.part == part && (pages.empty() || pages.back() != box.page))
      pages.push_back(box.page);
  if (pages.size() == 1)
    return fmt::format("page {}", pages.front());
  const bool in_a_row = pages.back() - pages.front() + 1 == static_cast<int>(pages.size());
  if (in_a_row && pages.size() > 2)
    return fmt::format("pages {} to {}", pages.front(), pages.back());
  return fmt::format("pages {}", fmt::join(pages, ", "));
}

std::string page_list(const std::vector<TextBox> &boxes) {
  std::vector<std::size_t> parts;
  std::string list;
  for (const TextBox &box : boxes) {
    if (std::find(parts.begin(), parts.end(), box.part) != parts.end())
      continue;
    parts.push_back(box.part);
    list += fmt::format("{}{}{}{}", list.empty() ? "" : " and ", pages_of_part(boxes, box.part),
                        box.piece.empty() ? "" : " of ", box.piece);
  }
  return list;
}

// The same place, higher by as many leadings as are missing, where the page has room for it.
void type_taller(const Workshop &workshop, const WordsPlace &place, const LeftOver &left,
                 Problem &problem) {
  const Edition &edition = workshop.edition;
  const std::int64_t columns = place.words->columns;
  const Length more =
      *edition[*place.words->style].leading * ((left.lines + columns - 1) / columns);
  const Ruler ruler = edition.ruler;
  const Box &box = place.place;
  const Length height = ruled_up(box.height + more, ruler);
  if (box.y + height > edition.size->height - least_foot) {
    problem.type.push_back({{}, "give these words a further or a wider place, or use fewer"});
    return;
  }
  const std::string line =
      fmt::format("at       {} {}, {} x {}", written(box.x, ruler), written(box.y, ruler),
                  written(box.width, ruler), written(height, ruler));
  problem.type.push_back({line, "a taller place, or fewer words"});
  const Placement &placement = edition[place.element].placement;
  const auto *at = std::get_if<At>(&placement.where);
  if (at && at->across.from == From::start && at->down.from == From::start)
    problem.edits.push_back({placement.from, line});
}

} // namespace

Problem left_over_alone(const Workshop &workshop, const WordsPlace &place, int page,
                        const LeftOver &left, std::int64_t words) {
  const Element &element = workshop.edition[place.element];
  Problem problem;
  problem.check = "left-over-text";
  problem.range = element.range;
  problem.message = fmt::format("{} ({}) of these words have no room in their place on {}",
                                counted(left.lines, "line"), counted(left.words, "word"),
                                page_in_words(workshop, page));
  problem.why = fmt::format("{}; the place holds {} of {} words; text is never shrunk or dropped "
                            "to fit",
                            breaking_off(left), left.words_set, words);
  type_taller(workshop, place, left, problem);
  return problem;
}

Problem left_over_run(const Workshop &workshop, TextId id, const std::vector<TextBox> &boxes,
                      const TextBox &last, const LeftOver &left, std::int64_t words) {
  const Text &text = workshop.edition.texts[at(id)];
  const Element &element = element_of(workshop, last);
  std::string why =
      fmt::format("{}; its boxes on {} hold {} of {} words; text is never shrunk or dropped to fit",
                  breaking_off(left), page_list(boxes), left.words_set, words);
  Problem problem{.kind = Kind::error,
                  .check = "left-over-text",
                  .range = element.range,
                  .message = fmt::format("{} ({}) of {} have no box left after this one",
                                         counted(left.lines, "line"), counted(left.words, "word"),
                                         text.name),
                  .why = {},
                  .type = {},
                  .related = {},
                  .edits = {}};
  if (const int page = first_unnamed(workshop.edition)) {
    why += fmt::format("; page {} is blank", page);
    problem.type.push_back({fmt::format("page {}", page),
                            fmt::format("with `{}` under it", line_of(workshop, element.range))});
  } else {
    type_taller(workshop, last.place, left, problem);
  }
  problem.why = std::move(why);
  return problem;
}

namespace {

// "9-10, 12"
std::string as_list(const std::vector<int> &pages) {
  std::string text;
  for (std::size_t i = 0, end = 0; i < pages.size(); i = end) {
    end = i + 1;
    while (end < pages.size() && pages[end] == pages[end - 1] + 1)
      ++end;
    text += fmt::format("{}{}", text.empty() ? "" : ", ", pages[i]);
    if (end - i > 1)
      text += fmt::format("-{}", pages[end - 1]);
  }
  return text;
}

std::vector<int> pages_of(const std::vector<const TextBox *> &boxes) {
  std::vector<int> pages(boxes.size());
  std::transform(boxes.begin(), boxes.end(), pages.begin(),
                 [](const TextBox *box) { return box->page; });
  std::sort(pages.begin(), pages.end());
  pages.erase(std::unique(pages.begin(), pages.end()), pages.end());
  return pages;
}

// Pages that one line makes, parted into those that a text comes to and the others.
struct MadeByOne {
  std::vector<int> kept, empty;
};

MadeByOne made_with(const Edition &edition, int page, const std::vector<int> &empty) {
  MadeByOne made;
  const Range line = edition.pages[static_cast<std::size_t>(page)].opened;
  for (int other = 1; other <= *edition.page_count; ++other)
    if (edition.pages[static_cast<std::size_t>(other)].opened == line)
      (std::find(empty.begin(), empty.end(), other) == empty.end() ? made.kept : made.empty)
          .push_back(other);
  return made;
}

// `page 9-12 on rose` with another list.
std::string with_pages(std::string_view line, const std::vector<int> &pages) {
  std::size_t end = line.size();
  for (const std::string_view next : {" called ", " in ", " on ", " by "})
    end = std::min(end, line.find(next));
  const std::size_t list = line.find_first_not_of(" \t", line.find_first_of(" \t"));
  return fmt::format("{}{}{}", line.substr(0, list), as_list(pages), line.substr(end));
}

// One line makes several pages of which some stay empty: the place itself serves the others.
void type_fewer_pages(const Workshop &workshop, const TextBox &box, const std::vector<int> &empty,
                      Problem &problem) {
  const Edition &edition = workshop.edition;
  const Page &page = edition.pages[static_cast<std::size_t>(box.page)];
  const MadeByOne made = made_with(edition, box.page, empty);
  if (page.spread || made.kept.empty() || !page.opened.somewhere()) {
    problem.type = {{{}, "take this place out, or give it other words"}};
    return;
  }
  const std::string line = with_pages(workshop.sources.text(page.opened), made.kept);
  problem.type = {{line, fmt::format("and a `page {}` of its own, with {}", as_list(made.empty),
                                     page.elements.size() > 1 ? "what else stands on it"
                                                              : "other words, or `blank`")}};
}

} // namespace

Problem ends_early(const Workshop &workshop, TextId id, const std::vector<const TextBox *> &empty) {
  const Text &text = workshop.edition.texts[at(id)];
  const TextBox &first = *empty.front();
  const std::vector<int> pages = pages_of(empty);
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "text-ends-early";
  problem.range = element_of(workshop, first).range;
  problem.message = pages.size() == 1
                        ? fmt::format("{} is all set before this place on page {}; it stays empty",
                                      text.name, pages.front())
                        : fmt::format("{} is all set before pages {}; its places there stay empty",
                                      text.name, as_list(pages));
  problem.why = "the boxes before it hold every word";
  type_fewer_pages(workshop, first, pages, problem);
  return problem;
}

Problem continues_in_a_loop(const Workshop &workshop, TextId id, const TextBox &box) {
  const Text &text = workshop.edition.texts[at(id)];
  const Known<int> &to = *box.place.words->continues;
  return {.kind = Kind::error,
          .check = "text-loop",
          .range = to.from,
          .message = fmt::format("{} goes on at page {}, whose place it has filled already",
                                 text.name, *to),
          .why = "a reader sent back to a page already read would go round for ever",
          .type = {{{},
                    fmt::format("take the line out, or name a page further on that has a "
                                "place for {}",
                                text.name)}},
          .related = {},
          .edits = {}};
}

Problem continues_nowhere(const Workshop &workshop, TextId id, const TextBox &box, int page) {
  const Text &text = workshop.edition.texts[at(id)];
  return {.kind = Kind::error,
          .check = "text-loop",
          .range = box.place.words->continues->from,
          .message = fmt::format("{} has no place on page {} to go on in", text.name, page),
          .why = fmt::format("the text would break off after page {}", box.page),
          .type = {{line_of(workshop, element_of(workshop, box).range),
                    fmt::format("under page {}, so that it has a place there", page)}},
          .related = {},
          .edits = {}};
}

Problem never_reached(const Workshop &workshop, TextId id, const TextBox &box) {
  const Text &text = workshop.edition.texts[at(id)];
  return {.kind = Kind::error,
          .check = "place-never-reached",
          .range = element_of(workshop, box).range,
          .message = fmt::format("{} never comes to this place on page {}", text.name, box.page),
          .why = "a `continues` above leads past it, so it would print empty",
          .type = {{fmt::format("continues {}", box.page), "on the place that should lead here"}},
          .related = {},
          .edits = {}};
}

} // namespace bodkin
