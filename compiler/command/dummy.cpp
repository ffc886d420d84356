#include "press/dummy.hpp"
#include "command/made_from.hpp"
#include "command/printing.hpp"
#include "command/telling.hpp"

#include <filesystem>
#include <fmt/format.h>

namespace bodkin {

// Writes the dummy into the folder of outputs and leaves the rest of it as it is.
int dummy(const Options &options, const Desk &desk) {
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
  progress.say("writing dummy.pdf");
  delivery.begin(dummy_name);
  press::write_dummy({way->edition(), way->imposition, way->faces->faces,
                      press::dummy_sides(way->edition(), way->imposition, way->sources)},
                     imprint_of(way->edition(), digest_of(inputs)),
                     [&](std::string_view bytes) { delivery.add(bytes); });
  delivery.end();
  finish_beside(delivery, *way, inputs, true);
  progress.clear();
  tell_problems(*way, options, desk);
  print(fmt::format("  {}/dummy.pdf\n", fs::path(folder).filename().string()));
  return stopped(*way, options) ? 1 : 0;
}

} // namespace bodkin
