#include "press/output.hpp"

#include "edition/copy_numbers.hpp"
#include "press/beneath.hpp"
#include "press/contents.hpp"
#include "press/originals.hpp"
#include "press/overlay.hpp"
#include "press/placing.hpp"
#include "press/proof_frame.hpp"
#include "press/side_drawing.hpp"
#include "press/writing.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::press {
namespace {

Size size_of(const Plates &plates, int sheet) {
  return plates.job().imposition.sheets[static_cast<std::size_t>(sheet)].size;
}

QPDFObjectHandle shared(QPDF &pdf, const char *text) {
  return pdf.makeIndirectObject(QPDFObjectHandle::parse(text));
}

// Whether what a page shows is the same laid on paper of any colour piece by piece or as a whole:
// black words and lines.
bool black_only(const PageDrawing &page) {
  return std::all_of(page.items.begin(), page.items.end(), [](const Item &item) {
    const auto black = [](const Paint &paint) { return paint.colour == Colour{}; };
    if (only_on_proofs(item))
      return true;
    if (const auto *rule = std::get_if<SetRule>(&item.what))
      return black(rule->paint);
    const auto *words = std::get_if<SetWords>(&item.what);
    return words && std::all_of(words->lines.begin(), words->lines.end(), [&](const Line &line) {
             return std::all_of(line.runs.begin(), line.runs.end(),
                                [&](const GlyphRun &run) { return black(run.paint); });
           });
  });
}

} // namespace

Outputs::Outputs(Plates &plates, Imprint imprint)
    : plates_(plates), imprint_(std::move(imprint)),
      multiplying_(shared(plates.pdf(), "<< /Type /ExtGState /BM /Multiply >>")),
      isolated_(shared(plates.pdf(), "<< /S /Transparency /I true /CS /DeviceRGB >>")),
      on_paper_(shared(plates.pdf(), "<< /S /Transparency /CS /DeviceRGB >>")) {}

QPDFObjectHandle Outputs::box(double width, double height) {
  QPDFObjectHandle &kept = boxes_[{width, height}];
  if (!kept.isInitialized())
    kept = plates_.pdf().makeIndirectObject(
        QPDFObjectHandle::newArray(QPDFObjectHandle::Rectangle(0, 0, width, height)));
  return kept;
}

void Outputs::draw_side(Contents &contents, int sheet, int side, std::int64_t nth) {
  press::draw_side(
      contents, plates_.job(),
      [this](int page) -> const std::vector<Layer> & { return plates_.page(page); }, sheet, side,
      nth);
}

void Outputs::sheets(const Sink &sink) {
  std::vector<QPDFObjectHandle> pages;
  const PrintJob &job = plates_.job();
  for (std::size_t i = 0; i < job.imposition.sheets.size(); ++i)
    for (std::size_t side = 0; side < 2; ++side) {
      const auto sheet = static_cast<int>(i);
      Contents contents;
      if (job.modes[i][side])
        draw_side(contents, sheet, static_cast<int>(side));
      const Size size = size_of(plates_, sheet);
      pages.push_back(
          contents.page(plates_.pdf(), box(size.width.in_points(), size.height.in_points())));
    }
  write(pages, "sheets", sink);
}

QPDFObjectHandle Outputs::pass_page(const PassPage &page, ContentStreams &streams,
                                    const Strokes *over) {
  const Size size = size_of(plates_, page.sheet);
  const double width = size.width.in_points(), height = size.height.in_points();
  Contents contents;
  if (page.prints) {
    contents.save();
    if (page.turned)
      contents.matrix({.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = width, .y0 = height});
    draw_side(contents, page.sheet, page.side == SideName::front ? 0 : 1, page.nth);
    contents.restore();
  }
  if (over != nullptr)
    contents.draw(*over);
  return contents.page(plates_.pdf(), box(width, height), streams);
}

void Outputs::pass(const Pass &pass, const Sink &sink) {
  std::vector<QPDFObjectHandle> pages;
  ContentStreams streams;
  for (const PassPage &page : pass.pages)
    pages.push_back(pass_page(page, streams, nullptr));
  write(pages, pass.file, sink);
}

QPDFObjectHandle Outputs::original_of_page(int page, int number, int of) {
  const Size size = plates_.job().size_of(page);
  const double width = size.width.in_points() + 2 * original_margin;
  const double height = size.height.in_points() + 2 * original_margin;
  Contents contents;
  contents.save();
  contents.matrix(
      {.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = original_margin, .y0 = height - original_margin});
  contents.clip(page_corners(size));
  draw_layers(contents, plates_.page(page), spare_copy);
  contents.restore();
  contents.draw(blue_of_page(plates_.job(), page, number, of));
  return contents.page(plates_.pdf(), box(width, height));
}

void Outputs::originals(const Sink &sink) {
  const PrintJob &job = plates_.job();
  const std::vector<PassPage> sides = sides_for_the_glass(job);
  std::vector<int> drawn;
  for (int page = 1; page <= job.pages(); ++page)
    if (job.drawing(page).draws && job.printed(page) == page)
      drawn.push_back(page);
  const int of = static_cast<int>(drawn.size() + sides.size());
  std::vector<QPDFObjectHandle> pages;
  ContentStreams streams;
  const auto number = [&] { return static_cast<int>(pages.size()) + 1; };
  for (const int page : drawn)
    pages.push_back(original_of_page(page, number(), of));
  for (const PassPage &side : sides) {
    const Strokes over = blue_of_side(job, side, number(), of);
    pages.push_back(pass_page(side, streams, &over));
  }
  write(pages, "originals", sink);
}

void Outputs::draw_on_paper(Contents &contents, int page) {
  if (plates_.page(page).empty())
    return;
  contents.save();
  if (black_only(plates_.job().drawing(page))) {
    contents.matrix({.xx = 1,
                     .yx = 0,
                     .xy = 0,
                     .yy = -1,
                     .x0 = 0,
                     .y0 = plates_.job().size_of(page).height.in_points()});
    draw_layers(contents, plates_.page(page));
  } else {
    contents.state(multiplying_);
    contents.draw(page_group(page));
  }
  contents.restore();
}

// Paper as a plain sheet, in a page's own frame.
void Outputs::lay_paper(Contents &contents, int page) {
  const Size size = plates_.job().size_of(page);
  const StockId stock = plates_.job().imposition.sheet_of(page).stock;
  Strokes paper(size.height.in_points());
  paper.fill_colour(stock == StockId::none ? Colour{255, 255, 255}
                                           : *plates_.job().edition[stock].tint);
  paper.rectangle(0, 0, size.width.in_points(), size.height.in_points());
  paper.fill();
  contents.draw(paper);
}

QPDFObjectHandle Outputs::veil(double hidden) {
  QPDFObjectHandle &kept = veils_[hidden];
  if (!kept.isInitialized())
    kept = shared(plates_.pdf(), fmt::format("<< /Type /ExtGState /ca {:.4f} >>", hidden).c_str());
  return kept;
}

// Under a translucent wrap, what it lies on, and over that its own paper as a veil.
void Outputs::draw_beneath(Contents &contents, int page) {
  const PrintJob &job = plates_.job();
  const auto beneath = seen_beneath(job, page);
  if (!beneath)
    return;
  const Size size = job.size_of(page), under = job.size_of(beneath->page);
  contents.save();
  contents.clip({{0, 0},
                 {size.width.in_points(), 0},
                 {size.width.in_points(), size.height.in_points()},
                 {0, size.height.in_points()}});
  contents.save();
  // Heads lie level, and folds on each other.
  const bool right = job.imposition.place_of(page).spine == SpineAt::right;
  const double over = (size.width - under.width).in_points();
  Transform map{.xx = 1,
                .yx = 0,
                .xy = 0,
                .yy = 1,
                .x0 = right ? over : 0,
                .y0 = (size.height - under.height).in_points()};
  if (beneath->behind)
    map = {.xx = -1, .yx = 0, .xy = 0, .yy = 1, .x0 = size.width.in_points(), .y0 = 0};
  contents.matrix(map);
  if (!beneath->behind) {
    lay_paper(contents, beneath->page);
    draw_beneath(contents, beneath->page);
  }
  draw_on_paper(contents, beneath->page);
  contents.restore();
  contents.state(veil(beneath->hidden));
  lay_paper(contents, page);
  contents.restore();
  contents.draw(paper_edge(size));
}

// All of a page as one group, so that white matter hides what lies below it and the whole is then
// laid on the paper's colour.
QPDFObjectHandle Outputs::page_group(int page) {
  const Size size = plates_.job().size_of(page);
  const double height = size.height.in_points();
  Contents contents;
  contents.save();
  contents.matrix({.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = height});
  draw_layers(contents, plates_.page(page));
  contents.restore();
  QPDFObjectHandle form = contents.form(plates_.pdf(), box(size.width.in_points(), height));
  form.getDict().replaceKey("/Group", isolated_);
  passing_.push_back(form);
  return form;
}

QPDFObjectHandle Outputs::proof_page(const ProofSpread &spread) {
  const ProofLayout layout = proof_layout(plates_.job(), spread);
  Contents contents;
  contents.draw(draw_frame(plates_.job(), spread));
  for (const auto &[page, x] :
       {std::pair{spread.left, layout.left_x}, {spread.right, layout.right_x}}) {
    if (page == 0)
      continue;
    contents.save();
    const double height = plates_.job().size_of(page).height.in_points();
    contents.matrix(
        {.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = x, .y0 = layout.height - layout.y - height});
    draw_beneath(contents, page);
    draw_on_paper(contents, page);
    if (const auto overlay = draw_overlay(plates_.job(), page))
      contents.draw(*overlay);
    contents.restore();
  }
  QPDFObjectHandle page = contents.page(plates_.pdf(), box(layout.width, layout.height));
  page.replaceKey("/Group", on_paper_);
  return page;
}

void Outputs::proof(const Sink &sink) {
  std::vector<QPDFObjectHandle> pages;
  for (const ProofSpread &spread : proof_spreads(plates_.job()))
    pages.push_back(proof_page(spread));
  write(pages, "proof", sink);
}

void Outputs::write(const std::vector<QPDFObjectHandle> &pages, std::string_view kind,
                    const Sink &sink) {
  write_pdf(plates_.pdf(), pages, imprint_, kind, sink);
  for (const QPDFObjectHandle &form : passing_)
    plates_.pdf().replaceObject(form.getObjGen(), QPDFObjectHandle::newNull());
  passing_.clear();
}

} // namespace bodkin::press
