#include "command/made_from.hpp"

#include "command/help.hpp"

#include <nlohmann/json.hpp>

namespace bodkin {
namespace {

using Json = nlohmann::ordered_json;

// Names that stay inside the folder: the list is read from a file that anyone may have changed.
bool stays_inside(const std::string &name) {
  return !name.empty() && name.front() != '/' && name.find("..") == std::string::npos;
}

// As GNU make and Ninja both read it.
std::string escaped(const std::string &path) {
  std::string out;
  for (const char c : path) {
    if (c == ' ' || c == '#' || c == ':' || c == '\\')
      out += '\\';
    else if (c == '$')
      out += '$';
    out += c;
  }
  return out;
}

} // namespace

std::string made_from(const std::string &edition, const std::vector<InputFile> &inputs,
                      const std::vector<std::string> &outputs) {
  Json json;
  json["edition"] = edition;
  json["bodkin"] = version();
  json["inputs"] = Json::array();
  for (const InputFile &input : inputs)
    json["inputs"].push_back({{"path", input.path}, {"sha256", input.digest}});
  json["outputs"] = outputs;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::vector<std::string> outputs_listed(std::string_view text) {
  std::vector<std::string> outputs;
  const Json json = Json::parse(text, nullptr, false);
  if (!json.is_object() || !json.contains("outputs") || !json["outputs"].is_array())
    return outputs;
  for (const Json &output : json["outputs"])
    if (output.is_string() && stays_inside(output.get<std::string>()))
      outputs.push_back(output.get<std::string>());
  return outputs;
}

std::string make_rule(const std::string &target, const std::vector<InputFile> &inputs) {
  std::string rule = escaped(target) + ":";
  for (const InputFile &input : inputs)
    rule += " \\\n  " + escaped(input.on_disk);
  return rule + "\n";
}

} // namespace bodkin
