// Picture files as samples: decoded, turned upright, in sRGB, eight bits a channel.
//
// An embedded ICC profile that is not sRGB is followed by Little CMS (perceptual intent, black
// point compensated). CMYK without a profile becomes red = (1 − C)(1 − K) and so on: what neither
// ink takes of the light. Sixteen bits are rounded to eight. A file that breaks off or is damaged
// is refused, never shown in part.
#pragma once

#include "art/inspect.hpp"
#include "art/pixels.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace bodkin::art {

inline constexpr std::int64_t all_samples = 0;

// At most about `about` samples where that is not 0: reduced by a whole number, each sample the
// mean of those it stands for, never fewer than asked for while the file has them. Drawings are
// drawn with `about` samples (a million where 0) on nothing, with alpha.
Outcome<Pixels> load(std::string_view bytes, const Facts &facts, std::int64_t about = all_samples,
                     int page = 1, const Bounds &bounds = {});

// The same in grey, as tone.hpp makes it, with alpha where there is one: each row as it comes, so
// that a large photograph takes a third of the memory.
Outcome<Pixels> load_grey(std::string_view bytes, const Facts &facts,
                          std::int64_t about = all_samples, int page = 1,
                          const Bounds &bounds = {});

// The embedded ICC profile as it is; empty where there is none.
std::string icc_profile(std::string_view bytes, const Facts &facts);

} // namespace bodkin::art
