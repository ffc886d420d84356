// The command line as a value.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace bodkin {

enum class Verb { compile, preflight, estimate, sheets, proof, dummy, arrange, explain, start };

struct Options {
  Verb verb = Verb::compile;
  std::string subject; // the manuscript, the word, or the folder
  std::optional<std::string> into, depfile, write;
  std::string start_as = "booklet";
  std::optional<int> png_dpi;
  bool json = false, ods = false, svg = false, pdf = false, sarif = false, strict = false,
       anyway = false, reference = false;
};

struct AskedHelp {
  std::string text;
};
struct WrongLine {
  std::string message; // one line, and what to type instead
};

std::variant<Options, AskedHelp, WrongLine>
read_command_line(const std::vector<std::string> &words);

} // namespace bodkin
