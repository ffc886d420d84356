#include "paperwork/own_words.hpp"

#include "edition/laid.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <memory>
#include <set>

namespace bodkin::paperwork {
namespace {

Problem english_sentences(const Element &element, const Known<std::string> &language) {
  return {.kind = Kind::note,
          .check = "english-sentences",
          .range = element.keyword,
          .message = fmt::format(
              "{} written in English; the edition's language is {}",
              name_of(element) == "credits" ? "these credits are" : "this colophon is", *language),
          .why = "its sentences are put together from the lines of the edition, and the compiler "
                 "knows those of one language",
          .type = {{"words in body\n  says\n    [50](fact:copies)",
                    "and sentences of your own round the facts"}}};
}

Problem english_cards(const Edition &edition) {
  return {.kind = Kind::note,
          .check = "english-sentences",
          .range = edition.cards->from,
          .message = fmt::format("these cards are written in English; the edition's language is {}",
                                 *edition.languages.front()),
          .why = "pages, papers and copies stand on them in words that the compiler knows in one "
                 "language",
          .type = {{{}, "leave `cards` out, and write the cards by hand"}}};
}

bool in_english(const Edition &edition) {
  const std::string &language = *edition.languages.front();
  return language == "en" || language.starts_with("en-");
}

Problem nobody_to_name(const Element &element) {
  return {.kind = Kind::note,
          .check = "nobody-to-name",
          .range = element.keyword,
          .message = "these credits are empty: nothing on a page has a source that wants naming",
          .why = "credits are set from sources: a credit, or a title or an author of somebody "
                 "else's work",
          .type = {{"credit     \"Photograph by A. Ferrier.\"", "below a source"}}};
}

bool is_written_here(const Element &element) {
  const auto *words = std::get_if<Words>(&element.what);
  return words && words->by != WrittenBy::maker;
}

Prose placed(Prose prose, Range from) {
  for (Block &block : prose.blocks) {
    block.from = from;
    for (Span &span : block.spans)
      span.from = from;
  }
  return prose;
}

// By element, whose copies hold the sheets that it stands on in one part.
std::map<ElementId, RunSet> read_by(const CopyPart &part) {
  std::map<ElementId, RunSet> runs;
  each_laid(*part.edition, [&](ElementId id, int page) {
    if (!is_written_here((*part.edition)[id]))
      return;
    RunSet whose = part.imposition.sheet_of(page).only;
    if (part.piece && part.piece->only && !part.is_other_book())
      whose = **part.piece->only;
    const auto [known, first] = runs.emplace(id, whose);
    if (!first)
      known->second = known->second.with(whose);
  });
  return runs;
}

class Writing {
public:
  Writing(const Edition &edition, const Sources &sources, Problems &problems,
          const std::vector<PictureSeen> &seen)
      : problems_(problems), edition_(edition), ledger_(ledger_of(edition, seen)),
        credits_(credits(edition, ledger_)), parts_(imposed(edition, sources)),
        colophons_(edition, ledger_, parts_, sources) {
    for (const CopyPart &part : parts_)
      runs_[part.piece] = read_by(part);
  }

  // `piece` is null where the elements are the book's own.
  void write(const Piece *piece, std::vector<Element> &elements) const {
    for (std::size_t i = 0; i < elements.size(); ++i)
      if (is_written_here(elements[i])) {
        auto &words = std::get<Words>(elements[i].what);
        const bool of_credits = words.by == WrittenBy::credits;
        words.words =
            placed(of_credits ? credits_ : colophons_.of(whose(piece, static_cast<ElementId>(i))),
                   elements[i].range);
      }
  }

  void look(const Element &element) {
    if (!in_english(edition_))
      problems_.push_back(english_sentences(element, edition_.languages.front()));
    if (std::get<Words>(element.what).by == WrittenBy::credits && credits_.blocks.empty())
      problems_.push_back(nobody_to_name(element));
  }

private:
  static std::vector<CopyPart> imposed(const Edition &edition, const Sources &sources) {
    Problems told_later; // the walk lays the sheets again and tells what is wrong with them
    return impose_parts(edition, sources, told_later);
  }

  RunSet whose(const Piece *piece, ElementId id) const {
    const auto part = runs_.find(piece);
    if (part == runs_.end())
      return {};
    const auto element = part->second.find(id);
    return element == part->second.end() ? RunSet() : element->second;
  }

  Problems &problems_;
  const Edition &edition_;
  RightsLedger ledger_;
  Prose credits_;
  std::vector<CopyPart> parts_;
  Colophons colophons_;
  std::map<const Piece *, std::map<ElementId, RunSet>> runs_;
};

// The prose of words on a page; null: it has none.
const Prose *prose_of(const Edition &part, const Words &words) {
  if (const auto *prose = std::get_if<Prose>(&words.words))
    return prose;
  const TextId text = std::get<TextId>(words.words);
  return text == TextId::none ? nullptr : &part.texts[at(text)].prose;
}

} // namespace

bool credits_tell_changes(const Edition &edition) {
  const auto is_credits = [](const Element &element) {
    return is_written_here(element) && std::get<Words>(element.what).by == WrittenBy::credits;
  };
  const auto asks = [&](const ArtSource &source) {
    return source.licence_id && edition[*source.licence_id].asks_changes_said;
  };
  return std::any_of(edition.elements.begin(), edition.elements.end(), is_credits) &&
         std::any_of(edition.sources.begin(), edition.sources.end(), asks);
}

void write_own_words(Edition &edition, const Sources &sources, Problems &problems,
                     const std::vector<PictureSeen> &seen) {
  if (edition.cards && !in_english(edition))
    problems.push_back(english_cards(edition));
  if (std::none_of(edition.elements.begin(), edition.elements.end(), is_written_here))
    return;
  Writing writing(edition, sources, problems, seen);
  for (const Element &element : edition.elements)
    if (is_written_here(element))
      writing.look(element);
  for (std::shared_ptr<const Piece> &piece : edition.pieces) {
    const auto written = std::make_shared<Piece>(*piece);
    writing.write(piece.get(), written->edition.elements);
    piece = written;
  }
  writing.write(nullptr, edition.elements);
}

CreditsGiven::CreditsGiven(const Edition &edition) {
  std::set<const Prose *> seen;
  const auto read = [&](const Edition &part) {
    each_laid(part, [&](ElementId id, int) {
      const auto *words = std::get_if<Words>(&part[id].what);
      if (!words)
        return;
      all_ |= words->by == WrittenBy::credits;
      if (const Prose *prose = prose_of(part, *words); prose && seen.insert(prose).second)
        words_ += plain_text(*prose) + "\n";
    });
  };
  read(edition);
  for (const auto &piece : edition.pieces)
    read(piece->edition);
}

bool CreditsGiven::name(const ArtSource &source) const {
  const auto holds = [this](const std::optional<Known<std::string>> &name) {
    return name && !(*name)->empty() && words_.find(**name) != std::string::npos;
  };
  return all_ || holds(source.credit) || holds(source.author);
}

} // namespace bodkin::paperwork
