// A manuscript in a test, walked through every room up to preflight: read, laid on sheets, drawn,
// and looked at.
#pragma once

#include "edition/reading.hpp"

#include <string>
#include <string_view>

namespace bodkin::tests {

struct Inspected {
  Read read;
  Problems before;   // of the rooms that come before preflight
  Problems problems; // of preflight alone

  // What is said of one check, as a terminal shows it; nothing where it is not said.
  std::string told(std::string_view check) const;
  // "unsafe-art 4, unsafe-words 12": the checks and their lines, in the order of the manuscript.
  std::string found() const;
  // The manuscript after the edits of one check; of its first problem only.
  std::string edited(std::string_view check) const;
};

// The file of a problem's edits as an editor leaves it.
std::string edited(const Problem &problem, const Sources &sources);

// `more` are further files of the edition's folder. Whatever is wrong, every room is walked.
Inspected walked(std::string_view manuscript, MoreFiles more = {});
// The same where no room before preflight may have more to say than notes.
Inspected inspected(std::string_view manuscript, MoreFiles more = {});

// Every part of a copy laid, drawn and looked at, but only what one part does to another is kept.
Inspected copy_inspected(std::string_view manuscript, MoreFiles more = {});

// Half-letter pages on letter paper, 20 lb bond, one sheet for every four pages, a copier that
// leaves 1/4in bare. `facts` stand under edition, `rest` at the left edge behind three styles:
// body (EB Garamond 11), label (EB Garamond 8) and sign (EB Garamond 30).
std::string booklet(std::string_view facts, std::string_view rest);
// The same in millimetres: a5 pages on a4 paper, 90 gsm, 5mm bare.
std::string metric_booklet(std::string_view facts, std::string_view rest);

// A file of the real thing, made by nobody's encoder but the format's own plain form.
std::string grey_picture(int width, int height); // PNG, all mid grey
std::string red_picture(int width, int height);  // PNG, all red
std::string boastful_picture(); // PNG that promises 60,000 by 60,000 samples and holds a few

} // namespace bodkin::tests
