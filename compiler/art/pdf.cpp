// One page of a PDF: libqpdf says whether and how it can be placed, for libqpdf places it; poppler
// draws the small picture by which it is judged.
#include "art/checks.hpp"
#include "art/drawing.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <memory>
#include <poppler/glib/poppler.h>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

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

// PDF 1.7, 14.11.2 (the crop box is what a viewer shows) and table 30.
bool take_page(QPDFPageObjectHelper page, TrialHead &head) {
  QPDFObjectHandle box = page.getCropBox();
  if (!box.isRectangle())
    return false;
  const auto corners = box.getArrayAsRectangle();
  head.page_box = {corners.llx, corners.lly, corners.urx, corners.ury};
  const double width = corners.urx - corners.llx, height = corners.ury - corners.lly;
  QPDFObjectHandle rotate = page.getAttribute("/Rotate", false);
  const int turned = rotate.isInteger() ? rotate.getIntValueAsInt() % 360 : 0;
  head.rotate = turned < 0 ? turned + 360 : turned;
  QPDFObjectHandle unit = page.getObjectHandle().getKey("/UserUnit");
  const double scale = unit.isNumber() ? unit.getNumericValue() : 1;
  const bool sideways = head.rotate % 180 == 90;
  head.natural_width = (sideways ? height : width) * scale;
  head.natural_height = (sideways ? width : height) * scale;
  constexpr double longest = 1e6; // points, some 350 m; a length holds it
  const auto usable = [](double l) { return std::isfinite(l) && l > 0 && l < longest; };
  return head.rotate % 90 == 0 && usable(head.natural_width) && usable(head.natural_height);
}

void read_facts(std::string_view bytes, int page, TrialHead &head) {
  QPDF pdf;
  pdf.setSuppressWarnings(true);
  try {
    pdf.processMemoryFile("picture", bytes.data(), bytes.size());
  } catch (const QPDFExc &problem) {
    if (problem.getErrorCode() == qpdf_e_password)
      return refuse(head, {Trouble::locked, "asks for a password; save a copy without one"});
    return refuse(head, broken(bytes));
  }
  if (pdf.anyWarnings() && !ends(bytes))
    return refuse(head, cut_off(Format::pdf));
  const auto pages = QPDFPageDocumentHelper(pdf).getAllPages();
  head.pages = static_cast<int>(pages.size());
  if (page < 1 || page > head.pages)
    return refuse(head,
                  {Trouble::no_such_page, fmt::format("has {} page{}, so no page {}", head.pages,
                                                      head.pages == 1 ? "" : "s", page)});
  const auto &wanted = pages[static_cast<std::size_t>(page) - 1];
  if (!take_page(wanted, head))
    return refuse(head, damaged(Format::pdf));
  QPDFPageObjectHelper(wanted).getFormXObjectForPage();
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
