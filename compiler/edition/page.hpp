// Pages as asked for: what stands on each, and what paper, mode and machine its line names.
#pragma once

#include "edition/element.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

// What a `page` or `spread` line says of each of its pages, where it says it.
struct Asked {
  std::optional<Known<Mode>> mode;
  std::optional<Known<StockId>> stock;
  std::optional<Known<MachineId>> machine;
};

struct Page {
  Range opened; // the `page` or `spread` line; nowhere: nothing names this page
  Asked asked;
  Known<Mode> mode; // its own, else the cover's, else the edition's `printing`
  Known<MachineId> machine{MachineId::none, {}};
  std::vector<ElementId> elements;     // in order of laying; of a `page` line
  std::optional<std::uint32_t> spread; // index into Edition::spreads
  bool blank = false;                  // says `blank`
  std::string called;
};

struct Spread {
  int left = 0; // its even page; back-cover, front-cover: the last page, then 1
  int right = 0;
  Range opened;
  Asked asked;
  std::vector<ElementId> elements;
};

// What `stays` asks of `bodkin arrange`.
struct Stays {
  Range from;
  std::vector<int> pages; // of the page or spread line that it stands under, rising
  std::vector<int> with;  // kept together with those, rising; empty: they stay where they are
};

struct Standing {
  std::string name;
  Range range;
  std::vector<ElementId> elements;
  bool own = true; // of the edition's file, not borrowed
};

struct Running {
  std::string name;
  Range range;
  std::vector<bool> on_page; // index 1..pages
  std::vector<ElementId> elements;
};

struct Text {
  std::string name;
  Range range;
  std::string path; // empty: written under `says`
  Prose prose;
  std::optional<Known<SourceId>> source;
};

} // namespace bodkin
