// One function for each verb of the command line; each gives the exit status: 0 nothing wrong, 1
// the edition has errors, 2 the command line is wrong. What cannot be read or written is thrown.
#pragma once

#include "command/options.hpp"

#include <string>

namespace bodkin {

struct Desk {
  std::string shelf_root;      // holds stdlib/ and fonts/
  bool progress_shown = false; // standard error is a terminal
  bool colour = false;
};

int compile(const Options &options, const Desk &desk);
int preflight(const Options &options, const Desk &desk);
int estimate(const Options &options, const Desk &desk);
int sheets(const Options &options, const Desk &desk);
int proof(const Options &options, const Desk &desk);
int dummy(const Options &options, const Desk &desk);
int arrange(const Options &options, const Desk &desk);
int explain(const Options &options, const Desk &desk);
int start(const Options &options, const Desk &desk);

} // namespace bodkin
