// A problem of an edition, as data. The room that finds it makes it, by one small function a
// problem; it becomes text, JSON or SARIF last, each in a file of its own.
#pragma once

#include "problems/range.hpp"

#include <string>
#include <vector>

namespace bodkin {

enum class Kind { error, warning, note };

struct Related {
  Range range;
  std::string message;
};

struct Edit {
  Range range;
  std::string text;
};

// One way out: the line to type instead, whole, and what follows it in brackets ("or move …"). A
// line may hold line ends where several lines belong together; with no line at all the remark
// stands alone.
struct WayOut {
  std::string line;
  std::string remark;
};

struct Problem {
  Kind kind = Kind::error;
  std::string check{};   // a name in problems/checks.cpp, what `bodkin explain` takes
  Range range{};         // the exact words, underlined
  std::string message{}; // one sentence without a full stop, this edition's own numbers in it
  std::string why{};     // in terms of paper, ink, knife, money or law; may be empty
  std::vector<WayOut> type{};
  std::vector<Related> related{};
  std::vector<Edit> edits{};
};

using Problems = std::vector<Problem>;

} // namespace bodkin
