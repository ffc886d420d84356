#include "press/price_cards.hpp"

#include "press/black_pages.hpp"
#include "press/contents.hpp"
#include "press/fitted_type.hpp"
#include "press/ink.hpp"
#include "press/leaflet_layout.hpp"
#include "press/set_lines.hpp"
#include "press/writing.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

using paperwork::PriceCards;

// Points. A card is read standing before the table: nothing is smaller than a book's text.
constexpr double edge = 16, gutter = 14, air = 9;
constexpr double rule_width = 2, hairline = 0.4;

// One card's words and its rule, from its own top left corner.
class CardLayout {
public:
  CardLayout(const PriceCards &cards, const LeafletType &type)
      : cards_(cards), loud_(type.loud()), quiet_(type.quiet()),
        width_(cards.sheet.card.width.in_points()), height_(cards.sheet.card.height.in_points()) {
    const double head = set_head();
    rule_ = set_foot();
    set_title(head + air, rule_ - air);
  }

  void draw(cairo_t *cairo, Fonts &fonts) const {
    for (const Item &item : words_)
      press::draw(cairo, item, fonts);
    cairo_set_line_width(cairo, rule_width);
    cairo_move_to(cairo, edge, rule_);
    cairo_line_to(cairo, width_ - edge, rule_);
    cairo_stroke(cairo);
  }

private:
  double inner() const { return width_ - 2 * edge; }

  void lay(std::vector<Line> lines, double x, double y) {
    if (!lines.empty())
      words_.push_back(words_at(std::move(lines), x, y));
  }

  // Who made it, and at the right which one it is.
  double set_head() {
    TypeRoom room{.most = 11, .width = 0, .height = 28, .leading = 1.25}; // two lines
    room.width = cards_.maker.empty() ? inner() : inner() * 0.55;
    std::vector<Line> issue = face_for(quiet_, cards_.issue).set(cards_.issue, room);
    const double taken = right_of(issue);
    room.width = inner() - (taken > 0 ? taken + gutter : 0);
    std::vector<Line> maker = face_for(quiet_, cards_.maker).set(cards_.maker, room);
    const double foot = edge + std::max(foot_of(maker), foot_of(issue));
    lay(std::move(issue), cards_.maker.empty() ? edge : width_ - edge - taken, edge - 2);
    lay(std::move(maker), edge, edge - 2);
    return foot;
  }

  // The price and, standing on the same line, what it is for. Says where the rule above is.
  double set_foot() {
    const double line = height_ - edge;
    std::vector<Line> price =
        face_for(loud_, cards_.price)
            .set(cards_.price, {.most = 72, .width = inner() * 0.5, .height = 72, .leading = 1});
    const double top = ink_of(price).top - price.back().baseline;
    const double taken = right_of(price);
    set_facts(line, inner() - taken - gutter, -top);
    const double y = line - price.back().baseline;
    lay(std::move(price), width_ - edge - taken, y);
    return line + top - air - rule_width / 2;
  }

  void set_facts(double line, double width, double height) {
    std::vector<Line> facts =
        face_for(quiet_, cards_.facts)
            .set(cards_.facts, {.most = 12, .width = width, .height = height, .leading = 1.25});
    if (!facts.empty())
      lay(facts, edge, line - facts.back().baseline);
  }

  struct Titling {
    std::vector<Line> title, subtitle;
    double below() const { return subtitle.empty() ? 0 : foot_of(subtitle) + 3; }
    // A title is the larger of the two, as far as both can be read.
    bool in_order() const {
      return subtitle.empty() || title.empty() ||
             subtitle.front().size.in_points() * 1.25 <= title.front().size.in_points();
    }
  };

  Titling titling(double most, double room) const {
    Titling set;
    set.subtitle = face_for(quiet_, cards_.subtitle)
                       .set(cards_.subtitle,
                            {.most = most, .width = inner(), .height = room * 0.4, .leading = 1.2});
    set.title =
        face_for(loud_, cards_.title)
            .set(cards_.title,
                 {.most = 54, .width = inner(), .height = room - set.below(), .leading = 1});
    return set;
  }

  // Centred in the height that is left.
  void set_title(double top, double foot) {
    const double room = foot - top;
    double most = 13.5;
    Titling set = titling(most, room);
    while (!set.in_order() && most > 6)
      set = titling(most *= 0.85, room);
    const double y = top + (room - set.below() - foot_of(set.title)) / 2;
    const double next = y + foot_of(set.title) + 3;
    lay(std::move(set.title), edge, y);
    lay(std::move(set.subtitle), edge, next);
  }

  const PriceCards &cards_;
  std::vector<FaceOffer> loud_, quiet_;
  double width_, height_, rule_ = 0;
  std::vector<Item> words_;
};

void draw_sheet(cairo_t *cairo, const PriceCards &cards, int on_it, const CardLayout &layout,
                Fonts &fonts) {
  set_paint(cairo, Colour{});
  for (const Box &place : paperwork::places_of_cards(cards.sheet, on_it)) {
    cairo_save(cairo);
    cairo_translate(cairo, place.x.in_points(), place.y.in_points());
    layout.draw(cairo, fonts);
    cairo_restore(cairo);
  }
  cairo_set_line_width(cairo, hairline);
  for (const paperwork::WasteMark &mark : paperwork::marks_of_cards(cards.sheet, on_it)) {
    cairo_move_to(cairo, mark.from.x.in_points(), mark.from.y.in_points());
    cairo_line_to(cairo, mark.to.x.in_points(), mark.to.y.in_points());
    cairo_stroke(cairo);
  }
}

} // namespace

void write_price_cards(const PriceCards &cards, const LeafletType &type, const Imprint &imprint,
                       const Sink &sink) {
  const double width = cards.sheet.paper.width.in_points();
  const double height = cards.sheet.paper.height.in_points();
  const CardLayout layout(cards, type);
  BlackPages sheets(width, height);
  Fonts fonts;
  for (std::int64_t left = cards.count; left > 0; left -= cards.sheet.most()) {
    const auto on_it = static_cast<int>(std::min<std::int64_t>(left, cards.sheet.most()));
    draw_sheet(sheets.begin(), cards, on_it, layout, fonts);
    sheets.end();
  }
  QPDF pdf;
  pdf.emptyPDF();
  std::vector<QPDFObjectHandle> pages;
  const QPDFObjectHandle box =
      QPDFObjectHandle::newArray(QPDFObjectHandle::Rectangle(0, 0, width, height));
  for (const QPDFObjectHandle &form : sheets.finish()) {
    Contents contents;
    contents.draw(pdf.copyForeignObject(form));
    pages.push_back(contents.page(pdf, box));
  }
  write_pdf(pdf, pages, imprint, "prices", sink);
}

Problems lacking_on_cards(const PriceCards &cards, const LeafletType &type, Range from) {
  Problems told;
  const auto look = [&](const std::vector<FaceOffer> &offers, const std::string &words) {
    for (Problem &problem : face_for(offers, words).lacking(words, from)) {
      problem.kind = Kind::warning;
      problem.why = "it is an empty box on the cards for the table";
      problem.type = {{"", "let the edition's largest style be in a face that has it"}};
      told.push_back(std::move(problem));
    }
  };
  for (const std::string *words : {&cards.title, &cards.price})
    look(type.loud(), *words);
  for (const std::string *words : {&cards.subtitle, &cards.maker, &cards.issue, &cards.facts})
    look(type.quiet(), *words);
  return told;
}

} // namespace bodkin::press
