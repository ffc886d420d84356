#include "language/vocabulary.hpp"

#include "language/phrase.hpp"
#include "language/vocabulary_table.hpp"

namespace bodkin::language {
namespace {

std::vector<Entry> whole_table() {
  std::vector<Entry> table;
  for (const std::span<const Entry> family :
       {file_entries(), edition_entries(), piece_entries(), supply_entries(), rights_entries(),
        post_entries(), style_entries(), element_entries(), finish_entries(), folding_entries()})
    table.insert(table.end(), family.begin(), family.end());
  return table;
}

} // namespace

std::span<const Entry> vocabulary() {
  static const std::vector<Entry> table = whole_table();
  return table;
}

const Entry *entry_of(std::string_view word, std::string_view parent) {
  const Grammar &grammar = Grammar::of_table();
  const Context context = grammar.context(parent);
  return context == Context::none ? nullptr : grammar.find(word, context);
}

std::vector<const Entry *> entries_under(std::string_view parent) {
  std::vector<const Entry *> entries;
  for (const Entry &entry : vocabulary())
    if (entry_of(entry.word, parent) == &entry)
      entries.push_back(&entry);
  return entries;
}

std::vector<const Entry *> entries_named(std::string_view word) {
  std::vector<const Entry *> entries;
  for (const Entry &entry : vocabulary())
    if (entry.word == word)
      entries.push_back(&entry);
  return entries;
}

} // namespace bodkin::language
