#include "art/svg_mentions.hpp"

#include <algorithm>

namespace bodkin::art {
namespace {

constexpr auto npos = std::string_view::npos;
constexpr std::string_view blanks = " \t\r\n";

std::string_view local_name(std::string_view name) {
  const std::size_t colon = name.find(':');
  return colon == npos ? name : name.substr(colon + 1);
}

std::string_view trimmed(std::string_view text) {
  text.remove_prefix(std::min(text.find_first_not_of(blanks), text.size()));
  return text;
}

bool stays_inside(std::string_view reference) {
  reference = trimmed(reference);
  return reference.empty() || reference[0] == '#' || reference.substr(0, 5) == "data:";
}

std::string shortened(std::string_view reference) {
  constexpr std::size_t shown = 80;
  return std::string(trimmed(reference).substr(0, shown));
}

// References of a style sheet or of a style attribute: url(…) and @import.
std::string outside_style(std::string_view style) {
  if (const std::size_t import = style.find("@import"); import != npos)
    return shortened(style.substr(import, style.find(';', import) - import));
  for (std::size_t at = style.find("url("); at != npos; at = style.find("url(", at)) {
    at += 4;
    auto reference = trimmed(style.substr(at, style.find(')', at) - at));
    if (!reference.empty() && (reference[0] == '"' || reference[0] == '\''))
      reference = reference.substr(1, reference.find(reference[0], 1) - 1);
    if (!stays_inside(reference))
      return shortened(reference);
  }
  return {};
}

// `tag` without its angle brackets.
std::string outside_tag(std::string_view name, std::string_view tag,
                        std::vector<std::string_view> &embedded) {
  for (std::size_t at = name.size(); at < tag.size();) {
    const std::size_t equals = tag.find('=', at);
    if (equals == npos)
      break;
    const std::size_t open = tag.find_first_of("\"'", equals);
    const std::size_t close = open == npos ? npos : tag.find(tag[open], open + 1);
    if (close == npos)
      break;
    auto attribute = trimmed(tag.substr(at, equals - at));
    attribute = attribute.substr(0, attribute.find_first_of(blanks));
    const auto value = tag.substr(open + 1, close - open - 1);
    if (local_name(attribute) == "href" && local_name(name) != "a") {
      if (!stays_inside(value))
        return shortened(value);
      if (trimmed(value).starts_with("data:"))
        embedded.push_back(trimmed(value));
    }
    if (auto reference = outside_style(value);
        !reference.empty() && local_name(attribute) != "href")
      return reference;
    at = close + 1;
  }
  return {};
}

// Of `<!ENTITY name SYSTEM "…">`.
std::string outside_declaration(std::string_view declaration) {
  if (declaration.substr(0, 8) != "!ENTITY ")
    return {};
  for (const std::string_view word : {" SYSTEM", " PUBLIC"})
    if (declaration.find(word) != npos)
      return shortened(declaration.substr(1));
  return {};
}

// Past a comment or a section that begins at `at`, where one does.
std::size_t past(std::string_view svg, std::size_t at, std::string_view begin,
                 std::string_view end) {
  if (svg.substr(at, begin.size()) != begin)
    return at;
  const std::size_t found = svg.find(end, at + begin.size());
  return found == npos ? svg.size() : found + end.size();
}

// The end of a tag; a `>` inside quotes is not one.
std::size_t end_of_tag(std::string_view svg, std::size_t at) {
  char quote = 0;
  for (; at < svg.size(); ++at) {
    const char c = svg[at];
    if (quote != 0)
      quote = c == quote ? '\0' : quote;
    else if (c == '"' || c == '\'')
      quote = c;
    else if (c == '>')
      return at;
  }
  return at;
}

} // namespace

SvgMentions svg_mentions(std::string_view svg) {
  SvgMentions mentions;
  std::size_t at = svg.find('<');
  for (; at != npos && at < svg.size() && mentions.outside.empty(); at = svg.find('<', at)) {
    if (const std::size_t next = past(svg, at, "<!--", "-->"); next != at) {
      at = next;
      continue;
    }
    ++at;
    if (svg.substr(at, 8) == "!DOCTYPE") // its declarations are walked like tags
      continue;
    const std::size_t end = end_of_tag(svg, at);
    const auto tag = svg.substr(at, end - at);
    const auto name = tag.substr(0, tag.find_first_of(" \t\r\n/>", tag.empty() ? 0 : 1));
    at = end;
    if (tag.substr(0, 1) == "!")
      mentions.outside = outside_declaration(tag);
    else if (tag.substr(0, 1) != "?" || name == "?xml-stylesheet")
      mentions.outside = outside_tag(name, tag, mentions.embedded);
    const auto element = local_name(name);
    mentions.type = mentions.type || element == "text" || element == "flowRoot";
    if (element == "style" && mentions.outside.empty())
      mentions.outside = outside_style(svg.substr(at, svg.find("</", at) - at));
  }
  return mentions;
}

} // namespace bodkin::art
