// The one currency that an edition counts in.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// `$`, `£` and `€` are USD, GBP and EUR, unless the edition counts in another dollar, pound or
// peso.
Currency currency_meant(Currency read, std::string_view written, Currency of_edition);
// The words of a sum, for `currency_meant`; of a line read as it was meant, the sign that was.
std::string_view money_in_words(FactLine line, std::string_view written, Currency read);
// Before anything else is read: the `currency` line.
void take_written_currency(Reader &reader);
// After everything else: that of the budget, else of the price, else of the edition's paper or
// machine, else of the first stock, machine, bid or work that has one.
void settle_currency(Reader &reader);

} // namespace bodkin
