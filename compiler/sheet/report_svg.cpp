#include "sheet/report.hpp"
#include "sheet/svg_page.hpp"

namespace bodkin {

std::string sheets_as_svg(const SheetsReport &report) {
  constexpr double apart = 30;
  SvgPage page;
  double y = figure_margin;
  for (const Figure &figure : draw_sheets(report)) {
    page.add(figure, y);
    y += figure.height + apart;
  }
  return page.finished(figure_width, y + figure_margin, *report.edition.title);
}

} // namespace bodkin
