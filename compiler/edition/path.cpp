#include "edition/path.hpp"

#include "language/vocabulary.hpp"

#include <algorithm>

namespace bodkin {
namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool same_but_case(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char x, char y) { return lower(x) == lower(y); });
}

bool climb(std::vector<std::string> &parts, std::string_view path) {
  while (!path.empty()) {
    const std::size_t end = std::min(path.find('/'), path.size());
    const std::string_view part = path.substr(0, end);
    path.remove_prefix(std::min(end + 1, path.size()));
    if (part.empty() || part == ".")
      continue;
    if (part != "..") {
      parts.emplace_back(part);
    } else {
      if (parts.empty())
        return false;
      parts.pop_back();
    }
  }
  return true;
}

} // namespace

std::optional<std::vector<std::string>> path_parts(std::string_view folder,
                                                   std::string_view written) {
  std::vector<std::string> parts;
  if (written.starts_with('/') || !climb(parts, folder) || !climb(parts, written))
    return std::nullopt;
  return parts;
}

std::string joined(const std::vector<std::string> &parts) {
  std::string out;
  for (const std::string &part : parts) {
    if (!out.empty())
      out += '/';
    out += part;
  }
  return out;
}

NearName near_name(std::string_view wanted, const std::vector<std::string> &among) {
  for (const std::string &name : among)
    if (same_but_case(name, wanted))
      return {name, true};
  const std::vector<std::string_view> views(among.begin(), among.end());
  const auto near = language::nearest(wanted, views);
  return {near ? std::string(*near) : std::string{}, false};
}

std::string rewritten(std::string_view written, const std::vector<std::string> &was,
                      const std::vector<std::string> &now) {
  std::string out(written);
  for (std::size_t i = was.size(); i-- > 0;) {
    if (was[i] == now[i])
      continue;
    const std::size_t found = out.rfind(was[i]);
    if (found == std::string::npos)
      return joined(now);
    out.replace(found, was[i].size(), now[i]);
  }
  return out;
}

std::string with_strokes(std::string_view written) {
  if (written.find('\\') == std::string_view::npos)
    return {};
  std::string out(written);
  std::replace(out.begin(), out.end(), '\\', '/');
  return out;
}

std::string_view last_part(std::string_view written) {
  return written.substr(written.find_last_of('/') + 1);
}

std::string as_written_in(std::string_view folder, std::string_view path) {
  if (folder.empty())
    return std::string(path);
  const bool below =
      path.size() > folder.size() && path.starts_with(folder) && path[folder.size()] == '/';
  return below ? std::string(path.substr(folder.size() + 1)) : std::string();
}

bool is_shelf_name(std::string_view name) {
  const auto fits = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-' || c == '/';
  };
  return std::all_of(name.begin(), name.end(), fits) &&
         std::count(name.begin(), name.end(), '/') == 1;
}

} // namespace bodkin
