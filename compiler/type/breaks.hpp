// Where Unicode lets a line end (UAX #14) and where letters stand apart (grapheme clusters, UAX
// #29), by ICU's rules for the language of the document; the machine's locale is never asked.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

struct LineBreak {
  std::uint32_t at = 0; // byte where the next line would begin
  bool must = false;    // a line end of the text itself
};

class Breaker {
public:
  explicit Breaker(const std::string &language); // BCP 47
  ~Breaker();
  Breaker(const Breaker &) = delete;
  Breaker &operator=(const Breaker &) = delete;

  // All of them but the text's start; the end is the last. `found` is emptied first.
  void lines(std::string_view text, std::vector<LineBreak> &found);
  // Ends of grapheme clusters, the text's end among them.
  void letters(std::string_view text, std::vector<std::uint32_t> &found);

private:
  struct Rules;
  std::unique_ptr<Rules> rules_;
};

} // namespace bodkin
