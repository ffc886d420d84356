// The model of an edition: all names resolved, all defaults filled in, every value knowing where it
// came from. Plain data; nothing here draws, folds or counts money.
#pragma once

#include "edition/bid.hpp"
#include "edition/face.hpp"
#include "edition/finish.hpp"
#include "edition/folding.hpp"
#include "edition/law.hpp"
#include "edition/machine.hpp"
#include "edition/mail.hpp"
#include "edition/page.hpp"
#include "edition/selling.hpp"
#include "edition/source.hpp"
#include "edition/stock.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace bodkin {

struct Grid {
  int columns = 1, rows = 1;
  Length gap;
};
struct Margins {
  Length inner, outer, head, foot;
};
struct Budget {
  Price limit;
  bool of_run = false; // else of a copy
};
struct Run {
  std::int64_t copies = 0, spare = 0;
};

// One of several runs whose copies differ: plain and de luxe.
struct NamedRun {
  std::string name;
  Run run;
  Range range;
  std::optional<Known<Price>> price{}; // of its copies alone
};

// In place of a number on a sheet: as many as cost least, chosen once prices are known.
inline constexpr std::int64_t up_most = 0;

struct Piece;

struct Edition {
  Known<std::string> title;
  std::optional<Known<std::string>> subtitle, maker, series;
  std::optional<Known<std::string>> number; // as written
  std::optional<Known<Date>> dated;
  std::vector<Known<std::string>> languages; // BCP 47; the first is the main one
  Known<Size> size;                          // a page as folded, before the knife
  Known<int> page_count;                     // `pages`, else the highest page number
  Known<Folding> folding;
  std::vector<Folding> other_foldings; // written in the edition's own file and not asked for
  Known<Run> run;                      // of all copies
  std::vector<NamedRun> runs;          // where copies differ; the first grows with a longer run
  std::optional<std::uint32_t> of_run; // of what one run alone has: which
  std::optional<Known<Counts>> counts; // the numbers that good copies bear
  Known<StockId> paper{StockId::none, {}};
  std::optional<Known<StockId>> cover_stock;
  std::optional<Known<Mode>> cover_mode;
  Known<Mode> printing;
  Known<MachineId> machine{MachineId::none, {}};
  std::vector<Known<MachineId>> other_machines; // that a pass may go to instead
  Known<Margins> margins;
  std::optional<Known<Grid>> grid;
  std::optional<Known<Length>> creep; // measured: how far the innermost pages stand out
  bool creep_made_up_for = true;      // by moving matter towards the fold
  std::optional<Known<Budget>> budget;
  std::optional<Known<Price>> price;
  std::optional<Known<std::int64_t>> cards; // that tell the price; only where there is one
  Known<Currency> currency; // what its money is counted in; empty where it has no money
  std::vector<Exchange> exchanges;
  std::optional<Known<Rate>> labour;             // an hour
  std::optional<Known<std::int64_t>> impression; // from the second on, kept tools cost nothing
  std::vector<Sale> sales;                       // as written
  std::vector<Gift> gifts;
  std::vector<Paid> paid;
  Known<bool> marks{true, {}};
  Known<std::int64_t> up{1, {}}; // of the book's sheets on one sheet, cut apart after printing
  std::vector<Known<LawId>> judged_by;           // the laws whose terms are reckoned with
  std::optional<Known<std::string>> given_under; // its own licence, as written
  std::optional<LicenceId> licence_id;           // of that, where its lines are known

  std::vector<Stock> stocks;
  std::vector<Machine> machines;
  std::vector<Bid> bids;
  std::vector<Face> faces;
  std::vector<Style> styles;
  std::vector<Law> laws;
  std::vector<Licence> licences;
  std::vector<MailClass> mail;
  std::vector<Envelope> envelopes;
  std::vector<Posting> postings;
  std::vector<ArtSource> sources;
  std::vector<Text> texts;
  std::vector<Standing> standings;
  std::vector<Running> runnings;
  std::vector<Spread> spreads;
  std::vector<Page> pages; // index 1..page_count; 0 is unused
  std::vector<Stays> stays;
  std::vector<Element> elements;
  std::vector<FinishStep> finish;
  // The wrap first, then inserts as written.
  std::vector<std::shared_ptr<const Piece>> pieces;
  Range finish_range;

  Ruler ruler = Ruler::inches; // what its own sizes are spoken in
  // Nobody could read the size, or the folding: what would follow from a guess is not told.
  bool size_guessed = false, folding_guessed = false;

  const Element &operator[](ElementId id) const { return elements[at(id)]; }
  const Stock &operator[](StockId id) const { return stocks[at(id)]; }
  const Machine &operator[](MachineId id) const { return machines[at(id)]; }
  const Face &operator[](FaceId id) const { return faces[at(id)]; }
  const Style &operator[](StyleId id) const { return styles[at(id)]; }
  const MailClass &operator[](MailId id) const { return mail[at(id)]; }
  const Envelope &operator[](EnvelopeId id) const { return envelopes[at(id)]; }
  const Law &operator[](LawId id) const { return laws[at(id)]; }
  const Licence &operator[](LicenceId id) const { return licences[at(id)]; }
  const ArtSource &operator[](SourceId id) const { return sources[at(id)]; }
  bool is_cover(int page) const {
    return page == 1 || page == 2 || page == *page_count - 1 || page == *page_count;
  }
};

} // namespace bodkin
