// The folder of outputs. New files are written beside it and put in its place in one move, so that
// a compile that is killed or runs out of room leaves the old ones whole. A maker's own files in
// the folder stay where they are.
//
//   Delivery delivery(folder);
//   delivery.write("sheets.pdf", bytes);  // or in pieces
//   delivery.finish();                    // without it, nothing has changed
#pragma once

#include <cstdio>
#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

// A file or folder could not be written; `what()` says which and why.
struct CannotWrite : std::runtime_error {
  using std::runtime_error::runtime_error;
};

class Delivery {
public:
  // Refuses (CannotWrite) a folder that holds files but no made-from.json: it is somebody's own.
  explicit Delivery(const std::string &folder);
  ~Delivery(); // takes the unfinished away
  Delivery(const Delivery &) = delete;
  Delivery &operator=(const Delivery &) = delete;

  void write(const std::string &name, std::string_view bytes);
  // Pieces of one file, in order.
  void begin(const std::string &name);
  void add(std::string_view bytes);
  void end();
  // Files that the last compile wrote and this one keeps as they are.
  void keep(const std::string &name);

  const std::vector<std::string> &written() const { return written_; }
  // What an earlier compile left, as its made-from.json lists it.
  const std::vector<std::string> &earlier() const { return earlier_; }
  void finish();

  // One file by itself, whole or not at all.
  static void write_alone(const std::string &path, std::string_view bytes);

private:
  struct Close {
    void operator()(std::FILE *file) const { std::fclose(file); }
  };
  void see_earlier();
  void carry_over_others();
  void move_one_by_one();

  std::string folder_, making_;
  int at_work_ = -1; // holds a lock on the folder in which the outputs are made
  std::vector<std::string> written_, earlier_;
  std::unique_ptr<std::FILE, Close> open_;
  std::string open_name_;
  bool finished_ = false;
};

} // namespace bodkin
