#pragma once

#include <utility>

namespace gapwise::gl {

/// Move-only owner of one OpenGL name; may be empty; must die before its context.
template <class Kind>
class Object {
public:
    Object() = default;
    static Object make() { return Object{Kind::make()}; }

    Object(Object&& other) noexcept : name_{std::exchange(other.name_, 0U)} {}
    Object& operator=(Object&& other) noexcept {
        std::swap(name_, other.name_);
        return *this;
    }
    Object(const Object&) = delete;
    Object& operator=(const Object&) = delete;
    ~Object() {
        if (name_ != 0U)
            Kind::destroy(name_);
    }

    unsigned name() const { return name_; }
    explicit operator bool() const { return name_ != 0U; }

private:
    explicit Object(unsigned name) : name_{name} {}
    unsigned name_ = 0U;
};

struct BufferKind {
    static unsigned make();
    static void destroy(unsigned name);
};
struct VertexArrayKind {
    static unsigned make();
    static void destroy(unsigned name);
};
struct TextureKind {
    static unsigned make();
    static void destroy(unsigned name);
};
struct FramebufferKind {
    static unsigned make();
    static void destroy(unsigned name);
};
struct ProgramKind {
    static unsigned make();
    static void destroy(unsigned name);
};

using Buffer = Object<BufferKind>;
using VertexArray = Object<VertexArrayKind>;
using Texture = Object<TextureKind>;
using Framebuffer = Object<FramebufferKind>;
using Program = Object<ProgramKind>;

} // namespace gapwise::gl
