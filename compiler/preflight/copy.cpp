#include "preflight/copy.hpp"

namespace bodkin {

void preflight(const CopyInspection &copy, Problems &problems) {
  check_hidden(copy, problems);
  check_layers(copy, problems);
  check_numbers(copy, problems);
}

} // namespace bodkin
