// Text as typed made fit to set: soft hyphens dropped, white space brought to one space or, where
// it is to be kept (code), to spaces and line feeds.
#pragma once

#include <string>
#include <string_view>

namespace bodkin {

enum class White { one_space, kept };

// Appends to `text`, which holds what was typed before; white space at a line's start is dropped
// but where it is kept.
void append_typed(std::string &text, std::string_view typed, White white);

} // namespace bodkin
