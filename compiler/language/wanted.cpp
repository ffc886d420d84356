#include "language/slips.hpp"

#include <algorithm>

namespace bodkin::language {
namespace {

std::string choices(std::string_view words) {
  std::vector<std::string> list;
  each_choice(words, [&list](std::string_view word) { list.emplace_back(word); });
  return listed(list, "or");
}

std::string whole(const Part &part) {
  switch (part.part) {
  case PartKind::word:
    return "the word " + std::string(part.words);
  case PartKind::choice:
    return choices(part.words);
  case PartKind::comma:
    return "a comma";
  case PartKind::value:
    if (part.kind == ValueKind::mode)
      return "black or colour";
    return std::string(words_of(part.kind).called);
  default:
    return std::string(words_of(part.kind).called);
  }
}

std::string words_for(const Wanted &wanted) {
  switch (wanted.piece) {
  case Piece::whole:
  case Piece::too_big:
    return whole(*wanted.part);
  case Piece::capitals:
  case Piece::reserved:
    return "a name";
  case Piece::by:
    return "the word by and the rows";
  case Piece::cross:
    return "x and the height";
  case Piece::height:
    return "the height";
  case Piece::down:
    return "how far down the page";
  case Piece::size_after:
    return "the size";
  case Piece::edge:
    return "left, right, outer or inner";
  case Piece::edge_down:
    return "head or foot";
  case Piece::per:
    return wanted.part->kind == ValueKind::time ? "a copy, a sheet or once"
                                                : "what it is for (a side, a copy, once …)";
  case Piece::per_what:
    return wanted.part->kind == ValueKind::time ? "copy or sheet"
                                                : "side, sheet, copy, plate, pass, run or hour";
  case Piece::pack:
    return "how many sheets or sides";
  case Piece::money:
    return "a sum of money";
  case Piece::unit:
    return "its unit";
  case Piece::pounds:
    return "the kind of paper";
  case Piece::row:
    return "the rows";
  case Piece::more_pages:
    return "a page";
  case Piece::comma:
    return "a comma";
  }
  return {};
}

} // namespace

std::string wanted_words(const Failure &failure) {
  std::vector<std::string> list;
  for (std::uint32_t i = 0; i < failure.count; ++i) {
    std::string words = words_for(failure.wanted[i]);
    if (std::find(list.begin(), list.end(), words) == list.end())
      list.push_back(std::move(words));
  }
  // A comma says little beside words.
  if (list.size() > 1)
    list.erase(std::remove(list.begin(), list.end(), "a comma"), list.end());
  constexpr std::string_view one_word = "the word ";
  if (list.size() > 1)
    for (std::string &words : list)
      if (words.starts_with(one_word))
        words.erase(0, one_word.size());
  return listed(list, "or");
}

} // namespace bodkin::language
