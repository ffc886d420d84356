#include "command/delivery.hpp"
#include "command/telling.hpp"
#include "language/vocabulary.hpp"

#include <algorithm>
#include <cctype>
#include <cstdio>
#include <filesystem>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <fstream>
#include <sstream>

namespace bodkin {
namespace {

namespace fs = std::filesystem;

std::string read_whole(const fs::path &path) {
  std::ifstream file(path, std::ios::binary);
  if (!file)
    throw CannotWrite(fmt::format("{} is missing from the shelf", path.filename().string()));
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

// Letters and digits of the folder's name in lower case, hyphens between.
std::string name_from(const std::string &folder) {
  std::string name;
  for (const char c : folder) {
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
      name += c;
    else if (c >= 'A' && c <= 'Z')
      name += static_cast<char>(c - 'A' + 'a');
    else if (!name.empty() && name.back() != '-')
      name += '-';
  }
  while (!name.empty() && name.back() == '-')
    name.pop_back();
  return name.empty() ? "edition" : name;
}

// "garden-notes" becomes "Garden Notes".
std::string title_from(const std::string &name) {
  std::string title;
  bool begins = true;
  for (const char c : name) {
    title += c == '-' ? ' ' : begins && c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    begins = c == '-';
  }
  return title;
}

void replace_all(std::string &text, std::string_view what, std::string_view with) {
  for (std::size_t at = text.find(what); at != std::string::npos;
       at = text.find(what, at + with.size()))
    text.replace(at, what.size(), with);
}

// The manuscripts that an edition can begin as; the words and the art are the same for all.
std::vector<std::string> beginnings(const fs::path &shelf) {
  std::vector<std::string> names;
  std::error_code error;
  for (const auto &entry : fs::directory_iterator(shelf, error))
    if (entry.path().extension() == ".bodkin")
      names.push_back(entry.path().stem().string());
  std::sort(names.begin(), names.end());
  return names;
}

bool is_a_beginning(const Options &options, const std::vector<std::string> &names) {
  const std::vector<std::string_view> words(names.begin(), names.end());
  if (std::find(words.begin(), words.end(), options.start_as) != words.end())
    return true;
  auto near = language::nearest(options.start_as, words);
  // `a5` is part of a name; the nearest by letters would be any short one.
  const auto part = std::find_if(words.begin(), words.end(), [&](std::string_view word) {
    return !options.start_as.empty() && word.find(options.start_as) != std::string_view::npos;
  });
  if (part != words.end())
    near = *part;
  fmt::print(stderr, "bodkin: an edition begins as {}, not as {}; type: bodkin start {} --as {}\n",
             fmt::join(names, ", "), options.start_as, options.subject, near.value_or("booklet"));
  return false;
}

void write_file(const fs::path &path, const std::string &text) {
  std::error_code error;
  fs::create_directories(path.parent_path(), error);
  Delivery::write_alone(path.string(), text);
}

} // namespace

int start(const Options &options, const Desk &desk) {
  fs::path folder = fs::absolute(options.subject).lexically_normal();
  if (folder.filename().empty())
    folder = folder.parent_path();
  std::error_code error;
  if (fs::exists(folder, error) && (!fs::is_directory(folder, error) ||
                                    fs::directory_iterator(folder) != fs::directory_iterator()))
    throw CannotWrite(fmt::format("{} is not empty; say a new folder", options.subject));
  const std::string name = name_from(folder.filename().string());
  const fs::path pattern = fs::path(desk.shelf_root) / "stdlib" / "start";
  if (!is_a_beginning(options, beginnings(pattern)))
    return 2;
  for (const auto &entry : fs::recursive_directory_iterator(pattern)) {
    if (!entry.is_regular_file())
      continue;
    fs::path to = fs::relative(entry.path(), pattern);
    std::string text = read_whole(entry.path());
    if (to.extension() == ".bodkin") {
      if (to.stem() != options.start_as)
        continue;
      to = name + ".bodkin";
      replace_all(text, "A New Edition", title_from(name));
    }
    write_file(folder / to, text);
  }
  std::string shown = (fs::path(options.subject) / (name + ".bodkin")).lexically_normal().string();
  if (shown.find_first_of(" '&()") != std::string::npos) // as a line of a shell takes it
    shown = "\"" + shown + "\"";
  print(fmt::format("{} is ready to write in\n\n  bodkin compile {}\n\nmakes its sheets, its proof "
                    "and its estimate as it stands.\n",
                    shown, shown));
  return 0;
}

} // namespace bodkin
