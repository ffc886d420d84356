#include "command/printing.hpp"
#include "command/telling.hpp"

#include <filesystem>
#include <fmt/format.h>

namespace bodkin {

// Writes the proof into the folder of outputs and leaves the rest of it as it is.
int proof(const Options &options, const Desk &desk) {
  namespace fs = std::filesystem;
  Progress progress(desk.progress_shown);
  const auto way = walk(options.subject, desk.shelf_root, true, progress);
  if (!way->reading.has_edition) {
    progress.clear();
    tell_problems(*way, options, desk);
    return 1;
  }
  const std::string folder = output_folder(options);
  const std::vector<InputFile> inputs = inputs_of(*way, desk.shelf_root);
  Delivery delivery(folder);
  {
    PrintRoom printing(*way, digest_of(inputs), progress);
    printing.proof(delivery);
    if (options.png_dpi)
      printing.pictures(delivery, *options.png_dpi);
  }
  const std::vector<std::string> made = delivery.written();
  finish_beside(delivery, *way, inputs, false);
  progress.clear();
  tell_problems(*way, options, desk);
  for (const std::string &name : made)
    print(fmt::format("  {}/{}\n", fs::path(folder).filename().string(), name));
  return stopped(*way, options) ? 1 : 0;
}

} // namespace bodkin
