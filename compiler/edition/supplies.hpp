// Stocks, machines, bids, faces, styles and sources: what an edition is made with.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

void take_stocks(Reader &reader);
void take_machines(Reader &reader);
void take_bids(Reader &reader);
void take_faces(Reader &reader);
void take_styles(Reader &reader); // after faces and stocks
void take_laws(Reader &reader);
void take_licences(Reader &reader);
void take_mail(Reader &reader);    // classes, envelopes and what is sent
void take_sources(Reader &reader); // after licences

} // namespace bodkin
