// Which things there are, by kind and name, over the edition's file and all that it borrows.
#pragma once

#include "edition/line.hpp"

#include <array>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace bodkin {

enum class Family {
  stock,
  machine,
  bid,
  face,
  style,
  source,
  text,
  standing,
  running,
  folding,
  insert,
  law,
  licence,
  mail,
  envelope,
  count
};
std::string_view word_for(Family family); // the keyword that makes one

struct Named {
  std::string_view name;
  FactLine line;
  mutable bool used = false; // asked for by some line
};

// The things of one kind; an index here is the index in the model's vector.
struct Things {
  std::vector<Named> all;
  std::unordered_map<std::string_view, std::uint32_t> by_name;
  bool full = false;                           // and said to be
  std::vector<std::string_view> asked_in_vain; // some of the names that nothing here has

  const Named *find(std::string_view name) const {
    const auto found = by_name.find(name);
    return found == by_name.end() ? nullptr : &all[found->second];
  }
  // As many as are ever searched for a near one.
  std::vector<std::string_view> names() const;
};

using Names = std::array<Things, static_cast<std::size_t>(Family::count)>;

} // namespace bodkin
