#include "money/spreadsheet_cells.hpp"

#include "problems/characters.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin::spread {
namespace {

constexpr std::string_view head =
    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
    "<office:document-content "
    "xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" "
    "xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\" "
    "xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\" "
    "xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\" "
    "xmlns:fo=\"urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0\" "
    "xmlns:number=\"urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0\" "
    "xmlns:of=\"urn:oasis:names:tc:opendocument:xmlns:of:1.2\" office:version=\"1.2\">\n"
    "<office:automatic-styles>\n"
    "<number:number-style style:name=\"two\"><number:number number:decimal-places=\"2\" "
    "number:min-integer-digits=\"1\"/></number:number-style>\n"
    "<style:style style:name=\"money\" style:family=\"table-cell\" "
    "style:data-style-name=\"two\"/>\n"
    "<style:style style:name=\"heading\" style:family=\"table-cell\">"
    "<style:text-properties fo:font-weight=\"bold\"/></style:style>\n"
    "<style:style style:name=\"wide\" style:family=\"table-column\">"
    "<style:table-column-properties style:column-width=\"3.2in\"/></style:style>\n"
    "</office:automatic-styles>\n"
    "<office:body><office:spreadsheet>\n<table:table table:name=\"Estimate\">\n"
    "<table:table-column table:style-name=\"wide\"/>\n";

constexpr std::string_view tail =
    "</table:table>\n</office:spreadsheet></office:body>\n</office:document-content>\n";

std::string cell(std::string_view text, std::string_view look) {
  return fmt::format("<table:table-cell{} office:value-type=\"string\"><text:p>{}</text:p>"
                     "</table:table-cell>",
                     look.empty() ? "" : fmt::format(" table:style-name=\"{}\"", look),
                     as_xml(text));
}

std::string formula_cell(std::string_view of, std::string_view look) {
  return fmt::format("<table:table-cell{} table:formula=\"of:={}\" office:value-type=\"float\"/>",
                     look, as_xml(of));
}

} // namespace

std::string words(std::string_view text) { return cell(text, {}); }
std::string nothing() { return "<table:table-cell/>"; }
std::string formula(std::string_view of) { return formula_cell(of, " table:style-name=\"money\""); }
std::string count_formula(std::string_view of) { return formula_cell(of, {}); }

std::string figure(const Exact &number) {
  constexpr std::int64_t most = 1'000'000'000'000;
  std::int64_t rest = number.denominator();
  for (const std::int64_t prime : {2, 5})
    while (rest % prime == 0)
      rest /= prime;
  if (rest != 1 && number.denominator() < most && number.numerator() < most)
    return count_formula(fmt::format("{}/{}", number.numerator(), number.denominator()));
  const std::string text = number.rounded(0, 12);
  return fmt::format("<table:table-cell office:value-type=\"float\" office:value=\"{0}\"><text:p>"
                     "{0}</text:p></table:table-cell>",
                     text);
}

std::string at(char column, int row) { return fmt::format("[.{}{}]", column, row); }
std::string range(char column, int first, int last) {
  return fmt::format("[.{0}{1}:.{0}{2}]", column, first, last);
}

std::string times(const Exact &number) {
  std::string text;
  if (number.numerator() != 1)
    text += fmt::format("*{}", number.numerator());
  if (number.denominator() != 1)
    text += fmt::format("/{}", number.denominator());
  return text;
}

std::string sum_of(const std::vector<std::string> &terms) {
  return terms.empty() ? "0" : fmt::format("{}", fmt::join(terms, "+"));
}

int Rows::row(std::initializer_list<std::string> cells) {
  rows_ += "<table:table-row>";
  for (const std::string &cell : cells)
    rows_ += cell;
  rows_ += "</table:table-row>\n";
  return next_++;
}

void Rows::titles(std::initializer_list<std::string> names) {
  rows_ += "<table:table-row>";
  for (const std::string &name : names)
    rows_ += cell(name, "heading");
  rows_ += "</table:table-row>\n";
  ++next_;
}

int Rows::total(std::string_view name, std::string_view of) {
  return row({words(name), nothing(), nothing(), nothing(), formula(of)});
}

void Rows::note(std::string_view text) { row({words(text)}); }

std::string Rows::document() const { return std::string(head) + rows_ + std::string(tail); }

} // namespace bodkin::spread
