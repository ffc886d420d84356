#include "sheet/fold_words.hpp"

#include <fmt/format.h>

namespace bodkin {

Problem paper_trouble(Range range, std::string message, std::string why) {
  Problem problem;
  problem.range = range;
  problem.message = std::move(message);
  problem.why = std::move(why);
  return problem;
}

Problem folding_cannot_be(Range range, std::string message, std::string why) {
  Problem problem = paper_trouble(range, std::move(message), std::move(why));
  problem.check = "folding-cannot-be";
  return problem;
}

std::string panels_in_words(int panels) {
  return fmt::format("{} {}", panels, panels == 1 ? "panel" : "panels");
}

std::string panel_name(const Folding &folding, int panel) {
  const bool down = folding.tab && folding.tab->at == Part::bottom;
  const int columns = folding.tab && !down ? 0 : folding.columns;
  if (columns == 0 || (folding.rows == 1 && !down))
    return fmt::format("panel {}", panel + 1);
  if (columns == 1)
    return fmt::format("panel {} from the top", panel + 1);
  return fmt::format("panel {} of row {}", panel % columns + 1, panel / columns + 1);
}

} // namespace bodkin
