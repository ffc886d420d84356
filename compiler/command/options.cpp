#include "command/options.hpp"

#include "command/help.hpp"
#include "language/vocabulary.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <fmt/format.h>
#include <string_view>

namespace bodkin {
namespace {

struct VerbNamed {
  std::string_view name;
  Verb verb;
  std::string_view subject; // what its one argument is, in capitals
};
constexpr std::array verbs{
    VerbNamed{"compile", Verb::compile, "FILE"},   VerbNamed{"preflight", Verb::preflight, "FILE"},
    VerbNamed{"estimate", Verb::estimate, "FILE"}, VerbNamed{"sheets", Verb::sheets, "FILE"},
    VerbNamed{"proof", Verb::proof, "FILE"},       VerbNamed{"dummy", Verb::dummy, "FILE"},
    VerbNamed{"arrange", Verb::arrange, "FILE"},   VerbNamed{"explain", Verb::explain, "WORD"},
    VerbNamed{"start", Verb::start, "FOLDER"}};

struct OptionNamed {
  std::string_view name;
  std::string_view verbs; // where it may stand
  std::string_view value; // what follows it; empty: nothing
};
constexpr std::array options{OptionNamed{"--into", "compile proof dummy", "FOLDER"},
                             OptionNamed{"--depfile", "compile", "FILE"},
                             OptionNamed{"--png", "proof", "DPI"},
                             OptionNamed{"--json", "compile preflight estimate sheets arrange", ""},
                             OptionNamed{"--write", "arrange", "FILE"},
                             OptionNamed{"--svg", "sheets estimate", ""},
                             OptionNamed{"--pdf", "sheets estimate", ""},
                             OptionNamed{"--ods", "estimate", ""},
                             OptionNamed{"--sarif", "compile preflight", ""},
                             OptionNamed{"--strict", "compile preflight", ""},
                             OptionNamed{"--anyway", "compile preflight", ""},
                             OptionNamed{"--as", "start", "NAME"},
                             OptionNamed{"--reference", "explain", ""}};

constexpr int least_dpi = 10, most_dpi = 1200;

template <typename Table>
std::optional<std::string_view> near_in(const Table &table, std::string_view word) {
  std::vector<std::string_view> names;
  names.reserve(std::size(table));
  for (const auto &row : table)
    names.push_back(row.name);
  return language::nearest(word, names);
}

WrongLine unknown_verb(const std::string &word) {
  if (word.ends_with(".bodkin"))
    return {fmt::format("what is to be done with {}? type: bodkin compile {}", word, word)};
  if (const auto near = near_in(verbs, word))
    return {fmt::format("there is no `bodkin {}`; did you mean `bodkin {}`?", word, *near)};
  return {fmt::format("there is no `bodkin {}`; `bodkin --help` lists what there is", word)};
}

// Reads the words after the verb one by one.
class Line {
public:
  Line(const VerbNamed &verb, const std::vector<std::string> &words) : verb_(verb), words_(words) {
    options_.verb = verb.verb;
  }

  std::variant<Options, AskedHelp, WrongLine> read() {
    for (at_ = 1; at_ < words_.size(); ++at_) {
      const std::string &word = words_[at_];
      if (word == "--help" || word == "-h")
        return AskedHelp{help_about(verb_.name)};
      const std::optional<WrongLine> wrong =
          word.size() > 1 && word.front() == '-' ? option(word) : subject(word);
      if (wrong)
        return *wrong;
    }
    if (options_.subject.empty() && !options_.reference)
      return WrongLine{
          fmt::format("`bodkin {0}` wants a {1}; type: bodkin {0} {1}", verb_.name, verb_.subject)};
    std::string_view before;
    for (const auto &[name, asked] : {std::pair<std::string_view, bool>{"--json", options_.json},
                                      {"--sarif", options_.sarif},
                                      {"--svg", options_.svg},
                                      {"--pdf", options_.pdf},
                                      {"--ods", options_.ods}}) {
      if (asked && !before.empty())
        return WrongLine{
            fmt::format("{} and {} cannot both have the one output; leave one out", before, name)};
      if (asked)
        before = name;
    }
    return options_;
  }

private:
  std::optional<WrongLine> subject(const std::string &word) {
    if (!options_.subject.empty())
      return WrongLine{fmt::format("`bodkin {}` takes one {}, and this line has {} and {}",
                                   verb_.name, verb_.subject, options_.subject, word)};
    options_.subject = word;
    return std::nullopt;
  }

  std::optional<WrongLine> option(const std::string &word) {
    const std::size_t equals = word.find('=');
    const std::string name = word.substr(0, equals);
    const auto *found = std::find_if(options.begin(), options.end(),
                                     [&](const OptionNamed &o) { return o.name == name; });
    if (found == options.end()) {
      const auto near = near_in(options, name);
      return WrongLine{near ? fmt::format("there is no {}; did you mean {}?", name, *near)
                            : fmt::format("there is no {}; `bodkin {} --help` lists what there is",
                                          name, verb_.name)};
    }
    if (found->verbs.find(verb_.name) == std::string_view::npos)
      return WrongLine{fmt::format("{} has no meaning for `bodkin {}`", name, verb_.name)};
    if (found->value.empty())
      return flag(name);
    if (equals != std::string::npos)
      return valued(name, word.substr(equals + 1));
    if (at_ + 1 == words_.size())
      return WrongLine{fmt::format("{} wants a {} after it", name, found->value)};
    return valued(name, words_[++at_]);
  }

  std::optional<WrongLine> flag(const std::string &name) {
    (name == "--json"     ? options_.json
     : name == "--svg"    ? options_.svg
     : name == "--pdf"    ? options_.pdf
     : name == "--ods"    ? options_.ods
     : name == "--sarif"  ? options_.sarif
     : name == "--strict" ? options_.strict
     : name == "--anyway" ? options_.anyway
                          : options_.reference) = true;
    return std::nullopt;
  }

  std::optional<WrongLine> valued(const std::string &name, const std::string &value) {
    if (value.empty())
      return WrongLine{fmt::format("{} wants something after it", name)};
    if (name == "--into")
      options_.into = value;
    else if (name == "--depfile")
      options_.depfile = value;
    else if (name == "--write")
      options_.write = value;
    else if (name == "--as")
      options_.start_as = value;
    else
      return dpi(value);
    return std::nullopt;
  }

  std::optional<WrongLine> dpi(const std::string &value) {
    int number = 0;
    const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), number);
    if (error != std::errc{} || end != value.data() + value.size() || number < least_dpi ||
        number > most_dpi)
      return WrongLine{fmt::format("--png takes dots an inch from {} to {}, as in --png 80",
                                   least_dpi, most_dpi)};
    options_.png_dpi = number;
    return std::nullopt;
  }

  const VerbNamed &verb_;
  const std::vector<std::string> &words_;
  std::size_t at_ = 0;
  Options options_;
};

} // namespace

std::variant<Options, AskedHelp, WrongLine>
read_command_line(const std::vector<std::string> &words) {
  if (words.empty())
    return WrongLine{"what is to be made? `bodkin --help` tells what there is"};
  const std::string &first = words.front();
  if (first == "--help" || first == "-h" || first == "help")
    return AskedHelp{words.size() > 1 ? help_about(words[1]) : help()};
  if (first == "--version")
    return AskedHelp{"bodkin " + version() + "\n"};
  for (const VerbNamed &verb : verbs)
    if (verb.name == first)
      return Line(verb, words).read();
  return unknown_verb(first);
}

} // namespace bodkin
