#include "paperwork/ledger.hpp"

#include "edition/laid.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <map>
#include <set>

namespace bodkin::paperwork {
namespace {

class Gathering {
public:
  Gathering(const Edition &edition, const std::vector<PictureSeen> &seen) : edition_(edition) {
    for (const PictureSeen &one : seen)
      seen_.emplace(std::pair(one.element.file, one.element.begin), one);
  }

  RightsLedger run() {
    take(edition_, nullptr);
    for (const auto &piece : edition_.pieces)
      take(piece->edition, piece.get());
    for (const FaceId face : faces_)
      add_face(edition_[face]);
    for (LedgerWork &work : ledger_.works)
      reckon(work);
    return std::move(ledger_);
  }

private:
  void take(const Edition &part, const Piece *piece) {
    each_laid(part, [&](ElementId id, int page) {
      if (piece && !is_own_matter(*piece, part[id]))
        return;
      take_element(part[id], {piece, page});
      if (const int right = across_the_fold(part, id, page); right > 0)
        take_element(part[id], {piece, right});
    });
  }

  // What stands on a spread is laid once, on its left page, and seen on both.
  static int across_the_fold(const Edition &part, ElementId id, int page) {
    const auto &spread = part.pages[static_cast<std::size_t>(page)].spread;
    if (!spread)
      return 0;
    const Spread &of = part.spreads[*spread];
    const bool on_it = std::find(of.elements.begin(), of.elements.end(), id) != of.elements.end();
    return on_it && of.left == page ? of.right : 0;
  }

  void take_element(const Element &element, const PageSeen &seen) {
    if (const auto *picture = std::get_if<Picture>(&element.what))
      show(WorkKind::picture, picture->written, element, seen);
    else if (const auto *pasted = std::get_if<PasteUp>(&element.what))
      show(WorkKind::pasted, pasted->text, element, seen);
    else if (const auto *words = std::get_if<Words>(&element.what))
      take_words(*words, element, seen);
    else if (const auto *folio = std::get_if<Folio>(&element.what))
      set_in(folio->style);
  }

  void take_words(const Words &words, const Element &element, const PageSeen &seen) {
    set_in(*words.style);
    if (words.by != WrittenBy::maker)
      return;
    const TextId *text = std::get_if<TextId>(&words.words);
    if (text && *text != TextId::none)
      show(WorkKind::text, edition_.texts[at(*text)].name, element, seen,
           edition_.texts[at(*text)].source);
    else if (!words.file.empty())
      show(WorkKind::text, words.file, element, seen);
    else if (element.source)
      show(WorkKind::text, first_words(std::get<Prose>(words.words)), element, seen);
    else if (own_.insert(&element).second)
      ++ledger_.own_words;
  }

  static std::string first_words(const Prose &prose) {
    constexpr std::size_t enough = 40;
    std::string text = plain_text(prose);
    std::replace(text.begin(), text.end(), '\n', ' ');
    if (text.size() <= enough)
      return text;
    const std::size_t blank = text.rfind(' ', enough);
    return text.substr(0, blank == std::string::npos ? text.find(' ') : blank) + " …";
  }

  // One work shown twice from two sources is two lines of the ledger.
  void show(WorkKind kind, const std::string &what, const Element &element, const PageSeen &seen,
            const std::optional<Known<SourceId>> &otherwise = std::nullopt) {
    const std::optional<Known<SourceId>> &id = element.source ? element.source : otherwise;
    const ArtSource *source = id && **id != SourceId::none ? &edition_[**id] : nullptr;
    const auto [found, added] =
        works_.emplace(std::tuple(kind, what, source), ledger_.works.size());
    if (added)
      ledger_.works.push_back({.kind = kind, .what = what, .source = source});
    LedgerWork &work = ledger_.works[found->second];
    if (work.pages.empty() || !(work.pages.back() == seen))
      work.pages.push_back(seen);
    if (shown_.insert(&element).second) {
      work.elements.push_back(&element);
      see_changes(work, element);
    }
  }

  void see_changes(LedgerWork &work, const Element &element) const {
    const auto *picture = std::get_if<Picture>(&element.what);
    if (!picture)
      return;
    const auto line = [&](Range own) { return own.somewhere() ? own : element.range; };
    const auto seen = seen_.find({element.range.file, element.range.begin});
    if (picture->crop)
      say_change(work, "cropped", picture->crop->from);
    else if (seen != seen_.end() && seen->second.cut)
      say_change(work, "cropped", line(element.placement.area.from));
    if (picture->tone->kind == ToneKind::grey)
      say_change(work, "put in grey", line(picture->tone.from));
    else if (picture->tone->kind == ToneKind::line)
      say_change(work, "put in black and white", line(picture->tone.from));
    else if (seen != seen_.end() && seen->second.in_grey)
      say_change(work, "printed in grey", element.range);
  }

  static void say_change(LedgerWork &work, const char *words, Range line) {
    if (std::none_of(work.changes.begin(), work.changes.end(),
                     [&](const Change &change) { return change.words == words; }))
      work.changes.push_back({words, line});
  }

  // A style and those that it sets headings, quotes, lists and code in.
  void set_in(StyleId id) {
    if (id == StyleId::none || !styles_.insert(id).second)
      return;
    const Style &style = edition_[id];
    if (*style.face != FaceId::none &&
        std::find(faces_.begin(), faces_.end(), *style.face) == faces_.end())
      faces_.push_back(*style.face);
    for (const auto &heading : style.headings)
      if (heading)
        set_in(**heading);
    for (const auto &other : {style.quote, style.list, style.code})
      if (other)
        set_in(**other);
  }

  void add_face(const Face &face) {
    std::string what = face.family.empty() ? face.name : face.family;
    ledger_.works.push_back(
        {.kind = WorkKind::face, .what = std::move(what), .licence = face.licence});
  }

  void reckon(LedgerWork &work) const {
    const auto year = year_of(edition_);
    if (!work.source || !year || work.source->rights.value_or(Known<Rights>{}).value == Rights::own)
      return;
    for (const Known<LawId> &law : edition_.judged_by)
      work.terms.push_back(reckoned(*work.source, edition_[*law], *year));
  }

  const Edition &edition_;
  std::map<std::pair<FileId, Offset>, PictureSeen> seen_; // by where its line begins
  RightsLedger ledger_;
  std::map<std::tuple<WorkKind, std::string, const ArtSource *>, std::size_t> works_;
  std::set<StyleId> styles_;
  std::set<const Element *> own_, shown_;
  std::vector<FaceId> faces_; // in the order of their use
};

std::string page_word(const PageSeen &seen) {
  constexpr std::array<const char *, 4> of_wrap{"front-cover", "inside-front", "inside-back",
                                                "back-cover"};
  if (seen.piece && seen.piece->is_wrap() && seen.page >= 1 && seen.page <= 4)
    return of_wrap[static_cast<std::size_t>(seen.page) - 1];
  return std::to_string(seen.page);
}

} // namespace

RightsLedger ledger_of(const Edition &edition, const std::vector<PictureSeen> &seen) {
  return Gathering(edition, seen).run();
}

std::string written(const std::vector<PageSeen> &pages) {
  std::string text;
  for (std::size_t i = 0, j = 0; i < pages.size(); i = j) {
    const Piece *piece = pages[i].piece;
    for (j = i + 1; j < pages.size() && pages[j] == PageSeen{piece, pages[j - 1].page + 1}; ++j)
      if (piece && piece->is_wrap())
        break;
    const bool same = i > 0 && pages[i - 1].piece == piece;
    text += i == 0 ? "" : same ? ", " : "; ";
    if (piece && !same)
      text += piece->is_reverse() ? "reverse" : piece->name + " ";
    if (piece && piece->is_reverse())
      continue;
    text += page_word(pages[i]);
    if (j - i > 1)
      text += fmt::format("{}{}", j - i == 2 ? ", " : "-", page_word(pages[j - 1]));
  }
  return text;
}

std::string on_pages(const std::vector<PageSeen> &pages) {
  std::vector<int> numbers;
  for (const PageSeen &seen : pages)
    if (!seen.piece)
      numbers.push_back(seen.page);
  if (numbers.size() == pages.size())
    return "on " + spoken::pages_listed(numbers);
  return fmt::format("on {}{}",
                     numbers.empty()       ? ""
                     : numbers.size() == 1 ? "page "
                                           : "pages ",
                     written(pages));
}

std::string_view word_for(WorkKind kind) {
  switch (kind) {
  case WorkKind::picture:
    return "picture";
  case WorkKind::text:
    return "text";
  case WorkKind::face:
    return "face";
  case WorkKind::pasted:
    break;
  }
  return "paste-up";
}

std::string right_in_words(const ArtSource &source) {
  if (!source.rights)
    return "not said";
  switch (**source.rights) {
  case Rights::own:
    return "own";
  case Rights::public_domain:
    return source.because.empty() ? "public domain" : "public domain: " + source.because;
  case Rights::permission:
    return "permission";
  case Rights::licence:
    return "licence " + source.licence;
  case Rights::unknown:
    break;
  }
  return "unknown";
}

std::optional<int> year_of(const Edition &edition) {
  return edition.dated ? std::optional((*edition.dated)->year) : std::nullopt;
}

} // namespace bodkin::paperwork
