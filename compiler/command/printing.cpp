#include "command/printing.hpp"

#include "command/help.hpp"
#include "command/made_from.hpp"
#include "press/leaflet.hpp"
#include "press/originals.hpp"
#include "press/png.hpp"
#include "press/price_cards.hpp"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>

namespace bodkin {

press::Imprint imprint_of(const Edition &edition, const std::string &digest) {
  return {.title = *edition.title,
          .maker = edition.maker ? **edition.maker : std::string(),
          .dated = edition.dated ? **edition.dated : Date{},
          .producer = "Bodkin " + version(),
          .digest = digest};
}

PrintRoom::PrintRoom(WayThrough &way, const std::string &digest, Progress &progress)
    : imprint_(imprint_of(way.edition(), digest)), way_(way),
      progress_(progress), job_{way.edition(),
                                way.imposition,
                                way.parts,
                                way.drawings,
                                way.modes,
                                way.passes,
                                *way.gallery,
                                [&progress](int done, int of) {
                                             progress.say("drawing page", done, of); }},
      plates_(job_), outputs_(plates_, imprint_) {}

void PrintRoom::sheets(Delivery &delivery) {
  progress_.say("writing sheets.pdf");
  delivery.begin("sheets.pdf");
  outputs_.sheets([&](std::string_view bytes) { delivery.add(bytes); });
  delivery.end();
}

void PrintRoom::passes(Delivery &delivery) {
  for (const Pass &pass : way_.passes) {
    progress_.say("writing " + pass.file);
    delivery.begin(pass.file);
    outputs_.pass(pass, [&](std::string_view bytes) { delivery.add(bytes); });
    delivery.end();
  }
}

void PrintRoom::proof(Delivery &delivery) {
  progress_.say("writing proof.pdf");
  delivery.begin("proof.pdf");
  outputs_.proof([&](std::string_view bytes) { delivery.add(bytes); });
  delivery.end();
}

void PrintRoom::originals(Delivery &delivery) {
  if (!press::has_originals(job_))
    return;
  progress_.say("writing originals.pdf");
  press::PrintJob black = job_;
  black.all_black = true;
  press::Plates plates(black);
  press::Outputs outputs(plates, imprint_);
  delivery.begin("originals.pdf");
  outputs.originals([&](std::string_view bytes) { delivery.add(bytes); });
  delivery.end();
}

void PrintRoom::papers(Delivery &delivery, Papers &papers) {
  progress_.say("writing papers");
  delivery.write("ticket.txt", paperwork::as_text(papers.ticket, paper_columns));
  delivery.write("assembly.txt", paperwork::as_text(papers.guide, paper_columns));
  if (!papers.type.usable())
    return;
  const press::Sink sink = [&](std::string_view bytes) { delivery.add(bytes); };
  delivery.begin("ticket.pdf");
  press::write_leaflet(papers.ticket, papers.type, imprint_, "ticket", sink);
  delivery.end();
  if (papers.cards) {
    delivery.begin("prices.pdf");
    press::write_price_cards(*papers.cards, papers.type, imprint_, sink);
    delivery.end();
  }
  delivery.begin("assembly.pdf");
  press::write_leaflet(papers.guide, papers.type, plates_, imprint_, "assembly", sink);
  delivery.end();
}

void PrintRoom::pictures(Delivery &delivery, int dpi) {
  const auto draw = [&](const char *name, const std::function<void(const press::Sink &)> &make) {
    std::string pdf;
    make([&](std::string_view bytes) { pdf.append(bytes); });
    press::pages_as_png(pdf, dpi, [&](int page, std::string_view png) {
      progress_.say(fmt::format("drawing {} {}", name, page));
      delivery.write(fmt::format("png/{}-{:02}.png", name, page), png);
    });
  };
  draw("proof", [&](const press::Sink &sink) { outputs_.proof(sink); });
  draw("sheets", [&](const press::Sink &sink) { outputs_.sheets(sink); });
}

std::string digest_of(const std::vector<InputFile> &inputs) {
  Sha256 sum;
  for (const InputFile &input : inputs)
    sum.take(input.path + " " + input.digest + "\n");
  return written(sum.finish());
}

std::string output_folder(const Options &options) {
  return options.into ? *options.into
                      : std::filesystem::path(options.subject).replace_extension().string();
}

void finish_beside(Delivery &delivery, const WayThrough &way, const std::vector<InputFile> &inputs,
                   bool keep_pictures) {
  for (const std::string &name : delivery.earlier())
    if (name != made_from_name && (keep_pictures || !name.starts_with("png/")))
      delivery.keep(name);
  std::vector<std::string> all = delivery.written();
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  delivery.write(made_from_name, made_from(*way.edition().title, inputs, all));
  delivery.finish();
}

} // namespace bodkin
