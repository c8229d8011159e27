// SPDX-License-Identifier: MIT
#pragma once
// What has the keys. In each frame everything that can be pressed is told in turn, layer by layer (a
// menu or a dialog lies above the page); Tab goes through the uppermost layer in that order. What had
// the keys below comes back when the layer above is gone.

#include <string>
#include <vector>

namespace boughwork {

class Focus {
public:
    void begin_frame();
    void begin_layer();
    void end_frame();

    /// The next in turn; true when it has the keys.
    bool comes(const std::string& label);
    /// True when nothing in the layer that is drawn now has the keys, and it could.
    bool is_free() const { return on_top() && has_keys_[layer_].empty(); }
    bool on_top() const { return layer_ + 1 == layers_before_; }
    /// To something in the layer that is drawn now.
    void give(const std::string& label);

    /// From what has the keys to the next (1) or the one before (-1), round and round.
    void move(int by);
    void move_to(const std::string& label);
    /// True in the frame after a move.
    bool moved() const { return moved_; }
    void drop() { has_keys_.back().clear(); }
    /// Of the uppermost layer of the last frame.
    const std::vector<std::string>& in_turn() const { return order_before_; }
    const std::string& label() const { return has_keys_.back(); }

private:
    std::size_t layer_ = 0;
    std::size_t layers_before_ = 1;             // of the last frame
    std::vector<std::string> order_;            // of the layer that is drawn now
    std::vector<std::string> order_before_;     // of the uppermost layer of the last frame
    std::vector<std::string> has_keys_ = {""};  // in each layer, the uppermost last
    bool moved_ = false;
};

}  // namespace boughwork
