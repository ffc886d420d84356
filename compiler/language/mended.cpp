#include "language/mended.hpp"

#include "language/changes.hpp"
#include "language/order.hpp"
#include "problems/characters.hpp"

namespace bodkin::language {
namespace {

constexpr std::size_t longest_line = 400;
constexpr int most_steps = 10;

// The first change after which the line can be read.
std::optional<std::string> last_step(const std::vector<std::string> &changes, const Entry &entry) {
  for (const std::string &change : changes)
    if (can_be_read(change, entry))
      return change;
  return {};
}

// The first change after which more of the line can be read than before.
std::optional<Trial> next_step(const Trial &trial, const std::vector<std::string> &changes,
                               const Entry &entry) {
  for (const std::string &change : changes) {
    Trial next(change, entry);
    if (next.left() < trial.left() || (trial.ended() && next.failure.at > trial.failure.at))
      return next;
  }
  return {};
}

std::optional<std::string> in_order(const Trial &trial, const Entry &entry) {
  for (const Reordered &other : reorderings(trial, entry))
    if (can_be_read(other.line, entry))
      return other.line;
  return {};
}

} // namespace

bool can_be_read(std::string_view typed, const Entry &entry) {
  return Trial(std::string(typed), entry).fits;
}

std::optional<std::string> mended(std::string_view typed, const Entry &entry,
                                  std::string_view file) {
  if (typed.size() > longest_line)
    return {};
  Trial trial{std::string(typed), entry};
  for (int step = 0; step < most_steps && !trial.fits && !trial.lexemes.empty(); ++step) {
    const std::vector<std::string> kept = changes_that_keep(trial, entry, file);
    if (std::optional<std::string> line = last_step(kept, entry))
      return harmless(*line);
    if (std::optional<std::string> line = in_order(trial, entry))
      return harmless(*line);
    if (std::optional<std::string> line = last_step(changes_that_drop(trial, entry, file), entry))
      return harmless(*line);
    std::optional<Trial> next = next_step(trial, kept, entry);
    if (!next)
      return {};
    trial = *std::move(next);
  }
  return {};
}

} // namespace bodkin::language
