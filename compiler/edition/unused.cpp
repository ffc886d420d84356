#include "edition/unused.hpp"

#include "edition/problems.hpp"

#include <algorithm>

namespace bodkin {

namespace {

// Some line asks for it, but for a slip of the finger.
bool meant(const Things &things, std::string_view name) {
  return std::ranges::any_of(things.asked_in_vain, [name](std::string_view asked) {
    return language::nearest(asked, std::span(&name, 1)).has_value();
  });
}

} // namespace

void note_unused(Reader &reader) {
  if (!reader.edition_line)
    return;
  for (const Family family :
       {Family::stock, Family::machine, Family::face, Family::style, Family::source, Family::text,
        Family::standing, Family::folding, Family::law, Family::licence, Family::envelope})
    for (const Named &thing : reader.things(family).all)
      if (!thing.used && thing.line.in->own && !meant(reader.things(family), thing.name))
        reader.report(unused_thing(family, thing));
}

} // namespace bodkin
