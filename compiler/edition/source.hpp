// Where a picture or a text comes from, and by what right it is used.
#pragma once

#include "edition/index.hpp"
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
  bool author_unknown = false; // and said to be
  std::optional<Known<int>> author_died;
  std::optional<Known<Date>> made, published;
  bool never_published = false; // and said to be
  std::optional<Known<bool>> renewed;
  std::optional<Known<Rights>> rights;
  std::string because;                 // of public-domain
  std::string licence;                 // as written
  std::optional<LicenceId> licence_id; // where its lines are known
  std::optional<Known<Date>> permission_date;
  std::string permission; // in words, or the letter's path
  bool letter_on_file = false;
  std::optional<Known<Rate>> costs;
  bool whole = true; // else a line of it could not be read, and what is missing may stand there
};

} // namespace bodkin
