#include "press/foreign.hpp"

#include "art/jpeg.hpp"
#include "measure/limits.hpp"
#include "press/deflate.hpp"
#include "press/grey_form.hpp"

#include <cmath>
#include <qpdf/Buffer.hh>
#include <qpdf/Pipeline.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <set>

namespace bodkin::press {
namespace {

constexpr int deepest = 64; // dictionaries within dictionaries of one page

// A photograph's markers are taken out; its data stay.
void strip_photograph(QPDFObjectHandle image) {
  if (!image.getDict().getKey("/Filter").isNameAndEquals("/DCTDecode"))
    return;
  const auto data = image.getRawStreamData();
  const std::string_view bytes(reinterpret_cast<const char *>(data->getBuffer()), data->getSize());
  const auto facts = art::inspect(bytes);
  if (!facts || !art::can_be_placed(*facts))
    return;
  std::string kept;
  for (const std::string_view piece : art::placed_jpeg(bytes, *facts).pieces)
    kept.append(piece);
  image.replaceStreamData(kept, QPDFObjectHandle::newName("/DCTDecode"),
                          image.getDict().getKey("/DecodeParms"));
}

void strip(QPDFObjectHandle object, std::set<QPDFObjGen> &seen, int depth) {
  if (depth > deepest || (object.isIndirect() && !seen.insert(object.getObjGen()).second))
    return;
  if (object.isArray()) {
    for (const QPDFObjectHandle &part : object.getArrayAsVector())
      strip(part, seen, depth + 1);
    return;
  }
  if (!object.isStream() && !object.isDictionary())
    return;
  QPDFObjectHandle dict = object.isStream() ? object.getDict() : object;
  for (const char *key : {"/Metadata", "/PieceInfo", "/LastModified", "/StructParent",
                          "/StructParents", "/OPI", "/Alternates"})
    dict.removeKey(key);
  if (object.isStream() && dict.getKey("/Subtype").isNameAndEquals("/Image"))
    strip_photograph(object);
  for (const std::string &key : dict.getKeys())
    strip(dict.getKey(key), seen, depth + 1);
}

// A few kilobytes of a stream may unfold to gigabytes: no page of anybody's is drawn by so many
// operators.
class Unfolded : public Pipeline {
public:
  Unfolded() : Pipeline("content", nullptr) {}
  void write(unsigned char const *bytes, size_t length) override {
    if (text.size() + length > limits::drawing_file_bytes)
      throw std::runtime_error("more content than a page has");
    text.append(reinterpret_cast<const char *>(bytes), length);
  }
  void finish() override {}
  std::string text;
};

std::string content_of(QPDFObjectHandle form) {
  Unfolded content;
  if (!form.pipeStreamData(&content, 0, qpdf_dl_generalized))
    throw std::runtime_error("content that cannot be read");
  return std::move(content.text);
}

// The form's own matrix and box, mapped so that the box as seen is the unit square.
Transform unit_map(QPDFObjectHandle form) {
  QPDFObjectHandle dict = form.getDict();
  QPDFMatrix own;
  if (dict.getKey("/Matrix").isMatrix())
    own = QPDFMatrix(dict.getKey("/Matrix").getArrayAsMatrix());
  const QPDFObjectHandle::Rectangle box =
      own.transformRectangle(dict.getKey("/BBox").getArrayAsRectangle());
  const double width = box.urx - box.llx, height = box.ury - box.lly;
  if (!(width > 0) || !(height > 0))
    throw std::runtime_error("a page without extent");
  return {.xx = 1 / width,
          .yx = 0,
          .xy = 0,
          .yy = -1 / height,
          .x0 = -box.llx / width,
          .y0 = box.ury / height};
}

} // namespace

QPDFObjectHandle Foreigners::form_of(const std::string &path, std::string_view bytes, int number,
                                     bool grey) {
  std::shared_ptr<QPDF> &source = open_[grey ? 1 : 0][path];
  if (!source) {
    source = QPDF::create();
    source->setSuppressWarnings(true);
    source->processMemoryFile(path.c_str(), bytes.data(), bytes.size());
  }
  const auto pages = QPDFPageDocumentHelper(*source).getAllPages();
  QPDFPageObjectHelper page = pages.at(static_cast<std::size_t>(number - 1));
  QPDFObjectHandle form = page.getFormXObjectForPage();
  // libqpdf would ask the other PDF for the content when this one is written.
  form.replaceStreamData(deflated(content_of(form)), QPDFObjectHandle::newName("/FlateDecode"),
                         QPDFObjectHandle::newNull());
  return pdf_.copyForeignObject(form);
}

std::optional<ForeignPage> Foreigners::page(const std::string &path, std::string_view bytes,
                                            int number, bool grey) {
  auto &made = made_[grey ? 1 : 0];
  const auto found = made.find({path, number});
  if (found != made.end())
    return found->second;
  std::optional<ForeignPage> result;
  try {
    QPDFObjectHandle form = form_of(path, bytes, number, grey);
    std::set<QPDFObjGen> seen;
    strip(form, seen, 0);
    if (!grey || grey_form(form, Greying::all))
      result = ForeignPage{form, unit_map(form)};
  } catch (const std::exception &) {
    result.reset(); // damaged in a way that its small drawing did not show
  }
  made.emplace(std::pair{path, number}, result);
  return result;
}

} // namespace bodkin::press
