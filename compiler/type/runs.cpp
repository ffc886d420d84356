#include "type/runs.hpp"

#include "type/words.hpp"

#include <hb.h>

namespace bodkin {
namespace {

hb_script_t script_of(char32_t code) {
  if (code < 0x80) {
    const bool letter = (code >= 'a' && code <= 'z') || (code >= 'A' && code <= 'Z');
    return letter ? HB_SCRIPT_LATIN : HB_SCRIPT_COMMON;
  }
  return hb_unicode_script(hb_unicode_funcs_get_default(), code);
}

// Marks, spaces and signs that take the script of the letters around them.
bool belongs_anywhere(hb_script_t script) {
  return script == HB_SCRIPT_COMMON || script == HB_SCRIPT_INHERITED || script == HB_SCRIPT_UNKNOWN;
}

class RunCutter {
public:
  RunCutter(const Paragraph &paragraph, const Directions &directions)
      : paragraph_(paragraph), directions_(directions) {}

  std::vector<TextRun> runs() {
    for (std::uint32_t i = 0; i < paragraph_.spans.size(); ++i)
      cut_span(i);
    return std::move(runs_);
  }

private:
  void cut_span(std::uint32_t span) {
    const std::string &text = paragraph_.text;
    begin_ = paragraph_.spans[span].begin;
    own_script_ = false;
    for (std::uint32_t at = begin_; at < paragraph_.spans[span].end;) {
      const CodePoint c = code_point_at(text, at);
      if (c.value == '\n') {
        close(span, at);
        begin_ = at + 1;
      } else {
        meet(span, at, script_of(c.value));
      }
      at += c.bytes;
    }
    close(span, paragraph_.spans[span].end);
  }

  void meet(std::uint32_t span, std::uint32_t at, hb_script_t script) {
    if (at > begin_ && level(at) != level(begin_))
      close(span, at);
    if (belongs_anywhere(script))
      return;
    if (own_script_ && script != script_)
      close(span, at);
    script_ = script;
    own_script_ = true;
  }

  void close(std::uint32_t span, std::uint32_t at) {
    if (at > begin_)
      runs_.push_back({begin_, at, span, static_cast<std::uint32_t>(script_), level(begin_)});
    begin_ = at;
    own_script_ = false;
  }

  std::uint8_t level(std::uint32_t at) const {
    return directions_.levels.empty() ? std::uint8_t{0} : directions_.levels[at];
  }

  const Paragraph &paragraph_;
  const Directions &directions_;
  std::vector<TextRun> runs_;
  std::uint32_t begin_ = 0;
  // Text that begins with signs alone is shaped as what comes first, and numbers alone as Latin.
  hb_script_t script_ = HB_SCRIPT_LATIN;
  bool own_script_ = false; // a letter of `script_` stands in the run begun
};

} // namespace

std::vector<TextRun> runs_of(const Paragraph &paragraph, const Directions &directions) {
  return RunCutter(paragraph, directions).runs();
}

} // namespace bodkin
