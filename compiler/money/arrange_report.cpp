#include "money/arrange_report.hpp"

#include "money/arranging_wishes_told.hpp"
#include "sheet/papers.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <set>

namespace bodkin {
namespace {

using arranging::RunBook;
using spoken::pages_listed;

class Report {
public:
  explicit Report(const ArrangeReport &of) : of_(of), edition_(of.edition), made_(of.arrangement) {}

  std::string text() && {
    say(edition_.title.value.empty() ? of_.manuscript : *edition_.title);
    who_may_move();
    if (made_.cheapest) {
      outcome();
      moves();
      other_papers();
      colour();
      how_to_have_it();
    } else {
      say(made_.none_for_sure
              ? "  no order gives every line what it asks for; the error says which are at odds"
              : "  no order was found that gives every line what it asks for");
    }
    return std::move(text_);
  }

private:
  void say(const std::string &line) { text_ += line + "\n"; }
  std::string money(const Exact &amount) const { return shown(amount, *edition_.currency); }
  std::string a_copy(const Exact &of_run) const {
    return money(of_run / Exact(edition_.run->copies)) + " a copy";
  }

  void who_may_move() {
    if (made_.movable.empty())
      say("  no page may move");
    else
      say(fmt::format("  {} may move", pages_listed(made_.movable)));
    say("  what keeps pages where they are, or together:");
    for (const std::string &wish : arranging::told(edition_, made_.wishes, of_.sources))
      say("    " + wish);
    if (arranging::books_of(edition_).size() > 1)
      say("  all runs have their pages in one order; what counts is what they cost together");
    say("");
  }

  void each_run() {
    if (made_.runs.empty())
      return;
    std::vector<std::string> runs;
    for (std::size_t run = 0; run < made_.runs.size(); ++run) {
      const Exact &before = made_.runs_as_written[run], &now = made_.runs[run];
      const bool changed = made_.printable_as_written && money(before) != money(now);
      runs.push_back(fmt::format("{} {} a copy{}", edition_.runs[run].name, money(now),
                                 changed ? fmt::format(", before {}", money(before)) : ""));
    }
    say(fmt::format("  each run       {}", fmt::join(runs, "; ")));
  }

  void outcome() {
    const std::string found = made_.proved() ? "no order costs less: proved" : not_proved();
    if (made_.saves_nothing()) {
      say(made_.movable.empty()
              ? fmt::format("  nothing can be saved; the pages cost {} as they are",
                            a_copy(made_.total))
              : fmt::format("  the pages lie well as they are, at {}; {}", a_copy(made_.total),
                            found));
      each_run();
      return;
    }
    if (!made_.printable_as_written)
      say("  as they are, the pages ask two papers or machines of one sheet; laid so, they do not");
    else
      say(fmt::format("  as they are    {}, {} in all", a_copy(made_.total_as_written),
                      money(made_.total_as_written)));
    say(fmt::format("  laid anew      {}, {} in all; {}", a_copy(made_.total), money(made_.total),
                    found));
    if (made_.printable_as_written)
      say(fmt::format("  saves          {}, {} in all", a_copy(made_.saved()),
                      money(made_.saved())));
    each_run();
    say("");
  }

  std::string not_proved() const {
    const bool shows = Exact::ratio(edition_.run->copies, 200) <= made_.gap();
    return fmt::format("not proved: some order might still cost {} less",
                       shows ? a_copy(made_.gap()) : money(made_.gap()) + " in all");
  }

  void moves() {
    if (made_.saves_nothing())
      return;
    const arranging::Arranged &cheapest = *made_.cheapest;
    say(fmt::format("  {} {} another number{}:", cheapest.moves,
                    cheapest.moves == 1 ? "page gets" : "pages get",
                    cheapest.fewest_moves ? ", the fewest at that price"
                                          : ", perhaps more than are needed"));
    bool turned = false;
    for (const auto &[was, is] : becoming()) {
      const bool turns = was % 2 != is % 2;
      turned = turned || turns;
      say(fmt::format("    page {:<3} becomes page {}{}", was, is,
                      !turns        ? ""
                      : is % 2 == 0 ? ", from right to left"
                                    : ", from left to right"));
    }
    if (turned)
      say("  places told from `outer` and `inner` turn over with the page; others keep their "
          "distance\n  from its left edge, so look at `bodkin preflight` afterwards");
    say("");
  }

  std::vector<std::pair<int, int>> becoming() const {
    std::vector<std::pair<int, int>> pairs;
    for (std::size_t place = 1; place < made_.cheapest->order.size(); ++place)
      if (made_.cheapest->order[place] != static_cast<int>(place))
        pairs.emplace_back(made_.cheapest->order[place], static_cast<int>(place));
    std::ranges::sort(pairs);
    return pairs;
  }

  // Said of copies of one run where runs are printed differently.
  std::string in_run(const std::vector<RunBook> &books, std::size_t run) const {
    return books.size() < 2 ? "" : fmt::format(" in a copy {}", edition_.runs[run].name);
  }

  // A page that asks for no paper takes that of the sheet it comes to.
  void other_papers() {
    const std::vector<RunBook> books = arranging::books_of(edition_);
    for (const auto &[was, is] : becoming())
      for (std::size_t run = 0; run < books.size(); ++run)
        other_paper(books, run, was, is);
  }

  void other_paper(const std::vector<RunBook> &books, std::size_t run, int was, int is) {
    const RunBook &book = books[run];
    const Page &page = book.edition->pages[static_cast<std::size_t>(was)];
    const StockId before = of_.as_written.imposition.sheet_of(book.pages_before + was).stock;
    const StockId after = made_.laid.imposition.sheet_of(book.pages_before + is).stock;
    if (!page.asked.stock && page.opened.somewhere() && before != after &&
        after != *book.edition->paper && after != StockId::none && before != StockId::none)
      say(fmt::format("  page {} comes from {} to {} (as page {}){}, which it does not ask for",
                      was, edition_[before].name, edition_[after].name, is, in_run(books, run)));
  }

  std::string colour_paid(std::size_t run) const {
    const std::optional<std::uint32_t> only = of_.room.colour_pages.size() < 2
                                                  ? std::nullopt
                                                  : std::optional(static_cast<std::uint32_t>(run));
    const int pages = of_.room.colour_pages[run];
    const int before = colour_sides(of_.as_written, only), after = colour_sides(made_.laid, only);
    std::string line =
        fmt::format("{} colour {} {} {}", pages, pages == 1 ? "page costs" : "pages cost", before,
                    before == 1 ? "side" : "sides");
    return before == after ? line : line + fmt::format("; laid so, {}", after);
  }

  void colour_of_runs() {
    const std::vector<RunBook> books = arranging::books_of(edition_);
    std::set<std::string> lines;
    for (std::size_t run = 0; run < books.size(); ++run)
      lines.insert(colour_paid(run));
    for (std::size_t run = 0; run < books.size(); ++run)
      if (of_.room.colour_pages[run] > 0 && (run == 0 || lines.size() > 1))
        say(fmt::format("  {}{}", colour_paid(run),
                        lines.size() > 1 ? in_run(books, run) : std::string()));
  }

  void colour() {
    const ColourRoom &room = of_.room;
    colour_of_runs();
    std::vector<std::string> lines;
    if (!room.free.empty())
      lines.push_back(fmt::format("colour for nothing: {}, whose {} paid as colour",
                                  pages_listed(room.free),
                                  room.free.size() == 1 ? "side is" : "sides are"));
    for (const Extra &extra : room.sides)
      lines.push_back(fmt::format("the next cheapest colour: {}, one side, for {}{}",
                                  pages_listed(extra.pages), more(extra.more),
                                  others(extra, "side")));
    for (const Extra &extra : room.papers)
      lines.push_back(fmt::format("the next cheapest {}: {}, one sheet, for {}{}",
                                  edition_[extra.stock].name, pages_listed(extra.pages),
                                  more(extra.more), others(extra, "sheet")));
    if (!made_.saves_nothing() && !lines.empty())
      say("  by their new numbers:");
    for (const std::string &line : lines)
      say((made_.saves_nothing() ? "  " : "    ") + line);
  }

  std::string more(const Exact &of_run) const {
    if (of_run.is_zero())
      return "nothing more";
    return of_run < Exact() ? a_copy(Exact() - of_run) + " less" : a_copy(of_run) + " more";
  }

  static std::string others(const Extra &extra, std::string_view what) {
    if (extra.as_cheap == 0)
      return "";
    return fmt::format(", and {} other {}{} as cheaply", extra.as_cheap, what,
                       extra.as_cheap == 1 ? "" : "s");
  }

  void say_where_written() {
    namespace fs = std::filesystem;
    say("  " + of_.written_to + " is the manuscript with these numbers");
    if (fs::absolute(of_.written_to).parent_path().lexically_normal() !=
        fs::absolute(fs::path(of_.manuscript)).parent_path().lexically_normal())
      say(fmt::format("  it names its files from its own folder: put it beside {} to compile it",
                      of_.manuscript));
  }

  void how_to_have_it() {
    if (!of_.written_to.empty())
      say_where_written();
    else if (!made_.saves_nothing())
      say(fmt::format("  to have it so: bodkin arrange {} --write NEW.bodkin", of_.manuscript));
  }

  const ArrangeReport &of_;
  const Edition &edition_;
  const Arrangement &made_;
  std::string text_;
};

} // namespace

std::string arrangement_as_text(const ArrangeReport &report) { return Report(report).text(); }

} // namespace bodkin
