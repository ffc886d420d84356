// Forty photographs of about 3 MB, nothing done to them, into the sheets of a booklet, against
// `cat` of the same files into one.
#include "command/printing.hpp"
#include "command/way.hpp"
#include "edition.hpp"
#include "folder.hpp"
#include "timing.hpp"

#include <cstdio>
#include <malloc.h>

using namespace bodkin;

namespace {

constexpr int photographs = 40;

std::string name(int i) { return "photo" + std::to_string(i) + ".jpg"; }

std::string manuscript() {
  std::string text = bench::head(photographs, "colour");
  for (int i = 1; i <= photographs; ++i)
    text += "page " + std::to_string(i) + "\n  picture \"" + name(i) + "\"\n    fits margins\n" +
            "    describe \"Noise\"\n\n";
  return text;
}

} // namespace

int main() {
  mallopt(M_MMAP_THRESHOLD, 1 << 30);
  mallopt(M_TRIM_THRESHOLD, 1 << 30);
  mallopt(M_TOP_PAD, 1 << 24);
  const bench::Folder folder;
  std::uintmax_t bytes = 0;
  std::vector<std::string> cat{"cat"};
  for (int i = 1; i <= photographs; ++i) {
    bench::run({"convert", "-seed", std::to_string(i), "-size", "1800x1350", "plasma:red-blue",
                "-attenuate", "0.6", "+noise", "Gaussian", "-quality", "93", folder / name(i)});
    bytes += std::filesystem::file_size(folder / name(i));
    cat.push_back(folder / name(i));
  }
  folder.write("booklet.bodkin", manuscript());
  std::vector<double> ratios, floors;
  for (int i = 0; i < 6; ++i) {
    std::filesystem::remove(folder / "all.jpg");
    const double floor = bench::run(cat, folder / "all.jpg").cpu;
    std::filesystem::remove_all(folder / "booklet");
    const double ours = bench::cpu_of([&] {
      Progress progress(false);
      const auto way = walk(folder / "booklet.bodkin", BODKIN_SOURCE_DIR, true, progress);
      Delivery delivery(folder / "booklet");
      PrintRoom(*way, "bench", progress).sheets(delivery);
      delivery.finish();
    });
    if (i == 0)
      continue;
    ratios.push_back(ours / floor);
    floors.push_back(floor);
  }
  std::printf("%ju bytes of photographs, the sheets hold %.4f of that\n", bytes,
              static_cast<double>(std::filesystem::file_size(folder / "booklet/sheets.pdf")) /
                  static_cast<double>(bytes));
  std::printf("jpeg-booklet ratio %.3f floor %.4f\n", bench::median(ratios), bench::median(floors));
}
