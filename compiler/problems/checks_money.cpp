#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"cannot-arrange", Kind::error, "No order of the pages gives every line what it asks for",
     "`bodkin arrange` looks for an order in which each sheet is asked for one paper and each side "
     "for one machine. Pages that stay, spreads and pages kept together may leave none. The "
     "message "
     "names the lines of which any one, taken out, makes room.",
     "Take one of them out.",
     "page 6\n"
     "  stays\n"},
    {"cheap-run", Kind::note, "A few more copies cost no more",
     "Printers' prices fall in steps. Just below a step, a larger run costs the same or less "
     "in all than the one asked for: 25 copies for the price of 24.",
     "Order the larger number, if you can give the copies away.",
     "edition \"Bus Notes\"\n"
     "  run        25 copies\n"},
    {"no-price", Kind::warning, "A paper has no price",
     "The shelf knows weights and sizes of papers, but no prices: they differ from town to "
     "town. Without one, the paper counts as free, and the estimate is too low.",
     "Write what you pay, for a pack or a sheet; or say that the shop's price for a side "
     "includes it.",
     "stock cream like cream-28\n"
     "  costs      $14.75 per 250 sheets\n"},
    {"over-budget", Kind::error, "A copy costs more than the budget",
     "The whole run is added up, paper, printing, work and tax, and divided by the good "
     "copies. It comes to more than the budget line allows. The message names the three "
     "dearest parts, and what would bring the copy under, each change really made and priced. "
     "Sheets are not written, so that nobody prints what is too dear; the estimate and the "
     "proof are.",
     "Make one of the changes, or raise the budget. With --anyway the sheets are made all the "
     "same, and the report says so.",
     "edition \"Bus Notes\"\n"
     "  budget     $1.40 a copy\n"},
    {"two-currencies", Kind::error, "Money in two currencies",
     "The edition counts in one currency, and a line gives a price in another. No rate of "
     "exchange is ever assumed: it changes every day, and an estimate should be the same "
     "tomorrow.",
     "Write the price in the edition's currency, at the rate that you would pay.",
     "costs      £9.20 per 250 sheets\n"},
};

} // namespace

std::span<const Check> checks_of_money() { return table; }

} // namespace bodkin
