#include "press/grey_content.hpp"

#include "measure/few.hpp"
#include "press/number.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <vector>

namespace bodkin::press {
namespace {

bool blank(char c) {
  return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == '\0';
}
bool delimiter(char c) {
  return c == '(' || c == ')' || c == '<' || c == '>' || c == '[' || c == ']' || c == '/' ||
         c == '%' || c == '{' || c == '}';
}

std::string_view next_name(std::string_view text) {
  const std::size_t begin = std::min(text.find_first_not_of(" \n\r\t"), text.size());
  std::size_t end = begin;
  while (end < text.size() && !blank(text[end]) && (end == begin || !delimiter(text[end])))
    ++end;
  return text.substr(begin, end - begin);
}

// An inline image, from after BI, whose dictionary says that its samples are grey or a stencil
// (ISO 32000-1, 8.9.7).
bool is_grey_inline_image(std::string_view text) {
  std::size_t end = text.find("ID");
  while (end != std::string_view::npos && end > 0 && !blank(text[end - 1]))
    end = text.find("ID", end + 2);
  const std::string_view dictionary = text.substr(0, end);
  for (const std::string_view key : {"/ColorSpace", "/CS"})
    if (const std::size_t at = dictionary.find(key); at != std::string_view::npos) {
      const std::string_view space = next_name(dictionary.substr(at + key.size()));
      return space == "/G" || space == "/DeviceGray";
    }
  for (const std::string_view key : {"/ImageMask", "/IM"})
    if (const std::size_t at = dictionary.find(key); at != std::string_view::npos)
      return next_name(dictionary.substr(at + key.size())) == "true";
  return false;
}

// One walk over the content. Everything before `copied` is in `out`; numbers since the last
// operator are remembered by where they begin.
class Walk {
public:
  Walk(std::string_view content, Greying greying) : in_(content), greying_(greying) {
    out_.reserve(content.size());
  }

  std::optional<std::string> run() {
    while (at_ < in_.size() && !refused_)
      token();
    if (refused_)
      return std::nullopt;
    out_.append(in_.substr(copied_));
    return std::move(out_);
  }

private:
  struct Operand {
    std::size_t begin;
    double value;
  };

  void token() {
    const char c = in_[at_];
    if (blank(c))
      ++at_;
    else if (c == '(')
      string();
    else if (c == '<')
      hex_or_dictionary();
    else if (c == '%')
      at_ = std::min(in_.find_first_of("\r\n", at_), in_.size());
    else if (c == '/')
      name();
    else if (delimiter(c))
      ++at_;
    else
      word();
  }

  void string() {
    int depth = 0;
    for (; at_ < in_.size(); ++at_) {
      if (in_[at_] == '\\')
        ++at_;
      else if (in_[at_] == '(')
        ++depth;
      else if (in_[at_] == ')' && --depth == 0) {
        ++at_;
        return;
      }
    }
    at_ = in_.size();
  }

  void hex_or_dictionary() {
    if (at_ + 1 < in_.size() && in_[at_ + 1] == '<') {
      at_ += 2;
      return;
    }
    const std::size_t end = in_.find('>', at_);
    at_ = end == std::string_view::npos ? in_.size() : end + 1;
  }

  std::string_view regular() {
    const std::size_t begin = at_;
    while (at_ < in_.size() && !blank(in_[at_]) && !delimiter(in_[at_]))
      ++at_;
    return in_.substr(begin, at_ - begin);
  }

  void name() {
    const std::size_t begin = at_++;
    last_name_ = regular();
    name_begin_ = begin;
  }

  void word() {
    const std::size_t begin = at_;
    const std::string_view text = regular();
    const char first = text.front();
    if ((first >= '0' && first <= '9') || first == '-' || first == '.' || first == '+') {
      number(begin, text);
      return;
    }
    operate(text);
    count_ = 0;
  }

  void number(std::size_t begin, std::string_view text) {
    double value = 0;
    if (text.front() == '+')
      text.remove_prefix(1);
    std::from_chars(text.data(), text.data() + text.size(), value);
    if (count_ == operands_.size())
      std::rotate(operands_.begin(), operands_.begin() + 1, operands_.end());
    else
      ++count_;
    operands_[count_ - 1] = {begin, value};
  }

  void operate(std::string_view op) {
    if (op == "rg" || op == "RG")
      rgb(op == "rg" ? " g" : " G");
    else if (op == "k" || op == "K")
      cmyk(op == "k" ? " g" : " G");
    else if (op == "cs" || op == "CS")
      space(op == "cs");
    else if (op == "sc" || op == "scn")
      coloured(spaces_.fill, " g");
    else if (op == "SC" || op == "SCN")
      coloured(spaces_.stroke, " G");
    else if (op == "BI")
      inline_image();
    else if (op == "q")
      saved_.push_back(spaces_);
    else if (op == "Q" && !saved_.empty()) {
      spaces_ = saved_.back();
      saved_.pop_back();
    }
  }

  void rgb(std::string_view op) {
    if (count_ < 3)
      return;
    const Operand *o = &operands_[count_ - 3];
    const bool equal = o[0].value == o[1].value && o[1].value == o[2].value;
    if (equal)
      replace(o[0].begin, o[0].value, op);
    else if (greying_ == Greying::all)
      replace(o[0].begin, grey_of_rgb(o[0].value, o[1].value, o[2].value), op);
  }

  void cmyk(std::string_view op) {
    if (count_ < 4 || greying_ != Greying::all)
      return;
    const Operand *o = &operands_[count_ - 4];
    replace(o[0].begin, grey_of_cmyk(o[0].value, o[1].value, o[2].value, o[3].value), op);
  }

  void replace(std::size_t from, double grey, std::string_view op) {
    out_.append(in_.substr(copied_, from - copied_));
    append_number(out_, grey);
    out_.append(op);
    copied_ = at_;
  }

  // A device space chosen by name: colours that follow are read by their number of parts.
  void space(bool fill) {
    if (greying_ != Greying::all)
      return;
    int &parts = fill ? spaces_.fill : spaces_.stroke;
    if (last_name_ == "Pattern")
      parts = 0;
    else if (last_name_ == "DeviceGray")
      parts = 1;
    else if (last_name_ == "DeviceRGB")
      parts = 3;
    else if (last_name_ == "DeviceCMYK")
      parts = 4;
    else
      refused_ = true;
    if (parts == 3 || parts == 4) {
      out_.append(in_.substr(copied_, name_begin_ - copied_));
      out_.append(fill ? "0 g" : "0 G"); // the space's first colour is black
      copied_ = at_;
    }
  }

  void coloured(int parts, std::string_view op) {
    if (parts == 3)
      rgb(op);
    else if (parts == 4)
      cmyk(op);
  }

  // Its data may hold anything; they end at EI between white space.
  void inline_image() {
    if (greying_ == Greying::all && !is_grey_inline_image(in_.substr(at_)))
      refused_ = true;
    std::size_t end = in_.find("EI", at_);
    while (end != std::string_view::npos &&
           !(blank(in_[end - 1]) && (end + 2 >= in_.size() || blank(in_[end + 2]))))
      end = in_.find("EI", end + 2);
    at_ = end == std::string_view::npos ? in_.size() : end + 2;
  }

  std::string_view in_;
  Greying greying_;
  std::string out_;
  std::size_t at_ = 0, copied_ = 0, name_begin_ = 0, count_ = 0;
  std::array<Operand, 4> operands_{};
  std::string_view last_name_;
  struct Spaces {
    int fill = 1, stroke = 1; // colour parts; 0 a pattern
  };
  Spaces spaces_;
  std::vector<Spaces> saved_; // by q
  bool refused_ = false;
};

std::uint8_t channel(double value) {
  return static_cast<std::uint8_t>(std::lround(std::clamp(value, 0.0, 1.0) * 255));
}

} // namespace

std::optional<std::string> grey_content(std::string_view content, Greying greying) {
  return Walk(content, greying).run();
}

double grey_of_rgb(double red, double green, double blue) {
  return grey_of(Colour{channel(red), channel(green), channel(blue)});
}

double grey_of_cmyk(double cyan, double magenta, double yellow, double black) {
  return grey_of_rgb((1 - cyan) * (1 - black), (1 - magenta) * (1 - black),
                     (1 - yellow) * (1 - black));
}

} // namespace bodkin::press
