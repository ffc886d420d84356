#include "press/png.hpp"

#include "press/owners.hpp"

#include <cmath>
#include <poppler.h>
#include <stdexcept>

namespace bodkin::press {
namespace {

struct ObjectGone {
  void operator()(void *object) const { g_object_unref(object); }
};
using Document = std::unique_ptr<PopplerDocument, ObjectGone>;
using DocumentPage = std::unique_ptr<PopplerPage, ObjectGone>;

Document opened(std::string_view pdf) {
  GBytes *bytes = g_bytes_new_static(pdf.data(), pdf.size());
  GError *error = nullptr;
  Document document(poppler_document_new_from_bytes(bytes, nullptr, &error));
  g_bytes_unref(bytes);
  if (!document) {
    const std::string reason = error ? error->message : "unknown";
    g_clear_error(&error);
    throw std::runtime_error("a PDF could not be drawn: " + reason);
  }
  return document;
}

cairo_status_t append(void *closure, const unsigned char *bytes, unsigned int length) {
  static_cast<std::string *>(closure)->append(reinterpret_cast<const char *>(bytes), length);
  return CAIRO_STATUS_SUCCESS;
}

std::string png_of(PopplerPage *page, int dpi) {
  double width = 0, height = 0;
  poppler_page_get_size(page, &width, &height);
  const double scale = dpi / 72.0;
  const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24,
                                                   static_cast<int>(std::lround(width * scale)),
                                                   static_cast<int>(std::lround(height * scale))));
  const Context cairo(cairo_create(surface.get()));
  cairo_set_source_rgb(cairo.get(), 1, 1, 1);
  cairo_paint(cairo.get());
  cairo_scale(cairo.get(), scale, scale);
  poppler_page_render_for_printing(page, cairo.get());
  std::string png;
  if (cairo_surface_write_to_png_stream(surface.get(), append, &png) != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error("a page is too large to be drawn at this many dots an inch");
  return png;
}

} // namespace

void pages_as_png(std::string_view pdf, int dpi,
                  const std::function<void(int, std::string_view)> &sink) {
  const Document document = opened(pdf);
  const int pages = poppler_document_get_n_pages(document.get());
  for (int i = 0; i < pages; ++i) {
    const DocumentPage page(poppler_document_get_page(document.get(), i));
    if (!page)
      throw std::runtime_error("a page of a PDF could not be drawn");
    sink(i + 1, png_of(page.get(), dpi));
  }
}

} // namespace bodkin::press
