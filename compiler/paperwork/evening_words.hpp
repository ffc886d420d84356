// What is said alike wherever an evening is told.
#pragma once

#include "paperwork/evening.hpp"

namespace bodkin::paperwork {

inline constexpr std::int64_t told_from = 30'000; // a shorter time is none on a clock of minutes
std::string clock(std::int64_t milliseconds);     // "0:25", hours and minutes from the start
std::string spoken_time(std::int64_t milliseconds);
std::string first_copy_words(const Evening &evening);
std::string hands_words(int hands);
// The plan for so many pairs of hands, with a headline.
void tell_hands(const Making &making, int hands, const std::vector<WorkOfTask> &all,
                Leaflet &leaflet);

} // namespace bodkin::paperwork
