#include "edition/borrow.hpp"

#include "edition/named_file.hpp"
#include "edition/problems.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <unordered_set>

namespace bodkin {
namespace {

std::string folder_of(const std::string &path) {
  const std::size_t slash = path.rfind('/');
  return slash == std::string::npos ? std::string{} : path.substr(0, slash);
}

bool has_ending(std::string_view name) {
  const std::size_t slash = name.rfind('/');
  return name.substr(slash == std::string_view::npos ? 0 : slash + 1).find('.') !=
         std::string_view::npos;
}

class Borrowing {
public:
  explicit Borrowing(Reader &reader) : reader_(reader) {}

  const Manuscript *open(std::string path, bool on_shelf) {
    const FileBytes bytes = on_shelf ? reader_.files.shelf(path) : reader_.files.read(path);
    if (!bytes.owner)
      return nullptr;
    Manuscript &manuscript = reader_.manuscripts.emplace_back();
    manuscript.own = reader_.manuscripts.size() == 1;
    manuscript.on_shelf = on_shelf;
    manuscript.folder = on_shelf ? std::string{} : folder_of(path);
    const std::string name = on_shelf ? fmt::format("stdlib/{}.bodkin", path) : path;
    manuscript.path = std::move(path);
    reader_.note_file(name, on_shelf         ? FileRole::shelf
                            : manuscript.own ? FileRole::manuscript
                                             : FileRole::borrowed);
    const FileId file = reader_.sources.add(name, std::string(bytes.view));
    Problems found;
    manuscript.tree = language::read(file, reader_.sources, found);
    for (Problem &problem : found)
      reader_.report(std::move(problem));
    known_.emplace(name, &manuscript);
    take_borrowed(manuscript);
    return &manuscript;
  }

private:
  void take_borrowed(Manuscript &manuscript) {
    open_.push_back(&manuscript);
    each_line(manuscript, [&](FactLine line) {
      if (line.word() != "borrow" || !line.has("file"))
        return;
      if (const Manuscript *borrowed = borrow(line))
        manuscript.borrows.push_back(borrowed);
    });
    open_.pop_back();
  }

  const Manuscript *borrow(FactLine line) {
    // Where thousands of lines are wrong, no disk is searched for what more of them may mean.
    if (!reader_.keeps_problems())
      return nullptr;
    const std::string_view written = line.words("file");
    if (open_.size() >= limits::borrow_depth) {
      reader_.report(too_deep(line));
      return nullptr;
    }
    return has_ending(written) ? from_folder(line) : from_shelf(line, written);
  }

  const Manuscript *from_shelf(FactLine line, std::string_view name) {
    if (const Manuscript *known = already(fmt::format("stdlib/{}.bodkin", name), line))
      return is_open(known) ? nullptr : known;
    if (name.starts_with("fonts/")) {
      reader_.report(missing_shelf(line));
      return nullptr;
    }
    if (const Manuscript *opened = open(std::string(name), true))
      return opened;
    reader_.report(missing_shelf(line));
    return meant_on_shelf(line, name);
  }

  // What a misspelt name means is borrowed: nobody asks for each thing in it once more.
  const Manuscript *meant_on_shelf(FactLine line, std::string_view name) {
    const auto near = reader_.near(name, {shelf().begin(), shelf().end()});
    if (!near)
      return nullptr;
    if (const Manuscript *known = already(fmt::format("stdlib/{}.bodkin", *near), line))
      return is_open(known) ? nullptr : known;
    return open(std::string(*near), true);
  }

  // Each folder is looked into once, however many lines name what is not there.
  const std::vector<std::string> &shelf() {
    if (shelf_.empty())
      for (const char *folder : {"stocks", "machines", "styles", "foldings"})
        for (const std::string &name : reader_.files.shelf_names(folder))
          shelf_.push_back(fmt::format("{}/{}", folder, name));
    return shelf_;
  }

  const Manuscript *from_folder(FactLine line) {
    const Lookup looked =
        reader_.files.look(line.in->folder, line.words("file"), limits::manuscript_bytes);
    if (line.in->on_shelf || looked.trouble != Trouble::none) {
      reader_.report(file_problem(reader_, looked, line, "file"));
      return nullptr;
    }
    if (const Manuscript *known = already(looked.path, line))
      return is_open(known) ? nullptr : known;
    return open(looked.path, false);
  }

  bool is_open(const Manuscript *manuscript) const {
    return std::find(open_.begin(), open_.end(), manuscript) != open_.end();
  }

  // A file that was read before; one that is still being read borrows itself in a circle.
  const Manuscript *already(const std::string &name, FactLine line) {
    const auto found = known_.find(name);
    if (found == known_.end())
      return nullptr;
    if (is_open(found->second))
      reader_.report(borrow_loop(line, found->second));
    return found->second;
  }

  Problem borrow_loop(FactLine line, const Manuscript *again) const {
    std::string chain;
    for (auto step = std::find(open_.begin(), open_.end(), again); step != open_.end(); ++step)
      chain += fmt::format("{} borrows ", reader_.sources.name((*step)->tree.file));
    return {.check = "borrow-loop",
            .range = line.range("file"),
            .message = "this file is already being read: it would borrow itself",
            .why = fmt::format("{}{}, and there is no end to it", chain,
                               reader_.sources.name(again->tree.file)),
            .type = {{{}, "take this line out, and put what both files need into a third one"}}};
  }

  Problem too_deep(FactLine line) const {
    return {.check = "too-deep",
            .range = line.range("file"),
            .message = fmt::format("this is the {}th file that borrows the next; at most {} do",
                                   open_.size(), limits::borrow_depth),
            .why = "what a file borrows through so many others, nobody can follow any more",
            .type = {{{}, "borrow it in the edition's own file"}}};
  }

  Problem missing_shelf(FactLine line) {
    const std::string_view written = line.words("file");
    Problem problem{.check = "missing-shelf",
                    .range = line.range("file"),
                    .message = fmt::format("there is no {} on the shelf", written)};
    const std::vector<std::string_view> views(shelf().begin(), shelf().end());
    problem.why = fmt::format("on the shelf are {}; a file of your own is named with its ending",
                              list_of(views));
    if (const auto near = reader_.near(written, views)) {
      problem.message += fmt::format("; did you mean {}?", *near);
      problem.type.push_back({fmt::format("borrow \"{}\"", *near), {}});
    }
    problem.type.push_back(
        {fmt::format("borrow \"{}.bodkin\"", written),
         problem.type.empty() ? "if it is a file of yours" : "or, if it is a file of yours, this"});
    return problem;
  }

  Reader &reader_;
  std::vector<const Manuscript *> open_;
  std::vector<std::string> shelf_;
  std::map<std::string, const Manuscript *, std::less<>> known_;
};

void rank(const Manuscript &manuscript, std::unordered_set<const Manuscript *> &ranked,
          std::vector<const Manuscript *> &order) {
  if (!ranked.insert(&manuscript).second)
    return;
  order.push_back(&manuscript);
  for (auto borrowed = manuscript.borrows.rbegin(); borrowed != manuscript.borrows.rend();
       ++borrowed)
    rank(**borrowed, ranked, order);
}

Problem unreadable_manuscript(std::string_view path, Trouble trouble) {
  if (trouble == Trouble::too_big)
    return {.check = "too-long-file",
            .message = fmt::format("{} is too long a file for a manuscript", path),
            .why = fmt::format("at most {} MB are read, a thousand editions; something else must "
                               "have got into its place",
                               limits::manuscript_bytes >> 20)};
  return {.check = "missing-file",
          .message = fmt::format("{} cannot be read", path),
          .why = "there is no edition without its manuscript"};
}

} // namespace

bool take_in_manuscripts(Reader &reader, std::string_view path) {
  const Lookup looked = reader.files.look("", path, limits::manuscript_bytes);
  const Manuscript *own =
      looked.trouble == Trouble::none ? Borrowing(reader).open(looked.path, false) : nullptr;
  if (!own) {
    reader.report(unreadable_manuscript(path, looked.trouble));
    return false;
  }
  std::unordered_set<const Manuscript *> ranked;
  rank(*own, ranked, reader.strongest_first);
  return true;
}

} // namespace bodkin
