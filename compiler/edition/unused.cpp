#include "edition/unused.hpp"

#include "edition/problems.hpp"

namespace bodkin {

void note_unused(Reader &reader) {
  if (!reader.edition_line)
    return;
  for (const Family family : {Family::stock, Family::machine, Family::face, Family::style,
                              Family::source, Family::text, Family::standing, Family::folding})
    for (const Named &thing : reader.things(family).all)
      if (!thing.used && thing.line.in->own)
        reader.report(unused_thing(family, thing));
}

} // namespace bodkin
