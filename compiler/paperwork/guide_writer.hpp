// How the chapters of the guide are written: one function each, all into one leaflet.
#pragma once

#include "paperwork/leaflet.hpp"
#include "paperwork/making.hpp"
#include "paperwork/tasks.hpp"

#include <map>
#include <set>
#include <string>
#include <string_view>

namespace bodkin::paperwork {

struct GuideWriter {
  const Making &making;
  std::vector<MakingTask> tasks; // in order
  Leaflet leaflet{};
  int steps = 0;
  bool chosen = false;                    // the good copies, from all
  bool masked = false;                    // what a mask is has been told
  bool cuts_told = false;                 // and how sheets are cut apart
  bool film_told = false;                 // and how much glue is enough
  bool slit = false, strip = false;       // told by steps of their own, before the folding
  std::map<std::string, int> cautioned{}; // by caution, the step that says it in full
  // Blocks before which, in the end, rules and labels are spoken of, and words explained.
  std::size_t first_caution = 0, words_at = 0;

  const Edition &edition() const { return making.edition; }
  std::string ruled(Length length) const { return paperwork::ruled(length, edition().ruler); }
  // As it is written in the manuscript, where a ruler shows it.
  std::string exact(Length length) const { return measured(length, edition().ruler); }

  // `count`: of how many sheets or copies it is done.
  void step(std::string text, std::string count = {});
  void head(std::string text, std::string count = {}) {
    leaflet.add(Headline{std::move(text), 2, {}, false, std::move(count)});
  }
  void say(std::string text, std::string lead = {}) {
    leaflet.add(Passage{std::move(lead), std::move(text), false});
  }
  void remark(std::string text) { leaflet.add(Passage{{}, std::move(text), true}); }
  void say_thin_film(); // once
  // Again in another step, what it begins with is said again.
  void care(const std::string &text);
};

// "53 sheets: 50 copies and 3 spare", "10 copies de-luxe", "50 good copies"
std::string count_of(const Making &making, const MakingTask &task);

inline constexpr std::string_view blade_caution =
    "Cut with a sharp blade along a steel edge, on a mat, fingers behind the edge and off the "
    "line; several light cuts, a few sheets at a time; the blade is covered when it is laid down.";
// One piece of card.
inline constexpr std::string_view card_caution =
    "a sharp blade along a steel edge, on a mat, fingers behind it; cover it when it is laid down.";
inline constexpr std::string_view flat_cut_caution =
    "Cut with a sharp blade along a steel edge, on a mat, fingers behind the edge and off the "
    "line; several light cuts, a few sheets at a time; the blade is covered when it is laid down. "
    "At a guillotine one person alone works, shown how, with guard and clamp in their place.";
// What is bound is not cut a few sheets at a time.
inline constexpr std::string_view trim_caution =
    "Cut with a sharp blade along a steel edge, on a mat, fingers behind the edge and off the "
    "line; many light cuts, never one hard one; the blade is covered when it is laid down. At a "
    "guillotine one person alone works, shown how, with guard and clamp in their place.";

void tell_copy(GuideWriter &writer);      // what it will be, what is needed
void tell_originals(GuideWriter &writer); // where something is glued on them
void tell_printing(GuideWriter &writer);
void tell_piles(GuideWriter &writer);
void tell_tasks(GuideWriter &writer); // finish and work by hand, in order
// How the sheets of a part lie when its folding begins.
bool fronts_lie_up(const CopyPart &part);
// How flat sheets are laid on each other; false where they are folded one by one.
bool tell_gathering(GuideWriter &writer);
// Where the copies of one run have another sheet than those of another.
void tell_other_piles(GuideWriter &writer);
void tell_folding(GuideWriter &writer, const CopyPart &part);
// Where the book's sheet is slit, with a picture; how its strip is glued. Nothing of other
// foldings.
void tell_slits(GuideWriter &writer);
void tell_strip(GuideWriter &writer);
void tell_step(GuideWriter &writer, const MakingTask &task); // of finish
void tell_hand(GuideWriter &writer, const MakingTask &task);
// Where several are laid on one sheet; false where they are not.
bool tell_cutting_apart(GuideWriter &writer, const CopyPart &part);
// Of a step `trim`: its cuts in order, how they are made, and what stays bare, with a blank before.
std::string cuts_in_order(const Making &making, std::size_t step, const CutBefore &was);
std::string trimming_by_knife(const Making &making, std::size_t step, const CutBefore &was);
std::string trimming_by_stop(const Making &making, std::size_t step, const CutBefore &was);
std::string rim_words(const GuideWriter &writer, std::size_t step);
// Measures from one upright line of a picture to the next, above it.
void tell_chain(const GuideWriter &writer, const std::set<Length> &at, Length whole,
                Measured &picture);
// Those that are bound with the book, or the others; the knife has taken so much of the book.
void tell_pieces(GuideWriter &writer, bool bound, const CutBefore &cut);
// A place on a page, measured from two edges of what the knife has left of it.
Shown place_shown(const GuideWriter &writer, const HandPlace &hand, const CutBefore &cut);
// Once, before numbers and signatures go on; else in the end.
void tell_counts(GuideWriter &writer, const MakingTask *before = nullptr);
void tell_rest(GuideWriter &writer);    // what to do with spares
void tell_plan(GuideWriter &writer);    // of the evening
void tell_numbers(GuideWriter &writer); // of a numbered edition, to sign off
void tell_words(GuideWriter &writer);   // those of the trade that the guide has used

} // namespace bodkin::paperwork
