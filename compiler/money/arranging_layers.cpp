#include "money/arranging_layers.hpp"

#include <algorithm>

namespace bodkin::arranging {

Rest after(const Step &step, const Rest &rest) {
  if (rest.cost == Rest::no_way)
    return rest;
  return {rest.cost + step.cost, rest.moves + step.moves};
}

Layers::Layers(OrderSpace &space, std::size_t most) : space_(space) {
  if (!space.countable()) {
    whole_ = false;
    return;
  }
  layers_.resize(space.places() + 1);
  reach(most);
  if (whole_)
    look_back();
}

void Layers::reach(std::size_t most) {
  layers_.front().nodes.push_back(space_.start());
  layers_.front().index.emplace(space_.start(), 0);
  std::size_t kept = 1;
  std::vector<Step> steps;
  for (std::size_t at = 0; at < space_.places(); ++at) {
    Layer &next = layers_[at + 1];
    for (const Node &node : layers_[at].nodes) {
      space_.steps(at, node, steps);
      for (const Step &step : steps)
        if (next.index.emplace(step.next, static_cast<std::uint32_t>(next.nodes.size())).second)
          next.nodes.push_back(step.next);
    }
    kept += next.nodes.size();
    if (kept > most) {
      whole_ = false;
      return;
    }
  }
}

void Layers::look_back() {
  layers_.back().rest.assign(layers_.back().nodes.size(), {0, 0});
  std::vector<Step> steps;
  for (std::size_t at = space_.places(); at-- > 0;) {
    Layer &layer = layers_[at];
    layer.rest.assign(layer.nodes.size(), Rest{});
    for (std::size_t i = 0; i < layer.nodes.size(); ++i) {
      space_.steps(at, layer.nodes[i], steps);
      for (const Step &step : steps)
        layer.rest[i] = std::min(layer.rest[i], after(step, rest(at + 1, step.next)));
    }
  }
}

Rest Layers::rest(std::size_t at, const Node &node) const {
  const Layer &layer = layers_[at];
  const auto known = layer.index.find(node);
  return known == layer.index.end() ? Rest{} : layer.rest[known->second];
}

std::vector<Laying> Layers::best() const {
  std::vector<Laying> layings;
  std::vector<Step> steps;
  Node node = space_.start();
  for (std::size_t at = 0; at < space_.places(); ++at) {
    space_.steps(at, node, steps);
    const auto best = std::ranges::min_element(
        steps, {}, [&](const Step &step) { return after(step, rest(at + 1, step.next)); });
    if (best->group >= 0)
      layings.push_back({best->group, best->first});
    node = best->next;
  }
  return layings;
}

} // namespace bodkin::arranging
