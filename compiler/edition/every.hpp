// The facts of one element: its own, and those that `every` gives.
#pragma once

#include "edition/reader.hpp"

#include <initializer_list>

namespace bodkin {

class ElementFacts {
public:
  ElementFacts(const Reader &reader, FactLine element);

  // Its own line, else that of the strongest `every`.
  FactLine find(std::string_view word) const;
  // All lines of some words, each word from the strongest level that has it.
  Facts of(std::initializer_list<std::string_view> words) const;
  const Facts &own() const { return own_; }

  // The lines that say where it stands, after `at`, `cells`, `fills` and `fits` have displaced each
  // other: the nearest level that has any counts; `fills place` and `fits place` go with an `at` or
  // `cells` of another level.
  struct Where {
    FactLine spot; // at or cells
    FactLine area; // fills or fits
  };
  Where where() const;

private:
  Facts own_;
  const Every *every_ = nullptr;
};

} // namespace bodkin
