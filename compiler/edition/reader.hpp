// What the reading of one edition holds while the model grows, shared by the files of this room.
#pragma once

#include "edition/line.hpp"
#include "edition/names.hpp"
#include "edition/read.hpp"

#include <deque>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>

namespace bodkin {

// The facts that `every` gives to elements of one kind, the strongest file first.
struct Every {
  std::vector<Facts> levels;
};

// The lines of one fact of the edition: those for all copies, and those for one run.
struct RunLine {
  std::optional<std::uint32_t> run; // none: for every run that has no line of its own
  FactLine line;
};

// Shelf files by the names of the things of one kind that they hold.
using ShelfIndex = std::map<std::string, std::vector<std::string>, std::less<>>;

class Reader {
public:
  Reader(const Files &files_given, Sources &sources_given, Problems &problems_given,
         Reading &reading_given)
      : files(files_given), sources(sources_given), reading(reading_given),
        edition(reading_given.edition), problems_(problems_given) {}

  const Files &files;
  Sources &sources;
  Reading &reading;
  Edition &edition;

  std::deque<Manuscript> manuscripts;              // the edition's own first
  std::vector<const Manuscript *> strongest_first; // whose names win
  Names names;
  FactLine edition_line; // empty where there is none
  Facts edition_facts;
  FactLine piece; // the insert or wrap now read as an edition in little; empty: the book
  // Of the whole edition while a piece is read; facts in prose are the whole's wherever they stand.
  struct Whole {
    FactLine line;
    Facts facts;
    int pages = 0;
  } whole;
  std::map<std::string_view, std::vector<RunLine>> by_run; // of what `only` may stand below
  std::unordered_map<std::string_view, Every> every;       // by the element's keyword
  std::map<std::string_view, int> called;                  // pages by their name
  std::unordered_map<std::string, FileId> words_taken;     // files of prose by path

  Things &things(Family family) { return names[static_cast<std::size_t>(family)]; }
  std::map<Family, ShelfIndex> shelves; // made when a name is not found
  const Things &things(Family family) const { return names[static_cast<std::size_t>(family)]; }
  // The lines that may open pages of what is now read.
  template <typename Visit>
  void each_page_line(Visit visit) const {
    const auto opens = [&](FactLine line) {
      if (line.word() == "page" || line.word() == "spread")
        visit(line);
    };
    if (piece)
      piece.each_child(opens);
    else
      each_line(*strongest_first.front(), opens);
  }
  // A wrap has four pages, whatever is written.
  bool wraps() const { return piece && piece.word() == "wrap"; }
  // These two are as large as the copy that they go round, or are glued to.
  bool is_band() const {
    return piece && piece.word() == "insert" && Facts(piece).find("goes").words("where") == "round";
  }
  bool is_boards() const { return piece && piece.word() == "boards"; }
  std::vector<bool> claimed; // pages that some line opens, known before any is opened
  // Counted against limits.hpp.
  std::size_t pages_listed = 0, elements_laid = 0, prose_read = 0, prose_lines = 0, suggestions = 0;
  // Kept within bounds: an error always has its way until there are thousands.
  void report(Problem problem);
  static constexpr std::size_t names_searched = 2'000;
  // The nearest of some names; none where there are very many, or very many were looked for.
  std::optional<std::string_view> near(std::string_view name,
                                       const std::vector<std::string_view> &among);
  // False where one more problem would not be kept: then none need be made.
  bool keeps_problems() const;
  // The first time for these words; a fact of `every` is read for each element that it holds for.
  bool first_said_at(Range range);
  void note_file(std::string path, FileRole role);

private:
  Problems &problems_;
  std::set<std::string> noted_;
  std::set<std::pair<std::uint32_t, std::uint32_t>> said_at_;
};

} // namespace bodkin
