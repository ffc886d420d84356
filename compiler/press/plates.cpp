#include "press/plates.hpp"

#include "press/foreign.hpp"
#include "press/grey_form.hpp"
#include "press/number.hpp"
#include "press/plate_maker.hpp"
#include "press/proof_frame.hpp"
#include "press/side_marks.hpp"

#include <stdexcept>

namespace bodkin::press {
namespace {

QPDFObjectHandle name(const char *text) { return QPDFObjectHandle::newName(text); }

// A page that Cairo drew becomes a form: its one content stream, with the page's resources.
QPDFObjectHandle form_of(QPDFObjectHandle page) {
  QPDFObjectHandle form = page.getKey("/Contents");
  QPDFObjectHandle dict = form.getDict();
  dict.replaceKey("/Type", name("/XObject"));
  dict.replaceKey("/Subtype", name("/Form"));
  dict.replaceKey("/BBox", page.getKey("/MediaBox"));
  dict.replaceKey("/Resources", page.getKey("/Resources"));
  return form;
}

} // namespace

class PlateMaker {
public:
  PlateMaker(Plates &plates, const PrintJob &job)
      : plates_(plates), job_(job), images_(plates.pdf_, job.gallery), foreigners_(plates.pdf_) {}

  void make() {
    const int pages = *job_.edition.page_count;
    planned_.resize(static_cast<std::size_t>(pages) + 1);
    overlay_pages_.assign(static_cast<std::size_t>(pages) + 1, -1);
    draw(pages);
    plates_.vectors_ = vectors_.finish();
    plates_.pdf_.processMemoryFile("pages", plates_.vectors_.data(), plates_.vectors_.size());
    drawn_ = plates_.pdf_.getAllPages();
    plates_.pages_.resize(planned_.size());
    plates_.overlays_.assign(planned_.size(), QPDFObjectHandle::newNull());
    for (std::size_t page = 1; page < planned_.size(); ++page)
      finish_page(page);
    finish_frames();
  }

private:
  void draw(int pages) {
    Fonts fonts;
    PageParter parter(job_, vectors_, fonts);
    for (int page = 1; page <= pages; ++page) {
      planned_[static_cast<std::size_t>(page)] = parter.part(page);
      overlay_pages_[static_cast<std::size_t>(page)] = parter.draw_overlay(page);
      if (job_.progress)
        job_.progress(page, pages);
    }
    draw_marks();
    for (const ProofSpread &spread : proof_spreads(job_))
      frame_pages_.push_back(draw_frame(job_, spread, vectors_));
  }

  void draw_marks() {
    for (std::size_t i = 0; i < job_.imposition.sheets.size(); ++i) {
      std::array<int, 2> drawn{-1, -1};
      for (std::size_t side = 0; side < 2; ++side)
        if (job_.modes[i][side])
          drawn[side] =
              press::draw_marks(job_, static_cast<int>(i), static_cast<int>(side), vectors_);
      mark_pages_.push_back(drawn);
    }
  }

  QPDFObjectHandle take(int vector_page, Greying greying) {
    if (vector_page < 0)
      return QPDFObjectHandle::newNull();
    QPDFObjectHandle form = form_of(drawn_[static_cast<std::size_t>(vector_page)]);
    if (!grey_form(form, greying))
      throw std::runtime_error("a drawing could not be made grey");
    return form;
  }

  void finish_page(std::size_t page) {
    for (const PlannedLayer &planned : planned_[page]) {
      if (auto layer = std::visit([&](const auto &what) { return finished(what); }, planned.what)) {
        layer->shifted = planned.shifted;
        plates_.pages_[page].push_back(std::move(*layer));
      }
    }
    planned_[page].clear();
    if (overlay_pages_[page] >= 0)
      plates_.overlays_[page] = form_of(drawn_[static_cast<std::size_t>(overlay_pages_[page])]);
  }

  std::optional<Layer> finished(const DrawnLayer &drawn) {
    const double height = job_.imposition.page_size.height.in_points();
    const Transform upright{
        .xx = 1 / drawn.scale, .yx = 0, .xy = 0, .yy = -1 / drawn.scale, .x0 = 0, .y0 = height};
    return Layer{take(drawn.vector_page, drawn.grey ? Greying::all : Greying::equal_only),
                 upright,
                 {},
                 true};
  }

  std::optional<Layer> finished(const PictureLayer &layer) {
    const auto &picture = std::get<Picture>(job_.edition[layer.element].what);
    const Transform unit =
        layer.to_page * Transform::moved(layer.whole.x, layer.whole.y) *
        Transform::scaled(layer.whole.width.in_points(), layer.whole.height.in_points());
    if (layer.foreign) {
      const std::string &path = *picture.path;
      if (const auto page =
              foreigners_.page(path, job_.gallery.bytes(path), picture.pdf_page, layer.grey))
        return Layer{page->form, unit * page->to_picture, layer.clip, true};
    }
    if (const auto image = images_.place(picture, layer.grey, layer.whole.size()))
      return Layer{image->xobject, unit * image->to_picture, layer.clip, true};
    return std::nullopt;
  }

  void finish_frames() {
    for (const auto &pages : mark_pages_)
      plates_.marks_.push_back({take(pages[0], Greying::all), take(pages[1], Greying::all)});
    for (const int page : frame_pages_)
      plates_.frames_.push_back(form_of(drawn_[static_cast<std::size_t>(page)]));
  }

  Plates &plates_;
  const PrintJob &job_;
  Vectors vectors_;
  Images images_;
  Foreigners foreigners_;
  std::vector<std::vector<PlannedLayer>> planned_;
  std::vector<int> overlay_pages_, frame_pages_;
  std::vector<std::array<int, 2>> mark_pages_;
  std::vector<QPDFObjectHandle> drawn_;
};

Plates::Plates(const PrintJob &job) : job_(job) {
  pdf_.setSuppressWarnings(true);
  PlateMaker(*this, job).make();
}

} // namespace bodkin::press
