#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"class-contradicts", Kind::warning, "A class of mail contradicts itself",
     "The smallest piece that the class takes is larger than its largest, or a step begins where "
     "the class takes nothing so heavy any more. Such a line is a slip, and what it says counts "
     "for no piece.",
     "Put right whichever line is wrong, or take the step out.",
     "mail letter \"Letter\"\n"
     "  largest    11 1/2in x 6 1/8in, 1/4in thick\n"
     "  smallest   5in x 3 1/2in\n"
     "  heaviest   3.5 oz\n"},
    {"date-ahead", Kind::warning, "A source is younger than the edition",
     "A source says that its work was made, published or allowed, or that its author died, after "
     "the date that the edition bears. One of the two is a slip, and terms reckoned with it are "
     "wrong.",
     "Put right the date of the source, or that of the edition.",
     "source harbour-card\n"
     "  published  1907, US\n"},
    {"dates-contradict", Kind::warning, "Two dates of a source cannot both be",
     "A source was published, or its author died, before it was made. One of the two is a slip, "
     "and whether it is free hangs on both. What is published after its author's death is nothing "
     "strange and not told.",
     "Put right whichever date is wrong.",
     "source harbour-card\n"
     "  author     \"A. Ferrier\", died 1931\n"
     "  made       1899\n"
     "  published  1907, US\n"},
    {"envelope-too-small", Kind::warning, "A copy does not go into its envelope",
     "Copies are posted in an envelope that is smaller, one way or the other, than the copy as "
     "the knife leaves it. A copy goes in flat.",
     "Take a larger envelope.",
     "envelope kraft \"Brown envelope\"\n"
     "  size       9in x 6in\n"},
    {"envelope-untold", Kind::warning, "An envelope does not say what it weighs or costs",
     "Copies are posted in an envelope that lacks its size, its mass or its price. It is reckoned "
     "as large as the copy, of no mass and for nothing, so that postage comes out too low. The "
     "shelf knows sizes of envelopes alone: masses and prices differ from maker to maker.",
     "Weigh ten of yours and divide, and write what one costs; what is at hand already costs $0.",
     "envelope mine like c5\n"
     "  mass       9 g\n"
     "  costs      $0.08 each\n"},
    {"english-sentences", Kind::note, "Credits, a colophon or price cards in English",
     "The compiler puts the sentences of credits and colophon, and what stands on cards for the "
     "table, together from the edition's own lines. It knows how to in English; the edition says "
     "that it is in another language.",
     "Write them as words of your own; facts such as [50](fact:copies) are filled in all the same. "
     "Cards are best written by hand then.",
     "words in label\n"
     "  says \"[50](fact:copies) exemplaires\"\n"},
    {"mail-refuses", Kind::warning, "No class of mail takes a piece",
     "What is posted is larger, thicker or heavier than the classes of mail allow, or the class "
     "that takes it has no price. The message says by how much, class by class. Masses are those "
     "of the copy after the knife, with the envelope's own.",
     "Send fewer copies together, take another envelope, or write the class that the counter "
     "would sell you.",
     "mail parcel \"Parcel\"\n"
     "  largest    18in x 12in, 6in thick\n"
     "  step       32 oz at $6.40 each\n"},
    {"no-mail", Kind::warning, "Copies are posted and no class of mail is known",
     "The edition says that copies are posted. Which class takes them, and what that costs, "
     "follows from the classes of mail, which the manuscript writes down or borrows.",
     "Borrow a shelf and put prices to its classes, or write your own.",
     "mail letter like us-letter\n"
     "  step       2 oz at $1.09 each\n"},
    {"no-credit", Kind::warning, "A licence asks for a credit and nobody is named",
     "The licence lends the work to everybody who names its maker. The source says neither an "
     "author nor the words of a credit, so nothing can be set.",
     "Write who made it, or the words that they ask for.",
     "source map-tiles\n"
     "  author     \"The map makers\"\n"
     "  rights     licence \"CC-BY-4.0\"\n"},
    {"no-letter", Kind::warning, "A permission that nobody can show",
     "A source is used by permission, and no line says when and by what letter it was given. "
     "The ledger is read years later, by somebody who was not there.",
     "Write the date, and the letter in words or as a file of the edition's folder.",
     "source harbour-card\n"
     "  rights     permission\n"
     "  permission 2026-03-02, on file \"papers/museum.pdf\"\n"},
    {"nobody-to-name", Kind::note, "Credits that are empty",
     "A page has `credits`, and nothing that stands on the pages comes from a source that wants "
     "naming. What is the maker's own is named only where its source has a `credit`.",
     "Write sources for what is not yours, or take the credits out.",
     "source map-tiles\n"
     "  author     \"The map makers\"\n"
     "  rights     licence \"CC-BY-4.0\"\n"},
    {"not-credited", Kind::warning, "A licence asks for a credit that no page gives",
     "The licence lends the work to everybody who names its maker. No page has `credits`, and no "
     "words on a page hold the credit or the author's name.",
     "Set credits on a page, or name the maker in words of your own.",
     "page 2\n"
     "  credits in label\n"
     "    at       1/2in 6in, 4 1/2in x 2in\n"},
    {"not-for-sale", Kind::warning, "What may not be sold is in an edition with a price",
     "The licence of a source allows everything but a sale, and the edition says what a copy "
     "costs its reader, in `price` or in a line `sells`. Whether covering the paper counts as a "
     "sale is not for a compiler to "
     "say: ask the maker of the work.",
     "Take other art, ask for permission, or give the edition away.",
     "source map-tiles\n"
     "  author     \"The map makers\"\n"
     "  rights     licence \"CC-BY-4.0\"\n"},
    {"not-to-be-changed", Kind::warning, "A licence allows no changes, and the picture is changed",
     "The licence lends the work as it is. Here a part of it is left out, by `crop` or because it "
     "fills a place of another shape, or it has another tone, or a page printed in black takes its "
     "colours. Each is told as a fact; whether it makes a changed work, its maker or the law of "
     "your country says.",
     "Show it whole and as it is, or ask its maker.",
     "picture \"art/harbour.png\"\n"
     "  fits       place\n"
     "  at         1/2in 1/2in, 4in x 3in\n"},
    {"right-unsaid", Kind::note, "A permission, and no right",
     "A source names a letter of permission, and no line `rights` says that it is used by it. The "
     "ledger takes nothing for granted: a letter may have refused.",
     "Say so, if the letter allows it.",
     "source harbour-card\n"
     "  rights     permission\n"
     "  permission 2026-03-02, \"letter from the town museum\"\n"},
    {"rights-unknown", Kind::warning, "Nothing says by what right something is sold",
     "A source says `rights unknown`, or nothing of its rights, and a copy is sold for money. A "
     "note to oneself while a zine grows is well; on the day of printing it wants an answer.",
     "Find out and say: own, public-domain, permission or a licence; or take it out.",
     "source harbour-card\n"
     "  rights     public-domain\n"
     "  published  1907, US\n"},
    {"same-licence", Kind::warning, "A changed work asks for the same licence",
     "The licence asks that whatever is made of the work is lent on under the same licence. A "
     "picture that is cropped, by `crop` or to fill its place, or that has another tone or loses "
     "its colours on a page printed in black, may be such a thing. Pictures shown whole and as "
     "they are ask nothing of the pages round them.",
     "Give the edition out under that licence, or show the picture as it is.",
     "edition \"Bus Notes\"\n"
     "  licence    \"CC-BY-SA-4.0\"\n"},
    {"still-in-term", Kind::warning, "Called public domain, and by the table it is not yet",
     "The years that the source states, added to the term of a law that the edition has chosen, "
     "end after the year of the edition. The table is arithmetic, not legal advice; the law of "
     "your country decides. A work may be free for a reason that no year tells: its maker gave it "
     "up, or a government made it.",
     "Ask for permission, or say after `because` why it is free all the same.",
     "source bridge-plan\n"
     "  published  1961, US\n"
     "  rights     public-domain because \"drawn for the government\"\n"},
    {"term-untold", Kind::note, "A source says too little for the terms of a law",
     "The source calls its work public domain, and the table of a law asks for a year or a fact "
     "that it does not state. The ledger takes it as written.",
     "Write the missing fact below the source, if it can be found out.",
     "source harbour-card\n"
     "  author     \"A. Ferrier\", died 1931\n"},
    {"terms-need-a-year", Kind::note, "A law is chosen and the edition has no date",
     "Terms end with years. They are reckoned at the year in which the edition is dated and never "
     "at today's, so that the same manuscript gives the same ledger tomorrow.",
     "Say when the edition comes out.",
     "edition \"Bus Notes\"\n"
     "  dated      2026-11\n"},
    {"unknown-licence", Kind::warning, "A licence whose terms are not known here",
     "A source or the edition names a licence, and no line says what it asks. The shelf has the "
     "usual open ones under `borrow \"licences/open\"`; any other can be written down in three "
     "lines.",
     "Borrow the shelf, mend the name, or write what the licence asks and forbids.",
     "licence museum \"Terms of the town museum\"\n"
     "  asks       credit\n"
     "  forbids    sale\n"},
};

} // namespace

std::span<const Check> checks_of_rights() { return table; }

} // namespace bodkin
