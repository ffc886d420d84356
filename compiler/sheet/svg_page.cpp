#include "sheet/svg_page.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr std::string_view styles =
    "  .paper { fill: #fff; stroke: #555; stroke-width: 0.8 }\n"
    "  .back { fill: #eee; stroke: #555; stroke-width: 0.8 }\n"
    "  .page { fill: none; stroke: #bbb; stroke-width: 0.5 }\n"
    "  .tab { fill: #ddd; stroke: #999; stroke-width: 0.5 }\n"
    "  .fault { fill: #fbdcd6; stroke: #b3261e; stroke-width: 1.2 }\n"
    "  .valley { stroke: #26558b; stroke-width: 1; stroke-dasharray: 5 3 }\n"
    "  .mountain { stroke: #26558b; stroke-width: 1; stroke-dasharray: 6 2 1 2 }\n"
    "  .slit { stroke: #b3261e; stroke-width: 1.6 }\n"
    "  text { font-family: sans-serif; fill: #222 }\n"
    "  .number { font-size: 13px; text-anchor: middle }\n"
    "  .foot { text-decoration: underline }\n"
    "  .title { font-size: 12px; font-weight: bold }\n"
    "  .small { font-size: 9px; fill: #555 }\n"
    "  .trouble { font-size: 11px; fill: #b3261e; font-weight: bold }\n";

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text)
    switch (c) {
    case '&':
      out += "&amp;";
      break;
    case '<':
      out += "&lt;";
      break;
    case '>':
      out += "&gt;";
      break;
    default:
      out += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    }
  return out;
}

} // namespace

void SvgPage::box(double x, double y, double width, double height, std::string_view kind) {
  body_ += fmt::format("<rect class=\"{}\" x=\"{:.2f}\" y=\"{:.2f}\" width=\"{:.2f}\" "
                       "height=\"{:.2f}\"/>\n",
                       kind, x, y, width, height);
}

void SvgPage::line(double x1, double y1, double x2, double y2, std::string_view kind) {
  body_ += fmt::format("<line class=\"{}\" x1=\"{:.2f}\" y1=\"{:.2f}\" x2=\"{:.2f}\" "
                       "y2=\"{:.2f}\"/>\n",
                       kind, x1, y1, x2, y2);
}

void SvgPage::number(double x, double y, std::string_view text, int turn) {
  const bool underlined = text.find_first_not_of("01689") == std::string_view::npos &&
                          text.find_first_of("69") != std::string_view::npos;
  // The baseline stands about a third of the size below the middle.
  body_ += fmt::format("<text class=\"{}\" transform=\"translate({:.2f} {:.2f}) rotate({})\" "
                       "y=\"4.5\">{}</text>\n",
                       underlined ? "number foot" : "number", x, y, turn, escaped(text));
}

void SvgPage::words_from(double x, double y, std::string_view text, std::string_view kind) {
  body_ += fmt::format("<text class=\"{}\" x=\"{:.2f}\" y=\"{:.2f}\">{}</text>\n", kind, x, y,
                       escaped(text));
}

std::string SvgPage::finished(double width, double height, std::string_view title) const {
  return fmt::format(
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
      "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{0:.0f}pt\" "
      "height=\"{1:.0f}pt\" viewBox=\"0 0 {0:.0f} {1:.0f}\">\n"
      "<title>{2}</title>\n<style>\n{3}</style>\n"
      "<rect x=\"0\" y=\"0\" width=\"{0:.0f}\" height=\"{1:.0f}\" fill=\"#f7f7f5\"/>\n"
      "{4}</svg>\n",
      width, height, escaped(title), styles, body_);
}

} // namespace bodkin
