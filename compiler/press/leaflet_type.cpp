#include "press/leaflet_type.hpp"

#include "edition/read.hpp"

#include <algorithm>
#include <cmath>

namespace bodkin::press {
namespace {

constexpr std::array<std::string_view, 16> style_names{
    "paper-title",   "paper-kind",    "paper-aside", "paper-head",
    "paper-number",  "paper-subhead", "paper-minor", "paper-text",
    "paper-small",   "paper-column",  "paper-cell",  "paper-care",
    "paper-caption", "paper-measure", "paper-page",  "paper-foot"};

constexpr std::string_view own_name = "paperwork.bodkin";

// A manuscript that borrows the styles and uses each, so that their faces are opened.
std::string manuscript() {
  std::string text = "borrow \"styles/paperwork\"\nedition \"Paperwork\"\n  language en\npage 1\n";
  for (const std::string_view name : style_names)
    text += "  words \"x\" in " + std::string(name) + "\n    at 0in 0in, 1in x 1in\n";
  return text;
}

// The shelf, and beside it one manuscript.
class ShelfAlone : public Files {
public:
  explicit ShelfAlone(const Files &files)
      : files_(files), manuscript_(std::make_shared<const std::string>(manuscript())) {}
  Lookup look(std::string_view, std::string_view written, std::size_t) const override {
    return written == own_name ? Lookup{Trouble::none, std::string(own_name)}
                               : Lookup{Trouble::absent};
  }
  FileBytes read(const std::string &) const override { return {manuscript_, *manuscript_}; }
  FileBytes shelf(std::string_view name) const override { return files_.shelf(name); }
  std::vector<std::string> shelf_names(std::string_view folder) const override {
    return files_.shelf_names(folder);
  }

private:
  const Files &files_;
  std::shared_ptr<const std::string> manuscript_;
};

std::array<StyleId, 16> styles_of(const Edition &edition, std::size_t from) {
  std::array<StyleId, 16> styles;
  styles.fill(StyleId::none);
  for (std::size_t i = from; i < edition.styles.size(); ++i)
    for (std::size_t role = 0; role < style_names.size(); ++role)
      if (edition.styles[i].name == style_names[role])
        styles[role] = static_cast<StyleId>(i);
  return styles;
}

bool can_be_set(const LeafletDress &dress) {
  return std::all_of(dress.styles.begin(), dress.styles.end(), [&](StyleId style) {
    return style != StyleId::none &&
           (*dress.faces)[*dress.edition->styles[at(style)].face].usable();
  });
}

std::vector<AbsentFace> absent_of(const LeafletDress &dress) {
  std::vector<AbsentFace> absent;
  for (const StyleId style : dress.styles) {
    if (style == StyleId::none)
      continue;
    const FaceId id = *dress.edition->styles[at(style)].face;
    if (id == FaceId::none || (*dress.faces)[id].usable())
      continue;
    const Face &face = dress.edition->faces[at(id)];
    if (std::none_of(absent.begin(), absent.end(),
                     [&](const AbsentFace &other) { return other.family == face.family; }))
      absent.push_back({face.family, face.package});
  }
  return absent;
}

// The edition's face whose style is nearest to running text.
FaceId face_for_reading(const Edition &edition, const OpenFaces &faces) {
  constexpr double reading = 10.5;
  FaceId nearest = FaceId::none;
  double off = 0;
  for (const Style &style : edition.styles) {
    const double by = std::abs(style.size->in_points() - reading);
    if (!faces[*style.face].usable() || (nearest != FaceId::none && by >= off))
      continue;
    nearest = *style.face;
    off = by;
  }
  return nearest;
}

FaceId face_of_largest(const Edition &edition, const OpenFaces &faces) {
  FaceId face = FaceId::none;
  Length size;
  for (const Style &style : edition.styles)
    if (*style.face != FaceId::none && faces[*style.face].usable() && *style.size > size) {
      face = *style.face;
      size = *style.size;
    }
  return face;
}

// The same styles in a face of the edition's own.
LeafletDress in_own_face(const Edition &edition, const OpenFaces &faces, const Edition &shelf) {
  // Type asks an edition for nothing but these; a whole one may have ten thousand pages.
  LeafletDress dress{std::make_unique<Edition>(), &faces, {}};
  dress.edition->faces = edition.faces;
  dress.edition->styles = edition.styles;
  const FaceId face = face_for_reading(edition, faces);
  const std::size_t before = dress.edition->styles.size();
  for (Style style : shelf.styles) {
    style.face.value = face;
    dress.edition->styles.push_back(style);
  }
  dress.edition->languages = {Known<std::string>{"en", {}}};
  dress.styles = styles_of(*dress.edition, before);
  return dress;
}

bool digit(char c) { return c >= '0' && c <= '9'; }

// "8in" and "8 in" after a slash, so that no date becomes a fraction. In one of sixteenths and
// finer the figures would be too small to be told apart at arm's length.
bool ends_a_measure(std::string_view text, std::size_t slash) {
  std::size_t at = slash + 1;
  while (at < text.size() && digit(text[at]))
    ++at;
  return at == slash + 2 && text.substr(at).starts_with("in");
}

// "(2) the head": a number at a line's end says nothing.
bool after_number(std::string_view text, std::size_t space) {
  return space > 2 && text[space - 1] == ')' && digit(text[space - 2]) &&
         (text[space - 3] == '(' || (space > 3 && text[space - 4] == '('));
}

// "5 3/8in" is one word: a measure parted by a line's end is misread. And it is a whole and a
// fraction: figures in a row are misread too.
std::string measures_whole(std::string_view text, bool fractions) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool inside = i > 0 && i + 1 < text.size() && digit(text[i - 1]) && digit(text[i + 1]);
    if (text[i] == ' ' && (inside || after_number(text, i)))
      out += "\u00a0";
    else if (inside && text[i] == '/' && fractions && ends_a_measure(text, i))
      out += "\u2044";
    else
      out += text[i];
  }
  return out;
}

void find_fractions(LeafletDress &dress) {
  for (std::size_t role = 0; role < dress.styles.size(); ++role) {
    const FaceId face = *dress.edition->styles[at(dress.styles[role])].face;
    dress.fractions[role] = (*dress.faces)[face].nearest(Cut::regular)->sets_fractions();
  }
}

} // namespace

LeafletType::LeafletType(const Files &files, const SystemFaces &system, const Edition &edition,
                         const OpenFaces &own)
    : own_edition_(edition), own_faces_(own) {
  Sources sources;
  Problems told; // of faces that are not there: another is taken
  ShelfAlone shelf(files);
  auto read = std::make_unique<Edition>(read_edition(own_name, shelf, sources, told).edition);
  faces_ = std::move(open_faces(*read, shelf, system).faces);
  LeafletDress from_shelf{std::move(read), &faces_, {}};
  from_shelf.styles = styles_of(*from_shelf.edition, 0);
  absent_ = absent_of(from_shelf);
  LeafletDress owned = in_own_face(edition, own, *from_shelf.edition);
  for (LeafletDress *dress : {&from_shelf, &owned})
    if (can_be_set(*dress)) {
      find_fractions(*dress);
      dresses_.push_back(std::move(*dress));
    }
  if (!dresses_.empty())
    wear(0);
}

void LeafletType::wear(std::size_t dress) {
  worn_ = dress;
  compositor_.emplace(*dresses_[dress].edition, *dresses_[dress].faces);
}

bool LeafletType::lacks_a_glyph(const LeafletDress &dress,
                                const std::vector<std::string> &words) const {
  Compositor compositor(*dress.edition, *dress.faces);
  for (const LeafletRole role : {LeafletRole::text, LeafletRole::head})
    for (const std::string &text : words)
      compositor.line(text, dress.styles[static_cast<std::size_t>(role)], Range{});
  const Problems problems = compositor.problems();
  return std::any_of(problems.begin(), problems.end(),
                     [](const Problem &problem) { return problem.check == "missing-glyph"; });
}

std::vector<std::string> LeafletType::lacking(const std::vector<std::string> &characters) const {
  std::vector<std::string> lacking;
  for (const std::string &character : characters)
    if (lacks_a_glyph(dresses_[worn_], {character}))
      lacking.push_back(character);
  return lacking;
}

void LeafletType::suit(const std::vector<std::string> &words) {
  for (std::size_t i = 0; i < dresses_.size(); ++i)
    if (!lacks_a_glyph(dresses_[i], words))
      return wear(i);
}

FaceOffer LeafletType::offer(const LeafletDress &dress, LeafletRole role) const {
  const StyleId style = dress.styles[static_cast<std::size_t>(role)];
  return {dress.edition.get(), dress.faces, *dress.edition->styles[at(style)].face};
}

std::vector<FaceOffer> LeafletType::loud() const {
  std::vector<FaceOffer> all;
  if (const FaceId face = face_of_largest(own_edition_, own_faces_); face != FaceId::none)
    all.push_back({&own_edition_, &own_faces_, face});
  for (const LeafletDress &dress : dresses_)
    all.push_back(offer(dress, LeafletRole::head));
  return all;
}

std::vector<FaceOffer> LeafletType::quiet() const {
  std::vector<FaceOffer> all;
  for (std::size_t i = dresses_.size(); i-- > 0;) // the edition's own is the last
    all.push_back(offer(dresses_[i], LeafletRole::text));
  return all;
}

std::vector<Line> LeafletType::broken(std::string_view lead, std::string_view text,
                                      LeafletRole role, double measure) {
  Block block;
  if (!lead.empty())
    block.spans.push_back(Span{.text = std::string(lead), .strong = true});
  if (!lead.empty() && !text.empty())
    block.spans.push_back(Span{.text = "  "});
  block.spans.push_back(Span{.text = as_set(text, role)});
  Prose prose;
  prose.blocks.push_back(std::move(block));
  Flow flow = compositor_->flow(prose, style(role));
  return compositor_->fill(flow, Mark{}, {Length::nearest_points(measure), Length::inches(1000)})
      .lines;
}

Line LeafletType::line(std::string_view text, LeafletRole role) {
  return compositor_->line(as_set(text, role), style(role), Range{});
}

std::string LeafletType::as_set(std::string_view text, LeafletRole role) const {
  return measures_whole(text, dresses_[worn_].fractions[static_cast<std::size_t>(role)]);
}

double LeafletType::width(std::string_view text, LeafletRole role) {
  return text.empty() ? 0 : line(text, role).right.in_points();
}

double LeafletType::leading(LeafletRole role) const {
  return dresses_[worn_].edition->styles[at(style(role))].leading->in_points();
}

} // namespace bodkin::press
