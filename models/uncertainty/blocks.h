#pragma once

#include <cstddef>
#include <functional>

namespace gapwise {

/// Does `work` once for each block 0 … blocks − 1, on so many threads (0: as many as the machine has cores;
/// never more than blocks), each taking the next block when it is ready. `work` is called from several
/// threads at once and must not throw.
void forEachBlock(std::size_t blocks, unsigned threads, const std::function<void(std::size_t block)>& work);

} // namespace gapwise
