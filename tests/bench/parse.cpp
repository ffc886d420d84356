// A manuscript of 10 MB read into a tree with all its values, against PEGTL going over the same
// lines with the same grammar and no actions.
#include "language/recognise.hpp"
#include "language/tree.hpp"
#include "timing.hpp"

#include <cstdlib>
#include <malloc.h>
#include <string>

using namespace bodkin;

namespace {

std::string manuscript() {
  std::string text = "edition \"Ten Megabytes\"\n  size half-letter\n  run 10 copies, 1 spare\n";
  for (int page = 1; text.size() < 10'000'000; ++page) {
    text += "\npage " + std::to_string(page % 9000 + 1) + " in colour on rose\n";
    text += "  picture \"art/shelter.png\"\n    at       0.5in 1 1/2in, 4in x 3in\n"
            "    turn     -3deg\n    describe \"A lit bus shelter on an empty road\"\n";
    text += "  words \"NIGHT BUS ALMANAC\" in masthead  # a line of words\n"
            "    at       1/2in from outer, 1/4in from foot, 2in x 0.2in\n"
            "    outline  1pt black\n";
    text += "  hand stamp \"lino moon\"\n    takes    20 s a copy\n    costs    $6.50 once\n";
  }
  return text;
}

} // namespace

int main() {
  // As the program does: memory given back after one manuscript is not asked for anew.
  mallopt(M_MMAP_THRESHOLD, 1 << 30);
  mallopt(M_TRIM_THRESHOLD, 1 << 30);
  const std::string text = manuscript();
  Sources sources;
  const FileId file = sources.add("ten.bodkin", text);
  bench::compare(
      "parse", 7,
      [&] {
        Problems problems;
        if (language::read(file, sources, problems).statements.size() < 1000 || !problems.empty())
          std::abort();
      },
      [&] {
        if (language::recognise(text) < 1000)
          std::abort();
      });
}
