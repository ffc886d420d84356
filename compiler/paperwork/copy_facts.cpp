#include "paperwork/copy_facts.hpp"

#include "edition/copy_numbers.hpp"
#include "edition/laid.hpp"
#include "paperwork/in_a_sentence.hpp"
#include "paperwork/own_words.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace bodkin::paperwork {
namespace {

template <typename Thing>
void add_new(std::vector<Thing> &things, Thing thing) {
  if (std::find(things.begin(), things.end(), thing) == things.end())
    things.push_back(std::move(thing));
}

std::string_view done(StepKind kind) {
  switch (kind) {
  case StepKind::collate:
    return "gathered";
  case StepKind::crease:
    return "creased";
  case StepKind::fold:
    return "folded";
  case StepKind::staple:
    return "stapled";
  case StepKind::trim:
    return "trimmed";
  case StepKind::sew:
    return "sewn";
  case StepKind::punch:
    return "punched";
  case StepKind::cut:
    return "cut";
  case StepKind::glue:
    return "glued";
  case StepKind::round:
    return "rounded at the corners";
  case StepKind::tie:
    return "tied";
  case StepKind::dry:
  case StepKind::press:
  case StepKind::add:
  case StepKind::pack:
    break; // nobody sees these on the finished copy
  }
  return {};
}

std::string_view done(HandKind kind, bool american) {
  switch (kind) {
  case HandKind::stamp:
    return "stamped";
  case HandKind::sticker:
    return "a sticker stuck";
  case HandKind::signature:
    return "signed";
  case HandKind::number:
    return "numbered";
  case HandKind::spray:
    return "sprayed";
  case HandKind::colour:
    return american ? "colored" : "coloured";
  case HandKind::tear:
    return "torn";
  case HandKind::punch:
    return "punched";
  case HandKind::tip_in:
    return "a leaf tipped in";
  case HandKind::other:
    break;
  }
  return "worked";
}

bool is_for(const Work &work, std::optional<std::uint32_t> run) {
  return !work.only || !run || **work.only == *run;
}

// Where a kind of work stands: pages of the book, and what else a copy holds.
struct Places {
  std::set<int> pages;
  std::vector<std::string> others;

  std::string words() const {
    std::vector<std::string> all;
    if (!pages.empty())
      all.push_back(spoken::pages_listed({pages.begin(), pages.end()}));
    all.insert(all.end(), others.begin(), others.end());
    return " on " + in_a_row(all);
  }
};

// "the cover", "the seeds"; nothing of an inner page of the book.
std::string thing_called(const CopyPart &part, int page) {
  if (!part.piece || part.is_other_book())
    return page == 1 && (part.edition->cover_stock || part.edition->cover_mode) ? "the cover" : "";
  if (part.piece->is_wrap())
    return "the cover";
  std::string name = part.piece->name;
  std::replace(name.begin(), name.end(), '-', ' ');
  return "the " + name;
}

class Telling {
public:
  Telling(const std::vector<PageInk> &inks, std::optional<std::uint32_t> run, bool american)
      : inks_(inks), run_(run), american_(american) {}

  void part(const CopyPart &part) {
    printing(part);
    if (!part.piece || !part.piece->is_reverse())
      papers(part);
    each_laid(*part.edition,
              [&](ElementId id, int page) { matter(part, (*part.edition)[id], page); });
  }

  CopyFacts facts() {
    for (const HandKind kind : order_) {
      const bool numbered = kind == HandKind::number;
      facts_.work.push_back({std::string(done(kind, american_)),
                             numbered ? std::string() : places_.at(kind).words(),
                             !numbered || by_hand_numbered_});
    }
    return std::move(facts_);
  }

private:
  void printing(const CopyPart &part) {
    for (int page = 1; page <= part.imposition.page_count; ++page) {
      const PageInk &ink = inks_[static_cast<std::size_t>(part.pages_before + page)];
      if (!ink.draws)
        continue;
      add_new(facts_.inks, ink.mode);
      const Spotted &spot = part.imposition.where[static_cast<std::size_t>(page)];
      const MachineId id = part.imposition.sheets[static_cast<std::size_t>(spot.sheet)]
                               .sides[static_cast<std::size_t>(spot.side)]
                               .machine;
      if (id != MachineId::none)
        add_new(facts_.machines,
                machine_in_a_sentence((*part.edition)[id].title, (*part.edition)[id].name));
    }
  }

  void papers(const CopyPart &part) {
    for (const Sheet &sheet : part.imposition.sheets)
      if (sheet.stock != StockId::none) {
        const Stock &stock = (*part.edition)[sheet.stock];
        add_new(facts_.papers, paper_in_a_sentence(stock.title, stock.name));
      }
  }

  void matter(const CopyPart &part, const Element &element, int page) {
    const auto *hand = std::get_if<Hand>(&element.what);
    if (hand && is_for(element.work, run_))
      by_hand(part, hand->kind, page);
    else if (bears_number(element))
      add_new(order_, HandKind::number);
  }

  void by_hand(const CopyPart &part, HandKind kind, int page) {
    add_new(order_, kind);
    by_hand_numbered_ = by_hand_numbered_ || kind == HandKind::number;
    Places &places = places_[kind];
    if (std::string thing = thing_called(part, page); thing.empty())
      places.pages.insert(page);
    else
      add_new(places.others, std::move(thing));
  }

  const std::vector<PageInk> &inks_;
  std::optional<std::uint32_t> run_;
  bool american_;
  CopyFacts facts_;
  std::vector<HandKind> order_; // as first met
  std::map<HandKind, Places> places_;
  bool by_hand_numbered_ = false;
};

template <typename Thing>
bool has(const std::vector<Thing> &all, const Thing &one) {
  return std::find(all.begin(), all.end(), one) != all.end();
}

template <typename Thing>
void keep_shared(std::vector<Thing> &own, const std::vector<Thing> &its) {
  own.erase(
      std::remove_if(own.begin(), own.end(), [&](const Thing &thing) { return !has(its, thing); }),
      own.end());
}

template <typename Thing>
void drop_shared(std::vector<Thing> &own, const std::vector<Thing> &its) {
  own.erase(
      std::remove_if(own.begin(), own.end(), [&](const Thing &thing) { return has(its, thing); }),
      own.end());
}

} // namespace

CopyFacts facts_of(const Edition &edition, const std::vector<CopyPart> &parts,
                   const std::vector<PageInk> &inks, const Sources &sources,
                   std::optional<std::uint32_t> run) {
  Telling telling(inks, run, *edition.languages.front() == "en-US");
  for (const CopyPart *part : parts_of_copy(parts, run))
    telling.part(*part);
  CopyFacts facts = telling.facts();
  for (const FinishStep &step : edition.finish)
    if (const std::string_view word = done(step.kind); !word.empty() && is_for(step.work, run))
      add_new(facts.steps, Done{std::string(word)});
  const auto &own = run ? edition.runs[*run].price : edition.price;
  facts.price = asked_price(own ? own : edition.price, sources);
  return facts;
}

CopyFacts in_common(const std::vector<CopyFacts> &all) {
  CopyFacts common = all.front();
  for (const CopyFacts &of : all) {
    keep_shared(common.inks, of.inks);
    keep_shared(common.machines, of.machines);
    keep_shared(common.papers, of.papers);
    keep_shared(common.steps, of.steps);
    keep_shared(common.work, of.work);
    if (common.price != of.price)
      common.price.clear();
  }
  return common;
}

CopyFacts beyond(CopyFacts of, const CopyFacts &common) {
  drop_shared(of.inks, common.inks);
  drop_shared(of.machines, common.machines);
  drop_shared(of.papers, common.papers);
  drop_shared(of.steps, common.steps);
  drop_shared(of.work, common.work);
  if (of.price == common.price)
    of.price.clear();
  return of;
}

} // namespace bodkin::paperwork
