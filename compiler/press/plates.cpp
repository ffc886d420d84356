#include "press/plates.hpp"

#include "press/foreign.hpp"
#include "press/grey_form.hpp"
#include "press/number.hpp"
#include "press/plate_maker.hpp"

#include <map>
#include <stdexcept>

namespace bodkin::press {
namespace {

QPDFObjectHandle name(const char *text) { return QPDFObjectHandle::newName(text); }

// The pages of a PDF, none of them looked at yet.
std::vector<QPDFObjectHandle> kids_of(QPDF &pdf) {
  return pdf.getRoot().getKey("/Pages").getKey("/Kids").getArrayAsVector();
}

// Resources that hold nothing but faces and plain states.
bool plain(QPDFObjectHandle resources) {
  for (const char *kind : {"/XObject", "/Pattern", "/Shading"})
    if (resources.hasKey(kind))
      return false;
  return true;
}

void forget(QPDF &pdf, const QPDFObjectHandle &object) {
  if (object.isIndirect())
    pdf.replaceObject(object.getObjGen(), QPDFObjectHandle::newNull());
}

} // namespace

const PageDrawing &PrintJob::drawing(int page) const {
  const CopyPart &part = part_of(page);
  return drawings[static_cast<std::size_t>(&part - parts.data())][page - part.pages_before];
}

int PrintJob::printed(int page) const {
  const Piece *piece = part_of(page).piece;
  return piece && piece->is_other_book() ? imposition.place_of(page).page : page;
}

Mode PrintJob::mode_of(int page) const {
  if (all_black)
    return Mode::black;
  const CopyPart &part = part_of(page);
  return *part.edition->pages[static_cast<std::size_t>(page - part.pages_before)].mode;
}

class PlateMaker {
public:
  PlateMaker(Plates &plates, const PrintJob &job)
      : plates_(plates), job_(job), images_(plates.pdf_, job.gallery), foreigners_(plates.pdf_) {}

  void make() {
    const int pages = job_.pages();
    planned_.resize(static_cast<std::size_t>(pages) + 1);
    draw(pages);
    plates_.vectors_ = vectors_.finish();
    plates_.pdf_.processMemoryFile("pages", plates_.vectors_.data(), plates_.vectors_.size());
    take_forms();
    plates_.pages_.resize(planned_.size());
    for (std::size_t page = 1; page < planned_.size(); ++page)
      finish_page(page);
  }

private:
  void draw(int pages) {
    Fonts fonts;
    PageParter parter(job_, vectors_, fonts);
    for (int page = 1; page <= pages; ++page) {
      if (job_.printed(page) == page)
        planned_[static_cast<std::size_t>(page)] = parter.part(page);
      if (job_.progress)
        job_.progress(page, pages);
    }
  }

  // All of them before the first new object is made: for that libqpdf reads whatever is left of the
  // PDF, and then there is little.
  void take_forms() {
    forms_ = kids_of(plates_.pdf_);
    for (const auto &page : planned_)
      for (const PlannedLayer &planned : page)
        if (const auto *drawn = std::get_if<DrawnLayer>(&planned.what))
          take(forms_[static_cast<std::size_t>(drawn->vector_page)],
               drawn->grey ? Greying::all : Greying::equal_only);
  }

  void take(QPDFObjectHandle &page, Greying greying) {
    page = form_of(page);
    if (!grey_form(page, greying))
      throw std::runtime_error("a drawing could not be made grey");
  }

  // A page that Cairo drew becomes a form: its one content stream, with the page's resources. What
  // many pages say alike is kept once, and the page itself no longer: of ten thousand pages nothing
  // may pile up.
  QPDFObjectHandle form_of(QPDFObjectHandle page) {
    QPDF &pdf = plates_.pdf_;
    QPDFObjectHandle form = page.getKey("/Contents"), resources = page.getKey("/Resources");
    QPDFObjectHandle dict = form.getDict();
    forget(pdf, dict.getKey("/Length"));
    dict.replaceKey("/Type", name("/XObject"));
    dict.replaceKey("/Subtype", name("/Form"));
    dict.replaceKey("/BBox", once(page.getKey("/MediaBox")));
    dict.replaceKey("/Resources", plain(resources) ? once(resources) : resources);
    forget(pdf, page);
    return form;
  }

  QPDFObjectHandle once(QPDFObjectHandle object) {
    QPDFObjectHandle &kept = kept_[object.unparseResolved()];
    if (!kept.isInitialized())
      kept = object;
    else
      forget(plates_.pdf_, object);
    return kept;
  }

  void finish_page(std::size_t page) {
    for (const PlannedLayer &planned : planned_[page]) {
      if (auto layer =
              std::visit([&](const auto &what) { return finished(what, static_cast<int>(page)); },
                         planned.what)) {
        layer->shifted = planned.shifted;
        layer->copy = planned.copy;
        plates_.pages_[page].push_back(std::move(*layer));
      }
    }
    planned_[page] = {};
  }

  std::optional<Layer> finished(const DrawnLayer &drawn, int page) {
    const double height = job_.size_of(page).height.in_points();
    const Transform upright{.xx = 1 / drawn.scale,
                            .yx = 0,
                            .xy = 0,
                            .yy = -1 / drawn.scale,
                            .x0 = -drawn.beside,
                            .y0 = height};
    return Layer{forms_[static_cast<std::size_t>(drawn.vector_page)], upright, {}};
  }

  std::optional<Layer> finished(const PictureLayer &layer, int) {
    const auto &picture = std::get<Picture>(job_.edition[layer.element].what);
    const Transform unit =
        layer.to_page * Transform::moved(layer.whole.x, layer.whole.y) *
        Transform::scaled(layer.whole.width.in_points(), layer.whole.height.in_points());
    if (layer.foreign) {
      const std::string &path = *picture.path;
      if (const auto page =
              foreigners_.page(path, job_.gallery.bytes(path), picture.pdf_page, layer.grey))
        return placed(layer, unit, page->form, page->to_picture);
    }
    if (const auto image = images_.place(picture, layer.grey, layer.whole.size()))
      return placed(layer, unit, image->xobject, image->to_picture);
    return std::nullopt;
  }

  static Layer placed(const PictureLayer &layer, const Transform &unit,
                      const QPDFObjectHandle &xobject, const Transform &to_picture) {
    return {.xobject = xobject,
            .to_page = unit * to_picture,
            .clip = layer.clip,
            .picture = layer.element,
            .seen = layer.whole.size(),
            .unit = unit};
  }

  Plates &plates_;
  const PrintJob &job_;
  Vectors vectors_;
  Images images_;
  Foreigners foreigners_;
  std::vector<std::vector<PlannedLayer>> planned_;
  std::vector<QPDFObjectHandle> forms_;          // by the page of the drawn PDF
  std::map<std::string, QPDFObjectHandle> kept_; // by what they say
};

Plates::Plates(const PrintJob &job) : job_(job) {
  pdf_.setSuppressWarnings(true);
  PlateMaker(*this, job).make();
}

} // namespace bodkin::press
