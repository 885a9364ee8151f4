#include "models/uncertainty/blocks.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace gapwise {

void forEachBlock(std::size_t blocks, unsigned threads, const std::function<void(std::size_t block)>& work) {
    std::atomic<std::size_t> next{0};
    const auto worker = [&] {
        for (std::size_t block = next++; block < blocks; block = next++)
            work(block);
    };
    const std::size_t wanted = threads > 0 ? threads : std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::jthread> helpers; // Joined at the end of the scope; this thread works as well.
    for (std::size_t i = 1; i < std::min(wanted, blocks); ++i)
        helpers.emplace_back(worker);
    worker();
}

} // namespace gapwise
