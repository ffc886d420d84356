// The PDFs of an edition, written from its plates: one after another, each whole.
#pragma once

#include "press/contents.hpp"
#include "press/plates.hpp"
#include "press/proof_frame.hpp"

#include <functional>
#include <map>
#include <string>
#include <string_view>

namespace bodkin::press {

struct Imprint {
  std::string title, maker; // maker may be empty
  Date dated;               // year 0: no date is written
  std::string producer;     // "Bodkin 0.1.0"
  std::string digest; // of all that it was made from, in hexadecimal: the PDF's own identifier
};

// Takes the bytes of a PDF as they come. May throw where they cannot be kept.
using Sink = std::function<void(std::string_view)>;

class Outputs {
public:
  Outputs(Plates &plates, Imprint imprint);

  void sheets(const Sink &sink); // two pages a sheet, front and back, never turned
  void pass(const Pass &pass, const Sink &sink);
  void proof(const Sink &sink);
  // Pages at size, then sides for the glass, with what is said to hands in pale blue. Black only
  // where the plates are.
  void originals(const Sink &sink);

private:
  void draw_side(Contents &contents, int sheet, int side, std::int64_t nth = 0);
  void draw_on_paper(Contents &contents, int page);
  void draw_beneath(Contents &contents, int page);
  void lay_paper(Contents &contents, int page);
  QPDFObjectHandle veil(double hidden);
  QPDFObjectHandle box(double width, double height);
  void write(const std::vector<QPDFObjectHandle> &pages, std::string_view kind, const Sink &sink);
  QPDFObjectHandle pass_page(const PassPage &page, ContentStreams &streams, const Strokes *over);
  QPDFObjectHandle original_of_page(int page, int number, int of);
  QPDFObjectHandle proof_page(const ProofSpread &spread);
  QPDFObjectHandle page_group(int page);

  Plates &plates_;
  Imprint imprint_;
  std::map<std::pair<double, double>, QPDFObjectHandle> boxes_;
  std::map<double, QPDFObjectHandle> veils_;           // by the share that they hide
  QPDFObjectHandle multiplying_, isolated_, on_paper_; // a state and two kinds of group
  std::vector<QPDFObjectHandle> passing_;              // forms of the output now written alone
};

} // namespace bodkin::press
