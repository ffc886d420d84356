#include "language/match.hpp"

namespace bodkin::language {
namespace {

class Matching {
public:
  Matching(const Grammar &grammar, Cursor &cursor) : grammar_(grammar), cursor_(cursor) {}

  bool sequence(const Part &part) {
    for (const Part &inner : grammar_.parts(part.first, part.count))
      if (!one(inner))
        return false;
    return true;
  }

private:
  bool one(const Part &part) {
    switch (part.part) {
    case PartKind::word:
      return word(part);
    case PartKind::value:
      return value(part);
    case PartKind::choice:
      return choice(part);
    case PartKind::comma:
      return comma(part);
    case PartKind::optional:
      if (cursor_.more())
        attempt(part);
      return true;
    case PartKind::either:
      return either(part);
    case PartKind::list:
      return list(part);
    }
    return false;
  }

  bool word(const Part &part) {
    cursor_.part = &part;
    if (cursor_.word(part.words))
      return true;
    if (cursor_.is(LexemeKind::times) && part.words == "x") {
      ++cursor_.at;
      return true;
    }
    return cursor_.wanted(Piece::whole);
  }
  bool comma(const Part &part) {
    cursor_.part = &part;
    if (!cursor_.is(LexemeKind::comma))
      return cursor_.wanted(Piece::comma);
    ++cursor_.at;
    return true;
  }
  bool value(const Part &part) {
    cursor_.part = &part;
    const std::uint32_t from = cursor_.at;
    // Built in its place: a value is as large as the largest kind.
    cursor_.tree.captures.push_back({part.name, {}, {}, {}});
    if (!read_value(cursor_, part.kind, cursor_.tree.captures.back().value)) {
      cursor_.tree.captures.pop_back();
      return false;
    }
    place(cursor_.tree.captures.back(), from);
    return true;
  }
  bool choice(const Part &part) {
    cursor_.part = &part;
    bool found = false;
    if (cursor_.is(LexemeKind::word)) {
      const std::string_view written = cursor_.words(cursor_.at);
      each_choice(part.words, [&](std::string_view ours) {
        if (found || !same_word(written, ours))
          return;
        found = true;
        cursor_.tree.captures.push_back({part.name, Word{ours}, {}, {}});
      });
    }
    if (!found)
      return cursor_.wanted(Piece::whole);
    ++cursor_.at;
    place(cursor_.tree.captures.back(), cursor_.at - 1);
    return true;
  }
  bool attempt(const Part &part) {
    const std::uint32_t at = cursor_.at;
    const std::size_t captures = cursor_.tree.captures.size();
    if (sequence(part))
      return true;
    cursor_.at = at;
    cursor_.tree.captures.resize(captures);
    return false;
  }
  bool either(const Part &part) {
    for (const Part &branch : grammar_.parts(part.first, part.count))
      if (attempt(branch))
        return true;
    return false;
  }
  bool list(const Part &part) {
    if (!sequence(part))
      return false;
    while (cursor_.is(LexemeKind::comma)) {
      ++cursor_.at;
      if (!sequence(part))
        return false;
    }
    return true;
  }
  void place(Capture &capture, std::uint32_t from) const {
    capture.begin = Offset{cursor_.lexemes[from].begin};
    capture.end = Offset{cursor_.lexemes[cursor_.at - 1].end};
  }

  const Grammar &grammar_;
  Cursor &cursor_;
};

} // namespace

void Failure::note(std::uint32_t where, const Part *part, Piece piece) {
  if (where > at) {
    at = where;
    count = 0;
  }
  if (where == at && count < wanted.size())
    wanted[count++] = {part, piece};
}

bool match(const Grammar &grammar, const Entry &entry, std::uint32_t from, Cursor &cursor) {
  const Opening &opening = grammar.opening(entry);
  cursor.at = from;
  cursor.failure.at = from;
  cursor.failure.count = 0;
  Matching matching(grammar, cursor);
  const Part phrase{.part = PartKind::list, .first = opening.first, .count = opening.count};
  if (!matching.sequence(phrase))
    return false;
  if (!cursor.more())
    return true;
  // What may follow here was tried and noted; the words left over are what the problem is about.
  if (cursor.failure.at < cursor.at) {
    cursor.failure.at = cursor.at;
    cursor.failure.count = 0;
  }
  return false;
}

bool same_word(std::string_view written, std::string_view ours) {
  if (written == ours)
    return true;
  if (written.empty() || ours.empty() || written[0] != ours[0])
    return false;
  constexpr std::array<std::array<std::string_view, 2>, 5> pairs{{{"color", "colour"},
                                                                  {"centered", "centred"},
                                                                  {"center", "centre"},
                                                                  {"gray", "grey"},
                                                                  {"license", "licence"}}};
  for (const auto &pair : pairs)
    if (written == pair[0] && ours == pair[1])
      return true;
  return false;
}

} // namespace bodkin::language
