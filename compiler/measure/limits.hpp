// Every bound on what a manuscript or a file may ask, with its reason. Past a bound there is a
// clear problem, never a crash or an endless wait.
#pragma once

#include <cstddef>
#include <cstdint>

namespace bodkin::limits {

// Text. A 10 MB manuscript is a thousand editions; offsets are 32 bits.
inline constexpr std::size_t manuscript_bytes = 64u << 20;
// One text of prose, in a file or below `says`: three long novels. Setting it takes some hundred
// bytes for each byte, and more for each line that is a paragraph.
inline constexpr std::size_t prose_bytes = 4u << 20;
inline constexpr std::size_t prose_lines = 200'000;
// Nesting of lines: the language has five levels; more is a slip of the space bar or an attack.
inline constexpr std::size_t nesting = 64;
// Nesting of prose (lists in quotes in lists): paper has no room for more.
inline constexpr std::size_t prose_nesting = 32;
// Signs of CommonMark in one paragraph, and the squares of their numbers over a whole text: the
// library that pairs them may take as many steps.
inline constexpr std::size_t paragraph_signs = 20'000;
inline constexpr std::size_t prose_work = 2'000'000'000;
// Problems shown of one edition; the rest is counted in a note. Nobody reads more at a sitting.
inline constexpr std::size_t problems_shown = 1000;
// Problems kept of one edition, so that a million wrong lines do not fill the memory.
inline constexpr std::size_t problems_kept = 20'000;
// Files that borrow files.
inline constexpr std::size_t borrow_depth = 32;
// Things that are like things, and the lines that all of this copies: a shelf has some dozens.
inline constexpr std::size_t like_depth = 64;
inline constexpr std::size_t copied_lines = 1'000'000;

// Pages. 20,000 is a shelf of encyclopaedias; page 4,000,000 is a slip of the finger.
inline constexpr std::int64_t pages = 20'000;
inline constexpr std::int64_t copies = 1'000'000;
// Copies that each have a printed number: so many pages of a file, and words set so often.
inline constexpr std::int64_t numbered_copies = 5'000;
// Cards with the price, for as many tables: 125 sheets of them.
inline constexpr std::int64_t cards = 1'000;
inline constexpr std::int64_t elements_a_page = 10'000;
// Elements laid on pages, each counted on every page of its list, and running pieces: a page list
// multiplies what stands below it.
inline constexpr std::size_t elements_laid = 1'000'000;
inline constexpr std::size_t runnings = 1'000;
// Pages named by all page lists together; prose of all elements together.
inline constexpr std::size_t pages_listed = 20'000'000;
inline constexpr std::size_t all_prose_bytes = 32u << 20;
inline constexpr std::size_t all_prose_lines = 500'000;
// Things of one kind with a name: stocks, styles, sources. A library's catalogue has thousands.
inline constexpr std::size_t named_things = 20'000;
// Panels of one folded sheet: paper of any thickness folds seven times or so, 2^7 = 128; accordions
// glued end to end are longer.
inline constexpr std::size_t panels = 1024;
inline constexpr std::size_t fold_steps = 64;
// Pieces cut out of one sheet: half-inch labels on a tabloid sheet are 748.
inline constexpr std::int64_t cut_out = 2'000;

// Lengths and numbers as written: 100 m of paper, 15 digits fit exactly in 64 bits with room to
// multiply.
inline constexpr std::int64_t length_inches = 4'000;
inline constexpr int number_digits = 15;
inline constexpr int number_places = 6;

// Pictures. A 600 dpi tabloid sheet is 67 million samples; a telephone's largest photograph has 200
// million. What is not a JPEG lies in memory whole, with four bytes a sample.
inline constexpr std::int64_t picture_samples = 268'000'000;
inline constexpr std::int64_t held_samples = 80'000'000;
inline constexpr std::int64_t picture_edge = 100'000;
inline constexpr std::size_t picture_file_bytes = 512u << 20;
// Drawings. A drawing that takes longer than this to draw is not one that a copier's memory takes.
inline constexpr std::size_t drawing_file_bytes = 64u << 20;
// Samples of pictures within one drawing: a photograph of a good camera; all of them lie in memory
// at once, twice.
inline constexpr std::int64_t embedded_samples = 50'000'000;
inline constexpr int drawing_seconds = 6;
inline constexpr std::size_t drawing_memory = 512u << 20;
inline constexpr std::size_t face_file_bytes = 128u << 20;

// Shaping: one paragraph. A novel without a break is shorter; a byte may need 120 bytes to shape
// and break. A longer one is set as several with nothing to show where.
inline constexpr std::size_t paragraph_bytes = 1u << 20;
// Characters of one face that have no glyph, told one by one; the rest is counted. A text in a
// script that the face lacks has thousands.
inline constexpr std::size_t missing_glyphs_told = 12;

// Money. Each bid and each price step is another line to compare at every length of run; a shop's
// price list has a handful.
inline constexpr std::size_t bids = 100;
inline constexpr std::size_t price_steps = 200;

} // namespace bodkin::limits
