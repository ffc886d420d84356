#include "money/colour_savings.hpp"

#include "edition/piece.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin {
namespace {

// A page of the book or of a piece; `piece` is null for the book's.
struct PageOfCopy {
  const Edition *part = nullptr;
  const Piece *piece = nullptr;
  int number = 0; // in its part
  LineKey asking{}, opened{};
  const Page &page() const { return part->pages[static_cast<std::size_t>(number)]; }
  bool asks_for_colour() const { return *page().mode == Mode::colour; }
};

// Index 0 is unused; numbered on through the pieces.
std::vector<PageOfCopy> pages_of_copy(const Edition &book, const Sources &sources) {
  std::vector<PageOfCopy> pages(1);
  LinesOf line_of_mode(sources), line_of_opened(sources);
  const auto add = [&](const Edition &part, const Piece *piece) {
    for (int number = 1; number < static_cast<int>(part.pages.size()); ++number) {
      PageOfCopy &page = pages.emplace_back(PageOfCopy{&part, piece, number, {}, {}});
      page.asking = line_of_mode(page.page().mode.from);
      page.opened = line_of_opened(page.page().opened);
    }
  };
  add(book, nullptr);
  for (const auto &piece : book.pieces)
    add(piece->edition, piece.get());
  return pages;
}

// "4", "9-12 and 15".
std::string numbers_named(const std::set<int> &pages) {
  std::vector<std::string> runs;
  for (auto page = pages.begin(); page != pages.end();) {
    const int first = *page;
    int last = first;
    while (++page != pages.end() && *page == last + 1)
      ++last;
    runs.push_back(first == last ? std::to_string(first) : fmt::format("{}-{}", first, last));
  }
  std::string text;
  for (std::size_t i = 0; i < runs.size(); ++i)
    text += (i == 0 ? "" : i + 1 == runs.size() ? " and " : ", ") + runs[i];
  return text;
}

struct Finding {
  const Edition &edition;
  const PagesDrawn &drawn;
  const std::vector<PageOfCopy> pages;
  const Sources &sources;
  std::set<std::set<LineKey>> seen{};
  std::vector<ColourSaving> found{};

  bool is_cover(const PageOfCopy &page) const {
    return page.piece ? page.piece->is_wrap() : edition.is_cover(page.number);
  }

  // "page 2", "pages 3 and 6 and the wrap"; another run's book has the pages of the first.
  std::string named(const std::vector<std::size_t> &those) const {
    std::set<int> of_book;
    std::vector<std::string> parts;
    for (const std::size_t at : those) {
      const PageOfCopy &page = pages[at];
      if (!page.piece || page.piece->is_other_book()) {
        of_book.insert(page.number);
        continue;
      }
      const std::string piece = (page.piece->is_wrap() ? "the " : "") + page.piece->name;
      if (std::ranges::find(parts, piece) == parts.end())
        parts.push_back(piece);
    }
    if (!of_book.empty())
      parts.insert(parts.begin(),
                   (of_book.size() == 1 ? "page " : "pages ") + numbers_named(of_book));
    return fmt::format("{}", fmt::join(parts, " and "));
  }

  // Pages that draw and are in colour because of one of these lines.
  template <typename Line>
  std::vector<std::size_t> pages_by(const std::set<LineKey> &lines, Line line) const {
    std::vector<std::size_t> those;
    for (std::size_t at = 1; at < pages.size(); ++at)
      if (drawn.draws_on(at) && pages[at].asks_for_colour() && lines.contains(pages[at].*line))
        those.push_back(at);
    return those;
  }

  void add(std::variant<ColourOut, BlackPages> change, std::string what,
           const std::vector<std::size_t> &those) {
    ColourSaving saving{std::move(change), std::move(what), 0, false};
    for (const std::size_t at : those)
      if (drawn.has_colour(at)) {
        ++saving.lost;
        saving.cover = saving.cover || is_cover(pages[at]);
      }
    if (saving.lost == 0)
      saving.what += ", where nothing is coloured";
    found.push_back(std::move(saving));
  }

  void without_lines(std::set<LineKey> lines) {
    std::erase_if(lines, [](const LineKey &line) { return line.number == 0; });
    if (lines.empty() || !seen.insert(lines).second)
      return;
    const std::vector<std::size_t> those = pages_by(lines, &PageOfCopy::asking);
    const std::string cover = lines.size() == 1 ? cover_by(*lines.begin()) : std::string();
    add(ColourOut{lines}, (cover.empty() ? named(those) : cover) + " in black", those);
  }

  // "the cover" where a line speaks of all of it.
  std::string cover_by(const LineKey &line) const {
    const auto says = [&](const Edition &book) {
      return book.cover_mode && line_of(sources, book.cover_mode->from) == line;
    };
    if (says(edition))
      return "the cover";
    for (const auto &piece : edition.pieces)
      if (piece->is_other_book() && says(piece->edition))
        return "the cover of copies " + piece->name;
    return {};
  }

  // Where what gives colour to a side's pages gives it to coloured ones too, they say black
  // themselves; each with all that its line opens.
  void opened_in_black(const std::set<LineKey> &opened) {
    if (opened.contains(LineKey{}) || !seen.insert(opened).second)
      return;
    const std::vector<std::size_t> those = pages_by(opened, &PageOfCopy::opened);
    if (std::ranges::none_of(those, [&](std::size_t at) { return drawn.has_colour(at); }))
      add(BlackPages{opened}, named(those) + " in black", those);
  }

  void side(const Side &side) {
    std::set<LineKey> asking, opened;
    bool coloured = false;
    for (const Place &place : side.places) {
      const auto at = static_cast<std::size_t>(std::max(place.page, 0));
      if (at == 0 || at >= pages.size() || !drawn.draws_on(at) || !pages[at].asks_for_colour())
        continue;
      coloured = coloured || drawn.has_colour(at);
      asking.insert(pages[at].asking);
      opened.insert(pages[at].opened);
    }
    const bool loses = std::ranges::any_of(pages_by(asking, &PageOfCopy::asking),
                                           [&](std::size_t at) { return drawn.has_colour(at); });
    if (!coloured && loses)
      opened_in_black(opened);
    without_lines(asking);
  }
};

void each_part(Edition &edition, const auto &visit) {
  visit(edition);
  for (std::shared_ptr<const Piece> &piece : edition.pieces) {
    auto changed = std::make_shared<Piece>(*piece);
    visit(changed->edition);
    piece = std::move(changed);
  }
}

// What would fill in for pages whose line no longer says colour.
bool colour_fills_in(const Edition &before, const Edition &after, LineKey line,
                     const Sources &sources) {
  const auto says = [&](const Range &from) { return line_of(sources, from) == line; };
  if (before.cover_mode && says(before.cover_mode->from))
    return *after.printing == Mode::colour;
  LinesOf line_of_mode(sources);
  const auto asks = [&](const Page &page) {
    return page.asked.mode && *page.mode == Mode::colour && line_of_mode(page.mode.from) == line;
  };
  for (std::size_t page = 1; page < before.pages.size(); ++page)
    if (asks(before.pages[page])) {
      const bool cover = after.cover_mode && after.is_cover(static_cast<int>(page));
      if ((cover ? **after.cover_mode : *after.printing) == Mode::colour)
        return true;
    }
  for (std::size_t i = 0; i < before.pieces.size(); ++i) {
    const Edition &then = after.pieces[i]->edition;
    if (says(before.pieces[i]->edition.printing.from))
      return *after.printing == Mode::colour;
    if (*then.printing == Mode::colour &&
        std::ranges::any_of(before.pieces[i]->edition.pages, asks))
      return true;
  }
  return false;
}

} // namespace

std::vector<ColourSaving> colour_savings(const Edition &edition, const Laid &laid,
                                         const PagesDrawn &drawn, const Sources &sources,
                                         std::size_t most) {
  Finding finding{edition, drawn, pages_of_copy(edition, sources), sources};
  for (const ChargedSide &side : laid.sides) {
    if (finding.found.size() >= most)
      break;
    if (side.printed && side.mode == Mode::colour)
      finding.side(laid.imposition.sheets[static_cast<std::size_t>(side.sheet)]
                       .sides[static_cast<std::size_t>(side.side)]);
  }
  return std::move(finding.found);
}

void take_out(Edition &edition, const ColourOut &out, const Sources &sources) {
  LinesOf line_of_mode(sources);
  const auto black = [&](Known<Mode> &mode) {
    if (*mode == Mode::colour && out.lines.contains(line_of_mode(mode.from)))
      mode.value = Mode::black;
  };
  each_part(edition, [&](Edition &part) {
    black(part.printing);
    if (part.cover_mode)
      black(*part.cover_mode);
    for (Page &page : part.pages)
      black(page.mode);
  });
}

void take_out(Edition &edition, const BlackPages &out, const Sources &sources) {
  LinesOf line_of_opened(sources);
  each_part(edition, [&](Edition &part) {
    for (Page &page : part.pages)
      if (out.opened.contains(line_of_opened(page.opened)))
        page.mode.value = Mode::black;
  });
}

void type_lines(const Edition &before, const Edition &after, const ColourOut &out,
                const Sources &sources, ChangedLines &lines) {
  for (const LineKey &line : out.lines)
    lines.colour_out(line, colour_fills_in(before, after, line, sources));
}

void type_lines(const Edition & /*before*/, const Edition & /*after*/, const BlackPages &out,
                const Sources & /*sources*/, ChangedLines &lines) {
  for (const LineKey &line : out.opened)
    lines.in_black(line);
}

} // namespace bodkin
