// A value of the model together with where it came from: the exact words of a manuscript or shelf
// file (Sources tells which), or nowhere, which is a default. A fact copied by `like` or given by
// `every` keeps the place where it was written.
#pragma once

#include "problems/range.hpp"

namespace bodkin {

template <typename T>
struct Known {
  T value{};
  Range from{};

  bool by_default() const { return !from.somewhere(); }
  const T &operator*() const { return value; }
  const T *operator->() const { return &value; }
};

} // namespace bodkin
