#include "type/family.hpp"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace bodkin {
namespace {

constexpr int regular_weight = 400, bold_weight = 700, least_bold = 600;
constexpr std::size_t names_offered = 3;
constexpr std::size_t longest_name = 100;

bool goes_by(const SystemFace &face, std::string_view family) {
  return std::find(face.families.begin(), face.families.end(), family) != face.families.end();
}

// Smaller is better; `wanted` is a weight.
int strangeness(const SystemFace &face, int wanted) {
  constexpr int width_counts = 10'000, variable_counts = 1'000;
  return (face.normal_width ? 0 : width_counts) + (face.variable ? variable_counts : 0) +
         std::abs(face.weight - wanted);
}

const SystemFace *best(const std::vector<const SystemFace *> &family, bool slanted, bool bold) {
  const int wanted = bold ? bold_weight : regular_weight;
  const SystemFace *found = nullptr;
  for (const SystemFace *face : family) {
    if (face->slanted != slanted || (face->weight >= least_bold) != bold)
      continue;
    if (found == nullptr || strangeness(*face, wanted) < strangeness(*found, wanted))
      found = face;
  }
  return found;
}

std::string lower_case(std::string_view name) {
  std::string lower(name.substr(0, longest_name));
  for (char &c : lower)
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
  return lower;
}

// Letters put in, left out or changed (V. Levenshtein, 1965).
std::size_t letters_apart(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 0; i < a.size(); ++i) {
    std::size_t corner = row[0];
    row[0] = i + 1;
    for (std::size_t j = 0; j < b.size(); ++j) {
      const std::size_t changed = corner + (a[i] == b[j] ? 0 : 1);
      corner = row[j + 1];
      row[j + 1] = std::min({changed, row[j] + 1, corner + 1});
    }
  }
  return row.back();
}

} // namespace

std::array<const SystemFace *, 4> cuts_of_family(const std::vector<SystemFace> &faces,
                                                 std::string_view family) {
  std::vector<const SystemFace *> own;
  for (const SystemFace &face : faces)
    if (goes_by(face, family))
      own.push_back(&face);
  std::array<const SystemFace *, 4> cuts = {best(own, false, false), best(own, true, false),
                                            best(own, false, true), best(own, true, true)};
  const SystemFace *&regular = cuts[static_cast<std::size_t>(Cut::regular)];
  for (const SystemFace *other : cuts)
    if (regular == nullptr)
      regular = other;
  return cuts;
}

std::vector<std::string> near_families(const std::vector<SystemFace> &faces,
                                       std::string_view family) {
  const std::string wanted = lower_case(family);
  std::vector<std::pair<std::size_t, std::string>> near;
  for (const SystemFace &face : faces)
    for (const std::string &name : face.families) {
      const std::string offered = lower_case(name);
      const std::size_t apart = letters_apart(wanted, offered);
      const bool within = wanted.size() >= 4 && (offered.find(wanted) != std::string::npos ||
                                                 wanted.find(offered) != std::string::npos);
      if (apart <= wanted.size() / 4 || within)
        near.emplace_back(apart, name);
    }
  std::sort(near.begin(), near.end());
  near.erase(std::unique(near.begin(), near.end()), near.end());
  std::vector<std::string> names;
  for (auto &[apart, name] : near)
    if (names.size() < names_offered)
      names.push_back(std::move(name));
  return names;
}

} // namespace bodkin
