#include "viewer/render/kept_memory.h"

#include <cstdlib> // Says which C library this is.

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace gapwise {

void keepFreedMemory() {
#ifdef __GLIBC__
    constexpr int kKeptBytes = 256 * 1024 * 1024;
    constexpr int kLargestKept = 32 * 1024 * 1024; // The most that the library allows.
    mallopt(M_TRIM_THRESHOLD, kKeptBytes);
    mallopt(M_MMAP_THRESHOLD, kLargestKept);
#endif
}

} // namespace gapwise
