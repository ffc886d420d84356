#include "money/spreadsheet.hpp"

#include "money/zip.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <initializer_list>

namespace bodkin {
namespace {

constexpr std::string_view mime = "application/vnd.oasis.opendocument.spreadsheet";

constexpr std::string_view manifest =
    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
    "<manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\" "
    "manifest:version=\"1.2\">\n"
    "<manifest:file-entry manifest:full-path=\"/\" "
    "manifest:media-type=\"application/vnd.oasis.opendocument.spreadsheet\"/>\n"
    "<manifest:file-entry manifest:full-path=\"content.xml\" manifest:media-type=\"text/xml\"/>\n"
    "</manifest:manifest>\n";

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

std::string words(std::string_view text, std::string_view look = {}) {
  return fmt::format("<table:table-cell{} office:value-type=\"string\"><text:p>{}</text:p>"
                     "</table:table-cell>",
                     look.empty() ? "" : fmt::format(" table:style-name=\"{}\"", look),
                     as_xml(text));
}
std::string nothing() { return "<table:table-cell/>"; }

std::string formula(std::string_view of, bool money = true) {
  return fmt::format("<table:table-cell{} table:formula=\"of:={}\" office:value-type=\"float\"/>",
                     money ? " table:style-name=\"money\"" : "", as_xml(of));
}

// A figure as it is, where twelve decimals hold it; a third is a quotient.
std::string figure(const Exact &number) {
  constexpr std::int64_t most = 1'000'000'000'000;
  std::int64_t rest = number.denominator();
  for (const std::int64_t prime : {2, 5})
    while (rest % prime == 0)
      rest /= prime;
  if (rest != 1 && number.denominator() < most && number.numerator() < most)
    return formula(fmt::format("{}/{}", number.numerator(), number.denominator()), false);
  const std::string text = number.rounded(0, 12);
  return fmt::format("<table:table-cell office:value-type=\"float\" office:value=\"{0}\"><text:p>"
                     "{0}</text:p></table:table-cell>",
                     text);
}

class Sheeting {
public:
  Sheeting(const Edition &edition, const Estimate &estimate)
      : edition_(edition), estimate_(estimate) {}

  std::string content() {
    heading();
    lines();
    purse();
    sums();
    for (const BidFigures &bid : estimate_.bids)
      if (bid.run_total)
        offer(bid);
    if (estimate_.sales)
      sales();
    for (const PaidFigures &paid : estimate_.paid)
      row({words("paid for " + paid.what), figure(paid.paid), figure(paid.estimated), nothing(),
           formula(fmt::format("[.B{0}]-[.C{0}]", next_))});
    return std::string(head) + rows_ + std::string(tail);
  }

private:
  // Its number, which formulas below it name.
  int row(std::initializer_list<std::string> cells) {
    rows_ += "<table:table-row>";
    for (const std::string &cell : cells)
      rows_ += cell;
    rows_ += "</table:table-row>\n";
    return next_++;
  }
  void titles(std::initializer_list<std::string> names) {
    rows_ += "<table:table-row>";
    for (const std::string &name : names)
      rows_ += words(name, "heading");
    rows_ += "</table:table-row>\n";
    ++next_;
  }
  int total(std::string_view name, const std::string &of) {
    return row({words(name), nothing(), nothing(), nothing(), formula(of)});
  }

  void heading() {
    titles({*edition_.title, std::string(estimate_.currency.code())});
    copies_ = row({words("copies"), figure(Exact(estimate_.copies))});
    row({words("spare"), figure(Exact(estimate_.spare))});
  }

  // What a tax is laid on is the sum of the lines of its machine: a formula of theirs.
  void lines() {
    titles({"what", "group", "quantity", "rate", "total"});
    first_ = next_;
    for (const EstimateLine &line : estimate_.lines)
      row({words(line.what), words(name_of(line.group)),
           line.group == Group::tax ? taxed(line) : figure(line.quantity), figure(line.rate),
           formula(fmt::format("[.C{0}]*[.D{0}]", next_))});
    last_ = next_ - 1;
  }

  std::string taxed(const EstimateLine &tax) const {
    const std::string machine = tax.what.substr(std::string_view("tax at ").size());
    std::string sum;
    int at = first_;
    for (const EstimateLine &line : estimate_.lines) {
      const std::size_t where = line.what.find(" at ");
      if (line.group == Group::printing && line.only == tax.only && where != std::string::npos &&
          belongs(line.what.substr(where + 4), machine))
        sum += fmt::format("{}[.E{}]", sum.empty() ? "" : "+", at);
      ++at;
    }
    return sum.empty() ? figure(tax.quantity) : formula(sum);
  }

  // "copier", "copier on letter", "copier, de-luxe alone".
  static bool belongs(std::string_view place, std::string_view machine) {
    const std::size_t comma = machine.find(',');
    const std::string_view name = machine.substr(0, comma);
    if (!place.starts_with(name))
      return false;
    const std::string_view after = place.substr(name.size());
    return after.empty() || after.starts_with(',') || after.starts_with(" on ");
  }

  void purse() {
    if (estimate_.purchases.empty())
      return;
    titles({"bought", "needed", "at hand", "out of each", "total", "in a pack", "price"});
    first_bought_ = next_;
    for (const Purchase &paper : estimate_.purchases) {
      const int pack = static_cast<int>(std::max<std::int64_t>(paper.order.pack, 1));
      row({words(paper.what), figure(paper.needed), figure(Exact(paper.order.have)),
           figure(Exact(paper.order.out)),
           formula(fmt::format("CEILING(CEILING(MAX(0;CEILING([.B{0}];1)-[.C{0}])/[.D{0}];1)/"
                               "[.F{0}];1)*[.G{0}]",
                               next_)),
           figure(Exact(pack)), figure(paper.order.price)});
    }
    last_bought_ = next_ - 1;
  }

  void sums() {
    titles({"sums"});
    const std::string all =
        estimate_.lines.empty() ? "0" : fmt::format("SUM([.E{}:.E{}])", first_, last_);
    run_ = total("the run", all);
    a_copy_ = total("a copy", fmt::format("[.E{}]/[.B{}]", run_, copies_));
    std::string purse = fmt::format("[.E{}]", run_);
    if (first_bought_ > 0)
      purse += fmt::format("-SUMIF([.B{0}:.B{1}];\"paper\";[.E{0}:.E{1}])+SUM([.E{2}:.E{3}])",
                           first_, last_, first_bought_, last_bought_);
    total("out of the purse", purse);
    if (!estimate_.budget)
      return;
    const int limit = row({words(estimate_.budget->of_run ? "budget a run" : "budget a copy"),
                           nothing(), nothing(), nothing(), figure(estimate_.budget->limit)});
    total("left of the budget",
          fmt::format("[.E{}]-[.E{}]", limit, estimate_.budget->of_run ? run_ : a_copy_));
  }

  void offer(const BidFigures &bid) {
    titles({"offer of " + bid.name, "", "quantity", "rate", "total"});
    const auto times = [&](std::string_view what, const std::string &quantity, const Exact &rate) {
      return row({words(what), nothing(), quantity, figure(rate),
                  formula(fmt::format("[.C{0}]*[.D{0}]", next_))});
    };
    const Exact charged = *bid.run_total - bid.tax;
    const Exact copies = charged - bid.setup - bid.postage;
    const int first = times("copies", formula(fmt::format("[.B{}]", copies_), false),
                            copies / Exact(estimate_.copies));
    times("setup", figure(1), bid.setup);
    const int last = times("postage", figure(1), bid.postage);
    const int tax =
        times("tax", formula(fmt::format("SUM([.E{}:.E{}])", first, last)), bid.tax / charged);
    const int bare = total(bid.name + ", the run", fmt::format("SUM([.E{}:.E{}])", first, tax));
    total(bid.name + ", a copy", fmt::format("[.E{}]/[.B{}]", bare, copies_));
    const int yours = times("still yours", figure(1), *bid.like_for_like - *bid.run_total);
    total(bid.name + ", like for like", fmt::format("[.E{}]+[.E{}]", bare, yours));
  }

  void sales() {
    titles({"selling", "copies", "price", "seller keeps", "total", "costs a copy", "costs once",
            "brings", "margin"});
    const int first = next_;
    for (const SaleFigures &way : estimate_.sales->ways)
      row({words(way.where), figure(Exact(way.copies)), figure(way.price), figure(way.keeps),
           formula(fmt::format("IF([.B{0}]=0;0;[.B{0}]*[.H{0}]-[.G{0}])", next_)),
           figure(way.costs), figure(way.costs_once),
           formula(fmt::format("[.C{0}]-[.D{0}]-[.F{0}]", next_)),
           formula(fmt::format("[.H{}]-[.E{}]", next_, a_copy_))});
    if (next_ == first)
      return;
    const int all = total("all sold", fmt::format("SUM([.E{}:.E{}])", first, next_ - 1));
    total("remains", fmt::format("[.E{}]-[.E{}]", all, run_));
  }

  const Edition &edition_;
  const Estimate &estimate_;
  std::string rows_;
  int next_ = 1;
  int copies_ = 0, first_ = 0, last_ = 0, run_ = 0, a_copy_ = 0;
  int first_bought_ = 0, last_bought_ = 0;
};

} // namespace

std::string estimate_as_spreadsheet(const Edition &edition, const Estimate &estimate) {
  const std::string content = Sheeting(edition, estimate).content();
  const std::array<ZippedFile, 3> files{
      {{"mimetype", mime}, {"META-INF/manifest.xml", manifest}, {"content.xml", content}}};
  return zipped(files);
}

} // namespace bodkin
