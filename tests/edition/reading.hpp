// A manuscript in a test, read into the model. Tests of every later room start from one.
#pragma once

#include "edition/memory.hpp"
#include "edition/read.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>
#include <utility>

namespace bodkin::tests {

// The real shelf of the source tree, and a folder in memory that holds `almanac.bodkin` and `more`.
// Every picture that tests name need only be put there with any bytes: reading looks whether it is
// there and no further.
struct Read {
  std::unique_ptr<Sources> sources = std::make_unique<Sources>();
  MemoryFiles files;
  Problems problems;
  Reading reading;
  const Edition &edition() const { return reading.edition; }
  // "error almanac.bodkin:3:5 missing-fact", one line a problem, in the order they were found.
  std::string found() const;
  const Problem *problem(std::string_view check) const; // the first of this check, or null
};

using MoreFiles = std::initializer_list<std::pair<std::string_view, std::string_view>>;
Read read(std::string_view manuscript, MoreFiles more = {});

// `facts` is put under `edition "Test"` after a sound beginning: half-letter, saddle-stitch, 10
// copies, paper `plain` (20 lb bond, letter, grain long, $10 per 500 sheets), machine `copier`
// (black $0.10 and colour $0.50 a side, bare 1/4in, duplex by machine). `rest` follows at the
// file's level. Lines of `facts` are indented by two.
std::string small_edition(std::string_view facts, std::string_view rest);

} // namespace bodkin::tests
