// Manuscripts as tests read them: the tree, and every problem as a maker sees it.
#pragma once

#include "language/tree.hpp"
#include "problems/render.hpp"

#include <stdexcept>
#include <string>
#include <string_view>

struct Reading {
  bodkin::Sources sources;
  bodkin::Problems problems;
  bodkin::language::Tree tree;

  explicit Reading(std::string_view text) {
    const bodkin::FileId file = sources.add("a.bodkin", std::string(text));
    tree = bodkin::language::read(file, sources, problems);
    bodkin::sort_problems(problems);
  }
  std::string told() const { return bodkin::as_text(problems, sources, false); }
  // The words of all statements with their depth: "edition size run page picture at".
  std::string outline() const {
    std::string text;
    tree.each_top([&](const bodkin::language::Statement &s) { outline(s, text); });
    return text;
  }
  // The first statement of a word, anywhere.
  const bodkin::language::Statement &line(std::string_view word) const {
    for (const bodkin::language::Statement &s : tree.statements)
      if (s.entry->word == word)
        return s;
    throw std::runtime_error("no such line: " + std::string(word));
  }

private:
  void outline(const bodkin::language::Statement &s, std::string &text) const {
    text += s.entry->word;
    if (s.first_child != bodkin::language::no_statement) {
      text += "(";
      tree.each_child(s, [&](const bodkin::language::Statement &child) { outline(child, text); });
      text.back() = ')';
    }
    text += " ";
  }
};

// A line under its parent, with the parents that it needs.
inline std::string under(std::string_view parent, const std::string &line) {
  const std::string text(line);
  if (parent == "file")
    return text + "\n";
  if (parent == "edition")
    return "edition \"Bus\"\n  " + text + "\n";
  for (const std::string_view fact : {"paper some", "cover on board", "printing black",
                                      "price $5 a copy", "sells \"here\"", "paid $5"})
    if (fact.substr(0, fact.find(' ')) == parent)
      return "edition \"Bus\"\n  " + std::string(fact) + "\n    " + text + "\n";
  if (parent == "finish")
    return "finish\n  " + text + "\n";
  if (parent == "spread" || parent == "page")
    return std::string(parent) + (parent == "page" ? " 2" : " 2-3") + "\n  " + text + "\n";
  for (const std::string_view step :
       {"collate", "crease cover", "fold all", "trim fore-edge 1in",
        "staple 2, leg 1/4in, 2in from head and foot", "sew 3 holes, 1in from head and foot",
        "punch 1 hole, 1in from spine", "cut slit", "glue spine", "round 2 corners, radius 1in",
        "tie \"it\"", "dry 2 h", "press 2 h", "add \"it\"", "pack"})
    if (step.substr(0, step.find(' ')) == parent)
      return "finish\n  " + std::string(step) + "\n    " + text + "\n";
  for (const std::string_view element :
       {"picture \"a.png\"", "words in body", "patch", "qr \"x\"", "hand stamp", "folio in label",
        "paste-up \"it\"", "credits in label", "colophon in label",
        "rule 1pt black, 1in 1in to 2in 1in", "lay some at 1in 1in"})
    if (element.substr(0, element.find(' ')) == parent)
      return "page 2\n  " + std::string(element) + "\n    " + text + "\n";
  if (parent == "wrap" || parent == "boards")
    return std::string(parent) + " on board\n  " + text + "\n";
  if (parent == "reverse")
    return "reverse in black\n  " + text + "\n";
  if (parent == "face")
    return "face book from \"EB Garamond\"\n  " + text + "\n";
  return std::string(parent) + " some\n  " + text + "\n";
}
