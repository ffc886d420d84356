#include "language/prose_bounds.hpp"

#include "measure/limits.hpp"

namespace bodkin::language {
namespace {

constexpr std::string_view signs = "*_[]!`<&\\\"'(";

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// How long the sign of a list or quote at `at` is, with the blank that follows it; 0: none.
std::size_t container_sign(std::string_view line, std::size_t at) {
  if (line[at] == '>')
    return 1;
  std::size_t end = at;
  while (end < line.size() && is_digit(line[end]) && end - at < 9)
    ++end;
  const bool numbered = end != at && end < line.size() && (line[end] == '.' || line[end] == ')');
  if (!numbered && std::string_view("-+*").find(line[at]) == std::string_view::npos)
    return 0;
  end = numbered ? end + 1 : at + 1;
  return end == line.size() || line[end] == ' ' || line[end] == '\t' ? end - at : 0;
}

// `* * * *` is a break, however long.
bool is_break(std::string_view line) {
  return line.find_first_not_of("* \t") == std::string_view::npos ||
         line.find_first_not_of("- \t") == std::string_view::npos;
}

class Bounding {
public:
  BoundedProse run(std::string_view text) {
    prose_.text = text;
    std::size_t at = 0;
    for (std::size_t number = 1; at < text.size(); ++number) {
      const std::size_t end = std::min(text.find('\n', at), text.size());
      line(at, end, number);
      at = end + 1;
    }
    judge(prose_.text.size());
    return std::move(prose_);
  }

private:
  void line(std::size_t begin, std::size_t end, std::size_t number) {
    const std::string_view line = std::string_view(prose_.text).substr(begin, end - begin);
    if (line.find_first_not_of(" \t\r") == std::string_view::npos) {
      judge(begin);
      paragraph_ = end;
      paragraph_line_ = number + 1;
      signs_ = 0;
      return;
    }
    if (!is_break(line))
      containers(begin, end, number);
    for (std::size_t i = begin; i < end; ++i)
      if (signs.find(prose_.text[i]) != std::string_view::npos)
        ++signs_;
  }
  void containers(std::size_t begin, std::size_t end, std::size_t number) {
    std::size_t depth = 0;
    const std::string_view line = std::string_view(prose_.text).substr(0, end);
    for (std::size_t at = begin; at < end;) {
      if (line[at] == ' ' || line[at] == '\t') {
        ++at;
        continue;
      }
      const std::size_t sign = container_sign(line, at);
      if (sign == 0)
        return;
      if (++depth > limits::prose_nesting) {
        if (prose_.deep_line == 0)
          prose_.deep_line = number;
        prose_.text.replace(at, sign, sign, ' ');
      }
      at += sign;
    }
  }
  // The squares of the signs of each paragraph add up to what pairing them may cost.
  void judge(std::size_t end) {
    work_ += signs_ * signs_;
    if (signs_ > limits::paragraph_signs || work_ > limits::prose_work) {
      if (prose_.tangled_line == 0)
        prose_.tangled_line = paragraph_line_;
      for (std::size_t i = paragraph_; i < end; ++i)
        if (signs.find(prose_.text[i]) != std::string_view::npos)
          prose_.text[i] = ' ';
      work_ -= signs_ * signs_;
    }
  }

  BoundedProse prose_;
  std::size_t paragraph_ = 0, paragraph_line_ = 1;
  std::size_t signs_ = 0, work_ = 0;
};

} // namespace

BoundedProse bounded(std::string_view text) { return Bounding().run(text); }

} // namespace bodkin::language
