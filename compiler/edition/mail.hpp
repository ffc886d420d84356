// Classes of mail as a post office has them, envelopes, and what an edition sends.
#pragma once

#include "edition/index.hpp"
#include "edition/known.hpp"
#include "measure/box.hpp"
#include "measure/price.hpp"
#include "measure/weight.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bodkin {

// What a piece of mail up to this mass costs.
struct MailStep {
  Range range;
  Mass to;
  Price price;
};

struct MailClass {
  std::string name, title;
  Range range;
  std::optional<Known<Size>> largest, smallest;
  std::optional<Known<Length>> thickest;
  std::optional<Known<Mass>> heaviest;
  std::vector<MailStep> steps; // by mass, the lightest first
};

struct Envelope {
  std::string name, title;
  Range range;
  std::optional<Known<Size>> size;
  std::optional<Known<Mass>> mass;
  std::optional<Known<Length>> thick; // empty and closed: both its sides
  std::optional<Known<Rate>> costs;
  std::vector<std::string_view> unsaid; // of size, mass and costs, what no line says
};

// `posts 30 copies, 10 together in kraft by large-letter`
struct Posting {
  Range range;
  std::int64_t copies = 0, together = 1;
  std::optional<Known<EnvelopeId>> in; // none: the copies as they are
  std::optional<Known<MailId>> by;     // none: whichever class costs least
};

} // namespace bodkin
