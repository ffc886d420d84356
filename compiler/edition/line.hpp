// One statement together with the file that it stands in: what the room passes from hand to hand
// while it turns trees into the model. Cheap to copy; the manuscripts outlive it.
#pragma once

#include "edition/known.hpp"
#include "language/tree.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

struct Manuscript {
  std::string path;   // what Files::read or Files::shelf takes
  std::string folder; // where the paths that it writes are counted from
  bool own = false;   // the edition's own file
  bool on_shelf = false;
  language::Tree tree;
  std::vector<const Manuscript *> borrows; // in order of lines
};

struct FactLine {
  const Manuscript *in = nullptr;
  const language::Statement *statement = nullptr;

  explicit operator bool() const { return statement != nullptr; }
  std::string_view word() const { return statement->entry->word; }
  Range range() const { return in->tree.range(*statement); }
  Range keyword() const { return in->tree.keyword(*statement); }
  // Of a part of the phrase; of the whole line where the part is not written.
  Range range(std::string_view part) const;
  bool has(std::string_view part) const { return in->tree.find(*statement, part) != nullptr; }
  template <typename T>
  const T *get(std::string_view part) const {
    return in->tree.get<T>(*statement, part);
  }
  // A name, a choice or a quoted text; empty where it is not written.
  std::string_view words(std::string_view part) const;
  template <typename Visit>
  void each_child(Visit visit) const {
    in->tree.each_child(*statement, [&](const language::Statement &s) { visit(FactLine{in, &s}); });
  }
};

template <typename Visit>
void each_line(const Manuscript &manuscript, Visit visit) {
  manuscript.tree.each_top([&](const language::Statement &s) { visit(FactLine{&manuscript, &s}); });
}

// The lines below a thing, and those that `like` copied into it.
class Facts {
public:
  Facts() = default;
  explicit Facts(FactLine thing) {
    thing.each_child([&](FactLine line) { lines_.push_back(line); });
  }
  void add(FactLine line) { lines_.push_back(line); }
  // False where it is like a thing that could not be found: what it lacks may stand there.
  bool whole() const { return whole_; }
  void call_partial() { whole_ = false; }
  FactLine find(std::string_view word) const {
    for (const FactLine &line : lines_)
      if (line.word() == word)
        return line;
    return {};
  }
  template <typename Visit>
  void each(std::string_view word, Visit visit) const {
    for (const FactLine &line : lines_)
      if (line.word() == word)
        visit(line);
  }
  const std::vector<FactLine> &lines() const { return lines_; }

private:
  std::vector<FactLine> lines_;
  bool whole_ = true;
};

} // namespace bodkin
