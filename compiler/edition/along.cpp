#include "edition/element.hpp"

namespace bodkin {

Length offset_of(const Along &along, Length extent, Length whole, bool outer_is_start) {
  switch (along.from) {
  case From::start:
    return along.offset;
  case From::end:
    return whole - along.offset - extent;
  case From::outer:
    return outer_is_start ? along.offset : whole - along.offset - extent;
  case From::inner:
    return outer_is_start ? whole - along.offset - extent : along.offset;
  case From::centred:
    return (whole - extent) / 2 + along.offset;
  }
  return {};
}

} // namespace bodkin
