#include "edition/memory.hpp"

#include "edition/path.hpp"

#include <set>
#include <utility>

namespace bodkin {
namespace {

// The names in one folder of a set of paths.
template <typename Held>
std::vector<std::string> names_in(const Held &held, const std::string &folder) {
  const std::string before = folder.empty() ? std::string{} : folder + "/";
  std::set<std::string> names;
  for (const auto &[path, bytes] : held)
    if (path.starts_with(before))
      names.insert(path.substr(before.size(), path.find('/', before.size()) - before.size()));
  return {names.begin(), names.end()};
}

template <typename Held>
bool is_there(const Held &held, const std::string &path) {
  if (held.find(path) != held.end())
    return true;
  const auto next = held.lower_bound(path + "/");
  return next != held.end() && next->first.starts_with(path + "/");
}

// Part by part, each corrected to what is there.
template <typename Held>
Lookup nearest_path(const Held &held, std::string_view written,
                    const std::vector<std::string> &parts) {
  Lookup looked{.trouble = Trouble::absent};
  std::vector<std::string> now;
  bool only_case = true;
  for (const std::string &part : parts) {
    const std::string folder = joined(now);
    now.push_back(part);
    if (is_there(held, joined(now)))
      continue;
    const NearName near = near_name(part, names_in(held, folder));
    if (near.name.empty())
      return looked;
    only_case = only_case && near.only_case;
    now.back() = near.name;
  }
  if (only_case)
    looked.trouble = Trouble::wrong_case;
  looked.near = rewritten(written, parts, now);
  return looked;
}

template <typename Held>
std::string elsewhere(const Held &held, std::string_view name) {
  for (const auto &[path, bytes] : held)
    if (last_part(path) == name)
      return path;
  return {};
}

} // namespace

void MemoryFiles::put(std::string path, std::string bytes) {
  files_.insert_or_assign(std::move(path), std::make_shared<const std::string>(std::move(bytes)));
}

void MemoryFiles::put_shelf(std::string name, std::string bytes) {
  shelf_.insert_or_assign(std::move(name), std::make_shared<const std::string>(std::move(bytes)));
}

Lookup MemoryFiles::look(std::string_view folder, std::string_view written,
                         std::size_t most_bytes) const {
  const auto parts = path_parts(folder, written);
  if (!parts)
    return {.trouble = Trouble::outside};
  const std::string path = joined(*parts);
  const auto found = files_.find(path);
  if (found == files_.end() && (is_there(files_, path) || path.empty()))
    return {.trouble = Trouble::not_a_file};
  if (found == files_.end())
    return nearest(folder, written, *parts, most_bytes);
  if (found->second->size() > most_bytes)
    return {.trouble = Trouble::too_big};
  return {.path = path};
}

Lookup MemoryFiles::nearest(std::string_view folder, std::string_view written,
                            const std::vector<std::string> &parts, std::size_t most_bytes) const {
  if (const std::string strokes = with_strokes(written); !strokes.empty()) {
    const Lookup looked = look(folder, strokes, most_bytes);
    if (looked.trouble == Trouble::none || !looked.near.empty())
      return {.trouble = Trouble::absent, .near = looked.near.empty() ? strokes : looked.near};
  }
  Lookup looked = nearest_path(files_, written, parts);
  if (looked.trouble == Trouble::absent && looked.near.empty())
    looked.near = as_written_in(folder, elsewhere(files_, last_part(written)));
  return looked;
}

FileBytes MemoryFiles::read(const std::string &path) const {
  const auto found = files_.find(path);
  return found == files_.end() ? FileBytes{} : FileBytes{found->second, *found->second};
}

FileBytes MemoryFiles::shelf(std::string_view name) const {
  const auto found = shelf_.find(name);
  return found == shelf_.end() ? FileBytes{} : FileBytes{found->second, *found->second};
}

std::vector<std::string> MemoryFiles::shelf_names(std::string_view folder) const {
  return names_in(shelf_, std::string(folder));
}

} // namespace bodkin
