// A step of finish in words: its heading, and how it is done; common practice, no source.
#pragma once

#include "paperwork/making.hpp"

namespace bodkin::paperwork {

std::string heading_of(const FinishStep &step);
std::string way_of(const Making &making, const FinishStep &step); // empty where nothing is usual
// By hole from the head, as which stitch the needle goes through it; empty of an unusual number.
std::vector<std::string> order_of_sewing(int holes);

} // namespace bodkin::paperwork
