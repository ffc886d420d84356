#include "money/arranging_question.hpp"

#include "money/arranging_costs.hpp"
#include "money/saving.hpp"
#include "sheet/numbered.hpp"
#include "sheet/parts.hpp"

#include <algorithm>
#include <map>

namespace bodkin::arranging {
namespace {

class Asking {
public:
  Asking(const AsWritten &written, const std::vector<PageBlock> &blocks)
      : asked_(written), count_(*written.edition.page_count), apart_(sheets_matter(asked_)) {
    task_.sheets_matter = apart_;
    for (const RunBook &book : asked_.books)
      numbered_.push_back(pages_with_numbers(*book.edition));
    take_places();
    take_blocks(blocks);
    take_sheets();
    take_costs(asked_, task_);
  }

  Task task() && { return std::move(task_); }

private:
  const Imposition &imposition() const { return asked_.written.laid.imposition; }

  void take_places() {
    std::map<std::pair<Length, Length>, int> shapes;
    task_.places.resize(static_cast<std::size_t>(count_) + 1);
    for (int page = 1; page <= count_; ++page) {
      const Spotted &spot = imposition().where[static_cast<std::size_t>(page)];
      const Size size = imposition().size_of(page);
      const int shape =
          shapes.emplace(std::pair(size.width, size.height), static_cast<int>(shapes.size()))
              .first->second;
      task_.places[static_cast<std::size_t>(page)] = {spot.sheet, spot.side, shape};
    }
  }

  PageInRun in_run(std::size_t run, int number) const {
    const Page &page = asked_.page(run, number);
    PageInRun in;
    in.draws = asked_.draws(run, number);
    in.mode = in.draws ? *page.mode : Mode::black;
    if (page.asked.stock && **page.asked.stock != StockId::none)
      in.stock = static_cast<int>(**page.asked.stock);
    if (page.asked.machine && **page.asked.machine != MachineId::none)
      in.machine = static_cast<int>(**page.asked.machine);
    const std::vector<bool> &numbered = numbered_[run];
    in.numbered = apart_ && numbered[static_cast<std::size_t>(number)];
    for (std::size_t work = 0; work < asked_.works.size(); ++work)
      for (const PageOfRun &there : asked_.works[work].pages)
        if (there.run == run && there.page == number)
          in.works |= 1U << work;
    return in;
  }

  std::uint32_t matter_on(std::size_t run, int number) const {
    const auto index = static_cast<std::size_t>(number);
    const Piece *piece = asked_.books[run].piece;
    return piece && index < piece->matter_of.size() ? piece->matter_of[index] : 0;
  }

  // As sheets are told apart where runs have their own.
  AlikeRuns alike(int number) const {
    AlikeRuns alike;
    for (std::size_t run = 0; run < asked_.books.size(); ++run) {
      std::size_t first = 0;
      while (matter_on(first, number) != matter_on(run, number) ||
             *asked_.page(first, number).mode != *asked_.page(run, number).mode)
        ++first;
      alike.push_back(static_cast<std::uint32_t>(first));
    }
    const bool all = std::ranges::all_of(alike, [](std::uint32_t run) { return run == 0; });
    return all ? AlikeRuns{} : alike;
  }

  PageKind kind_of(int number) const {
    PageKind kind;
    for (std::size_t run = 0; run < asked_.books.size(); ++run)
      kind.runs.push_back(in_run(run, number));
    kind.shape = task_.places[static_cast<std::size_t>(number)].shape;
    if (apart_)
      kind.alike = alike(number);
    return kind;
  }

  void take_blocks(const std::vector<PageBlock> &blocks) {
    std::map<PageKind, int> known;
    for (const PageBlock &block : blocks) {
      MovingBlock moving;
      moving.first = block.first;
      moving.stays = block.stays;
      moving.from_left = block.holds_spread && block.first % 2 == 0;
      moving.from_right = block.holds_spread && block.first % 2 != 0;
      for (int page = block.first; page < block.first + block.length; ++page) {
        const auto [entry, fresh] =
            known.emplace(kind_of(page), static_cast<int>(task_.kinds.size()));
        if (fresh)
          task_.kinds.push_back(entry->first);
        moving.kinds.push_back(entry->second);
      }
      task_.blocks.push_back(std::move(moving));
    }
  }

  // The paper and machines of a sheet whose pages ask for none.
  void take_sheets() {
    const Edition &edition = asked_.written.edition;
    const Edition unasking = in_every_book(without_matter(edition), [](Edition &book) {
      for (Page &page : book.pages)
        page.asked.stock = {}, page.asked.machine = {};
    });
    Problems told_before;
    const std::vector<CopyPart> parts = impose_parts(unasking, asked_.written.sources, told_before);
    const int machine = index(*edition.machine);
    task_.sheets.assign(parts.front().imposition.sheets.size(), {{}, {machine, machine}});
    for (const CopyPart &part : parts)
      for (std::size_t sheet = 0; sheet < part.imposition.sheets.size(); ++sheet)
        if (!part.piece || part.piece->is_other_book())
          task_.sheets[sheet].stocks.push_back(index(part.imposition.sheets[sheet].stock));
  }

  // A name that nothing bears has been told of; any other stands in its place.
  template <typename Id>
  static int index(Id id) {
    return id == Id::none ? 0 : static_cast<int>(id);
  }

  const Question asked_;
  int count_;
  bool apart_; // whether it matters which sheets are made and printed apart
  std::vector<std::vector<bool>> numbered_; // by run and page
  Task task_;
};

} // namespace

Task task_of(const AsWritten &written, const std::vector<PageBlock> &blocks) {
  return Asking(written, blocks).task();
}

} // namespace bodkin::arranging
