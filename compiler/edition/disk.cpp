#include "edition/disk.hpp"

#include "edition/path.hpp"

#include <algorithm>
#include <cstdlib>
#include <dirent.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>

namespace bodkin {
namespace {

constexpr std::string_view series_file = "series.bodkin";
constexpr std::string_view ending = ".bodkin";

// An open file; closed at the end of its scope. Negative where it cannot be opened.
class OpenFile {
public:
  explicit OpenFile(const std::string &path)
      : descriptor_(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK)) {}
  OpenFile(const OpenFile &) = delete;
  OpenFile &operator=(const OpenFile &) = delete;
  ~OpenFile() {
    if (descriptor_ >= 0)
      ::close(descriptor_);
  }
  int descriptor() const { return descriptor_; }

private:
  int descriptor_;
};

class Mapping {
public:
  Mapping(int descriptor, std::size_t bytes)
      : bytes_(bytes), start_(::mmap(nullptr, bytes, PROT_READ, MAP_PRIVATE, descriptor, 0)) {}
  Mapping(const Mapping &) = delete;
  Mapping &operator=(const Mapping &) = delete;
  ~Mapping() {
    if (there())
      ::munmap(start_, bytes_);
  }
  bool there() const { return start_ != MAP_FAILED; }
  std::string_view view() const { return {static_cast<const char *>(start_), bytes_}; }

private:
  std::size_t bytes_;
  void *start_;
};

FileBytes mapped(const std::string &path) {
  const OpenFile file(path);
  struct stat facts {};
  if (file.descriptor() < 0 || ::fstat(file.descriptor(), &facts) != 0 || !S_ISREG(facts.st_mode))
    return {};
  // Nothing to map: an empty file has an owner all the same.
  if (facts.st_size == 0)
    return {std::make_shared<const char>('\0'), {}};
  auto mapping =
      std::make_shared<const Mapping>(file.descriptor(), static_cast<std::size_t>(facts.st_size));
  if (!mapping->there())
    return {};
  const std::string_view view = mapping->view();
  return {std::move(mapping), view};
}

// Absolute, links followed; empty where it does not exist.
std::string real(const std::string &path) {
  const std::unique_ptr<char, decltype(&std::free)> found(::realpath(path.c_str(), nullptr),
                                                          &std::free);
  return found ? std::string(found.get()) : std::string{};
}

std::vector<std::string> names_in(const std::string &folder) {
  std::vector<std::string> names;
  const std::unique_ptr<DIR, int (*)(DIR *)> open(::opendir(folder.c_str()), &::closedir);
  if (!open)
    return names;
  // A folder of more names than this is searched no further for one that is near.
  constexpr std::size_t most_names = 20'000;
  while (const dirent *entry = ::readdir(open.get())) {
    const std::string_view name = entry->d_name;
    if (name != "." && name != ".." && names.size() < most_names)
      names.emplace_back(name);
  }
  std::sort(names.begin(), names.end());
  return names;
}

bool exists(const std::string &path) {
  struct stat facts {};
  return ::stat(path.c_str(), &facts) == 0;
}

std::string folder_above(const std::string &path) {
  const std::size_t slash = path.rfind('/');
  return slash == 0 || slash == std::string::npos ? "/" : path.substr(0, slash);
}

bool lies_in(const std::string &path, const std::string &folder) {
  return folder == "/" ||
         (path.starts_with(folder) && (path.size() == folder.size() || path[folder.size()] == '/'));
}

class DiskFiles : public Files {
public:
  DiskFiles(std::string root, std::string shelf_root)
      : root_(std::move(root)), shelf_root_(std::move(shelf_root)) {}

  Lookup look(std::string_view folder, std::string_view written,
              std::size_t most_bytes) const override {
    const auto parts = path_parts(folder, written);
    if (!parts)
      return {.trouble = Trouble::outside};
    if (written.find('\0') != std::string_view::npos)
      return {.trouble = Trouble::absent};
    const std::string path = real(beside(root_, joined(*parts)));
    if (path.empty())
      return nearest(folder, written, *parts, most_bytes);
    if (!lies_in(path, root_))
      return {.trouble = Trouble::outside};
    return judged(path, most_bytes);
  }

  FileBytes read(const std::string &path) const override { return mapped(beside(root_, path)); }

  FileBytes shelf(std::string_view name) const override {
    if (!is_shelf_name(name))
      return {};
    const std::string_view above = name.starts_with("fonts/") ? "" : "stdlib/";
    return mapped(fmt::format("{}/{}{}{}", shelf_root_, above, name, ending));
  }

  std::vector<std::string> shelf_names(std::string_view folder) const override {
    std::vector<std::string> names;
    for (std::string &name : names_in(fmt::format("{}/stdlib/{}", shelf_root_, folder)))
      if (name.ends_with(ending))
        names.push_back(name.substr(0, name.size() - ending.size()));
    std::sort(names.begin(), names.end());
    return names;
  }

private:
  static std::string beside(const std::string &folder, const std::string &path) {
    return folder == "/" ? "/" + path : folder + "/" + path;
  }

  Lookup judged(const std::string &path, std::size_t most_bytes) const {
    struct stat facts {};
    if (::stat(path.c_str(), &facts) != 0 || ::access(path.c_str(), R_OK) != 0)
      return {.trouble = Trouble::unreadable};
    if (!S_ISREG(facts.st_mode))
      return {.trouble = Trouble::not_a_file};
    if (static_cast<std::uintmax_t>(facts.st_size) > most_bytes)
      return {.trouble = Trouble::too_big};
    return {.path = path.substr(root_ == "/" ? 1 : root_.size() + 1)};
  }

  // The same path as other systems write it, a name that is near, or the file in another folder.
  Lookup nearest(std::string_view folder, std::string_view written,
                 const std::vector<std::string> &parts, std::size_t most_bytes) const {
    if (const std::string strokes = with_strokes(written); !strokes.empty()) {
      const Lookup looked = look(folder, strokes, most_bytes);
      if (looked.trouble == Trouble::none || !looked.near.empty())
        return {.trouble = Trouble::absent, .near = looked.near.empty() ? strokes : looked.near};
    }
    Lookup looked = nearest_path(written, parts);
    if (looked.trouble == Trouble::absent && looked.near.empty() && searched_ <= most_searched)
      looked.near = as_written_in(folder, elsewhere(std::string(last_part(written))));
    return looked;
  }

  // A file of that name in the edition's folder or in one of those in it, the nearest first.
  std::string elsewhere(const std::string &name) const {
    std::vector<std::string> folders{""};
    std::size_t looked_at = 0;
    for (std::size_t i = 0; i < folders.size() && i < most_folders; ++i) {
      const std::string here = folders[i];
      for (const std::string &found : names_in(here.empty() ? root_ : beside(root_, here))) {
        std::string path = here.empty() ? found : beside(here, found);
        struct stat facts {};
        // Links are not followed: what they lead to may lie outside, or in a circle.
        if (++looked_at > most_names || ::lstat(beside(root_, path).c_str(), &facts) != 0)
          continue;
        if (S_ISREG(facts.st_mode) && found == name)
          return path;
        if (S_ISDIR(facts.st_mode))
          folders.push_back(path);
      }
    }
    return {};
  }

  // Part by part, each corrected to what is there; no folder outside is ever listed.
  Lookup nearest_path(std::string_view written, const std::vector<std::string> &parts) const {
    Lookup looked{.trouble = Trouble::absent};
    if (++searched_ > most_searched)
      return looked;
    std::vector<std::string> now;
    bool only_case = true;
    for (const std::string &part : parts) {
      const std::string folder = real(beside(root_, joined(now)));
      if (folder.empty())
        return looked;
      if (!lies_in(folder, root_))
        return {.trouble = Trouble::outside};
      now.push_back(part);
      if (exists(beside(folder, part)))
        continue;
      const NearName near = near_name(part, names_in(folder));
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

  // Nobody mends a thousand paths one by one, and each search reads whole folders.
  static constexpr std::size_t most_searched = 500;
  // An edition's pictures lie in a few folders; a disk's worth of others is not gone through.
  static constexpr std::size_t most_folders = 50, most_names = 5'000;
  mutable std::size_t searched_ = 0;
  std::string root_, shelf_root_;
};

std::string root_for(const std::string &manuscript) {
  std::string own = folder_above(manuscript);
  for (std::string folder = own;; folder = folder_above(folder)) {
    if (exists(folder == "/" ? fmt::format("/{}", series_file)
                             : fmt::format("{}/{}", folder, series_file)))
      return folder;
    if (folder == "/")
      return own;
  }
}

} // namespace

DiskEdition open_on_disk(const std::string &manuscript, const std::string &shelf_root) {
  const std::string path = real(manuscript);
  struct stat facts {};
  if (path.empty() || ::stat(path.c_str(), &facts) != 0)
    return {.trouble = fmt::format("{} is not there", manuscript)};
  if (S_ISDIR(facts.st_mode))
    return {.trouble = fmt::format("{} is a folder; name the manuscript in it", manuscript)};
  if (!S_ISREG(facts.st_mode) || ::access(path.c_str(), R_OK) != 0)
    return {.trouble = fmt::format("{} may not be read", manuscript)};
  std::string root = root_for(path);
  std::string inside = path.substr(root == "/" ? 1 : root.size() + 1);
  auto files = std::make_unique<DiskFiles>(root, shelf_root);
  return {std::move(files), std::move(root), std::move(inside), {}};
}

} // namespace bodkin
