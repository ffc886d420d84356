// What reading a picture gives: a value, or a refusal with its reason in words. Whatever bytes a
// file holds, nothing here is thrown and nothing crashes.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace bodkin::art {

enum class Trouble {
  empty,         // no bytes
  unknown_kind,  // not one of the kinds that can be placed; the reason names what it is, if known
  unreadable,    // of a known kind, but damaged
  cut_off,       // of a known kind, but its end is missing
  too_big,       // more samples, edge or bytes than limits.hpp allows
  locked,        // asks for a password
  no_such_page,  // a PDF without that page
  leads_outside, // a drawing that asks for another file
  too_hard,      // takes longer or more memory to draw than limits.hpp allows
};

// `reason` continues a sentence that begins with the file's name: "is a GIF; save it as PNG".
struct Refusal {
  Trouble trouble = Trouble::unreadable;
  std::string reason;
};

template <typename T>
class Outcome {
public:
  Outcome(T value) : held_(std::move(value)) {}           // NOLINT(google-explicit-constructor)
  Outcome(Refusal refusal) : held_(std::move(refusal)) {} // NOLINT(google-explicit-constructor)

  explicit operator bool() const { return held_.index() == 0; }
  const T &operator*() const { return std::get<0>(held_); }
  T &operator*() { return std::get<0>(held_); }
  const T *operator->() const { return &std::get<0>(held_); }
  T *operator->() { return &std::get<0>(held_); }
  const Refusal &refusal() const { return std::get<1>(held_); }

private:
  std::variant<T, Refusal> held_;
};

} // namespace bodkin::art
