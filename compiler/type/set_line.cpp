#include "type/set_line.hpp"

#include "type/bidi.hpp"
#include "type/points.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr std::int64_t closes_by = 5; // a fifth, as first_fit counts on
constexpr Length hair = Length::units(Length::per_point / 100);

// Glyphs of a run whose clusters begin in [begin, end).
std::pair<std::size_t, std::size_t> slice(const Shaped &shaped, const ShapedRun &run,
                                          std::uint32_t begin, std::uint32_t end) {
  const auto first = shaped.glyphs.begin() + run.first;
  const auto last = first + run.count;
  const auto under = [&](std::uint32_t byte) {
    return std::partition_point(first, last, [&](const ShapedGlyph &glyph) {
      return run.leftwards() ? glyph.cluster >= byte : glyph.cluster < byte;
    });
  };
  auto low = under(begin), high = under(end);
  if (run.leftwards())
    std::swap(low, high);
  const auto at = [&](auto glyph) {
    return static_cast<std::size_t>(glyph - shaped.glyphs.begin());
  };
  return {at(low), at(high)};
}

// Whether the paragraph's glyphs hold good for text that begins, or ends, at this byte.
bool parts_at(const Shaped &shaped, const ShapedRun &run, std::uint32_t byte) {
  if (byte == run.text.begin || byte == run.text.end)
    return true;
  const auto [first, last] = slice(shaped, run, byte, byte + 1);
  return first != last && !shaped.glyphs[first].joined && shaped.glyphs[first].cluster == byte;
}

} // namespace

LineSetter::Piece LineSetter::piece_of(const LineAsked &asked, const ShapedRun &run,
                                       std::uint32_t begin, std::uint32_t end) {
  Piece piece;
  piece.run = &run;
  piece.begin = begin;
  piece.end = end;
  if (parts_at(asked.shaped, run, begin) && parts_at(asked.shaped, run, end)) {
    std::tie(piece.first, piece.last) = slice(asked.shaped, run, begin, end);
    return piece;
  }
  TextRun part = run.text;
  part.begin = begin;
  part.end = end;
  piece.anew = true;
  piece.first = anew_.size();
  shaper_.shape_part(asked.paragraph, part, anew_);
  piece.last = anew_.size();
  return piece;
}

void LineSetter::cut(const LineAsked &asked) {
  pieces_.clear();
  anew_.clear();
  const std::uint32_t begin = asked.shaped.points[asked.from].next;
  const std::uint32_t end = asked.shaped.points[asked.to].end;
  auto run = std::partition_point(asked.shaped.runs.begin(), asked.shaped.runs.end(),
                                  [&](const ShapedRun &r) { return r.text.end <= begin; });
  for (; run != asked.shaped.runs.end() && run->text.begin < end; ++run)
    pieces_.push_back(
        piece_of(asked, *run, std::max(begin, run->text.begin), std::min(end, run->text.end)));
  for (Piece &piece : pieces_) {
    for (std::size_t i = piece.first; i < piece.last; ++i) {
      const ShapedGlyph &glyph = glyphs_of(asked.shaped, piece)[i];
      piece.units += glyph.advance;
      if (stretches(asked.paragraph.text, glyph.cluster)) {
        piece.space_units += glyph.advance;
        ++piece.spaces;
      }
    }
  }
}

LineSetter::Fitted LineSetter::fit(const LineAsked &asked) const {
  Fitted fitted;
  Length spaces_width;
  std::int64_t spaces = 0;
  for (const Piece &piece : pieces_) {
    const TypedSpan &span = asked.paragraph.spans[piece.run->text.span];
    fitted.width += span.cut->scaled(piece.units, span.size);
    spaces_width += span.cut->scaled(piece.space_units, span.size);
    spaces += piece.spaces;
  }
  if (asked.lines == Lines::justified && spaces > 0) {
    const Length more = std::max(asked.measure - fitted.width, -spaces_width / closes_by);
    fitted.more_a_space = more.in_points() / static_cast<double>(spaces);
    fitted.width += more;
  }
  fitted.too_wide = fitted.width > asked.measure + hair;
  return fitted;
}

double LineSetter::add(const LineAsked &asked, const Piece &piece, double pen, double more,
                       Line &line) const {
  const TypedSpan &span = asked.paragraph.spans[piece.run->text.span];
  const double scale = span.size.in_points() / span.cut->upem();
  const bool backward = piece.run->leftwards();
  const bool goes_on = !line.runs.empty() && !backward && !line.runs.back().backward &&
                       line.runs.back().cut == span.cut && line.runs.back().size == span.size &&
                       line.runs.back().paint == span.paint;
  if (!goes_on) {
    line.runs.emplace_back();
    GlyphRun &fresh = line.runs.back();
    fresh.cut = span.cut;
    fresh.size = span.size;
    fresh.paint = span.paint;
    fresh.backward = backward;
    fresh.left = pen;
  }
  GlyphRun &run = line.runs.back();
  const auto &glyphs = glyphs_of(asked.shaped, piece);
  run.glyphs.reserve(run.glyphs.size() + piece.last - piece.first);
  run.clusters.reserve(run.glyphs.capacity());
  for (std::size_t i = piece.first; i < piece.last; ++i) {
    const ShapedGlyph &glyph = glyphs[i];
    run.glyphs.push_back({glyph.id, pen + glyph.dx * scale, line.baseline - glyph.dy * scale});
    pen += glyph.advance * scale;
    if (stretches(asked.paragraph.text, glyph.cluster))
      pen += more;
  }
  run.right = pen;
  run.text.append(asked.paragraph.text, piece.begin, piece.end - piece.begin);
  add_clusters(glyphs, piece, run);
  return pen;
}

// As read: from the last glyph of a run that runs leftwards.
void LineSetter::add_clusters(const std::vector<ShapedGlyph> &glyphs, const Piece &piece,
                              GlyphRun &run) {
  const std::size_t count = piece.last - piece.first;
  const auto cluster = [&](std::size_t i) {
    return glyphs[run.backward ? piece.last - 1 - i : piece.first + i].cluster;
  };
  std::uint32_t begin = piece.begin;
  for (std::size_t i = 0; i < count;) {
    std::size_t next = i + 1;
    while (next < count && cluster(next) == cluster(i))
      ++next;
    const std::uint32_t end = next < count ? cluster(next) : piece.end;
    run.clusters.push_back(
        {static_cast<std::int32_t>(end - begin), static_cast<std::int32_t>(next - i)});
    begin = end;
    i = next;
  }
}

Line LineSetter::set(const LineAsked &asked) {
  cut(asked);
  std::erase_if(pieces_, [](const Piece &piece) { return piece.first == piece.last; });
  const Fitted fitted = fit(asked);
  Line line;
  line.size = asked.paragraph.typed.size;
  line.top = asked.top;
  line.foot = asked.top + asked.paragraph.leading;
  line.baseline = (asked.top + asked.paragraph.baseline()).in_points();
  line.too_wide = fitted.too_wide;
  line.broken_word = asked.shaped.points[asked.to].kind == BreakPoint::Kind::in_a_word;
  line.left = asked.left;
  if (asked.lines == Lines::right)
    line.left += asked.measure - fitted.width;
  else if (asked.lines == Lines::centred)
    line.left += (asked.measure - fitted.width) / 2;
  line.right = line.left + fitted.width;

  std::vector<std::uint8_t> levels;
  levels.reserve(pieces_.size());
  for (const Piece &piece : pieces_)
    levels.push_back(piece.run->text.level);
  double pen = line.left.in_points();
  for (const std::size_t i : visual_order(levels))
    pen = add(asked, pieces_[i], pen, fitted.more_a_space, line);
  return line;
}

} // namespace bodkin
