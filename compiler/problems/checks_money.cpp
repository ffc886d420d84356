#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"absurd-price", Kind::warning, "A price that nobody can mean",
     "Prices are judged by one another, for no price is known here: a sheet of paper that costs as "
     "much as fifty sides printed on it is most often a pack; a side that costs as much as two "
     "thousand sheets has lost its point; colour is never cheaper than black at one machine. The "
     "estimate counts with what is written all the same.",
     "Look at the price list again. Where the price is right, leave the line as it is.",
     "stock plain like bond-24\n"
     "  costs      $9.50 per 500 sheets\n"},
    {"borrowed-numbers", Kind::warning, "A borrowed file names pages that get other numbers",
     "`bodkin arrange` found a cheaper order of the pages. Running matter, texts that go on and "
     "inserts in a file that the edition borrows name pages by number; `--write` changes the "
     "edition's own file alone, since other editions may borrow the same one.",
     "Change the line in that file by hand when you take the new order, or move it into the "
     "edition's own file.",
     "running lines\n"
     "  pages      6-9\n"},
    {"cannot-arrange", Kind::error, "No order of the pages gives every line what it asks for",
     "`bodkin arrange` looks for an order in which each sheet is asked for one paper and each side "
     "for one machine. Pages that stay, spreads and pages kept together may leave none. The "
     "message "
     "names the lines of which any one, taken out, makes room.",
     "Take one of them out.",
     "page 6\n"
     "  stays\n"},
    {"cards-without-price", Kind::error, "Cards with a price are asked for, and there is no price",
     "`cards` makes cards for the table: the title, who made it, how many copies there are, and "
     "what one costs. The edition does not say that.",
     "Write the price under the edition, or take the line with the cards out.",
     "edition \"Bus Notes\"\n"
     "  price      $5 a copy\n"
     "  cards      8\n"},
    {"cheap-run", Kind::note, "A few more copies cost no more",
     "Printers' prices fall in steps. Just below a step, a larger run costs the same or less "
     "in all than the one asked for: 25 copies for the price of 24.",
     "Order the larger number, if you can give the copies away.",
     "edition \"Bus Notes\"\n"
     "  run        25 copies\n"},
    {"empty-bid", Kind::warning, "An offer names no price",
     "A bid is another printer's offer: what each copy costs from a number of copies on. Without "
     "a price there is nothing to compare.",
     "Write the prices that the printer gave you, or take the bid out.",
     "bid long-road\n"
     "  copies     25 at $2.10 a copy\n"},
    {"unknown-currency", Kind::warning, "No money has this code",
     "Money is named by the three letters of its code in ISO 4217. Each sum of the estimate, the "
     "ticket and the price cards is shown with them.",
     "Write the code of your money; your bank does.",
     "edition \"Bus Notes\"\n"
     "  currency   EUR\n"},
    {"idle-exchange", Kind::error, "A rate of exchange exchanges nothing",
     "A rate says what a sum of foreign money comes to in the money that the edition counts in. "
     "Both sums must be more than nothing, and in two currencies.",
     "Write foreign money first, then what it comes to.",
     "edition \"Bus Notes\"\n"
     "  exchange   £1 is $1.27\n"},
    {"idle-labour", Kind::note, "An hour of work is paid, and nothing takes time",
     "The edition says what an hour of work is paid. Hours are added up from the lines `takes` "
     "under "
     "hand work and steps of finish, and none stands anywhere, so the estimate holds no labour.",
     "Write how long the work takes, or take the line out.",
     "finish\n"
     "  fold       all\n"
     "    takes    25 s a copy\n"},
    {"more-than-made", Kind::error, "More copies are spoken for than are made",
     "The copies that are sold and those that are given away add up to more than the run, or those "
     "that are posted do. Spares are not counted: they are the copies that go wrong.",
     "Make more, or promise fewer.",
     "edition \"Bus Notes\"\n"
     "  run        50 copies\n"
     "  sells      40 copies \"at the table\"\n"
     "  gives      5 copies\n"},
    {"no-price", Kind::warning, "A paper has no price",
     "The shelf knows weights and sizes of papers, but no prices: they differ from town to "
     "town. Without one, the paper counts as free, and the estimate is too low.",
     "Write what you pay, for a pack or a sheet; or say that the shop's price for a side "
     "includes it.",
     "stock cream like cream-28\n"
     "  costs      $14.75 per 250 sheets\n"},
    {"no-sale-price", Kind::error, "A way of selling has no price",
     "Copies are sold for the edition's `price`, or for the price that the way of selling says. "
     "Here is neither.",
     "Write the price under the edition, or in the line.",
     "edition \"Bus Notes\"\n"
     "  price      $5 a copy\n"
     "  sells      40 copies \"at the table\"\n"},
    {"nothing-kept", Kind::note, "A later printing pays for its tools again",
     "By `impression` this is a second or later printing, and something is paid once for the run, "
     "such as the cutting of a stamp. Where the tool is still there it costs nothing now.",
     "Write `kept` after what the tool cost. Leave it where the tool is worn out or lent, or "
     "where it is a fee that each printing pays.",
     "hand stamp \"a beetroot\"\n"
     "  costs      $8 once, kept\n"},
    {"offer-ended", Kind::warning, "An offer ends before the edition comes out",
     "The bid holds until a day, and the edition is dated after it. No clock is asked: the two "
     "dates of the manuscript are held against each other. The offer is listed with its figures "
     "and compared with nothing.",
     "Ask the printer for a new offer, or take the bid out.",
     "bid long-road\n"
     "  until      2026-12-31\n"},
    {"over-budget", Kind::error, "A copy costs more than the budget",
     "The whole run is added up, paper, printing, work and tax, and divided by the good "
     "copies. It comes to more than the budget line allows. The message names the three "
     "dearest parts, and what would bring the copy under, each change really made and priced: what "
     "loses nothing first, then another order, then colour, then another way of making it. "
     "Sheets are not written, so that nobody prints what is too dear; the estimate and the "
     "proof are.",
     "Make one of the changes, or raise the budget. With --anyway the sheets are made all the "
     "same, and the report says so.",
     "edition \"Bus Notes\"\n"
     "  budget     $1.40 a copy\n"},
    {"price-apart", Kind::note, "A sheet is made apart for the price on it",
     "Words that tell the price, by fact:price, tell each run's copies their own. Where runs have "
     "other prices and a sheet differs in nothing else, it is made once for each price: a pile "
     "and a pass more.",
     "Leave it, or put the price on a page whose sheet differs in any case, such as a cover of "
     "another paper. A colophon on a page that all copies share tells the price of each run.",
     "page 10\n"
     "  colophon in label\n"
     "    at 1in 1in, 3in x 2in\n"},
    {"priced-by-what", Kind::error, "A price is counted by the wrong thing",
     "A price says what it is paid for: a side, a sheet, a copy, an hour, once. Where it stands, "
     "only some of these mean anything: an hour of work has a price an hour, a printer's offer "
     "one a copy, or once for the run.",
     "Work out what it comes to, and write that.",
     "bid long-road\n"
     "  copies     25 at $2.10 a copy\n"},
    {"rising-price", Kind::warning, "More of the same costs more each",
     "Prices fall as a run grows: that is what price steps are for. Here a step lies above the "
     "one before it, which is often a slip: two lines changed about, or a point left out.",
     "Look at the price list again.",
     "bid long-road\n"
     "  copies     25 at $4.10 a copy\n"
     "  copies     100 at $2.35 a copy\n"},
    {"sold-at-loss", Kind::warning, "A copy brings less than it costs",
     "What the shop keeps and what the sale costs is taken off the price. What is left is less "
     "than a copy costs to make, so each one sold that way loses money. Of a price under the "
     "edition the same is told; a copy for nothing is taken as meant.",
     "Ask more there, agree on a smaller share, or give copies away knowingly.",
     "sells      10 copies \"by post\", at $6 a copy, costs $1.60 a copy\n"},
    {"two-currencies", Kind::error, "Money in two currencies",
     "The edition counts in one currency, and a line gives a price in another. No rate of "
     "exchange is ever assumed: it changes every day, and an estimate should be the same "
     "tomorrow.",
     "Write the price in the edition's currency, or the rate of exchange that you would pay as "
     "`exchange` under the edition.",
     "costs      £9.20 per 250 sheets\n"},
};

} // namespace

std::span<const Check> checks_of_money() { return table; }

} // namespace bodkin
