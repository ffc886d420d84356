#include "language/phrase.hpp"

#include <algorithm>
#include <cstdlib>

namespace bodkin::language {
namespace {

// Brackets, braces and commas stand for themselves even where they touch a word.
std::string_view first_token(std::string_view &rest) {
  constexpr std::string_view signs = "[](){},";
  rest.remove_prefix(std::min(rest.find_first_not_of(' '), rest.size()));
  const bool sign = !rest.empty() && signs.find(rest.front()) != std::string_view::npos;
  const std::string_view token =
      rest.substr(0, sign ? 1 : std::min(rest.find(' '), rest.find_first_of(signs)));
  rest.remove_prefix(token.size());
  return token;
}

ValueKind kind_named(std::string_view name) {
  for (std::size_t i = 0; i < value_kinds; ++i)
    if (words_of(static_cast<ValueKind>(i)).name == name)
      return static_cast<ValueKind>(i);
  std::abort(); // a slip in the table, which every test and every run would show at once
}

// A single word may be a choice of one: `included:included`.
bool is_kind(std::string_view name) {
  for (std::size_t i = 0; i < value_kinds; ++i)
    if (words_of(static_cast<ValueKind>(i)).name == name)
      return true;
  return false;
}

Part leaf(std::string_view token) {
  if (token == ",")
    return {.part = PartKind::comma};
  const std::size_t colon = token.find(':');
  if (colon == std::string_view::npos)
    return {.part = PartKind::word, .words = token};
  const std::string_view name = token.substr(0, colon);
  const std::string_view rest = token.substr(colon + 1);
  if (is_kind(rest))
    return {.part = PartKind::value, .kind = kind_named(rest), .name = name};
  return {.part = PartKind::choice, .name = name, .words = rest};
}

// Compiles a phrase; parts that stand side by side stand side by side in the flat list.
class Compiling {
public:
  Compiling(std::vector<Part> &parts, std::string_view phrase) : parts_(parts), rest_(phrase) {}

  Part sequence() {
    std::vector<Part> row;
    while (true) {
      const std::string_view token = first_token(rest_);
      if (token.empty() || token == "]" || token == "}" || token == ")" || token == "/") {
        ended_by_ = token;
        return stored(PartKind::list, row);
      }
      row.push_back(part(token));
    }
  }

private:
  Part part(std::string_view token) {
    if (token == "[")
      return inside(PartKind::optional);
    if (token == "{")
      return inside(PartKind::list);
    if (token == "(")
      return either();
    return leaf(token);
  }
  Part inside(PartKind kind) {
    Part part = sequence();
    part.part = kind;
    return part;
  }
  Part either() {
    std::vector<Part> branches;
    do
      branches.push_back(sequence());
    while (ended_by_ == "/");
    return stored(PartKind::either, branches);
  }
  Part stored(PartKind kind, const std::vector<Part> &row) {
    const auto first = static_cast<std::uint32_t>(parts_.size());
    parts_.insert(parts_.end(), row.begin(), row.end());
    return {.part = kind, .first = first, .count = static_cast<std::uint32_t>(row.size())};
  }

  std::vector<Part> &parts_;
  std::string_view rest_;
  std::string_view ended_by_;
};

constexpr std::size_t slot_count = 2048; // a power of two, four times the words

// Where a search for a word begins: its length and three of its letters tell most words apart.
std::size_t first_slot(std::string_view word, Context under) {
  if (word.empty())
    return 0;
  const auto letter = [word](std::size_t at) {
    return std::size_t{static_cast<unsigned char>(word[at])};
  };
  const std::size_t mixed =
      ((static_cast<std::size_t>(under) * 37 + word.size()) * 31 + letter(0)) * 29 +
      letter(word.size() / 2) * 17 + letter(word.size() - 1);
  return mixed % slot_count;
}
std::size_t slot_after(std::size_t slot) { return (slot + 1) % slot_count; }

template <typename Visit>
void each_parent(const Entry &entry, Visit visit) {
  std::string_view rest = entry.under;
  for (std::string_view parent = first_token(rest); !parent.empty(); parent = first_token(rest))
    visit(parent);
}

bool stands_under_one_of(const Entry &entry, std::initializer_list<std::string_view> parents) {
  bool stands = false;
  each_parent(entry, [&](std::string_view parent) {
    stands |= std::find(parents.begin(), parents.end(), parent) != parents.end();
  });
  return stands;
}

// A word may name both a block and a fact (`machine`); what stands under it is the block's, and
// blocks stand at the file's level, or on pages, or are steps of finish. A fact of the edition that
// is no block elsewhere (`paper`) may have facts of its own.
bool opens_block(const Entry &entry) {
  const auto block = [](const Entry &other) {
    return stands_under_one_of(other, {"file", "page", "finish"});
  };
  if (block(entry))
    return true;
  const std::vector<const Entry *> named = entries_named(entry.word);
  return stands_under_one_of(entry, {"edition"}) &&
         std::none_of(named.begin(), named.end(),
                      [&](const Entry *other) { return block(*other); });
}

} // namespace

const Grammar &Grammar::of_table() {
  static const Grammar grammar;
  return grammar;
}

Grammar::Grammar() : table_(vocabulary().data()) {
  name_contexts();
  for (const Entry &entry : vocabulary()) {
    const Part phrase = Compiling(parts_, entry.phrase).sequence();
    Opening opening{.first = phrase.first, .count = phrase.count};
    if (opens_block(entry))
      opening.opens = context(entry.word);
    opening.opens_by_choice = entry.word == "every";
    openings_.push_back(opening);
  }
  fill_slots();
}

void Grammar::name_contexts() {
  names_.push_back("file");
  for (const Entry &entry : vocabulary())
    each_parent(entry, [this](std::string_view parent) {
      if (context(parent) == Context::none)
        names_.push_back(parent);
    });
}

void Grammar::fill_slots() {
  slots_.resize(slot_count);
  for (const Entry &entry : vocabulary())
    each_parent(entry, [&](std::string_view parent) {
      const Context under = context(parent);
      std::size_t at = first_slot(entry.word, under);
      while (slots_[at].entry)
        at = slot_after(at);
      slots_[at] = {under, &entry};
    });
}

const Entry *Grammar::find(std::string_view word, Context under) const {
  for (std::size_t at = first_slot(word, under); slots_[at].entry; at = slot_after(at))
    if (slots_[at].under == under && slots_[at].entry->word == word)
      return slots_[at].entry;
  return nullptr;
}

Context Grammar::context(std::string_view parent) const {
  for (std::size_t i = 0; i < names_.size(); ++i)
    if (names_[i] == parent)
      return static_cast<Context>(i);
  return Context::none;
}

std::string_view Grammar::name(Context context) const {
  return context == Context::none ? std::string_view{} : names_[static_cast<std::size_t>(context)];
}

std::size_t Grammar::index(const Entry &entry) const {
  return static_cast<std::size_t>(&entry - table_);
}

} // namespace bodkin::language
