#include "press/writing.hpp"

#include "measure/digest.hpp"

#include <algorithm>
#include <exception>
#include <fmt/format.h>
#include <qpdf/Pipeline.hh>
#include <qpdf/QPDFWriter.hh>

namespace bodkin::press {
namespace {

// The writer finishes its pipelines in destructors, where nothing may be thrown: what the sink
// throws is kept, and the rest of the bytes let go.
class ToSink : public Pipeline {
public:
  explicit ToSink(const Sink &sink) : Pipeline("output", nullptr), sink_(sink) {}
  void write(unsigned char const *bytes, size_t length) override {
    const std::string_view view(reinterpret_cast<const char *>(bytes), length);
    if (length >= largest_kept) {
      flush();
      send(view);
      return;
    }
    kept_.append(view);
    if (kept_.size() >= largest_kept)
      flush();
  }
  void finish() override { flush(); }
  void rethrow() const {
    if (failure_)
      std::rethrow_exception(failure_);
  }

private:
  static constexpr std::size_t largest_kept = 1u << 16;
  void flush() {
    if (!kept_.empty())
      send(kept_);
    kept_.clear();
  }
  void send(std::string_view bytes) {
    if (failure_)
      return;
    try {
      sink_(bytes);
    } catch (...) {
      failure_ = std::current_exception();
    }
  }
  const Sink &sink_;
  std::string kept_;
  std::exception_ptr failure_;
};

QPDFObjectHandle info_of(const Imprint &imprint) {
  QPDFObjectHandle info = QPDFObjectHandle::newDictionary();
  info.replaceKey("/Title", QPDFObjectHandle::newUnicodeString(imprint.title));
  if (!imprint.maker.empty())
    info.replaceKey("/Author", QPDFObjectHandle::newUnicodeString(imprint.maker));
  info.replaceKey("/Producer", QPDFObjectHandle::newString(imprint.producer));
  const Date &d = imprint.dated;
  if (d.year > 0)
    info.replaceKey("/CreationDate", QPDFObjectHandle::newString(
                                         fmt::format("D:{:04}{:02}{:02}000000Z", d.year,
                                                     std::max(d.month, 1), std::max(d.day, 1))));
  return info;
}

void set_pages(QPDF &pdf, const std::vector<QPDFObjectHandle> &pages) {
  QPDFObjectHandle tree = pdf.getRoot().getKey("/Pages");
  QPDFObjectHandle kids = QPDFObjectHandle::newArray(pages);
  for (QPDFObjectHandle page : pages)
    page.replaceKey("/Parent", tree);
  tree.replaceKey("/Kids", kids);
  tree.replaceKey("/Count", QPDFObjectHandle::newInteger(static_cast<long long>(pages.size())));
  tree.removeKey("/MediaBox");
  tree.removeKey("/Resources");
  pdf.updateAllPagesCache();
}

// The first half of a PDF's identifier stays the same through all changes to it (ISO 32000-1,
// 14.4): here it is a digest of what the PDF was made from. The writer's own would hash every byte
// of every photograph.
void set_identifier(QPDF &pdf, const Imprint &imprint, std::string_view kind) {
  const std::string digest = written(sha256(imprint.digest + "/" + std::string(kind)));
  QPDFObjectHandle half = QPDFObjectHandle::newString(digest.substr(0, 16));
  QPDFObjectHandle both = QPDFObjectHandle::newArray();
  both.appendItem(half);
  both.appendItem(half);
  pdf.getTrailer().replaceKey("/ID", both);
}

} // namespace

void write_pdf(QPDF &pdf, const std::vector<QPDFObjectHandle> &pages, const Imprint &imprint,
               std::string_view kind, const Sink &sink) {
  set_pages(pdf, pages);
  pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(info_of(imprint)));
  set_identifier(pdf, imprint, kind);
  ToSink out(sink);
  {
    QPDFWriter writer(pdf);
    writer.setOutputPipeline(&out);
    writer.setStaticID(true);
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.setMinimumPDFVersion("1.5");
    writer.write();
  }
  out.rethrow();
  for (QPDFObjectHandle page : pages) {
    if (QPDFObjectHandle contents = page.getKey("/Contents"); contents.isStream())
      pdf.replaceObject(contents.getObjGen(), QPDFObjectHandle::newNull());
    pdf.replaceObject(page.getObjGen(), QPDFObjectHandle::newNull());
  }
}

} // namespace bodkin::press
