#include "language/match.hpp"
#include "measure/limits.hpp"

namespace bodkin::language {
namespace {

bool read_whole(Cursor &cursor, std::string_view digits, std::int64_t most, std::int64_t &page) {
  const Amount amount = read_amount(digits);
  if (!amount.bare() || !amount.whole() || amount.negative)
    return cursor.wanted(Piece::whole);
  if (amount.too_big || amount.digits > most)
    return cursor.wanted(Piece::too_big);
  page = amount.digits;
  return true;
}

bool ends_pages(std::string_view word) {
  using namespace std::string_view_literals;
  for (const std::string_view little : {"called"sv, "in"sv, "on"sv, "by"sv, "but"sv, "at"sv})
    if (word == little)
      return true;
  return false;
}

bool read_item(Cursor &cursor, PageItem &item, bool first, ValueKind kind) {
  const std::int64_t most = kind == ValueKind::numbers ? limits::copies : limits::pages;
  const Piece piece = first ? Piece::whole : Piece::more_pages;
  if (!cursor.more())
    return cursor.wanted(piece);
  const std::string_view words = cursor.words(cursor.at);
  switch (cursor.lexemes[cursor.at].kind) {
  case LexemeKind::number:
    if (!read_whole(cursor, words, most, item.first))
      return false;
    item.last = item.first;
    break;
  case LexemeKind::span: {
    const std::size_t dash = words.find_first_not_of("0123456789");
    const std::size_t second = words.find_first_of("0123456789", dash);
    if (words.find_first_not_of("0123456789", second) != std::string_view::npos)
      return cursor.wanted(piece);
    if (!read_whole(cursor, words.substr(0, dash), most, item.first) ||
        !read_whole(cursor, words.substr(second), most, item.last))
      return false;
    break;
  }
  case LexemeKind::word:
    if (kind == ValueKind::numbers || ends_pages(words))
      return cursor.wanted(piece);
    if (words.find_first_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ") != std::string_view::npos)
      return cursor.wanted(Piece::capitals);
    item.word = same_word(words, "centre") ? std::string_view("centre") : words;
    break;
  default:
    return cursor.wanted(piece);
  }
  ++cursor.at;
  return true;
}

} // namespace

bool read_pages(Cursor &cursor, ValueKind kind, Value &value) {
  std::vector<PageItem> &items = cursor.tree.page_items;
  Pages &pages = value.emplace<Pages>();
  pages.first = static_cast<std::uint32_t>(items.size());
  bool but = false;
  while (true) {
    PageItem item{.but = but};
    if (!read_item(cursor, item, pages.count == 0, kind)) {
      items.resize(pages.first);
      return false;
    }
    items.push_back(item);
    ++pages.count;
    if (kind == ValueKind::page || kind == ValueKind::numbers)
      return true;
    if (cursor.is(LexemeKind::comma))
      ++cursor.at;
    else if (!but && cursor.word("but"))
      but = true;
    else
      return true;
  }
}

} // namespace bodkin::language
