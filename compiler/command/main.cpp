#include "command/delivery.hpp"
#include "command/options.hpp"
#include "command/verbs.hpp"
#include "command/way.hpp"

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fmt/format.h>
#include <malloc.h>
#include <new>
#include <unistd.h>

namespace {

using namespace bodkin;

// Photographs pass through memory whole, one after another: without this, each would be given back
// to the system and asked for anew, which costs more than copying it.
void keep_memory_at_hand() {
  mallopt(M_MMAP_THRESHOLD, 1 << 30);
  mallopt(M_TRIM_THRESHOLD, 1 << 30);
  mallopt(M_TOP_PAD, 1 << 24);
}

// Beside the program where it was installed, else the source tree that it was built from.
std::string shelf_root() {
  namespace fs = std::filesystem;
  std::error_code error;
  const fs::path program = fs::read_symlink("/proc/self/exe", error);
  const fs::path installed = program.parent_path().parent_path() / "share" / "bodkin";
  return fs::is_directory(installed / "stdlib", error) ? installed.string() : BODKIN_SOURCE_DIR;
}

int run(const Options &options, const Desk &desk) {
  switch (options.verb) {
  case Verb::compile:
    return compile(options, desk);
  case Verb::preflight:
    return preflight(options, desk);
  case Verb::estimate:
    return estimate(options, desk);
  case Verb::sheets:
    return sheets(options, desk);
  case Verb::proof:
    return proof(options, desk);
  case Verb::dummy:
    return dummy(options, desk);
  case Verb::arrange:
    return arrange(options, desk);
  case Verb::explain:
    return explain(options, desk);
  case Verb::start:
    return start(options, desk);
  }
  return 2;
}

int guarded(const Options &options, const Desk &desk) {
  try {
    return run(options, desk);
  } catch (const NoManuscript &problem) {
    fmt::print(stderr, "bodkin: {}\n", problem.what());
  } catch (const CannotWrite &problem) {
    fmt::print(stderr, "bodkin: {}\n", problem.what());
  } catch (const std::bad_alloc &) {
    fmt::print(stderr, "bodkin: this machine has not enough memory for this edition\n");
  } catch (const std::exception &problem) {
    fmt::print(stderr, "bodkin: {}\n", problem.what());
  }
  return 3;
}

int answer(const std::vector<std::string> &words) {
  const auto line = read_command_line(words);
  if (const auto *asked = std::get_if<AskedHelp>(&line)) {
    std::fwrite(asked->text.data(), 1, asked->text.size(), stdout);
    return 0;
  }
  if (const auto *wrong = std::get_if<WrongLine>(&line)) {
    fmt::print(stderr, "bodkin: {}\n", wrong->message);
    return 2;
  }
  const Options &options = std::get<Options>(line);
  if (options.pdf && isatty(STDOUT_FILENO) == 1) {
    fmt::print(stderr,
               "bodkin: a PDF is nothing to read on a screen of text; type: bodkin sheets "
               "--pdf {} >sheets-drawn.pdf\n",
               options.subject);
    return 2;
  }
  const bool terminal = isatty(STDERR_FILENO) == 1;
  const Desk desk{shelf_root(), terminal, terminal && std::getenv("NO_COLOR") == nullptr};
  return guarded(options, desk);
}

} // namespace

int main(int count, char **words) {
  keep_memory_at_hand();
  std::signal(SIGXFSZ, SIG_IGN); // a file that may not grow is a write that fails, with its reason
  std::signal(SIGPIPE, SIG_IGN);
  try {
    return answer({words + 1, words + count});
  } catch (...) { // while telling what was wrong: there is nothing left to tell it with
    return 3;
  }
}
