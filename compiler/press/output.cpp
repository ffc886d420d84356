#include "press/output.hpp"

#include "press/contents.hpp"
#include "press/placing.hpp"
#include "press/proof_frame.hpp"
#include "press/writing.hpp"

namespace bodkin::press {
namespace {

Size size_of(const Plates &plates, int sheet) {
  return plates.job().imposition.sheets[static_cast<std::size_t>(sheet)].size;
}

QPDFObjectHandle multiplying() {
  return QPDFObjectHandle::parse("<< /Type /ExtGState /BM /Multiply >>");
}

// What lies on a page, in its own frame.
void draw_layers(Contents &contents, const std::vector<Layer> &layers, Length shift_right) {
  for (const Layer &layer : layers) {
    contents.save();
    if (layer.shifted && shift_right != Length{})
      contents.matrix(Transform::moved(shift_right, {}));
    if (!layer.clip.empty())
      contents.clip(layer.clip);
    contents.matrix(layer.to_page);
    contents.draw(layer.xobject);
    contents.restore();
  }
}

} // namespace

Outputs::Outputs(Plates &plates, Imprint imprint)
    : plates_(plates), imprint_(std::move(imprint)), sides_(plates.job().imposition.sheets.size()) {
}

QPDFObjectHandle Outputs::side_form(int sheet, int side) {
  QPDFObjectHandle &form = sides_[static_cast<std::size_t>(sheet)][static_cast<std::size_t>(side)];
  if (form.isInitialized())
    return form;
  const PrintJob &job = plates_.job();
  const Size size = size_of(plates_, sheet);
  Contents contents;
  for (const Place &place : job.imposition.sheets[static_cast<std::size_t>(sheet)]
                                .sides[static_cast<std::size_t>(side)]
                                .places) {
    if (place.page == 0 || place.page > job.imposition.page_count ||
        plates_.page(place.page).empty())
      continue;
    contents.save();
    contents.matrix(page_to_sheet(place, job.imposition.page_size, size));
    contents.clip(page_corners(job.imposition.page_size));
    draw_layers(contents, plates_.page(place.page), shift_right(place));
    contents.restore();
  }
  if (QPDFObjectHandle marks = plates_.marks(sheet, side); !marks.isNull())
    contents.draw(marks);
  form = contents.form(plates_.pdf(), size.width.in_points(), size.height.in_points());
  return form;
}

void Outputs::sheets(const Sink &sink) {
  std::vector<QPDFObjectHandle> pages;
  const PrintJob &job = plates_.job();
  for (std::size_t i = 0; i < job.imposition.sheets.size(); ++i)
    for (std::size_t side = 0; side < 2; ++side) {
      const auto sheet = static_cast<int>(i);
      Contents contents;
      if (job.modes[i][side])
        contents.draw(side_form(sheet, static_cast<int>(side)));
      const Size size = size_of(plates_, sheet);
      pages.push_back(
          contents.page(plates_.pdf(), size.width.in_points(), size.height.in_points()));
    }
  write(pages, "sheets", sink);
}

void Outputs::pass(const Pass &pass, const Sink &sink) {
  std::vector<QPDFObjectHandle> pages;
  for (const PassPage &page : pass.pages) {
    const Size size = size_of(plates_, page.sheet);
    const double width = size.width.in_points(), height = size.height.in_points();
    Contents contents;
    if (page.prints) {
      contents.save();
      if (page.turned)
        contents.matrix({.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = width, .y0 = height});
      contents.draw(side_form(page.sheet, page.side == SideName::front ? 0 : 1));
      contents.restore();
    }
    pages.push_back(contents.page(plates_.pdf(), width, height));
  }
  write(pages, pass.file, sink);
}

// All of a page as one group, so that white matter hides what lies below it and the whole is then
// laid on the paper's colour.
QPDFObjectHandle Outputs::page_group(int page) {
  const Size &size = plates_.job().imposition.page_size;
  const double height = size.height.in_points();
  Contents contents;
  contents.save();
  contents.matrix({.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = height});
  draw_layers(contents, plates_.page(page), {});
  contents.restore();
  QPDFObjectHandle form = contents.form(plates_.pdf(), size.width.in_points(), height);
  form.getDict().replaceKey(
      "/Group", QPDFObjectHandle::parse("<< /S /Transparency /I true /CS /DeviceRGB >>"));
  return form;
}

QPDFObjectHandle Outputs::proof_page(std::size_t spread, int left, int right) {
  const ProofLayout layout = proof_layout(plates_.job());
  const double height = plates_.job().imposition.page_size.height.in_points();
  Contents contents;
  contents.draw(plates_.proof_frame(spread));
  for (const auto &[page, x] : {std::pair{left, layout.left_x}, {right, layout.right_x}}) {
    if (page == 0)
      continue;
    QPDFObjectHandle overlay = plates_.overlay(page);
    if (plates_.page(page).empty() && overlay.isNull())
      continue;
    contents.save();
    contents.matrix(
        {.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = x, .y0 = layout.height - layout.y - height});
    if (!plates_.page(page).empty()) {
      contents.save();
      contents.state(multiplying());
      contents.draw(page_group(page));
      contents.restore();
    }
    if (!overlay.isNull())
      contents.draw(overlay);
    contents.restore();
  }
  QPDFObjectHandle page = contents.page(plates_.pdf(), layout.width, layout.height);
  page.replaceKey("/Group", QPDFObjectHandle::parse("<< /S /Transparency /CS /DeviceRGB >>"));
  return page;
}

void Outputs::proof(const Sink &sink) {
  std::vector<QPDFObjectHandle> pages;
  const auto spreads = proof_spreads(plates_.job());
  for (std::size_t i = 0; i < spreads.size(); ++i)
    pages.push_back(proof_page(i, spreads[i].left, spreads[i].right));
  write(pages, "proof", sink);
}

void Outputs::write(const std::vector<QPDFObjectHandle> &pages, std::string_view kind,
                    const Sink &sink) {
  write_pdf(plates_.pdf(), pages, imprint_, kind, sink);
}

} // namespace bodkin::press
