#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"bare-pounds", Kind::error, "Pounds of which kind of paper?",
     "A pound weight of paper is the weight of 500 sheets of a size that differs with the kind "
     "of paper: 28 lb bond is about 105 grams a square metre, 28 lb text is about 41. There "
     "are six kinds: bond, text, cover, bristol, index and tag.",
     "Add the kind, as it stands on the wrapper, or give the grams.", "weight     28 lb bond\n"},
    {"decimal-comma", Kind::error, "A number has a decimal comma",
     "A comma parts the pieces of a line, so 2,5cm reads as two things: a bare 2 and a length "
     "of five centimetres. Numbers have a point, as everywhere in the program.",
     "Write a point.", "margins    2.5cm\n"},
    {"inch-marks", Kind::error, "Inches are written with a mark",
     "A straight quote begins or ends a text in a manuscript, so 5.5\" cannot be told from the "
     "end of one. Carpenters' marks for inches are read by people only.",
     "Write in, touching the number.", "size       5.5in x 8.5in\n"},
    {"missing-hash", Kind::error, "A colour lacks its sign",
     "A colour is written as six digits after the sign #, two each for red, green and blue. "
     "Without the sign it looks like a number or a name: f7f1e1 could be a stock.",
     "Put # before it.", "tint       #f7f1e1\n"},
    {"no-unit", Kind::error, "A number has no unit",
     "Half of what? On paper it makes a difference whether a number is inches, millimetres or "
     "points. The unit touches the number. Only sizes of type stand bare, and are points.",
     "Write in, mm, cm, pt or pc behind the number, without a space.",
     "at       1/2in 4in, 4.5in x 3.8in\n"},
    {"number-too-big", Kind::error, "A number is too big",
     "Numbers in a manuscript measure paper, money and time for one booklet. This one is "
     "larger than any of these could be, or has more digits than make sense. Most likely two "
     "numbers have run together.",
     "Look whether a space, a comma or a point is missing.", "run        40 copies, 2 spare\n"},
    {"number-too-small", Kind::error, "A number is too small",
     "Some things need at least a little: a run has a copy, a picture a width, a crop a part "
     "of the picture that is left. With nothing left there is nothing to print.",
     "Write a larger number; the message says what it is for.", "crop     10% 0%, 80% x 60%\n"},
};

} // namespace

std::span<const Check> checks_of_values() { return table; }

} // namespace bodkin
