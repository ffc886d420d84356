#include "sheet/parts.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

std::string page_in_words(std::string_view host, int page) {
  constexpr std::string_view names[] = {"front-cover", "inside-front", "inside-back", "back-cover"};
  return host.empty() || page < 1 || page > 4
             ? fmt::format("page {}", page)
             : fmt::format("the {} of the {}", names[page - 1], host);
}

} // namespace

std::string page_in_words(const Piece *host, int page) {
  return page_in_words(host ? std::string_view(host->name) : std::string_view(), page);
}

std::string goes_in_words(const Piece &piece) {
  switch (*piece.goes) {
  case Goes::centre:
    return "goes at the centre and is bound in";
  case Goes::after_page:
    return fmt::format("goes after page {}", piece.at_page);
  case Goes::on_page:
    return fmt::format("is {} {}", piece.flaps ? "a pocket glued on" : "tipped in on",
                       page_in_words(piece.host, piece.at_page));
  case Goes::in_pocket:
    return fmt::format("lies in the pocket {}", piece.pocket);
  case Goes::round_the_copy:
    return "goes round the whole copy as a band";
  case Goes::outside:
    return "are glued to the front and the back of the copy";
  case Goes::round_the_book:
    return "goes round the book";
  case Goes::instead:
    return fmt::format("takes the place of the book's own sheets in the copies {}",
                       piece.edition.runs[**piece.only].name);
  case Goes::behind:
    return "is the unfolded back of sheet 1";
  case Goes::loose:
    break;
  }
  return "lies loose in the copy";
}

} // namespace bodkin
