// The files that an edition may read: those of its own folder, found by the paths its manuscript
// writes. On disk in the program, in memory in tests.
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

// Bytes of a whole file, mapped or in memory; copies share them.
struct FileBytes {
  std::shared_ptr<const void> owner;
  std::string_view view;
};

enum class Trouble { none, absent, outside, wrong_case, not_a_file, unreadable, too_big };

struct Lookup {
  Trouble trouble = Trouble::none;
  std::string
      path{}; // relative to the edition's folder, `/` between its parts; what to ask read() for
  std::string near{}; // of an absent file or one in another case: the nearest that is there, as to
                      // be written
};

class Files {
public:
  virtual ~Files() = default;
  // `folder` is where the naming file lies, relative to the edition's folder ("" for the folder
  // itself). Follows links first; a path that leads out of the folder is Trouble::outside.
  virtual Lookup look(std::string_view folder, std::string_view written,
                      std::size_t most_bytes) const = 0;
  // Null view with a null owner where it can no longer be read.
  virtual FileBytes read(const std::string &path) const = 0;
  // The shelf: `stocks/us` gives the text of stdlib/stocks/us.bodkin.
  virtual FileBytes shelf(std::string_view name) const = 0;
  // Names on one shelf ("stocks"), sorted, without ending.
  virtual std::vector<std::string> shelf_names(std::string_view folder) const = 0;
};

} // namespace bodkin
