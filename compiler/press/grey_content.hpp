// The colour operators of a content stream, made grey. What Cairo writes holds `r g b rg` even for
// black, which a printer may lay down as four inks; one ink is asked for by `g`.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace bodkin::press {

enum class Greying {
  equal_only, // only colours whose channels are equal, for pages in colour
  all,        // every colour becomes the grey of its luminance
};

// The content with its operators changed; text strings, names and inline images' data untouched.
// None where it selects a colour space by name (`cs` other than the device ones and Pattern), whose
// colours this cannot read: only found in other programs' PDFs.
std::optional<std::string> grey_content(std::string_view content, Greying greying);

// The grey, 0 to 1, of device colours.
double grey_of_rgb(double red, double green, double blue);
double grey_of_cmyk(double cyan, double magenta, double yellow, double black);

} // namespace bodkin::press
