// Where a picture or a text comes from, and by what right it is used.
#pragma once

#include "edition/known.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"

#include <optional>
#include <string>

namespace bodkin {

enum class Rights { own, public_domain, permission, licence, unknown };

struct ArtSource {
  std::string name, heading; // `source NAME "heading"`
  Range range;
  std::optional<Known<std::string>> title, author, kept_by, credit, link, country;
  std::optional<Known<int>> author_died;
  std::optional<Known<Date>> published;
  std::optional<Known<Rights>> rights;
  std::string licence;
  std::optional<Known<Date>> permission_date;
  std::string permission;
  std::optional<Known<Rate>> costs;
};

} // namespace bodkin
