// Making the PDFs of an edition that has walked the way.
#pragma once

#include "command/delivery.hpp"
#include "command/options.hpp"
#include "command/papers.hpp"
#include "command/way.hpp"
#include "press/output.hpp"

#include <memory>

namespace bodkin {

// Holds the plates while PDFs are written from them.
class PrintRoom {
public:
  PrintRoom(WayThrough &way, const std::string &digest, Progress &progress);

  void sheets(Delivery &delivery);
  void passes(Delivery &delivery);
  void proof(Delivery &delivery);
  // Where something is glued on a page's original; else nothing is written.
  void originals(Delivery &delivery);
  // Papers for the table and the counter. The last of all: the plates are grey afterwards. Where no
  // face is there to set them in, their words alone.
  void papers(Delivery &delivery, Papers &papers);
  // Pictures of the proof and of the sheets.
  void pictures(Delivery &delivery, int dpi);

private:
  press::Imprint imprint_;
  WayThrough &way_;
  Progress &progress_;
  press::PrintJob job_;
  press::Plates plates_;
  press::Outputs outputs_;
};

press::Imprint imprint_of(const Edition &edition, const std::string &digest);

// NAME/ beside NAME.bodkin, unless --into says where.
std::string output_folder(const Options &options);

// Puts what was written beside the outputs of an earlier compile, which stay; of those, pictures
// (png/) only where they are asked to.
void finish_beside(Delivery &delivery, const WayThrough &way, const std::vector<InputFile> &inputs,
                   bool keep_pictures);

// Hashed from the inputs' digests: what the PDFs are identified by.
std::string digest_of(const std::vector<InputFile> &inputs);

} // namespace bodkin
