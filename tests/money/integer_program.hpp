// The same question as a mixed-integer program in CPLEX LP form, for a solver that nobody here
// wrote.
#pragma once

#include "money/random_books.hpp"

#include <string>

namespace bodkin::tests {

// Of a book whose only wishes are pages that stay; cents of the run are its objective.
std::string integer_program(const RandomBook &book, const Lying &lying);

} // namespace bodkin::tests
