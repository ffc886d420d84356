// A form and all that it draws with, made grey: content, images, shadings, patterns, soft masks.
#pragma once

#include "press/grey_content.hpp"

#include <qpdf/QPDFObjectHandle.hh>

namespace bodkin::press {

// `form` is a form XObject; its own /Resources are followed where everything is to be grey. False
// where some part cannot be made grey (a named colour space, a sampled shading …); the form is then
// half changed and must not be used.
bool grey_form(const QPDFObjectHandle &form, Greying greying);

// A page of black lines and words, as one form in one ink: its content with the page's own box and
// resources. Throws where it holds what cannot be made grey, which the compiler never draws itself.
QPDFObjectHandle black_form(QPDFObjectHandle page);

} // namespace bodkin::press
