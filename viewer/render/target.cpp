#include "viewer/render/target.h"

#include <epoxy/gl.h>

#include <fmt/format.h>

#include <array>

namespace gapwise {

namespace {

struct Format {
    int internal;
    unsigned channels;
    unsigned type;
    int filter;
};
constexpr Format kPictureFormat{GL_RGBA8, GL_RGBA, GL_UNSIGNED_BYTE, GL_LINEAR};
constexpr Format kSampleFormat{GL_RGBA8, GL_RGBA, GL_UNSIGNED_BYTE, GL_NEAREST};
constexpr Format kShadeFormat{GL_R16F, GL_RED, GL_FLOAT, GL_LINEAR};
constexpr Format kDepthFormat{GL_DEPTH_COMPONENT24, GL_DEPTH_COMPONENT, GL_UNSIGNED_INT, GL_NEAREST};

gl::Texture makeTexture(int width, int height, const Format& format) {
    gl::Texture texture = gl::Texture::make();
    glBindTexture(GL_TEXTURE_2D, texture.name());
    glTexImage2D(GL_TEXTURE_2D, 0, format.internal, width, height, 0, format.channels, format.type, nullptr);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, format.filter);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, format.filter);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
    return texture;
}

void attach(unsigned point, const gl::Texture& texture) {
    glFramebufferTexture2D(GL_FRAMEBUFFER, point, GL_TEXTURE_2D, texture.name(), 0);
}

/// Says what is wrong with the bound frame, if anything is.
std::optional<Error> faultOfBoundFrame(int width, int height) {
    const bool lacksMemory = glGetError() == GL_OUT_OF_MEMORY;
    if (!lacksMemory && glCheckFramebufferStatus(GL_FRAMEBUFFER) == GL_FRAMEBUFFER_COMPLETE)
        return std::nullopt;
    return Error{.where = "OpenGL",
                 .found = fmt::format("no memory for {} × {} samples", width, height),
                 .allowed = "more graphics memory, or a smaller picture"};
}

} // namespace

Result<SampleTarget> makeSampleTarget(int width, int height) {
    SampleTarget target{.frame = gl::Framebuffer::make(),
                        .colour = makeTexture(width, height, kSampleFormat),
                        .kind = makeTexture(width, height, kSampleFormat),
                        .depth = makeTexture(width, height, kDepthFormat),
                        .width = width,
                        .height = height};
    glBindFramebuffer(GL_FRAMEBUFFER, target.frame.name());
    attach(GL_COLOR_ATTACHMENT0, target.colour);
    attach(GL_COLOR_ATTACHMENT1, target.kind);
    attach(GL_DEPTH_ATTACHMENT, target.depth);
    constexpr std::array<GLenum, 2> kBuffers{GL_COLOR_ATTACHMENT0, GL_COLOR_ATTACHMENT1};
    glDrawBuffers(static_cast<GLsizei>(kBuffers.size()), kBuffers.data());
    if (auto fault = faultOfBoundFrame(width, height))
        return *fault;
    return target;
}

Result<ColourTarget> makeColourTarget(int width, int height, ColourFormat format) {
    ColourTarget target{
        .frame = gl::Framebuffer::make(),
        .colour = makeTexture(width, height, format == ColourFormat::Shade ? kShadeFormat : kPictureFormat),
        .width = width,
        .height = height};
    glBindFramebuffer(GL_FRAMEBUFFER, target.frame.name());
    attach(GL_COLOR_ATTACHMENT0, target.colour);
    if (auto fault = faultOfBoundFrame(width, height))
        return *fault;
    return target;
}

std::optional<Error> giveDepth(ColourTarget& target) {
    target.depth = makeTexture(target.width, target.height, kDepthFormat);
    glBindFramebuffer(GL_FRAMEBUFFER, target.frame.name());
    attach(GL_DEPTH_ATTACHMENT, target.depth);
    return faultOfBoundFrame(target.width, target.height);
}

} // namespace gapwise
