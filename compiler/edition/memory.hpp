// A folder in memory, for tests and fuzzing: the same answers as a folder on disk with these files.
#pragma once

#include "edition/files.hpp"

#include <functional>
#include <map>
#include <string>

namespace bodkin {

class MemoryFiles : public Files {
public:
  // Files by their path relative to the edition's folder, and shelf files by name without ending
  // ("stocks/us").
  void put(std::string path, std::string bytes);
  void put_shelf(std::string name, std::string bytes);

  Lookup look(std::string_view folder, std::string_view written,
              std::size_t most_bytes) const override;
  FileBytes read(const std::string &path) const override;
  FileBytes shelf(std::string_view name) const override;
  std::vector<std::string> shelf_names(std::string_view folder) const override;

private:
  Lookup nearest(std::string_view folder, std::string_view written,
                 const std::vector<std::string> &parts, std::size_t most_bytes) const;
  using Held = std::map<std::string, std::shared_ptr<const std::string>, std::less<>>;
  Held files_, shelf_;
};

} // namespace bodkin
