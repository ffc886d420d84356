#include "paperwork/in_a_sentence.hpp"
#include "paperwork/own_words.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr std::array<const char *, 12> months{"January",   "February", "March",    "April",
                                              "May",       "June",     "July",     "August",
                                              "September", "October",  "November", "December"};

bool is_american(const Edition &edition) { return **edition.languages.begin() == "en-US"; }

void add_new(std::vector<std::string> &names, std::string name) {
  if (std::find(names.begin(), names.end(), name) == names.end())
    names.push_back(std::move(name));
}

std::string title_words(const Edition &edition) {
  std::string text;
  if (edition.number)
    text += fmt::format(", number {}", **edition.number);
  if (edition.series)
    text += fmt::format(" of {}", **edition.series);
  if (edition.dated)
    text += ", " + date_words(edition, **edition.dated);
  const std::int64_t copies = edition.run->copies;
  return fmt::format("{}, in {} {}.", text, copies, copies == 1 ? "copy" : "copies");
}

struct Printing {
  std::vector<std::string> machines, papers;
  bool black = false, colour = false;
};

Printing printing_of(const std::vector<CopyPart> &parts) {
  Printing printing;
  printing.papers = paper_names(parts);
  for (const CopyPart &part : parts) {
    const Edition &edition = *part.edition;
    for (std::size_t page = 1; page < edition.pages.size(); ++page) {
      const Page &of = edition.pages[page];
      (*of.mode == Mode::black ? printing.black : printing.colour) = true;
      if (*of.machine != MachineId::none)
        add_new(printing.machines,
                machine_in_a_sentence(edition[*of.machine].title, edition[*of.machine].name));
    }
  }
  return printing;
}

std::string printed(const Edition &edition, const Printing &printing) {
  const char *colour = is_american(edition) ? "color" : "colour";
  std::string text = fmt::format(" Printed in {}", printing.colour && printing.black
                                                       ? fmt::format("black and {}", colour)
                                                   : printing.colour ? colour
                                                                     : "black");
  if (!printing.machines.empty())
    text += fmt::format(" on {}", in_a_row(printing.machines));
  if (!printing.papers.empty())
    text += fmt::format(", the paper{}: {}", printing.papers.size() == 1 ? "" : "s",
                        in_a_row(printing.papers));
  return text + ".";
}

std::string set_in(const RightsLedger &ledger) {
  std::vector<std::string> faces;
  for (const LedgerWork &work : ledger.works)
    if (work.kind == WorkKind::face)
      add_new(faces, work.what);
  return faces.empty() ? std::string{} : fmt::format(" Set in {}.", in_a_row(faces));
}

std::string_view done(StepKind kind) {
  switch (kind) {
  case StepKind::collate:
    return "gathered";
  case StepKind::crease:
    return "creased";
  case StepKind::fold:
    return "folded";
  case StepKind::staple:
    return "stapled";
  case StepKind::trim:
    return "trimmed";
  case StepKind::sew:
    return "sewn";
  case StepKind::punch:
    return "punched";
  case StepKind::cut:
    return "cut";
  case StepKind::glue:
    return "glued";
  case StepKind::round:
    return "rounded at the corners";
  case StepKind::tie:
    return "tied";
  case StepKind::dry:
  case StepKind::press:
  case StepKind::add:
  case StepKind::pack:
    break; // nobody sees these on the finished copy
  }
  return {};
}

std::string finished(const Edition &edition) {
  std::vector<std::string> steps;
  for (const FinishStep &step : edition.finish)
    if (const std::string_view word = done(step.kind); !word.empty())
      add_new(steps, std::string(word));
  if (steps.empty())
    return {};
  std::string text = in_a_row(steps);
  text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return fmt::format(" {} by hand.", text);
}

std::string price_words(const Edition &edition, const Sources &sources) {
  const std::string price = asked_price(edition, sources);
  return price.empty() ? price : fmt::format(" {} a copy.", price);
}

std::string given_under(const Edition &edition) {
  if (!edition.given_under)
    return {};
  const bool known = edition.licence_id.has_value();
  const std::string name = known && !edition[*edition.licence_id].called.empty()
                               ? edition[*edition.licence_id].called
                               : **edition.given_under;
  const std::string link = known ? edition[*edition.licence_id].link : std::string{};
  return link.empty() ? fmt::format(" Given out under {}.", name)
                      : fmt::format(" Given out under {}: {}.", name, link);
}

} // namespace

std::string date_words(const Edition &edition, const Date &date) {
  if (date.month < 1 || date.month > 12)
    return std::to_string(date.year);
  const char *month = months[static_cast<std::size_t>(date.month) - 1];
  if (date.day == 0)
    return fmt::format("{} {}", month, date.year);
  return is_american(edition) ? fmt::format("{} {}, {}", month, date.day, date.year)
                              : fmt::format("{} {} {}", date.day, month, date.year);
}

std::vector<std::string> paper_names(const std::vector<CopyPart> &parts) {
  std::vector<std::string> papers;
  for (const CopyPart &part : parts)
    for (const Sheet &sheet : part.imposition.sheets)
      if (sheet.stock != StockId::none) {
        const Stock &stock = (*part.edition)[sheet.stock];
        add_new(papers, paper_in_a_sentence(stock.title, stock.name));
      }
  return papers;
}

std::string asked_price(const Edition &edition, const Sources &sources) {
  if (!edition.price || (*edition.price)->amount.digits == 0)
    return {};
  const std::string_view asked = sources.text(edition.price->from);
  return std::string(asked.substr(0, std::min(asked.find(" a "), asked.find(" each"))));
}

std::string in_a_row(const std::vector<std::string> &names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

Prose colophon(const Edition &edition, const RightsLedger &ledger,
               const std::vector<CopyPart> &parts, const Sources &sources) {
  Block block;
  Span title;
  title.text = *edition.title;
  title.emphasis = true;
  Span rest;
  rest.text = title_words(edition) + printed(edition, printing_of(parts)) + set_in(ledger) +
              finished(edition);
  if (edition.maker)
    rest.text += fmt::format(" Made by {}.", **edition.maker);
  rest.text += price_words(edition, sources) + given_under(edition);
  block.spans = {std::move(title), std::move(rest)};
  Prose prose;
  prose.blocks.push_back(std::move(block));
  return prose;
}

} // namespace bodkin::paperwork
