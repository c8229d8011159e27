// SPDX-License-Identifier: MIT
#include "gui/window/focus.h"

#include <algorithm>
#include <cstddef>

namespace boughwork {

void Focus::begin_frame() {
    order_.clear();
    layer_ = 0;
}

void Focus::begin_layer() {
    ++layer_;
    order_.clear();
    if (has_keys_.size() <= layer_) has_keys_.emplace_back();
}

void Focus::end_frame() {
    layers_before_ = layer_ + 1;
    has_keys_.resize(layers_before_);
    order_before_ = order_;
    if (std::find(order_.begin(), order_.end(), label()) == order_.end()) drop();  // it has vanished
    moved_ = false;
}

bool Focus::comes(const std::string& label) {
    order_.push_back(label);
    return on_top() && has_keys_[layer_] == label;
}

void Focus::give(const std::string& label) {
    if (on_top()) has_keys_[layer_] = label;
}

void Focus::move(int by) {
    if (order_before_.empty()) return;
    moved_ = true;
    const auto count = static_cast<std::ptrdiff_t>(order_before_.size());
    const auto at = std::find(order_before_.begin(), order_before_.end(), label());
    std::ptrdiff_t next = by > 0 ? 0 : count - 1;
    if (at != order_before_.end()) next = (at - order_before_.begin() + by + count) % count;
    has_keys_.back() = order_before_[static_cast<std::size_t>(next)];
}

void Focus::move_to(const std::string& label) {
    moved_ = true;
    has_keys_.back() = label;
}

}  // namespace boughwork
