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

struct Line {
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
    in->tree.each_child(*statement, [&](const language::Statement &s) { visit(Line{in, &s}); });
  }
};

template <typename Visit>
void each_line(const Manuscript &manuscript, Visit visit) {
  manuscript.tree.each_top([&](const language::Statement &s) { visit(Line{&manuscript, &s}); });
}

// The lines below a thing, and those that `like` copied into it.
class Facts {
public:
  Facts() = default;
  explicit Facts(Line thing) {
    thing.each_child([&](Line line) { lines_.push_back(line); });
  }
  void add(Line line) { lines_.push_back(line); }
  Line find(std::string_view word) const {
    for (const Line &line : lines_)
      if (line.word() == word)
        return line;
    return {};
  }
  template <typename Visit>
  void each(std::string_view word, Visit visit) const {
    for (const Line &line : lines_)
      if (line.word() == word)
        visit(line);
  }
  const std::vector<Line> &lines() const { return lines_; }

private:
  std::vector<Line> lines_;
};

} // namespace bodkin
