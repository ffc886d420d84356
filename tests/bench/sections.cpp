// One-line pages: the time of a page in an edition of 10,000 against one of 1,000, and how much
// more memory it takes. The whole program runs, outputs and all.
#include "edition.hpp"
#include "folder.hpp"
#include "timing.hpp"

#include <cstdio>

using namespace bodkin;

namespace {

// 2,500 sheets folded once are laid one after another, so that no creep adds up.
std::string manuscript(int pages) {
  std::string text = bench::head(pages, "black") +
                     "folding one-by-one\n  sheet any, across\n  sheets any\n  panels 2 by 1\n"
                     "  fold right under left\n  nest one after another\n";
  text.insert(text.find("  run"), "  folding one-by-one\n");
  for (int page = 1; page <= pages; ++page)
    text += "\npage " + std::to_string(page) + "\n  words \"A line on page " +
            std::to_string(page) + "\" in body\n    at 1in 1in, 3in x 1in\n";
  return text;
}

} // namespace

int main(int, char **words) {
  const std::string program = words[1];
  const bench::Folder folder;
  folder.write("few.bodkin", manuscript(1000));
  folder.write("many.bodkin", manuscript(10'000));
  std::vector<double> ratios, floors;
  std::vector<double> more;
  for (int i = 0; i < 3; ++i) {
    const bench::Used few = bench::run({program, "compile", folder / "few.bodkin"});
    const bench::Used many = bench::run({program, "compile", folder / "many.bodkin"});
    ratios.push_back(many.cpu / 10 / few.cpu);
    floors.push_back(few.cpu);
    more.push_back(static_cast<double>(many.kilobytes - few.kilobytes) / 1024);
  }
  std::printf("10,000 pages take %.0f MB more than 1,000\n", bench::median(more));
  std::printf("sections ratio %.3f floor %.4f\n", bench::median(ratios), bench::median(floors));
}
