#include "edition/element.hpp"

namespace bodkin {

std::string_view name_of(const Element &element) {
  if (const auto *words = std::get_if<Words>(&element.what); words && words->by != WrittenBy::maker)
    return words->by == WrittenBy::credits ? "credits" : "colophon";
  constexpr std::string_view names[] = {"picture", "words", "rule",  "patch",   "qr",
                                        "lay",     "hand",  "folio", "paste-up"};
  return names[element.what.index()];
}

std::string_view name_of(BandPanel panel) {
  switch (panel) {
  case BandPanel::back:
    return "back";
  case BandPanel::spine:
    return "spine";
  case BandPanel::front:
    return "front";
  case BandPanel::fore_edge:
    return "fore-edge";
  case BandPanel::overlap:
    break;
  }
  return "overlap";
}

std::string_view name_of(HandKind kind) {
  switch (kind) {
  case HandKind::stamp:
    return "stamp";
  case HandKind::sticker:
    return "sticker";
  case HandKind::signature:
    return "signature";
  case HandKind::number:
    return "number";
  case HandKind::spray:
    return "spray";
  case HandKind::colour:
    return "colour";
  case HandKind::tear:
    return "tear";
  case HandKind::punch:
    return "punch";
  case HandKind::tip_in:
    return "tip-in";
  case HandKind::other:
    break;
  }
  return "other";
}

} // namespace bodkin
