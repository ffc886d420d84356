// Pictures of steps of finish: the real sheet or page, with lines, staples, holes and their
// measures.
#pragma once

#include "paperwork/leaflet.hpp"
#include "paperwork/tasks.hpp"

#include <optional>
#include <vector>

namespace bodkin::paperwork {

// Nothing where a step needs none.
std::optional<std::vector<Shown>>
picture_of_step(const Making &making, const std::vector<MakingTask> &tasks, std::size_t step);

} // namespace bodkin::paperwork
