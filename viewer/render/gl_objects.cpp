#include "viewer/render/gl_objects.h"

#include <epoxy/gl.h>

namespace gapwise::gl {

unsigned BufferKind::make() {
    unsigned name = 0U;
    glGenBuffers(1, &name);
    return name;
}

void BufferKind::destroy(unsigned name) {
    glDeleteBuffers(1, &name);
}

unsigned VertexArrayKind::make() {
    unsigned name = 0U;
    glGenVertexArrays(1, &name);
    return name;
}

void VertexArrayKind::destroy(unsigned name) {
    glDeleteVertexArrays(1, &name);
}

unsigned TextureKind::make() {
    unsigned name = 0U;
    glGenTextures(1, &name);
    return name;
}

void TextureKind::destroy(unsigned name) {
    glDeleteTextures(1, &name);
}

unsigned FramebufferKind::make() {
    unsigned name = 0U;
    glGenFramebuffers(1, &name);
    return name;
}

void FramebufferKind::destroy(unsigned name) {
    glDeleteFramebuffers(1, &name);
}

unsigned ProgramKind::make() {
    return glCreateProgram();
}

void ProgramKind::destroy(unsigned name) {
    glDeleteProgram(name);
}

} // namespace gapwise::gl
