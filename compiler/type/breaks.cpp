#include "type/breaks.hpp"

#include <new>
#include <unicode/ubrk.h>
#include <unicode/utext.h>

namespace bodkin {
namespace {

struct IteratorGone {
  void operator()(UBreakIterator *iterator) const { ubrk_close(iterator); }
};
using Iterator = std::unique_ptr<UBreakIterator, IteratorGone>;

Iterator opened(UBreakIteratorType type, const std::string &language) {
  UErrorCode status = U_ZERO_ERROR;
  Iterator iterator(ubrk_open(type, language.c_str(), nullptr, 0, &status));
  if (U_SUCCESS(status))
    return iterator;
  // A tag that ICU cannot read at all still breaks by the rules of no language.
  status = U_ZERO_ERROR;
  iterator.reset(ubrk_open(type, "root", nullptr, 0, &status));
  if (U_FAILURE(status))
    throw std::bad_alloc();
  return iterator;
}

// The text that an iterator reads; it must stay open while it does.
class Utf8 {
public:
  explicit Utf8(std::string_view text) {
    UErrorCode status = U_ZERO_ERROR;
    utext_openUTF8(&text_, text.data(), static_cast<std::int64_t>(text.size()), &status);
  }
  ~Utf8() { utext_close(&text_); }
  Utf8(const Utf8 &) = delete;
  Utf8 &operator=(const Utf8 &) = delete;
  UText *get() { return &text_; }

private:
  UText text_ = UTEXT_INITIALIZER;
};

template <typename Each>
void walk(UBreakIterator *rules, std::string_view text, const Each &each) {
  Utf8 utf8(text);
  UErrorCode status = U_ZERO_ERROR;
  ubrk_setUText(rules, utf8.get(), &status);
  if (U_FAILURE(status))
    throw std::bad_alloc();
  for (std::int32_t at = ubrk_next(rules); at != UBRK_DONE; at = ubrk_next(rules))
    each(static_cast<std::uint32_t>(at));
}

} // namespace

struct Breaker::Rules {
  Iterator line, letter;
};

Breaker::Breaker(const std::string &language)
    : rules_(new Rules{opened(UBRK_LINE, language), opened(UBRK_CHARACTER, language)}) {}
Breaker::~Breaker() = default;

void Breaker::lines(std::string_view text, std::vector<LineBreak> &found) {
  found.clear();
  UBreakIterator *rules = rules_->line.get();
  walk(rules, text, [&](std::uint32_t at) {
    found.push_back({at, ubrk_getRuleStatus(rules) >= UBRK_LINE_HARD});
  });
}

void Breaker::letters(std::string_view text, std::vector<std::uint32_t> &found) {
  found.clear();
  walk(rules_->letter.get(), text, [&](std::uint32_t at) { found.push_back(at); });
}

} // namespace bodkin
