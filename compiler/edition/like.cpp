#include "edition/like.hpp"

#include "edition/problems.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// There are six levels of heading; all else counts as one more, for which nothing is set.
std::int64_t level_within(language::Count level) {
  return std::clamp<std::int64_t>(level.value, 0, 7);
}

bool replaces(FactLine written, FactLine copied) {
  if (written.word() == "weight" && copied.word() == "caliper")
    return true;
  if (written.word() != copied.word())
    return false;
  if (written.word() == "prints")
    return written.words("mode") == copied.words("mode");
  if (written.word() == "heading") {
    const auto *level = written.get<language::Count>("level");
    const auto *other = copied.get<language::Count>("level");
    return level && other && level_within(*level) == level_within(*other);
  }
  return true;
}

// Under one keyword the lines of one ink or level may be many: each copied line is held against one
// written line of each sort only.
std::vector<FactLine> sorts_of(const Facts &facts) {
  std::vector<FactLine> sorts;
  for (const FactLine &line : facts.lines())
    if (std::none_of(sorts.begin(), sorts.end(), [&](FactLine one) { return replaces(one, line); }))
      sorts.push_back(line);
  return sorts;
}

Facts merged(const Facts &copied, const Facts &own) {
  const std::vector<FactLine> sorts = sorts_of(own);
  Facts facts;
  for (const FactLine &line : copied.lines())
    if (std::none_of(sorts.begin(), sorts.end(), [&](FactLine one) { return replaces(one, line); }))
      facts.add(line);
  for (const FactLine &line : own.lines())
    facts.add(line);
  if (!copied.whole())
    facts.call_partial();
  return facts;
}

class Copying {
public:
  Copying(Reader &reader, Family family)
      : reader_(reader), family_(family), things_(reader.things(family)),
        facts_(things_.all.size()), done_(things_.all.size()), said_(things_.all.size()) {}

  std::vector<Facts> run() {
    for (std::size_t i = 0; i < things_.all.size(); ++i)
      finish(i);
    return std::move(facts_);
  }

private:
  // From a thing to the last of the things it is like, then back again.
  void finish(std::size_t thing) {
    std::vector<std::size_t> chain;
    for (std::optional<std::size_t> next = thing; next && !done_[*next]; next = model_of(*next)) {
      if (std::find(chain.begin(), chain.end(), *next) != chain.end()) {
        reader_.report(loop(chain, *next));
        break;
      }
      if (chain.size() >= limits::like_depth) {
        reader_.report(too_deep(chain.back()));
        break;
      }
      chain.push_back(*next);
    }
    for (auto at = chain.rbegin(); at != chain.rend(); ++at)
      take_facts(*at);
  }

  void take_facts(std::size_t thing) {
    const Facts own(things_.all[thing].line);
    const std::optional<std::size_t> model = model_of(thing);
    if (model && done_[*model] && copied_ < limits::copied_lines) {
      facts_[thing] = merged(facts_[*model], own);
      copied_ += facts_[*model].lines().size();
    } else {
      facts_[thing] = own;
      if (things_.all[thing].line.has("like"))
        facts_[thing].call_partial();
    }
    done_[thing] = true;
  }

  std::optional<std::size_t> model_of(std::size_t thing) {
    const FactLine line = things_.all[thing].line;
    if (!line.has("like"))
      return std::nullopt;
    const auto found = things_.by_name.find(line.words("like"));
    if (found == things_.by_name.end()) {
      if (!said_[thing])
        reader_.report(unknown_name(reader_, family_, line, "like"));
      said_[thing] = true;
      return std::nullopt;
    }
    things_.all[found->second].used = true;
    return found->second;
  }

  Problem loop(const std::vector<std::size_t> &chain, std::size_t again) const {
    std::string way;
    for (auto step = std::find(chain.begin(), chain.end(), again); step != chain.end(); ++step)
      way += fmt::format("{} is like ", things_.all[*step].name);
    const FactLine line = things_.all[chain.back()].line;
    return {
        .check = "like-loop",
        .range = line.range("like"),
        .message = fmt::format("this {} is like itself", spoken(family_)),
        .why = fmt::format("{}{}, so none of them has facts to copy", way, things_.all[again].name),
        .type = {{fmt::format("{} {}", word_for(family_), line.words("name")),
                  "and its facts written out below it"}}};
  }

  Problem too_deep(std::size_t thing) const {
    const FactLine line = things_.all[thing].line;
    return {.check = "too-deep",
            .range = line.range("like"),
            .message = fmt::format("more than {} things are like one another in a row here",
                                   limits::like_depth),
            .why = "nobody can follow so long a chain of copies",
            .type = {{fmt::format("{} {}", word_for(family_), line.words("name")),
                      "and its facts written out below it"}}};
  }

  Reader &reader_;
  Family family_;
  Things &things_;
  std::vector<Facts> facts_;
  std::vector<bool> done_, said_; // facts taken; an unknown name reported
  std::size_t copied_ = 0;
};

} // namespace

std::vector<Facts> facts_of_all(Reader &reader, Family family) {
  return Copying(reader, family).run();
}

} // namespace bodkin
