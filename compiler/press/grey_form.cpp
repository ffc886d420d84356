#include "press/grey_form.hpp"

#include "press/deflate.hpp"

#include <cmath>
#include <optional>
#include <qpdf/Buffer.hh>
#include <qpdf/QPDFObjGen.hh>
#include <set>
#include <stdexcept>

namespace bodkin::press {
namespace {

constexpr std::size_t largest_content = 256u << 20;
constexpr int deepest = 24; // forms within forms; drawings of programs have two or three

QPDFObjectHandle name(const char *text) { return QPDFObjectHandle::newName(text); }

std::string_view bytes_of(const Buffer &buffer) {
  return {reinterpret_cast<const char *>(buffer.getBuffer()), buffer.getSize()};
}

std::string content_of(QPDFObjectHandle stream) {
  QPDFObjectHandle dict = stream.getDict();
  if (dict.getKey("/Filter").isNameAndEquals("/FlateDecode") && !dict.hasKey("/DecodeParms"))
    if (auto content = inflated(bytes_of(*stream.getRawStreamData()), largest_content))
      return std::move(*content);
  return std::string(bytes_of(*stream.getStreamData(qpdf_dl_generalized)));
}

class Walker {
public:
  explicit Walker(Greying greying) : greying_(greying) {}

  bool content(QPDFObjectHandle stream) {
    const auto grey = grey_content(content_of(stream), greying_);
    if (!grey)
      return false;
    stream.replaceStreamData(deflated(*grey), name("/FlateDecode"), QPDFObjectHandle::newNull());
    return true;
  }

  bool form(QPDFObjectHandle stream, int depth, bool mask = false) {
    if (depth > deepest || !stream.isStream())
      return false;
    if (stream.isIndirect() && !seen_.insert(stream.getObjGen()).second)
      return true;
    if (!content(stream))
      return false;
    return greying_ != Greying::all || dressing(stream.getDict(), depth, mask);
  }

private:
  bool dressing(QPDFObjectHandle dict, int depth, bool mask = false) {
    group(dict, mask);
    QPDFObjectHandle resources = dict.getKey("/Resources");
    if (!resources.isDictionary())
      return true;
    return each(resources, "/XObject",
                [&](const QPDFObjectHandle &o) { return xobject(o, depth); }) &&
           each(resources, "/Pattern",
                [&](const QPDFObjectHandle &o) { return pattern(o, depth); }) &&
           each(resources, "/Shading", [&](const QPDFObjectHandle &o) { return shading(o); }) &&
           each(resources, "/ExtGState",
                [&](const QPDFObjectHandle &o) { return state(o, depth); }) &&
           each(resources, "/Font", [&](const QPDFObjectHandle &o) { return font(o, depth); });
  }

  // A Type 3 font draws its glyphs by content streams, which may choose colours.
  bool font(QPDFObjectHandle font, int depth) {
    if (!font.isDictionary() || !font.getKey("/Subtype").isNameAndEquals("/Type3"))
      return true;
    if (depth > deepest || !seen_.insert(font.getObjGen()).second)
      return depth <= deepest;
    return each(font, "/CharProcs",
                [&](QPDFObjectHandle o) { return !o.isStream() || content(o); }) &&
           dressing(font, depth + 1);
  }

  template <typename Visit>
  static bool each(QPDFObjectHandle resources, const char *kind, Visit visit) {
    QPDFObjectHandle dict = resources.getKey(kind);
    if (!dict.isDictionary())
      return true;
    for (const std::string &key : dict.getKeys())
      if (!visit(dict.getKey(key)))
        return false;
    return true;
  }

  // A group without a space of its own is mixed in that of the page, which is the printer's: grey
  // mixed by itself would be laid down in four inks. Only a soft mask must name its space (ISO
  // 32000-1, 11.6.5.3).
  static void group(QPDFObjectHandle dict, bool mask) {
    QPDFObjectHandle group = dict.getKey("/Group");
    if (!group.isDictionary() || !group.hasKey("/CS"))
      return;
    if (mask)
      group.replaceKey("/CS", name("/DeviceGray"));
    else
      group.removeKey("/CS");
  }

  bool xobject(QPDFObjectHandle object, int depth) {
    if (!object.isStream())
      return true;
    if (object.getDict().getKey("/Subtype").isNameAndEquals("/Form"))
      return form(object, depth + 1);
    return image(object);
  }

  bool state(QPDFObjectHandle state, int depth) {
    if (!state.isDictionary())
      return true;
    QPDFObjectHandle mask = state.getKey("/SMask");
    return !mask.isDictionary() || form(mask.getKey("/G"), depth + 1, true);
  }

  bool pattern(QPDFObjectHandle pattern, int depth) {
    if (pattern.isStream())
      return form(pattern, depth + 1);
    return !pattern.isDictionary() || shading(pattern.getKey("/Shading"));
  }

  bool image(QPDFObjectHandle image) {
    if (!seen_.insert(image.getObjGen()).second)
      return true;
    QPDFObjectHandle dict = image.getDict();
    QPDFObjectHandle space = dict.getKey("/ColorSpace");
    if (space.isNameAndEquals("/DeviceGray") || dict.getKey("/ImageMask").isBool())
      return true;
    if (dict.getKey("/Mask").isArray()) // samples of these colours are not drawn
      return false;
    if (!space.isNameAndEquals("/DeviceRGB") || !dict.getKey("/BitsPerComponent").isInteger() ||
        dict.getKey("/BitsPerComponent").getIntValue() != 8 || dict.hasKey("/Decode"))
      return false;
    const auto data = image.getStreamData(qpdf_dl_all);
    const unsigned char *rgb = data->getBuffer();
    std::string grey(data->getSize() / 3, '\0');
    for (std::size_t i = 0; i < grey.size(); ++i) {
      const unsigned char *p = rgb + i * 3;
      grey[i] = static_cast<char>(
          std::lround(grey_of_rgb(p[0] / 255.0, p[1] / 255.0, p[2] / 255.0) * 255));
    }
    dict.replaceKey("/ColorSpace", name("/DeviceGray"));
    image.replaceStreamData(deflated(grey), name("/FlateDecode"), QPDFObjectHandle::newNull());
    return true;
  }

  static bool shading(QPDFObjectHandle shading) {
    if (!shading.isDictionary())
      return shading.isNull(); // meshes are streams
    QPDFObjectHandle space = shading.getKey("/ColorSpace");
    if (space.isNameAndEquals("/DeviceGray"))
      return true;
    if (!space.isNameAndEquals("/DeviceRGB"))
      return false;
    const auto grey = grey_function(shading.getKey("/Function"), 0);
    if (!grey)
      return false;
    shading.replaceKey("/Function", *grey);
    shading.removeKey("/Background");
    shading.replaceKey("/ColorSpace", name("/DeviceGray"));
    return true;
  }

  // A copy: Cairo writes one function for all gradients of the same stops, those on pages in colour
  // among them.
  static std::optional<QPDFObjectHandle> grey_function(QPDFObjectHandle function, int depth) {
    if (!function.isDictionary() || depth > deepest ||
        !function.getKey("/FunctionType").isInteger())
      return std::nullopt;
    QPDFObjectHandle grey = function.shallowCopy();
    const auto type = function.getKey("/FunctionType").getIntValue();
    if (type == 2)
      return end(grey, "/C0") && end(grey, "/C1") ? std::optional(grey) : std::nullopt;
    if (type != 3 || !function.getKey("/Functions").isArray())
      return std::nullopt;
    QPDFObjectHandle parts = QPDFObjectHandle::newArray();
    for (const QPDFObjectHandle &part : function.getKey("/Functions").getArrayAsVector()) {
      const auto made = grey_function(part, depth + 1);
      if (!made)
        return std::nullopt;
      parts.appendItem(*made);
    }
    grey.replaceKey("/Functions", parts);
    return grey;
  }

  static bool end(QPDFObjectHandle function, const char *key) {
    QPDFObjectHandle colour = function.getKey(key);
    if (!colour.isArray() || colour.getArrayNItems() != 3)
      return false;
    const auto part = [&](int i) { return colour.getArrayItem(i).getNumericValue(); };
    QPDFObjectHandle grey = QPDFObjectHandle::newArray();
    grey.appendItem(QPDFObjectHandle::newReal(grey_of_rgb(part(0), part(1), part(2)), 5));
    function.replaceKey(key, grey);
    return true;
  }

  Greying greying_;
  std::set<QPDFObjGen> seen_;
};

} // namespace

bool grey_form(const QPDFObjectHandle &form, Greying greying) {
  return Walker(greying).form(form, 0);
}

QPDFObjectHandle black_form(QPDFObjectHandle page) {
  QPDFObjectHandle form = page.getKey("/Contents");
  QPDFObjectHandle dict = form.getDict();
  dict.replaceKey("/Type", name("/XObject"));
  dict.replaceKey("/Subtype", name("/Form"));
  dict.replaceKey("/BBox", page.getKey("/MediaBox"));
  dict.replaceKey("/Resources", page.getKey("/Resources"));
  if (!grey_form(form, Greying::all))
    throw std::runtime_error("lines drawn in black could not be made grey");
  return form;
}

} // namespace bodkin::press
