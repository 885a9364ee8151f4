#pragma once

#include <utility>
#include <vector>

namespace gapwise {

/// Keeps a key down until a picture has seen it: a foot switch presses and releases between two pictures, and
/// a panel that asks once a picture whether the key is down would miss it.
class KeyTaps {
public:
    void pressed(int key) { unseen_.push_back(key); }

    /// True when the release may be told now; else it waits until a picture was drawn. With any key unseen it
    /// waits: Ctrl is let go last, and without it the other key would mean something else.
    bool mayRelease(int key) {
        if (unseen_.empty())
            return true;
        waiting_.push_back(key);
        return false;
    }

    /// A picture was drawn: the releases that waited for it, in their order.
    std::vector<int> seen() {
        unseen_.clear();
        return std::exchange(waiting_, {});
    }

private:
    std::vector<int> unseen_{};
    std::vector<int> waiting_{};
};

} // namespace gapwise
