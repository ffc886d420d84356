#include "command/delivery.hpp"

#include "command/made_from.hpp"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <sstream>
#include <sys/file.h>
#include <unistd.h>

namespace bodkin {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void cannot(const std::string &what, const std::string &path, const std::string &why) {
  throw CannotWrite(fmt::format("{} could not be {}: {}", path, what, why));
}

std::string reason() { return std::strerror(errno); }

std::string whole_file(const fs::path &path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

// night-bus/ is made in .night-bus.making-123/ beside it: the same disk, so that one move puts it
// in place, and a name that nobody types. The number is the process's, so that two compiles at once
// do not write into each other's.
std::string making_name(const fs::path &folder) {
  return "." + folder.filename().string() + ".making";
}

int open_folder(const fs::path &folder) {
  return ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
}

// A compile's turn to change what lies beside the folder: short moments. Disks that know no locks
// give everyone a turn.
class Turn {
public:
  explicit Turn(const fs::path &parent) : descriptor_(open_folder(parent)) {
    if (descriptor_ >= 0)
      ::flock(descriptor_, LOCK_EX);
  }
  ~Turn() {
    if (descriptor_ >= 0)
      ::close(descriptor_);
  }
  Turn(const Turn &) = delete;
  Turn &operator=(const Turn &) = delete;

private:
  int descriptor_;
};

// What compiles that were killed have left; one that is still at work holds a lock on its own.
void take_left_away(const fs::path &folder) {
  const std::string name = making_name(folder);
  std::error_code error;
  for (const auto &entry : fs::directory_iterator(folder.parent_path(), error)) {
    if (!entry.path().filename().string().starts_with(name))
      continue;
    const int descriptor = open_folder(entry.path());
    if (descriptor < 0)
      continue;
    if (::flock(descriptor, LOCK_EX | LOCK_NB) == 0)
      fs::remove_all(entry.path(), error);
    ::close(descriptor);
  }
}

fs::path free_name(const fs::path &folder) {
  const std::string name = fmt::format("{}-{}", making_name(folder), ::getpid());
  fs::path path = folder.parent_path() / name;
  for (int i = 1; fs::exists(fs::symlink_status(path)); ++i)
    path = folder.parent_path() / fmt::format("{}-{}", name, i);
  return path;
}

bool is_empty_folder(const fs::path &folder) {
  return fs::directory_iterator(folder) == fs::directory_iterator();
}

// A second name for a maker's file, so that it stands in both folders whatever happens.
void link_over(const fs::path &from, const fs::path &to) {
  if (linkat(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), 0) != 0 && errno != EEXIST)
    cannot("kept", from.string(), reason());
}

} // namespace

Delivery::Delivery(const std::string &folder) {
  fs::path path = fs::weakly_canonical(fs::absolute(folder));
  if (path.filename().empty())
    path = path.parent_path();
  folder_ = path.string();
  std::error_code error;
  if (fs::exists(path, error) && !fs::is_directory(path, error))
    cannot("written into", folder_, "it is a file, not a folder");
  see_earlier();
  fs::create_directories(path.parent_path(), error);
  const Turn turn(path.parent_path());
  take_left_away(path);
  making_ = free_name(path).string();
  if (!fs::create_directory(making_, error))
    cannot("made", making_, error.message());
  at_work_ = open_folder(making_);
  if (at_work_ >= 0)
    ::flock(at_work_, LOCK_EX | LOCK_NB);
}

void Delivery::see_earlier() {
  const fs::path path = folder_;
  std::error_code error;
  if (!fs::is_directory(path, error) || is_empty_folder(path))
    return;
  if (!fs::exists(path / made_from_name))
    cannot("written into", folder_,
           "it holds files that no compile has made; say --into another folder, or empty it");
  earlier_ = outputs_listed(whole_file(path / made_from_name));
}

Delivery::~Delivery() {
  if (at_work_ >= 0)
    ::close(at_work_);
  if (finished_)
    return;
  open_.reset();
  std::error_code error;
  fs::remove_all(making_, error);
}

void Delivery::begin(const std::string &name) {
  const fs::path path = fs::path(making_) / name;
  std::error_code error;
  fs::create_directories(path.parent_path(), error);
  open_.reset(std::fopen(path.c_str(), "wb"));
  if (!open_)
    cannot("written", name, reason());
  open_name_ = name;
}

void Delivery::add(std::string_view bytes) {
  if (std::fwrite(bytes.data(), 1, bytes.size(), open_.get()) != bytes.size())
    cannot("written", open_name_, reason());
}

void Delivery::end() {
  if (std::fclose(open_.release()) != 0)
    cannot("written", open_name_, reason());
  written_.push_back(open_name_);
}

void Delivery::write(const std::string &name, std::string_view bytes) {
  begin(name);
  add(bytes);
  end();
}

void Delivery::keep(const std::string &name) {
  const fs::path from = fs::path(folder_) / name, to = fs::path(making_) / name;
  std::error_code error;
  if (!fs::exists(from, error) || fs::exists(to, error))
    return;
  fs::create_directories(to.parent_path(), error);
  link_over(from, to);
  written_.push_back(name);
}

void Delivery::write_alone(const std::string &path, std::string_view bytes) {
  const std::string making = path + ".making";
  std::unique_ptr<std::FILE, Close> file(std::fopen(making.c_str(), "wb"));
  if (!file)
    cannot("written", path, reason());
  const bool whole = std::fwrite(bytes.data(), 1, bytes.size(), file.get()) == bytes.size();
  if (std::fclose(file.release()) != 0 || !whole ||
      std::rename(making.c_str(), path.c_str()) != 0) {
    const std::string why = reason();
    std::remove(making.c_str());
    cannot("written", path, why);
  }
}

// Whatever lies in the folder that no compile made.
void Delivery::carry_over_others() {
  const fs::path folder = folder_;
  for (fs::recursive_directory_iterator it(folder), end; it != end; ++it) {
    const fs::path name = fs::relative(it->path(), folder);
    const bool ours =
        std::find(earlier_.begin(), earlier_.end(), name.generic_string()) != earlier_.end() ||
        name == made_from_name;
    if (ours || (it->is_directory() && !it->is_symlink()))
      continue;
    const fs::path to = fs::path(making_) / name;
    if (fs::exists(fs::symlink_status(to)))
      continue;
    fs::create_directories(to.parent_path());
    link_over(it->path(), to);
  }
}

// On disks that cannot exchange two folders: each file is whole at any moment, though for a blink
// old and new stand side by side.
void Delivery::move_one_by_one() {
  for (const std::string &name : written_) {
    const fs::path to = fs::path(folder_) / name;
    std::error_code error;
    fs::create_directories(to.parent_path(), error);
    fs::rename(fs::path(making_) / name, to, error);
    if (error)
      cannot("put in place", to.string(), error.message());
  }
  for (const std::string &name : earlier_)
    if (std::find(written_.begin(), written_.end(), name) == written_.end()) {
      std::error_code error;
      fs::remove(fs::path(folder_) / name, error);
    }
}

void Delivery::finish() {
  const Turn turn(fs::path(folder_).parent_path());
  see_earlier(); // another compile may have ended since
  std::error_code error;
  if (!fs::exists(folder_, error)) {
    fs::rename(making_, folder_, error);
    if (error)
      cannot("put in place", folder_, error.message());
  } else {
    carry_over_others();
    if (renameat2(AT_FDCWD, making_.c_str(), AT_FDCWD, folder_.c_str(), RENAME_EXCHANGE) != 0)
      move_one_by_one();
    fs::remove_all(making_, error);
  }
  finished_ = true;
}

} // namespace bodkin
