#include "paperwork/tools.hpp"

#include "edition/copy_numbers.hpp"
#include "edition/piece.hpp"
#include "paperwork/tasks.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

bool has_step(const Edition &edition, StepKind kind) {
  return std::any_of(edition.finish.begin(), edition.finish.end(),
                     [&](const FinishStep &step) { return step.kind == kind; });
}

bool has_hand(const Edition &edition, HandKind kind) {
  return std::any_of(edition.elements.begin(), edition.elements.end(), [&](const Element &element) {
    const auto *hand = std::get_if<Hand>(&element.what);
    return hand != nullptr && hand->kind == kind;
  });
}

// Several on a sheet, of the book or of what goes with it.
bool is_cut_apart(const Edition &edition) {
  return *edition.up > 1 || std::any_of(edition.pieces.begin(), edition.pieces.end(),
                                        [](const auto &piece) { return piece->is_cut_out(); });
}

bool is_glued(const Edition &edition) {
  return has_step(edition, StepKind::glue) || has_hand(edition, HandKind::tip_in) ||
         std::any_of(edition.pieces.begin(), edition.pieces.end(), [](const auto &piece) {
           return piece->is_band() || piece->is_boards() || piece->is_pocket() ||
                  piece->is_tipped_in();
         });
}

// Where a maker's words name what is glued with, nobody is told another.
bool names_a_glue(const std::string &text) {
  constexpr std::array<std::string_view, 8> glues{"paste", "PVA",    "glue stick", "tape",
                                                  "hot",   "starch", "cement",     "corners"};
  return std::any_of(glues.begin(), glues.end(),
                     [&](std::string_view glue) { return text.find(glue) != std::string::npos; });
}

std::int64_t good_copies(const Edition &edition, const std::optional<Known<std::uint32_t>> &only) {
  return copies_of(edition, only ? std::optional(**only) : std::nullopt).good;
}

std::string stapler(const Making &making, const FinishStep &step) {
  const Edition &edition = making.edition;
  return fmt::format(
      "a long-arm stapler (reach {} or more), {} staples with {} legs, and a few more",
      written(left_of_page(making, 1, {}).width, edition.ruler),
      good_copies(edition, step.work.only) * step.staples, written(step.leg, edition.ruler));
}

// A piece is printed, and brought by nobody.
bool adds_a_piece(const Edition &edition, const FinishStep &step) {
  return std::any_of(edition.pieces.begin(), edition.pieces.end(), [&](const auto &piece) {
    return step.text.find(piece->name) != std::string::npos;
  });
}

// Common practice, no source: what these steps are done with at a table. What several steps need is
// told once, by tools_words.
std::string tool_of(const Making &making, const FinishStep &step) {
  const Edition &edition = making.edition;
  switch (step.kind) {
  case StepKind::staple:
    return stapler(making, step);
  case StepKind::sew:
    return fmt::format(
        "a needle, a thimble, strong thread ({} a copy), scissors, an awl and a board "
        "to prick into",
        written(thread_for(making, step), edition.ruler));
  case StepKind::punch:
    return "a punch";
  case StepKind::glue:
    return names_a_glue(step.text) ? "what is glued with: " + harmless(step.text) : "";
  case StepKind::round:
    return "a corner cutter";
  case StepKind::tie:
    return step.text.empty() ? "something to tie it with" : harmless(step.text);
  case StepKind::dry:
    return "room, or a line with pegs, for things to dry";
  case StepKind::press:
    return "two clean boards and a weight";
  case StepKind::add:
    return adds_a_piece(edition, step) ? ""
           : step.text.empty()         ? "what is laid in"
                                       : "to lay in: " + harmless(step.text);
  case StepKind::pack:
    return step.text.empty()
               ? "something to pack the copies in"
               : fmt::format("for packing, {} times: {}", good_copies(edition, step.work.only),
                             harmless(step.text));
  default:
    return "";
  }
}

std::string stickers(const Edition &edition, const Element &element) {
  const auto &hand = std::get<Hand>(element.what);
  return fmt::format("stickers ({}): {}, and a few more", harmless(hand.text),
                     good_copies(edition, element.work.only));
}

std::string tool_of(const Edition &edition, const Element &element, const Hand &hand) {
  const std::string text = harmless(hand.text);
  switch (hand.kind) {
  case HandKind::stamp:
    return fmt::format("the stamp ({}), ready cut, and an ink pad", text.substr(0, text.find(',')));
  case HandKind::sticker:
    return stickers(edition, element);
  case HandKind::signature:
  case HandKind::number:
    return in_pencil(hand) ? "" : "a pen whose ink does not fade"; // a pencil lies by the rule
  case HandKind::spray:
    return fmt::format("spray and a mask for it ({}), gloves, and a place with moving air", text);
  case HandKind::colour:
    return fmt::format("colours ({})", text);
  case HandKind::punch:
    return "a punch";
  case HandKind::tip_in:
    return fmt::format("what is tipped in ({})", text);
  case HandKind::tear:
  case HandKind::other:
    break;
  }
  return "";
}

void add_new(std::vector<std::string> &tools, std::string tool) {
  if (!tool.empty() && std::find(tools.begin(), tools.end(), tool) == tools.end())
    tools.push_back(std::move(tool));
}

void add_for_folds(const Edition &edition, std::vector<std::string> &tools) {
  const bool crease = has_step(edition, StepKind::crease);
  const bool fold = !edition.folding->steps.empty() || has_step(edition, StepKind::fold);
  if (crease || fold)
    add_new(tools, fmt::format("a bone folder, or the back of a spoon, {}",
                               crease && fold ? "to crease and to fold"
                               : crease       ? "to crease"
                                              : "to fold"));
  if (crease)
    add_new(tools, "something soft to crease on: a mat, or some paper");
}

std::string ruler_words(const Edition &edition, bool cuts) {
  return fmt::format("a {}rule marked in {}, a soft pencil and an eraser", cuts ? "steel " : "",
                     edition.ruler == Ruler::inches ? "thirty-seconds of an inch" : "millimetres");
}

bool has_masks(const Edition &edition) {
  return has_hand(edition, HandKind::stamp) || has_hand(edition, HandKind::sticker) ||
         has_hand(edition, HandKind::tip_in);
}

// What is cut: along a rule, by hand, or with a machine where the cut goes from edge to edge.
void add_for_cuts(const Edition &edition, std::vector<std::string> &tools) {
  const bool trim = has_step(edition, StepKind::trim);
  const bool whole = trim || has_step(edition, StepKind::cut) || is_cut_apart(edition);
  const bool slit = !edition.folding->slits.empty();
  if (whole || slit)
    add_new(tools, fmt::format("a sharp knife and a cutting mat{}",
                               slit                 ? ", for the slit"
                               : has_masks(edition) ? "; a guillotine, if there is one"
                                                    : ", or a guillotine"));
  add_new(tools, ruler_words(edition, whole || slit || has_step(edition, StepKind::crease)));
  if (trim || has_masks(edition))
    add_new(tools, fmt::format("stiff card for {}, and a set square",
                               trim && has_masks(edition) ? "a template and for masks"
                               : trim                     ? "a template"
                                                          : "masks"));
}

bool has_waste(const Edition &edition) {
  return is_glued(edition) || has_hand(edition, HandKind::stamp) ||
         has_hand(edition, HandKind::spray) || has_hand(edition, HandKind::colour);
}

} // namespace

std::vector<std::string> tools_words(const Making &making) {
  const Edition &edition = making.edition;
  std::vector<std::string> tools;
  add_for_folds(edition, tools);
  add_for_cuts(edition, tools);
  for (const FinishStep &step : edition.finish)
    add_new(tools, tool_of(making, step));
  if (has_step(edition, StepKind::staple))
    add_new(tools, "without a long arm: a stapler that opens flat, a soft board");
  if (has_step(edition, StepKind::staple) || has_step(edition, StepKind::sew) ||
      has_step(edition, StepKind::trim))
    add_new(tools, "two clips or pegs");
  if (is_glued(edition))
    add_new(tools, "glue for paper (PVA or a glue stick) and a narrow brush");
  for (const Element &element : edition.elements)
    if (const auto *hand = std::get_if<Hand>(&element.what))
      add_new(tools, tool_of(edition, element, *hand));
  if (std::any_of(edition.elements.begin(), edition.elements.end(), is_gummed))
    add_new(tools, "a damp sponge or cloth, for what is gummed");
  if (has_waste(edition))
    add_new(tools, "waste paper, to lay under and between");
  return tools;
}

// Out and back along the fold, and ends to tie; common practice, no source.
Length thread_for(const Making &making, const FinishStep &step) {
  constexpr int few = 4;
  const Length height = left_of_page(making, 1, {}).height;
  const Length needed = step.holes > few ? height * 3 : height * 5 / 2;
  const Length whole = making.edition.ruler == Ruler::inches ? Length::inches(1) : Length::mm(10);
  return whole * ((needed.units() + whole.units() - 1) / whole.units());
}

std::string_view usual_caution(HandKind kind) {
  switch (kind) {
  case HandKind::stamp:
    return "The ink of a pad does not wash out: cover the table.";
  case HandKind::spray:
    return "Spray outdoors or in moving air, never near a flame or anything that glows, with the "
           "mask, gloves and goggles that the label asks for; let it dry there before you stack "
           "it.";
  case HandKind::colour:
    return "Dust of chalks and pigments is not for breathing: wipe it off damp, never blow it. "
           "What the label says comes first.";
  case HandKind::punch:
    return "Keep fingers out of the punch's mouth; a hollow punch is struck on a soft board, with "
           "goggles.";
  case HandKind::tip_in:
    return "Glue in an aired room, off skin and eyes and away from flames; hot glue burns. What "
           "the label says comes first.";
  default:
    return "";
  }
}

} // namespace bodkin::paperwork
