#include "edition/pages.hpp"

#include "edition/elements.hpp"
#include "edition/page_list.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Problem page_twice(const Reader &reader, FactLine line, int page, int free_page) {
  const Range first = reader.edition.pages[static_cast<std::size_t>(page)].opened;
  Problem problem{.check = "page-twice",
                  .range = line.range("pages"),
                  .message = fmt::format("page {} is already made on {}", page,
                                         place_words(reader, first, line.range().file)),
                  .why =
                      "both would print over each other on one page; this often comes of a merge, "
                      "or of a page put in before this one",
                  .related = {{first, fmt::format("page {} is made here", page)}}};
  if (free_page > 0 && line.word() == "page") {
    problem.type.push_back(
        {typed(reader, line.range(), line.range("pages"), std::to_string(free_page)),
         "or bring what stands below both lines together under one"});
    problem.edits.push_back({line.range("pages"), std::to_string(free_page)});
  } else if (line.statement->first_child == language::no_statement) {
    problem.type.push_back({{},
                            fmt::format("write what this line asks for on {}, and give page {} "
                                        "a line of its own if that one makes several",
                                        place_words(reader, first, line.range().file), page)});
  } else
    problem.type.push_back({{}, "bring what stands below both lines together under one"});
  return problem;
}

Problem not_a_spread(const Reader &reader, FactLine line, const PageList &list) {
  const int page = list.pages.empty() ? 2 : std::max(2, list.pages.front() / 2 * 2);
  const std::string facing = fmt::format("{}-{}", page, page + 1);
  return {
      .check = "not-a-spread",
      .range = line.range("pages"),
      .message = "a spread is two pages that face each other: an even one and the odd one after "
                 "it",
      .why = "in an open booklet the even page lies at the left of the fold and the next at its "
             "right; outside, back-cover and front-cover lie so",
      .type = {{typed(reader, line.range(), line.range("pages"), facing), {}}},
      .edits = {{line.range("pages"), facing}}};
}

Problem not_blank(FactLine blank, Range element) {
  return {.check = "not-blank",
          .range = blank.range(),
          .message = "this page is called blank and is not",
          .why = "a blank page costs nothing and running matter is left off it, so one of the two "
                 "lines is wrong",
          .type = {{{}, "take out the blank, or what stands on the page"}},
          .related = {{element, "this stands on it"}}};
}

Problem two_fill_margins(const Reader &reader, const Element &first, const Element &second) {
  return {.check = "two-fill-margins",
          .range = second.range,
          .message = fmt::format("these words have no place, nor have those on {}",
                                 place_words(reader, first.range, second.range.file)),
          .why = "words with no place fill the margins, so these two would print over each other",
          .type = {{"at       1/2in 1/2in, 4in x 3in", "below one of them"}},
          .related = {{first.range, "these fill the margins too"}}};
}

Problem only_the_book_moves(FactLine stays, std::string_view piece) {
  return {.kind = Kind::note,
          .check = "stays-anyway",
          .range = stays.range(),
          .message =
              fmt::format("pages of {} {} stay in any case", piece == "insert" ? "an" : "a", piece),
          .why = "`bodkin arrange` moves pages of the book alone, and this line says nothing more",
          .type = {{{}, "take the line out"}}};
}

Problem kept_apart(const Reader &reader, FactLine stays, const std::vector<int> &together) {
  const std::string run = fmt::format("{}-{}", together.front(), together.back());
  return {.check = "kept-apart",
          .range = stays.range("with"),
          .message = fmt::format("pages that are kept together follow each other; between {} and "
                                 "{} others stand",
                                 together.front(), together.back()),
          .why = "`bodkin arrange` moves such pages as one piece, in the order that they stand in "
                 "now",
          .type = {{typed(reader, stays.range(), stays.range("with"), run),
                    "with those between, or give the pages neighbouring numbers first"}},
          .edits = {{stays.range("with"), run}}};
}

Asked asked_by(Reader &reader, FactLine line) {
  Asked asked;
  asked.mode = mode_in(line, "mode");
  asked.stock = id_in<StockId>(reader, Family::stock, line, "stock");
  asked.machine = id_in<MachineId>(reader, Family::machine, line, "machine");
  return asked;
}

class Opening {
public:
  explicit Opening(Reader &reader) : reader_(reader), edition_(reader.edition) {
    edition_.pages.resize(static_cast<std::size_t>(*edition_.page_count) + 1);
    scope_.count = std::max(*edition_.page_count, 1);
    scope_.count_written = reader.wraps() || reader.edition_facts.find("pages");
  }

  void open(FactLine line) {
    const PageList list = pages_of(reader_, line, "pages", scope_);
    if (!list.pages.empty())
      scope_.next = list.pages.back() + 1;
    if (line.word() == "page")
      open_page(line, list);
    else
      open_spread(line, list);
  }

private:
  Page &page(int number) { return edition_.pages[static_cast<std::size_t>(number)]; }

  // A page named once more stays as the first line made it.
  std::vector<int> still_free(FactLine line, const PageList &list) {
    std::vector<int> free;
    bool said = false;
    for (const int number : list.pages) {
      if (number > *edition_.page_count)
        continue;
      if (!page(number).opened.somewhere())
        free.push_back(number);
      else if (!said) {
        said = true;
        reader_.report(page_twice(reader_, line, number, free_page()));
      }
    }
    return free;
  }

  // The lowest page that no line opens, perhaps one after the last where nobody says which is the
  // last; 0 where there is none.
  int free_page() {
    const std::vector<bool> &claimed = reader_.claimed;
    while (lowest_free_ < claimed.size() && claimed[lowest_free_])
      ++lowest_free_;
    const int last = scope_.count_written ? *edition_.page_count : limits::pages;
    return lowest_free_ <= static_cast<std::size_t>(last) ? static_cast<int>(lowest_free_) : 0;
  }

  void open_page(FactLine line, const PageList &list) {
    const std::vector<int> free = still_free(line, list);
    const Asked asked = asked_by(reader_, line);
    const std::vector<ElementId> elements = take_elements(reader_, line, Stands::on_page);
    const bool blank = is_blank(line, elements);
    take_stays(line, free);
    judge_words(elements);
    if (!room_for(line, elements.size() * free.size()))
      return;
    for (const int number : free) {
      page(number).opened = line.range();
      page(number).asked = asked;
      page(number).elements = elements;
      page(number).blank = blank;
    }
    if (list.first > 0 && list.first <= *edition_.page_count && line.has("called"))
      page(list.first).called = line.words("called");
  }

  void open_spread(FactLine line, const PageList &list) {
    Spread spread;
    spread.opened = line.range();
    spread.asked = asked_by(reader_, line);
    spread.elements = take_elements(reader_, line, Stands::on_spread);
    const bool blank = is_blank(line, spread.elements);
    if (!set_pages(spread, list)) {
      if (list.sound)
        reader_.report(not_a_spread(reader_, line, list));
      return;
    }
    if (still_free(line, list).size() < 2 || !room_for(line, spread.elements.size() * 2))
      return;
    for (const int number : {spread.left, spread.right}) {
      page(number).opened = line.range();
      page(number).asked = spread.asked;
      page(number).blank = blank;
      page(number).spread = static_cast<std::uint32_t>(edition_.spreads.size());
    }
    take_stays(line, list.pages);
    if (line.has("called"))
      page(list.first).called = line.words("called");
    edition_.spreads.push_back(std::move(spread));
  }

  bool set_pages(Spread &spread, const PageList &list) const {
    if (list.pages.size() != 2 || list.pages.back() > *edition_.page_count)
      return false;
    const int low = list.pages.front();
    const int high = list.pages.back();
    const bool outside = low == 1 && high == *edition_.page_count && high >= 4 && high % 2 == 0;
    if (!outside && (low % 2 != 0 || high != low + 1))
      return false;
    spread.left = outside ? high : low;
    spread.right = outside ? low : high;
    return true;
  }

  bool is_blank(FactLine line, const std::vector<ElementId> &elements) {
    const FactLine blank = Facts(line).find("blank");
    if (blank && !elements.empty())
      reader_.report(not_blank(blank, edition_[elements.front()].range));
    return blank && elements.empty();
  }

  void take_stays(FactLine line, const std::vector<int> &pages) {
    const FactLine fact = Facts(line).find("stays");
    if (!fact || pages.empty())
      return;
    if (reader_.piece)
      return reader_.report(only_the_book_moves(fact, reader_.piece.word()));
    Stays stays{fact.range(), pages, {}};
    if (fact.has("with")) {
      PageScope scope = scope_;
      scope.next = pages.back() + 1;
      PageList list = pages_of(reader_, fact, "with", scope);
      if (!list.sound || list.pages.empty())
        return;
      stays.with = std::move(list.pages);
      std::vector<int> together = pages;
      together.insert(together.end(), stays.with.begin(), stays.with.end());
      std::sort(together.begin(), together.end());
      together.erase(std::unique(together.begin(), together.end()), together.end());
      if (together.back() - together.front() >= static_cast<int>(together.size()))
        return reader_.report(kept_apart(reader_, fact, together));
    }
    edition_.stays.push_back(std::move(stays));
  }

  void judge_words(const std::vector<ElementId> &elements) {
    std::vector<const Element *> filling;
    for (const ElementId id : elements) {
      const Element &element = edition_[id];
      if (!fills_margins(element))
        continue;
      const auto other = std::find_if(filling.begin(), filling.end(), [&](const Element *before) {
        return in_one_copy(*before, element);
      });
      if (other != filling.end())
        reader_.report(two_fill_margins(reader_, **other, element));
      filling.push_back(&element);
    }
  }

  // Not each in another run alone.
  static bool in_one_copy(const Element &one, const Element &other) {
    return !one.work.only || !other.work.only || **one.work.only == **other.work.only;
  }

  static bool fills_margins(const Element &element) {
    return std::holds_alternative<Words>(element.what) && !element.placement.written() &&
           !element.placement.from.somewhere();
  }

  bool room_for(FactLine line, std::size_t elements) {
    reader_.elements_laid += elements;
    if (reader_.elements_laid <= limits::elements_laid)
      return true;
    reader_.report(too_many_things(line.range("pages"), limits::elements_laid));
    return false;
  }

  Reader &reader_;
  Edition &edition_;
  PageScope scope_;
  std::size_t lowest_free_ = 1;
};

} // namespace

void open_pages(Reader &reader) {
  Opening opening(reader);
  reader.each_page_line([&](FactLine line) { opening.open(line); });
}

void settle_pages(Edition &edition) {
  for (int number = 1; number <= *edition.page_count; ++number) {
    Page &page = edition.pages[static_cast<std::size_t>(number)];
    if (page.asked.mode)
      page.mode = *page.asked.mode;
    else if (edition.cover_mode && edition.is_cover(number))
      page.mode = *edition.cover_mode;
    else
      page.mode = edition.printing;
    page.machine = page.asked.machine ? *page.asked.machine : edition.machine;
  }
}

} // namespace bodkin
