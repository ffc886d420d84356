#include "language/meant.hpp"

#include <algorithm>
#include <array>

namespace bodkin::language {
namespace {

// Places of the line to type as places of the line that stands there.
class Mapping {
public:
  Mapping(std::string_view own, std::string_view meant, std::uint32_t begin)
      : begin_(begin), own_(own.size()), meant_(meant.size()) {
    const std::size_t most = std::min(own.size(), meant.size());
    while (head_ < most && own[head_] == meant[head_])
      ++head_;
    while (tail_ + head_ < most && own[own.size() - 1 - tail_] == meant[meant.size() - 1 - tail_])
      ++tail_;
  }
  Offset first(std::uint32_t at) const {
    return place(at < meant_ - tail_ ? std::min<std::size_t>(at, head_) : own_ - (meant_ - at));
  }
  Offset last(std::uint32_t at) const {
    return place(at <= head_ ? at : own_ - std::min(tail_, meant_ - at));
  }

private:
  Offset place(std::size_t at) const { return Offset{static_cast<std::uint32_t>(begin_ + at)}; }
  std::size_t begin_, own_, meant_, head_ = 0, tail_ = 0;
};

struct Sign {
  std::string_view sign, code;
};
constexpr std::array<Sign, 3> signs{{{"$", "USD"}, {"\u00a3", "GBP"}, {"\u20ac", "EUR"}}};

// Whether a file has this money alone: where it has several, which one a line meant is a question.
bool only_money(std::string_view file, Currency currency) {
  return std::all_of(signs.begin(), signs.end(), [&](const Sign &one) {
    return (file.find(one.sign) != std::string_view::npos) == (one.code == currency.code());
  });
}

bool is_doubtful(const Value &value, std::string_view file) {
  if (const auto *rate = std::get_if<Rate>(&value))
    return !only_money(file, rate->price.currency);
  const auto *price = std::get_if<Price>(&value);
  return price != nullptr && !only_money(file, price->currency);
}

} // namespace

void read_as_meant(const Typed &line, const std::string &meant, Tree &tree, Statement &statement) {
  const std::string &kept = tree.unescaped.emplace_back(meant);
  std::vector<Lexeme> lexemes;
  cut(kept, 0, lexemes);
  const std::size_t before = tree.captures.size();
  Failure failure;
  Cursor cursor{.text = kept, .lexemes = lexemes, .tree = tree, .failure = failure};
  const bool fits = !lexemes.empty() && match(Grammar::of_table(), *statement.entry, 1, cursor);
  if (!fits ||
      std::any_of(tree.captures.begin() + static_cast<std::ptrdiff_t>(before), tree.captures.end(),
                  [&](const Capture &capture) { return is_doubtful(capture.value, line.text); })) {
    tree.captures.resize(before);
    return;
  }
  const std::uint32_t begin = line.lexemes.front().begin;
  const Mapping to_own(line.text.substr(begin, line.lexemes.back().end - begin), kept, begin);
  for (std::size_t i = before; i < tree.captures.size(); ++i) {
    Capture &capture = tree.captures[i];
    capture.begin = to_own.first(static_cast<std::uint32_t>(capture.begin));
    capture.end = std::max(capture.begin, to_own.last(static_cast<std::uint32_t>(capture.end)));
  }
  statement.first_capture = static_cast<std::uint32_t>(before);
  statement.capture_count = static_cast<std::uint32_t>(tree.captures.size() - before);
  statement.meant = true;
}

} // namespace bodkin::language
