// All foldings of the shelf proved (folded, checked for paper through paper, read by opening),
// against reading their files.
#include "edition/memory.hpp"
#include "edition/read.hpp"
#include "sheet/fold.hpp"
#include "timing.hpp"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace bodkin;

namespace {

std::vector<std::string> shelf_texts() {
  std::vector<std::string> texts;
  for (const auto &entry :
       std::filesystem::directory_iterator(BODKIN_SOURCE_DIR "/stdlib/foldings")) {
    std::ifstream file(entry.path());
    texts.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
  }
  return texts;
}

Edition read_all(const std::vector<std::string> &texts) {
  std::string text = "edition \"Every Folding\"\n";
  for (const std::string &folding : texts)
    text += "\n" + folding;
  MemoryFiles files;
  files.put("all.bodkin", text);
  Sources sources;
  Problems problems;
  Edition edition = read_edition("all.bodkin", files, sources, problems).edition;
  if (edition.other_foldings.size() + 1 < texts.size())
    std::abort();
  return edition;
}

} // namespace

int main() {
  const std::vector<std::string> texts = shelf_texts();
  const Edition edition = read_all(texts);
  bench::compare(
      "foldings", 21,
      [&] {
        for (const Folding &folding : edition.other_foldings) {
          Problems problems;
          if (!fold(folding, problems, folding.tab ? 16 : 0) || !problems.empty())
            std::abort();
        }
      },
      [&] { read_all(texts); });
}
