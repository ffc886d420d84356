// Reference: librsvg's own rsvg-convert; CSS's 96 pixels an inch.
#include "art/svg.hpp"

#include "art/svg_mentions.hpp"
#include "art/tools.hpp"

#include <cairo.h>
#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

namespace {

std::string svg(const std::string &attributes, const std::string &inside) {
  return "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' " +
         attributes + ">" + inside + "</svg>";
}

Trouble trouble_of(const std::string &bytes, const Bounds &bounds = {}) {
  const auto facts = inspect(bytes, 1, bounds);
  REQUIRE_FALSE(facts);
  return facts.refusal().trouble;
}

} // namespace

TEST_CASE("a drawing has the size that it asks for") {
  const auto size = [](const std::string &attributes) {
    return facts_of(svg(attributes, "<rect width='1' height='1'/>")).drawing->natural;
  };
  CHECK(size("width='2in' height='3in'") == Size{Length::inches(2), Length::inches(3)});
  CHECK(size("width='96' height='48px'") == Size{Length::inches(1), Length::inches(1, 2)});
  CHECK(size("viewBox='0 0 192 96'") == Size{Length::inches(2), Length::inches(1)});
  CHECK(size("width='100%' height='100%' viewBox='0 0 192 96'") ==
        Size{Length::inches(2), Length::inches(1)});
  CHECK(reason_of(svg("", "<rect width='1' height='1'/>")) ==
        "says neither its width and height nor its viewBox, so nobody knows its shape");
}

TEST_CASE("a drawing is drawn as rsvg-convert draws it") {
  const Folder folder;
  const std::string file =
      svg("width='100' height='50'", "<rect x='10' y='10' width='30' height='30' fill='#c81e50'/>"
                                     "<circle cx='70' cy='25' r='20' fill='#0a6' opacity='0.5'/>");
  folder.write("a.svg", file);
  folder.run("rsvg-convert -w 200 -h 100 a.svg -o a.png");
  const Pixels seen = loaded(file, 20'000);
  CHECK(seen.width == 200);
  CHECK(seen.height == 100);
  CHECK(furthest(samples_of(seen), folder.converted("a.png", "", "rgba")) <= 2);
}

TEST_CASE("masks, filters and embedded pictures are told, plain shapes are not") {
  const auto parts = [](const std::string &inside) {
    return facts_of(svg("width='100' height='100'", inside)).drawing->rasterised_parts;
  };
  CHECK_FALSE(parts("<rect width='50' height='50' opacity='0.5'/>"));
  CHECK_FALSE(parts("<linearGradient id='g'><stop stop-color='red'/><stop offset='1'/>"
                    "</linearGradient><rect width='50' height='50' fill='url(#g)'/>"));
  CHECK(parts("<filter id='f'><feGaussianBlur stdDeviation='3'/></filter>"
              "<rect width='50' height='50' filter='url(#f)'/>"));
  CHECK(parts("<mask id='m'><circle r='40' fill='white'/></mask>"
              "<rect width='50' height='50' mask='url(#m)'/>"));
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  const std::string code = folder.run("convert in.ppm png:- | base64 -w0");
  CHECK(parts("<image width='50' height='50' xlink:href='data:image/png;base64," + code + "'/>"));
}

TEST_CASE("a drawing with letters says that it sets type") {
  CHECK(svg_mentions(svg("", "<text>a</text>")).type);
  CHECK(svg_mentions("<s:svg xmlns:s='x'><s:text/></s:svg>").type);
  CHECK_FALSE(svg_mentions(svg("", "<!-- <text> --><path d='M0 0'/>")).type);
}

TEST_CASE("a drawing that asks for another file is refused with its name") {
  const auto outside = [](const std::string &inside) {
    return svg_mentions(svg("", inside)).outside;
  };
  CHECK(outside("<image href='/etc/passwd'/>") == "/etc/passwd");
  CHECK(outside("<image xlink:href=\"../a.png\"/>") == "../a.png");
  CHECK(outside("<use href='file:///x.svg#a'/>") == "file:///x.svg#a");
  CHECK(outside("<rect fill='url(http://x/y#z)'/>") == "http://x/y#z");
  CHECK(outside("<style>@import 'x.css'; a{}</style>") == "@import 'x.css'");
  CHECK(outside("<style><![CDATA[ @font-face{src:url(\"x.woff\")} ]]></style>") == "x.woff");
  CHECK(outside("<g title='a > b'><image href='c.png'/></g>") == "c.png");
  CHECK(svg_mentions("<!DOCTYPE svg [<!ENTITY x SYSTEM '/etc/passwd'>]><svg/>").outside ==
        "ENTITY x SYSTEM '/etc/passwd'");
  CHECK(svg_mentions("<?xml-stylesheet href='a.css'?><svg/>").outside == "a.css");
  CHECK(outside("<a href='http://example.org'><rect fill='url(#g)'/></a>") == "");
  CHECK(outside("<use href='#a'/><image href='data:image/png;base64,AA'/>") == "");
  CHECK(svg_mentions("<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://x/svg11.dtd'><svg/>")
            .outside == "");
  CHECK(reason_of(svg("width='9' height='9'", "<image href='/etc/passwd'/>")) ==
        "asks for something outside itself (/etc/passwd); a drawing must hold all that it shows: "
        "embed it in the drawing");
  CHECK(trouble_of(svg("width='9' height='9'", "<image href='/etc/passwd'/>")) ==
        Trouble::leads_outside);
}

TEST_CASE("a drawing made to fill memory or to go on for ever is refused") {
  Bounds bounds;
  bounds.drawing_seconds = 1;
  std::string bomb = "<!DOCTYPE svg [<!ENTITY a0 'xxxxxxxxxx'>";
  for (int i = 1; i < 12; ++i) {
    const std::string before = "&a" + std::to_string(i - 1) + ";";
    bomb += "<!ENTITY a" + std::to_string(i) + " '";
    for (int k = 0; k < 10; ++k)
      bomb += before;
    bomb += "'>";
  }
  bomb += "]>" + svg("width='9' height='9'", "<text>&a11;</text>");
  CHECK(trouble_of(bomb, bounds) == Trouble::unreadable);
  std::string deep;
  for (int i = 0; i < 100'000; ++i)
    deep += "<g>";
  CHECK_FALSE(inspect(svg("width='9' height='9'", deep), 1, bounds));
  // Each blur is a walk over the whole picture.
  std::string slow = "<filter id='f' x='0' y='0' width='1' height='1'>";
  for (int i = 0; i < 900; ++i)
    slow += "<feTurbulence baseFrequency='0.3' numOctaves='9'/><feGaussianBlur stdDeviation='90'/>";
  slow += "</filter><rect width='900' height='900' filter='url(#f)'/>";
  CHECK(reason_of(svg("width='900' height='900'", slow), 1, bounds) ==
        "takes more than 1 s to draw; simplify it, or place it as a PNG made by the program that "
        "drew it");
}

#if defined(__has_feature)
#if __has_feature(address_sanitizer)
#define BODKIN_ADDRESS_SANITIZER
#endif
#endif

// The address sanitizer maps terabytes for itself, so no bound on memory holds beside it.
#if !defined(BODKIN_ADDRESS_SANITIZER) && !defined(__SANITIZE_ADDRESS__)
TEST_CASE("a drawing that asks for more memory than there is for it is refused") {
  Bounds bounds;
  bounds.drawing_memory = 8u << 20;
  std::string many;
  for (int i = 0; i < 200'000; ++i)
    many += "<rect width='9' height='9'/>";
  CHECK(reason_of(svg("width='900' height='900'", many), 1, bounds) ==
        "takes more than 8 MB of memory to draw, or brings the drawing to a stop; simplify it, or "
        "place it as a PNG made by the program that drew it");
}
#endif

TEST_CASE("a path of a hundred thousand corners is drawn") {
  std::string path = "<path d='M0 0";
  for (int i = 0; i < 100'000; ++i)
    path += " L" + std::to_string(i % 97) + " " + std::to_string(i % 89);
  CHECK(facts_of(svg("width='100' height='100'", path + "'/>")).format == Format::svg);
}

TEST_CASE("an opened drawing fills the unit square and nothing outside it") {
  const auto drawing =
      open_svg(svg("width='10' height='20'", "<rect x='-50' width='500' height='500'/>"));
  REQUIRE(drawing);
  cairo_surface_t *surface = cairo_image_surface_create(CAIRO_FORMAT_A8, 8, 4);
  cairo_t *cairo = cairo_create(surface);
  cairo_translate(cairo, 2, 1);
  cairo_scale(cairo, 3, 2);
  CHECK(drawing->draw(cairo));
  cairo_surface_flush(surface);
  const unsigned char *rows = cairo_image_surface_get_data(surface);
  const int stride = cairo_image_surface_get_stride(surface);
  std::string seen;
  for (int y = 0; y < 4; ++y)
    for (int x = 0; x < 8; ++x)
      seen += rows[y * stride + x] > 127 ? '#' : '.';
  CHECK(seen == "........"
                "..###..."
                "..###..."
                "........");
  cairo_destroy(cairo);
  cairo_surface_destroy(surface);
}
