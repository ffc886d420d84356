#include "sheet/svg_page.hpp"

#include "problems/characters.hpp"

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
    "  .cut { stroke: #b3261e; stroke-width: 0.8 }\n"
    "  polyline { fill: none; stroke: #000; stroke-width: 1.4; stroke-linejoin: round }\n"
    "  .dashed { stroke-dasharray: 7 3 }\n"
    "  .dotted { stroke-dasharray: 1.5 2.5 }\n"
    "  .dash-dotted { stroke-dasharray: 9 3 1.5 3 }\n"
    "  .hair { stroke-width: 0.5 }\n"
    "  text { font-family: sans-serif; fill: #222 }\n"
    "  .number { font-size: 13px; text-anchor: middle }\n"
    "  .foot { text-decoration: underline }\n"
    "  .title { font-size: 12px; font-weight: bold }\n"
    "  .small { font-size: 9px; fill: #555 }\n"
    "  .over-lines { font-size: 9px; stroke: #f7f7f5; stroke-width: 4; paint-order: stroke }\n"
    "  .trouble { font-size: 11px; fill: #b3261e; font-weight: bold }\n";

std::string_view named(BoxLook look) {
  switch (look) {
  case BoxLook::paper:
    return "paper";
  case BoxLook::back:
    return "back";
  case BoxLook::page:
    return "page";
  case BoxLook::tab:
    return "tab";
  case BoxLook::fault:
    return "fault";
  }
  return {};
}

std::string_view named(LineLook look) {
  switch (look) {
  case LineLook::valley:
    return "valley";
  case LineLook::mountain:
    return "mountain";
  case LineLook::slit:
    return "slit";
  case LineLook::cut:
    return "cut";
  }
  return {};
}

std::string_view named(CurveLook look) {
  switch (look) {
  case CurveLook::plain:
    return "plain";
  case CurveLook::dashed:
    return "dashed";
  case CurveLook::dotted:
    return "dotted";
  case CurveLook::dash_dotted:
    return "dash-dotted";
  case CurveLook::hair:
    return "hair";
  }
  return {};
}

std::string_view named(WordLook look) {
  switch (look) {
  case WordLook::title:
    return "title";
  case WordLook::small:
    return "small";
  case WordLook::trouble:
    return "trouble";
  case WordLook::over_lines:
    return "over-lines";
  }
  return {};
}

} // namespace

bool needs_foot(std::string_view number) {
  return number.find_first_not_of("01689") == std::string_view::npos &&
         number.find_first_of("69") != std::string_view::npos;
}

void SvgPage::add(const Figure &figure, double y) {
  for (const FigureItem &item : figure.items)
    std::visit([&](const auto &drawn) { draw(drawn, y); }, item);
}

void SvgPage::draw(const FigureBox &box, double y) {
  body_ += fmt::format("<rect class=\"{}\" x=\"{:.2f}\" y=\"{:.2f}\" width=\"{:.2f}\" "
                       "height=\"{:.2f}\"/>\n",
                       named(box.look), box.x, y + box.y, box.width, box.height);
}

void SvgPage::draw(const FigureLine &line, double y) {
  body_ += fmt::format("<line class=\"{}\" x1=\"{:.2f}\" y1=\"{:.2f}\" x2=\"{:.2f}\" "
                       "y2=\"{:.2f}\"/>\n",
                       named(line.look), line.x1, y + line.y1, line.x2, y + line.y2);
}

void SvgPage::draw(const FigureNumber &number, double y) {
  // The baseline stands about a third of the size below the middle.
  body_ += fmt::format("<text class=\"{}\" transform=\"translate({:.2f} {:.2f}) rotate({})\" "
                       "y=\"4.5\">{}</text>\n",
                       needs_foot(number.text) ? "number foot" : "number", number.x, y + number.y,
                       number.turn, as_xml(number.text));
}

void SvgPage::draw(const FigureWords &words, double y) {
  body_ += fmt::format("<text class=\"{}\" x=\"{:.2f}\" y=\"{:.2f}\">{}</text>\n",
                       named(words.look), words.x, y + words.y, as_xml(words.text));
}

void SvgPage::draw(const FigureCurve &curve, double y) {
  std::string points;
  for (const FigurePoint &point : curve.points)
    points += fmt::format("{}{:.2f},{:.2f}", points.empty() ? "" : " ", point.x, y + point.y);
  body_ += fmt::format("<polyline class=\"{}\" points=\"{}\"/>\n", named(curve.look), points);
}

std::string SvgPage::finished(double width, double height, std::string_view title) const {
  return fmt::format(
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
      "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{0:.0f}pt\" "
      "height=\"{1:.0f}pt\" viewBox=\"0 0 {0:.0f} {1:.0f}\">\n"
      "<title>{2}</title>\n<style>\n{3}</style>\n"
      "<rect x=\"0\" y=\"0\" width=\"{0:.0f}\" height=\"{1:.0f}\" fill=\"#f7f7f5\"/>\n"
      "{4}</svg>\n",
      width, height, as_xml(title), styles, body_);
}

} // namespace bodkin
