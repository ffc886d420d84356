#include "command/telling.hpp"
#include "language/vocabulary.hpp"
#include "problems/checks.hpp"

#include <cstdio>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <sstream>

namespace bodkin {
namespace {

namespace fs = std::filesystem;

// A shelf file as it stands, by the name that borrows it; a folding by its own name as well.
std::optional<std::string> shelf_page(const std::string &word, const std::string &root) {
  if (word.find("..") != std::string::npos || word.starts_with("/"))
    return std::nullopt;
  for (const std::string &name : {word, "foldings/" + word}) {
    const fs::path path = fs::path(root) / "stdlib" / (name + ".bodkin");
    std::error_code error;
    if (!fs::is_regular_file(path, error))
      continue;
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return fmt::format("The shelf file stdlib/{}.bodkin:\n\n{}", name, text.str());
  }
  return std::nullopt;
}

// The families of the catalogue, each as it is asked for.
std::string faces_page(const std::string &root) {
  std::ifstream file(fs::path(root) / "fonts" / "catalogue.bodkin");
  std::string text =
      "Families that need no file of their own, from fonts/catalogue.bodkin. One that "
      "is not\ninstalled is told with the package that brings it.\n";
  for (std::string line; std::getline(file, line);) {
    if (line.starts_with("# Faces"))
      text += fmt::format("\n{}\n", line.substr(2));
    if (const std::size_t from = line.find(" from "); line.starts_with("face "))
      text += fmt::format("  face NAME{}\n", line.substr(from));
  }
  return text;
}

std::vector<std::string_view> all_words() {
  std::vector<std::string_view> words;
  for (const language::Entry &entry : language::vocabulary())
    words.push_back(entry.word);
  for (const Check &check : all_checks())
    words.push_back(check.name);
  return words;
}

} // namespace

int explain(const Options &options, const Desk &desk) {
  if (options.reference) {
    print(language::reference_page());
    return 0;
  }
  std::string text;
  if (options.subject == "faces")
    text = faces_page(desk.shelf_root);
  if (const Check *check = check_named(options.subject))
    text += (text.empty() ? "" : "\n") + explain_page(*check);
  if (const auto shelf = shelf_page(options.subject, desk.shelf_root))
    text += (text.empty() ? "" : "\n") + *shelf;
  if (const std::string page = language::explanation(options.subject); !page.empty())
    text = page + (text.empty() ? "" : "\n") + text;
  if (!text.empty()) {
    print(text);
    return 0;
  }
  const auto near = language::nearest(options.subject, all_words());
  fmt::print(stderr, "bodkin: there is no word, problem or shelf file called {}{}\n",
             options.subject, near ? fmt::format("; did you mean {}?", *near) : "");
  return 2;
}

} // namespace bodkin
