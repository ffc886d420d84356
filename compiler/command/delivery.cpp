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

// night-bus/ is made in .night-bus.making/ beside it: the same disk, so that one move puts it in
// place, and a name that nobody types.
fs::path making_folder(const fs::path &folder) {
  return folder.parent_path() / ("." + folder.filename().string() + ".making");
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

Delivery::Delivery(std::string folder) {
  fs::path path = fs::weakly_canonical(fs::absolute(folder));
  if (path.filename().empty())
    path = path.parent_path();
  folder_ = path.string();
  making_ = making_folder(path).string();
  std::error_code error;
  if (fs::exists(path, error) && !fs::is_directory(path, error))
    cannot("written into", folder_, "it is a file, not a folder");
  if (fs::is_directory(path, error) && !is_empty_folder(path)) {
    if (!fs::exists(path / made_from_name))
      cannot("written into", folder_,
             "it holds files that no compile has made; say --into another folder, or empty it");
    earlier_ = outputs_listed(whole_file(path / made_from_name));
  }
  fs::remove_all(making_, error); // of a compile that was killed
  fs::create_directories(making_, error);
  if (error)
    cannot("made", making_, error.message());
}

Delivery::~Delivery() {
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
