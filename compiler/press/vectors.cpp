#include "press/vectors.hpp"

#include <cairo-pdf.h>
#include <stdexcept>

namespace bodkin::press {
namespace {

cairo_status_t append(void *closure, const unsigned char *bytes, unsigned int length) {
  static_cast<std::string *>(closure)->append(reinterpret_cast<const char *>(bytes), length);
  return CAIRO_STATUS_SUCCESS;
}

} // namespace

Vectors::Vectors() {
  surface_.reset(cairo_pdf_surface_create_for_stream(append, &bytes_, 72, 72));
  // The one thing that Cairo would take from the clock.
  cairo_pdf_surface_set_metadata(surface_.get(), CAIRO_PDF_METADATA_CREATE_DATE,
                                 "2000-01-01T00:00:00Z");
  context_.reset(cairo_create(surface_.get()));
}

cairo_t *Vectors::begin(double width, double height) {
  cairo_pdf_surface_set_size(surface_.get(), width, height);
  cairo_save(context_.get());
  return context_.get();
}

int Vectors::end() {
  cairo_restore(context_.get());
  cairo_show_page(context_.get());
  return layers_++;
}

std::string Vectors::finish() {
  const cairo_status_t drawing = cairo_status(context_.get());
  context_.reset();
  cairo_surface_finish(surface_.get());
  const cairo_status_t writing = cairo_surface_status(surface_.get());
  surface_.reset();
  for (const cairo_status_t status : {drawing, writing})
    if (status != CAIRO_STATUS_SUCCESS)
      throw std::runtime_error(std::string("drawing failed: ") + cairo_status_to_string(status));
  return std::move(bytes_);
}

} // namespace bodkin::press
