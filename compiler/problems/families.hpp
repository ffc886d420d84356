// The families of checks, each a table in a file of its own; checks.cpp puts them together.
#pragma once

#include "problems/checks.hpp"

namespace bodkin {

std::span<const Check> checks_of_paper();    // checks_paper.cpp: sheets, stocks and folding
std::span<const Check> checks_of_folding();  // checks_folding.cpp: folds, slits and leaves
std::span<const Check> checks_of_pieces();   // checks_pieces.cpp: what a copy holds beside its book
std::span<const Check> checks_of_finish();   // checks_finish.cpp: staple, knife, order of work
std::span<const Check> checks_of_place();    // checks_place.cpp: where things stand on a page
std::span<const Check> checks_of_pictures(); // checks_pictures.cpp: pictures and files
std::span<const Check> checks_of_words();    // checks_words.cpp: faces, running text, prose
std::span<const Check> checks_of_manuscripts(); // checks_manuscripts.cpp: the lines as typed
std::span<const Check> checks_of_values(); // checks_values.cpp: lengths, money, weights as typed
std::span<const Check> checks_of_names();  // checks_names.cpp: names, borrowing, unused things
std::span<const Check> checks_of_rights(); // checks_rights.cpp: where things come from
std::span<const Check> checks_of_money();  // checks_money.cpp

} // namespace bodkin
