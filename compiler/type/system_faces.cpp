#include "type/system_faces.hpp"

#include <algorithm>
#include <filesystem>
#include <fontconfig/fontconfig.h>
#include <map>
#include <optional>

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>

namespace bodkin {
namespace {

namespace fs = std::filesystem;

// Where Debian's packages and the machine's owner put faces.
constexpr const char *folders[] = {"/usr/share/fonts", "/usr/local/share/fonts"};
// Fontconfig's own rules, by path, so that no variable of the environment names others.
constexpr const char *fontconfig_rules = "/etc/fonts/fonts.conf";
// Every package of faces in Debian 12 together holds about 20,000 files.
constexpr std::size_t most_files = 200'000;

using ByName = std::map<std::string, std::string, std::less<>>;

void add_folder(const char *folder, ByName &files) {
  std::error_code trouble;
  fs::recursive_directory_iterator entry(folder, fs::directory_options::skip_permission_denied,
                                         trouble);
  for (; !trouble && entry != fs::recursive_directory_iterator() && files.size() < most_files;
       entry.increment(trouble)) {
    std::error_code ignored;
    if (!entry->is_regular_file(ignored))
      continue;
    // The order of a folder's entries is the disk's: of two files of one name the first by path
    // counts.
    const auto [known, added] =
        files.try_emplace(entry->path().filename().string(), entry->path().string());
    if (!added)
      known->second = std::min(known->second, entry->path().string());
  }
}

FileBytes mapped(const std::string &path, std::size_t most_bytes) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  if (file < 0)
    return {};
  struct stat about {};
  void *bytes = MAP_FAILED;
  const bool fits = ::fstat(file, &about) == 0 && S_ISREG(about.st_mode) && about.st_size > 0 &&
                    static_cast<std::size_t>(about.st_size) <= most_bytes;
  const auto size = fits ? static_cast<std::size_t>(about.st_size) : 0;
  if (fits)
    bytes = ::mmap(nullptr, size, PROT_READ, MAP_PRIVATE, file, 0);
  ::close(file);
  if (bytes == MAP_FAILED)
    return {};
  std::shared_ptr<const void> owner(
      bytes, [size](const void *p) { ::munmap(const_cast<void *>(p), size); });
  return {std::move(owner), {static_cast<const char *>(bytes), size}};
}

struct ConfigGone {
  void operator()(FcConfig *config) const { FcConfigDestroy(config); }
};
struct PatternGone {
  void operator()(FcPattern *pattern) const { FcPatternDestroy(pattern); }
};
struct NamesGone {
  void operator()(FcObjectSet *names) const { FcObjectSetDestroy(names); }
};
struct FoundGone {
  void operator()(FcFontSet *found) const { FcFontSetDestroy(found); }
};

std::string text_of(FcPattern *pattern, const char *name, int n) {
  FcChar8 *text = nullptr;
  return FcPatternGetString(pattern, name, n, &text) == FcResultMatch
             ? std::string(reinterpret_cast<const char *>(text))
             : std::string();
}

int number_of(FcPattern *pattern, const char *name, int otherwise) {
  int number = 0;
  return FcPatternGetInteger(pattern, name, 0, &number) == FcResultMatch ? number : otherwise;
}

std::optional<SystemFace> face_of(FcPattern *pattern) {
  const std::string format = text_of(pattern, FC_FONTFORMAT, 0);
  const int index = number_of(pattern, FC_INDEX, 0);
  // Of a variable face the upper half of the index numbers its instances; one entry is enough.
  if ((format != "TrueType" && format != "CFF") || index >> 16 != 0)
    return std::nullopt;
  SystemFace face;
  face.path = text_of(pattern, FC_FILE, 0);
  face.index = index;
  for (int n = 0;; ++n) {
    std::string family = text_of(pattern, FC_FAMILY, n);
    if (family.empty())
      break;
    face.families.push_back(std::move(family));
  }
  FcBool variable = FcFalse;
  FcPatternGetBool(pattern, FC_VARIABLE, 0, &variable);
  face.variable = variable != FcFalse;
  face.weight = FcWeightToOpenType(number_of(pattern, FC_WEIGHT, FC_WEIGHT_REGULAR));
  face.slanted = number_of(pattern, FC_SLANT, FC_SLANT_ROMAN) != FC_SLANT_ROMAN;
  face.normal_width = number_of(pattern, FC_WIDTH, FC_WIDTH_NORMAL) == FC_WIDTH_NORMAL;
  return face;
}

std::vector<SystemFace> listed() {
  std::vector<SystemFace> faces;
  const std::unique_ptr<FcConfig, ConfigGone> config(FcConfigCreate());
  if (config == nullptr ||
      FcConfigParseAndLoad(config.get(), reinterpret_cast<const FcChar8 *>(fontconfig_rules),
                           FcFalse) == FcFalse ||
      FcConfigBuildFonts(config.get()) == FcFalse)
    return faces;
  const std::unique_ptr<FcPattern, PatternGone> all(FcPatternCreate());
  const std::unique_ptr<FcObjectSet, NamesGone> names(
      FcObjectSetBuild(FC_FILE, FC_INDEX, FC_FAMILY, FC_WEIGHT, FC_SLANT, FC_WIDTH, FC_VARIABLE,
                       FC_FONTFORMAT, static_cast<char *>(nullptr)));
  const std::unique_ptr<FcFontSet, FoundGone> found(
      FcFontList(config.get(), all.get(), names.get()));
  for (int i = 0; found != nullptr && i < found->nfont; ++i)
    if (std::optional<SystemFace> face = face_of(found->fonts[i]))
      faces.push_back(std::move(*face));
  std::sort(faces.begin(), faces.end(), [](const SystemFace &a, const SystemFace &b) {
    return std::tie(a.path, a.index) < std::tie(b.path, b.index);
  });
  return faces;
}

// Both lists are made when first asked for: most editions need none, or file names alone.
class MachineFaces : public SystemFaces {
public:
  std::string path_of(std::string_view file_name) const override {
    if (!files_) {
      files_.emplace();
      for (const char *folder : folders)
        add_folder(folder, *files_);
    }
    const auto found = files_->find(file_name);
    return found == files_->end() ? std::string() : found->second;
  }
  const std::vector<SystemFace> &list() const override {
    if (!faces_)
      faces_ = listed();
    return *faces_;
  }
  FileBytes read(const std::string &path, std::size_t most_bytes) const override {
    return mapped(path, most_bytes);
  }

private:
  mutable std::optional<ByName> files_;
  mutable std::optional<std::vector<SystemFace>> faces_;
};

} // namespace

std::unique_ptr<SystemFaces> machine_faces() { return std::make_unique<MachineFaces>(); }

} // namespace bodkin
