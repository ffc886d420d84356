// One page of a PDF: libqpdf says whether and how it can be placed, for libqpdf places it; poppler
// draws the small picture by which it is judged.
#include "art/checks.hpp"
#include "art/drawing.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <memory>
#include <optional>
#include <poppler/glib/poppler.h>
#include <qpdf/qpdf-c.h>

namespace bodkin::art {
namespace {

struct Unref {
  void operator()(void *object) const { g_object_unref(object); }
};
struct UnrefBytes {
  void operator()(GBytes *bytes) const { g_bytes_unref(bytes); }
};

bool ends(std::string_view bytes) {
  constexpr std::size_t tail = 2048;
  return bytes.substr(bytes.size() - std::min(bytes.size(), tail)).find("%%EOF") !=
         std::string_view::npos;
}

Refusal broken(std::string_view bytes) {
  return ends(bytes) ? damaged(Format::pdf) : cut_off(Format::pdf);
}

struct Cleanup {
  void operator()(_qpdf_data *pdf) const { qpdf_cleanup(&pdf); }
};
using Qpdf = std::unique_ptr<_qpdf_data, Cleanup>;

bool is_rectangle(_qpdf_data *pdf, qpdf_oh box) {
  if (qpdf_oh_is_array(pdf, box) == 0 || qpdf_oh_get_array_n_items(pdf, box) != 4)
    return false;
  for (int i = 0; i < 4; ++i)
    if (qpdf_oh_is_number(pdf, qpdf_oh_get_array_item(pdf, box, i)) == 0)
      return false;
  return true;
}

// PDF 1.7, 14.11.2 (the crop box is what a viewer shows) and table 30; in the page's own units.
std::optional<PageBox> box_of(_qpdf_data *pdf, qpdf_oh page) {
  for (const char *name : {"/CropBox", "/MediaBox"}) {
    const qpdf_oh box = qpdf_oh_get_key(pdf, page, name);
    if (!is_rectangle(pdf, box))
      continue;
    const auto corner = [&](int i) {
      return qpdf_oh_get_numeric_value(pdf, qpdf_oh_get_array_item(pdf, box, i));
    };
    return PageBox{std::min(corner(0), corner(2)), std::min(corner(1), corner(3)),
                   std::max(corner(0), corner(2)), std::max(corner(1), corner(3))};
  }
  return std::nullopt;
}

bool take_page(_qpdf_data *pdf, qpdf_oh page, TrialHead &head) {
  const auto box = box_of(pdf, page);
  if (!box)
    return false;
  head.page_box = {box->left, box->bottom, box->right, box->top};
  const double width = box->right - box->left, height = box->top - box->bottom;
  const qpdf_oh rotate = qpdf_oh_get_key(pdf, page, "/Rotate");
  if (qpdf_oh_is_integer(pdf, rotate) != 0)
    head.rotate = (qpdf_oh_get_int_value_as_int(pdf, rotate) % 360 + 360) % 360;
  const qpdf_oh unit = qpdf_oh_get_key(pdf, page, "/UserUnit");
  const double scale = qpdf_oh_is_number(pdf, unit) != 0 ? qpdf_oh_get_numeric_value(pdf, unit) : 1;
  const bool sideways = head.rotate % 180 == 90;
  head.natural_width = (sideways ? height : width) * scale;
  head.natural_height = (sideways ? width : height) * scale;
  constexpr double longest = 1e6; // points, some 350 m; a length holds it
  const auto usable = [](double l) { return std::isfinite(l) && l > 0 && l < longest; };
  return head.rotate % 90 == 0 && usable(head.natural_width) && usable(head.natural_height);
}

void read_facts(std::string_view bytes, int page, TrialHead &head) {
  const Qpdf pdf(qpdf_init());
  qpdf_silence_errors(pdf.get());
  qpdf_set_suppress_warnings(pdf.get(), QPDF_TRUE);
  const auto read = qpdf_read_memory(pdf.get(), "picture", bytes.data(), bytes.size(), nullptr);
  if ((read & QPDF_ERRORS) != 0) {
    if (qpdf_get_error_code(pdf.get(), qpdf_get_error(pdf.get())) == qpdf_e_password)
      return refuse(head, {Trouble::locked, "asks for a password; save a copy without one"});
    return refuse(head, broken(bytes));
  }
  if ((read & QPDF_WARNINGS) != 0 && !ends(bytes)) // libqpdf has mended what was missing
    return refuse(head, cut_off(Format::pdf));
  qpdf_push_inherited_attributes_to_page(pdf.get());
  head.pages = std::max(qpdf_get_num_pages(pdf.get()), 0);
  if (head.pages > limits::pages)
    return refuse(head, {Trouble::too_big,
                         fmt::format("has {} pages; {} are the most of a PDF that is placed",
                                     head.pages, limits::pages)});
  if (page < 1 || page > head.pages)
    return refuse(head,
                  {Trouble::no_such_page, fmt::format("has {} page{}, so no page {}", head.pages,
                                                      head.pages == 1 ? "" : "s", page)});
  const auto wanted = qpdf_get_page_n(pdf.get(), static_cast<std::size_t>(page) - 1);
  if (!take_page(pdf.get(), wanted, head) || qpdf_has_error(pdf.get()) != 0)
    refuse(head, damaged(Format::pdf));
}

bool draw(std::string_view bytes, int number, cairo_t *cairo) {
  const std::unique_ptr<GBytes, UnrefBytes> held(g_bytes_new_static(bytes.data(), bytes.size()));
  const std::unique_ptr<PopplerDocument, Unref> document(
      poppler_document_new_from_bytes(held.get(), nullptr, nullptr));
  if (!document)
    return false;
  const std::unique_ptr<PopplerPage, Unref> page(
      poppler_document_get_page(document.get(), number - 1));
  if (!page)
    return false;
  double width = 0, height = 0;
  poppler_page_get_size(page.get(), &width, &height);
  if (!(width > 0 && height > 0))
    return false;
  cairo_scale(cairo, 1 / width, 1 / height);
  // As printed: notes and form fields stay away, as they do when the page is placed.
  poppler_page_render_for_printing_with_options(page.get(), cairo, POPPLER_PRINT_DOCUMENT);
  return true;
}

} // namespace

void try_pdf(std::string_view bytes, int page, std::int64_t about, const Trial &trial) {
  read_facts(bytes, page, trial.head());
  if (!trial.head().refused)
    leave_samples(trial, about, [&](cairo_t *cairo) { return draw(bytes, page, cairo); });
}

} // namespace bodkin::art
