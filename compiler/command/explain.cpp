#include "command/help.hpp"
#include "command/telling.hpp"
#include "language/vocabulary.hpp"
#include "problems/checks.hpp"

#include <algorithm>
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

// What speaks of a word that has no page of its own: a keyword, a check, a shelf file.
struct Mention {
  std::string name, says;
};

std::string lower(std::string_view text) {
  std::string lowered(text);
  for (char &c : lowered)
    c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return lowered;
}

// Whether a word of the text begins so.
bool speaks_of(std::string_view text, std::string_view word) {
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); };
  const std::string lowered = lower(text);
  for (std::size_t at = lowered.find(word); at != std::string::npos;
       at = lowered.find(word, at + 1))
    if (at == 0 || !letter(lowered[at - 1]))
      return true;
  return false;
}

void add_words(std::string_view word, std::vector<Mention> &mentions) {
  for (const language::Entry &entry : language::vocabulary()) {
    const bool there = std::any_of(mentions.begin(), mentions.end(),
                                   [&](const Mention &m) { return m.name == entry.word; });
    if (!there && (speaks_of(entry.meaning, word) || speaks_of(entry.phrase, word)))
      mentions.push_back({std::string(entry.word), std::string(entry.meaning)});
  }
}

void add_checks(std::string_view word, std::vector<Mention> &mentions) {
  for (const Check &check : all_checks())
    if (speaks_of(check.title, word) || speaks_of(check.page, word) || speaks_of(check.mend, word))
      mentions.push_back({std::string(check.name), std::string(check.title)});
}

void add_shelf(std::string_view word, const std::string &root, std::vector<Mention> &mentions) {
  const fs::path shelf = fs::path(root) / "stdlib";
  std::vector<std::string> names;
  std::error_code error;
  for (const auto &entry : fs::recursive_directory_iterator(shelf, error))
    if (entry.path().extension() == ".bodkin" && entry.path().parent_path() != shelf / "start")
      names.push_back(fs::relative(entry.path(), shelf).replace_extension().generic_string());
  std::sort(names.begin(), names.end());
  for (const std::string &name : names)
    if (speaks_of(name, word))
      mentions.push_back({name, "a file of the shelf"});
}

// At most so many that a screen holds them.
std::string mentions_of(const std::string &word, const std::string &root) {
  constexpr std::size_t shortest = 2, most = 12;
  std::vector<Mention> mentions;
  if (word.size() < shortest)
    return {};
  const std::string asked = lower(word);
  add_shelf(asked, root, mentions);
  add_words(asked, mentions);
  add_checks(asked, mentions);
  std::string text;
  for (std::size_t i = 0; i < std::min(mentions.size(), most); ++i)
    text += fmt::format("  {:<18} {}\n", mentions[i].name, mentions[i].says);
  if (mentions.size() > most)
    text += fmt::format("  and {} more\n", mentions.size() - most);
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
  if (const std::string page = help_about(options.subject); text.empty() && page != help())
    text = page;
  if (!text.empty()) {
    print(text);
    return 0;
  }
  const auto near = language::nearest(options.subject, all_words());
  fmt::print(stderr, "bodkin: there is no word, problem or shelf file called {}{}\n",
             options.subject, near ? fmt::format("; did you mean {}?", *near) : "");
  if (const std::string mentions = mentions_of(options.subject, desk.shelf_root); !mentions.empty())
    fmt::print(stderr, "\nThese speak of it:\n\n{}", mentions);
  return 2;
}

} // namespace bodkin
