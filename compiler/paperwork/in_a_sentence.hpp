// What papers and machines are called, put into the middle of an English sentence.
#pragma once

#include <string>

namespace bodkin::paperwork {

// "Cream writing paper" goes in with a small letter, since a word of its own trade begins it; any
// other capital may be that of a name and stays. Without a title its name is said: "rose-light" as
// "rose light".
std::string paper_in_a_sentence(const std::string &title, const std::string &name);
// With "the" where no such word begins it: "the copier at the corner shop".
std::string machine_in_a_sentence(const std::string &title, const std::string &name);

} // namespace bodkin::paperwork
