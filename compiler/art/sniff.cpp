#include "art/sniff.hpp"

#include "art/bytes.hpp"

#include <algorithm>
#include <array>

namespace bodkin::art {
namespace {

using namespace std::string_view_literals;

struct Sign {
  std::size_t at;
  std::string_view bytes;
  std::string_view reason;
};

// Kinds that makers do hand in, and the way out of each.
constexpr std::array<Sign, 26> others{{
    {0, "GIF8"sv, "is a GIF; save it as PNG"},
    {0, "BM"sv, "is a BMP; save it as PNG"},
    {0, "8BPS"sv, "is a painting program's own file with layers; save a copy as PNG or TIFF"},
    {0, "\0\0\1\0"sv, "is an icon; save it as PNG"},
    {0, "\0\0\0\x0cjP  "sv, "is a JPEG 2000; save it as JPEG or PNG"},
    {0, "\xff\x4f\xff\x51"sv, "is a JPEG 2000; save it as JPEG or PNG"},
    {0, "\xff\x0a"sv, "is a JPEG XL; save it as JPEG or PNG"},
    {0, "\0\0\0\x0cJXL "sv, "is a JPEG XL; save it as JPEG or PNG"},
    {4, "ftypavif"sv, "is an AVIF; save it as JPEG or PNG"},
    {4, "ftypavis"sv, "is an AVIF; save it as JPEG or PNG"},
    {4, "ftypcrx"sv, "is a camera's raw file; develop it and save it as TIFF or JPEG"},
    {4, "ftyp"sv, "is a film; save one picture of it as PNG"},
    {0, "FUJIFILMCCD"sv, "is a camera's raw file; develop it and save it as TIFF or JPEG"},
    {0, "II*\0\x10\0\0\0CR"sv, "is a camera's raw file; develop it and save it as TIFF or JPEG"},
    {0, "%!PS"sv, "is a PostScript file; save it as PDF"},
    {0, "\xc5\xd0\xd3\xc6"sv, "is a PostScript file; save it as PDF"},
    {0, "AT&TFORM"sv, "is a DjVu; save its page as PDF or PNG"},
    {0, "{\\rtf"sv, "is a word processor's file; save its page as PDF"},
    {0, "\xd0\xcf\x11\xe0"sv, "is a word processor's file; save its page as PDF"},
    {0, "PK\3\4\x14\0\6\0"sv, "is a word processor's file; save its page as PDF"},
    {30, "mimetypeapplication/vnd.oasis."sv, "is a word processor's file; save its page as PDF"},
    {0, "PK\3\4"sv, "is an archive; take the picture out of it"},
    {0, "\x1f\x8b"sv, "is a compressed file; save a drawing as plain SVG"},
    {0, "RIFF"sv, "is a film or a sound; save one picture of it as PNG"},
    {0, "\x1a\x45\xdf\xa3"sv, "is a film; save one picture of it as PNG"},
    {0, "P\x37\n"sv, "is a portable anymap; save it as PNG"},
}};

bool stands(std::string_view bytes, std::size_t at, std::string_view sign) {
  return part(bytes, at, sign.size()) == sign;
}

// ISO 23008-12: the major brand or one of the compatible ones.
bool is_heic(std::string_view bytes) {
  if (!stands(bytes, 4, "ftyp"))
    return false;
  const std::size_t end = std::min<std::size_t>(big(bytes, 0, 4), 256);
  constexpr std::array brands{"heic"sv, "heix"sv, "heim"sv, "heis"sv, "hevc"sv, "hevx"sv};
  for (std::size_t at = 8; at + 4 <= end; at += 4)
    if (at != 12 && std::find(brands.begin(), brands.end(), part(bytes, at, 4)) != brands.end())
      return true;
  return stands(bytes, 8, "mif1") || stands(bytes, 8, "msf1");
}

constexpr std::string_view blanks = " \t\r\n";

// A document type may hold declarations in brackets.
bool declarations_follow(std::string_view text) {
  return text.substr(0, text.find('>')).find('[') != std::string_view::npos;
}

// Past white space, comments, processing instructions and a document type to the root element's
// name.
std::string_view root_element(std::string_view text) {
  if (stands(text, 0, "\xef\xbb\xbf"))
    text.remove_prefix(3);
  for (;;) {
    text.remove_prefix(std::min(text.find_first_not_of(blanks), text.size()));
    std::string_view end;
    if (text.substr(0, 4) == "<!--")
      end = "-->";
    else if (text.substr(0, 2) == "<?")
      end = "?>";
    else if (text.substr(0, 2) == "<!")
      end = declarations_follow(text) ? "]" : ">";
    else
      break;
    text.remove_prefix(std::min(text.find(end), text.size()));
    text.remove_prefix(std::min(end.size(), text.size()));
    if (end == "]") {
      text.remove_prefix(std::min(text.find('>'), text.size()));
      text.remove_prefix(std::min<std::size_t>(1, text.size()));
    }
  }
  if (text.empty() || text[0] != '<')
    return {};
  text = text.substr(1, text.find_first_of(" \t\r\n/>", 1) - 1);
  const std::size_t colon = text.find(':');
  return colon == std::string_view::npos ? text : text.substr(colon + 1);
}

bool is_text(std::string_view bytes) {
  const auto head = bytes.substr(0, 512);
  return std::none_of(head.begin(), head.end(), [](char c) {
    const auto u = static_cast<unsigned char>(c);
    return u < 0x20 && blanks.find(c) == std::string_view::npos && u != 0x1b && u != 0x0c;
  });
}

std::string_view name_of_other(std::string_view bytes) {
  for (const Sign &sign : others)
    if (stands(bytes, sign.at, sign.bytes))
      return sign.reason;
  const std::string_view root = root_element(bytes);
  if (root == "html" || root == "HTML")
    return "is a web page, not a picture; save the picture itself from it";
  if (is_text(bytes))
    return "is a text, not a picture";
  return "is no picture that can be placed: PNG, JPEG, TIFF, WebP, HEIC, SVG and PDF can";
}

} // namespace

Outcome<Format> sniff(std::string_view bytes) {
  if (bytes.empty())
    return Refusal{Trouble::empty, "is empty: it holds no bytes at all"};
  if (stands(bytes, 0, "\x89PNG\r\n\x1a\n"))
    return Format::png;
  if (stands(bytes, 0, "\xff\xd8\xff"))
    return Format::jpeg;
  if (stands(bytes, 0, "RIFF") && stands(bytes, 8, "WEBP"))
    return Format::webp;
  if (is_heic(bytes))
    return Format::heic;
  const bool raw = stands(bytes, 8, "CR\2");
  if (!raw && (stands(bytes, 0, "II*\0"sv) || stands(bytes, 0, "MM\0*"sv) ||
               stands(bytes, 0, "II+\0"sv) || stands(bytes, 0, "MM\0+"sv)))
    return Format::tiff;
  if (bytes.substr(0, 1024).find("%PDF-") != std::string_view::npos)
    return Format::pdf;
  if (root_element(bytes) == "svg")
    return Format::svg;
  return Refusal{Trouble::unknown_kind, std::string(name_of_other(bytes))};
}

std::string_view name_of(Format format) {
  constexpr std::array names{"PNG"sv, "JPEG"sv, "TIFF"sv, "WebP"sv, "HEIC"sv, "SVG"sv, "PDF"sv};
  return names[static_cast<std::size_t>(format)];
}

} // namespace bodkin::art
