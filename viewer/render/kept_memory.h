#pragma once

namespace gapwise {

/// Lets the process keep memory that it gives back, up to some 256 MB. OpenGL in software takes and returns
/// its buffers with every part that it draws; where each went back to the system, a picture would take three
/// times as long. Does nothing where the C library has no such setting.
void keepFreedMemory();

} // namespace gapwise
