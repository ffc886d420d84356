#include "edition/mail.hpp"

#include "edition/like.hpp"
#include "edition/problems.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Size lying(Size size) { return size.width >= size.height ? size : size.turned(); }

constexpr PricedBy each_piece{
    {Per::each, Per::each, Per::each, Per::each}, "a step is the price of one piece", "each", true};
constexpr PricedBy each_envelope{{Per::each, Per::each, Per::each, Per::each},
                                 "what an envelope costs is the price of one",
                                 "each",
                                 true};

std::optional<Known<Size>> size_in(Reader &reader, FactLine line) {
  auto size = value_in<Size>(line, "size");
  if (!size)
    return std::nullopt;
  if (size->value.width <= Length{} || size->value.height <= Length{}) {
    reader.report(too_small(size->from, "this has no room in it",
                            "a piece of mail is long and high",
                            std::string(line.statement->entry->example)));
    return std::nullopt;
  }
  size->value = lying(size->value);
  return size;
}

Problem no_mass(FactLine line, std::string_view part) {
  return too_small(line.range(part), "this weighs nothing, and everything weighs something",
                   "what a piece of mail costs goes by its mass",
                   std::string(line.statement->entry->example));
}

std::optional<Known<Mass>> mass_in(Reader &reader, FactLine line, std::string_view part) {
  auto mass = value_in<Mass>(line, part);
  if (mass && !(Mass{} < mass->value)) {
    reader.report(no_mass(line, part));
    return std::nullopt;
  }
  return mass;
}

Problem step_twice(FactLine line) {
  return {.check = "same-fact-twice",
          .range = line.range("to"),
          .message = "another step of this class ends at the same mass",
          .why = "one piece of mail cannot have two prices; this often comes of a merge",
          .type = {{{}, "keep the step that is right and take the other out"}}};
}

void take_step(Reader &reader, FactLine line, MailClass &mail) {
  const auto to = mass_in(reader, line, "to");
  const auto rate = rate_by(reader, line, "price", each_piece);
  if (!to || !rate || mail.steps.size() >= limits::price_steps)
    return;
  const MailStep step{line.range(), **to, (*rate)->price};
  const auto at =
      std::lower_bound(mail.steps.begin(), mail.steps.end(), step,
                       [](const MailStep &a, const MailStep &b) { return a.to < b.to; });
  if (at != mail.steps.end() && at->to == step.to)
    reader.report(step_twice(line));
  else
    mail.steps.insert(at, step);
}

Problem smaller_than_smallest(const MailClass &mail, Ruler ruler) {
  const auto words = [ruler](const Size &size) {
    return fmt::format("{} x {}", written(size.width, ruler), written(size.height, ruler));
  };
  return {.kind = Kind::warning,
          .check = "class-contradicts",
          .range = mail.smallest->from,
          .message = fmt::format("the smallest piece that {} takes, {}, is larger than its "
                                 "largest, {}",
                                 mail.name, words(**mail.smallest), words(**mail.largest)),
          .why = "no piece of mail is both: nothing could ever go by this class",
          .type = {{{}, "put right whichever is wrong; the two are often changed about"}},
          .related = {{mail.largest->from, "the largest"}}};
}

Problem step_never_paid(const MailClass &mail, const MailStep &step) {
  return {.kind = Kind::warning,
          .check = "class-contradicts",
          .range = step.range,
          .message = fmt::format("this step is never paid: {} takes no piece so heavy", mail.name),
          .why = "the step before it goes up to the heaviest piece already",
          .type = {{{}, "take this step out, or put right the heaviest"}},
          .related = {{mail.heaviest->from, "the heaviest"}}};
}

void judge_class(Reader &reader, const MailClass &mail) {
  if (mail.largest && mail.smallest &&
      ((*mail.smallest)->width > (*mail.largest)->width ||
       (*mail.smallest)->height > (*mail.largest)->height))
    reader.report(smaller_than_smallest(mail, reader.edition.ruler));
  for (std::size_t i = 1; mail.heaviest && i < mail.steps.size(); ++i)
    if (!(mail.steps[i - 1].to < **mail.heaviest))
      reader.report(step_never_paid(mail, mail.steps[i]));
}

MailClass mail_of(Reader &reader, const Named &named, const Facts &facts) {
  MailClass mail;
  mail.name = named.name;
  mail.title = named.line.words("title");
  mail.range = named.line.range();
  mail.largest = size_in(reader, facts.find("largest"));
  mail.thickest = length_in(reader, facts.find("largest"), "thick", false);
  mail.smallest = size_in(reader, facts.find("smallest"));
  mail.heaviest = mass_in(reader, facts.find("heaviest"), "mass");
  facts.each("step", [&](FactLine line) { take_step(reader, line, mail); });
  judge_class(reader, mail);
  return mail;
}

std::vector<std::string_view> unsaid_of(const Facts &facts) {
  std::vector<std::string_view> unsaid;
  for (const std::string_view fact : {"size", "mass", "costs"})
    if (!facts.find(fact) && facts.whole())
      unsaid.push_back(fact);
  return unsaid;
}

Envelope envelope_of(Reader &reader, const Named &named, const Facts &facts) {
  Envelope envelope;
  envelope.name = named.name;
  envelope.title = named.line.words("title");
  envelope.range = named.line.range();
  envelope.unsaid = unsaid_of(facts);
  envelope.size = size_in(reader, facts.find("size"));
  envelope.mass = mass_in(reader, facts.find("mass"), "mass");
  envelope.thick = length_in(reader, facts.find("thick"), "thick", true);
  envelope.costs = rate_by(reader, facts.find("costs"), "costs", each_envelope);
  return envelope;
}

Problem more_than_posted(const Reader &reader, FactLine line, const Known<std::int64_t> &together,
                         std::int64_t copies) {
  return {.check = "number-too-big",
          .range = together.from,
          .message = fmt::format("{} are to lie together, and only {} {} posted", *together, copies,
                                 copies == 1 ? "is" : "are"),
          .why = "so many copies go into a piece of mail, and the last may hold fewer",
          .type = {{typed(reader, line.range(), together.from, std::to_string(copies)), {}}}};
}

void take_posting(Reader &reader, FactLine line) {
  const auto copies = count_in(reader, line, "copies", 1, "to send no copy is to send nothing");
  const auto together =
      count_in(reader, line, "together", 1, "a parcel holds one copy at the least");
  Posting posting;
  posting.range = line.range();
  posting.in = id_in<EnvelopeId>(reader, Family::envelope, line, "envelope");
  posting.by = id_in<MailId>(reader, Family::mail, line, "mail");
  if (!copies || (line.has("together") && !together) ||
      reader.edition.postings.size() == limits::bids)
    return;
  posting.copies = std::min(**copies, limits::copies);
  if (together && **together > posting.copies)
    reader.report(more_than_posted(reader, line, *together, posting.copies));
  posting.together = together ? std::min(**together, posting.copies) : 1;
  reader.edition.postings.push_back(posting);
  if (reader.edition.postings.size() == limits::bids)
    reader.report(too_many_lines(line, limits::bids));
}

} // namespace

void take_mail(Reader &reader) {
  const std::vector<Facts> mail = facts_of_all(reader, Family::mail);
  for (std::size_t i = 0; i < mail.size(); ++i)
    reader.edition.mail.push_back(mail_of(reader, reader.things(Family::mail).all[i], mail[i]));
  const std::vector<Facts> envelopes = facts_of_all(reader, Family::envelope);
  for (std::size_t i = 0; i < envelopes.size(); ++i)
    reader.edition.envelopes.push_back(
        envelope_of(reader, reader.things(Family::envelope).all[i], envelopes[i]));
  reader.edition_facts.each("posts", [&](FactLine line) { take_posting(reader, line); });
}

} // namespace bodkin
