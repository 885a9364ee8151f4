#include "tests/benchmarks/plain_pass.h"

#include "viewer/render/matrix_of.h"

#include <epoxy/gl.h>

#include <stdexcept>

namespace gapwise::bench {

namespace {

constexpr const char* kVertex = R"(#version 330 core
layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;
uniform mat4 projection;
uniform mat4 view;
uniform mat4 pose;
out vec3 seenNormal;
void main() {
    mat4 seen = view * pose;
    seenNormal = mat3(seen) * normal;
    gl_Position = projection * seen * vec4(position, 1.0);
})";

constexpr const char* kFragment = R"(#version 330 core
in vec3 seenNormal;
uniform vec3 tint;
out vec4 colour;
void main() {
    float light = 0.35 + 0.65 * max(dot(normalize(seenNormal), vec3(0.3, 0.5, 0.81)), 0.0);
    colour = vec4(tint * light, 1.0);
})";

void attach(unsigned program, GLenum kind, const char* source) {
    const unsigned shader = glCreateShader(kind);
    glShaderSource(shader, 1, &source, nullptr);
    glCompileShader(shader);
    glAttachShader(program, shader);
    glDeleteShader(shader);
}

void giveTexture(const gl::Texture& texture, GLint format, GLenum channels, const PictureSize& size) {
    glBindTexture(GL_TEXTURE_2D, texture.name());
    const GLenum type = channels == GL_RGBA ? GL_UNSIGNED_BYTE : GL_UNSIGNED_INT;
    glTexImage2D(GL_TEXTURE_2D, 0, format, size.width, size.height, 0, channels, type, nullptr);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
}

} // namespace

PlainPass::PlainPass(const PictureSize& size)
    : size_{size},
      program_{gl::Program::make()},
      colour_{gl::Texture::make()},
      depth_{gl::Texture::make()},
      target_{gl::Framebuffer::make()} {
    attach(program_.name(), GL_VERTEX_SHADER, kVertex);
    attach(program_.name(), GL_FRAGMENT_SHADER, kFragment);
    glLinkProgram(program_.name());
    giveTexture(colour_, GL_RGBA8, GL_RGBA, size);
    giveTexture(depth_, GL_DEPTH_COMPONENT24, GL_DEPTH_COMPONENT, size);
    glBindFramebuffer(GL_FRAMEBUFFER, target_.name());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, colour_.name(), 0);
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, depth_.name(), 0);
    GLint linked = GL_FALSE;
    glGetProgramiv(program_.name(), GL_LINK_STATUS, &linked);
    if (linked != GL_TRUE || glCheckFramebufferStatus(GL_FRAMEBUFFER) != GL_FRAMEBUFFER_COMPLETE)
        throw std::runtime_error("the plain pass is refused by the driver");
}

void PlainPass::draw(const Scene& scene, const SceneCamera& camera) {
    const auto uniform = [&](const char* name) { return glGetUniformLocation(program_.name(), name); };
    const auto f = [](double value) { return static_cast<float>(value); };
    glBindFramebuffer(GL_FRAMEBUFFER, target_.name());
    glViewport(0, 0, size_.width, size_.height);
    glDisable(GL_BLEND);
    glEnable(GL_DEPTH_TEST);
    glDepthMask(GL_TRUE);
    glClearColor(0.95F, 0.95F, 0.94F, 1.0F);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    glUseProgram(program_.name());
    glUniformMatrix4fv(uniform("projection"), 1, GL_FALSE, camera.projectionMatrix(size_.aspect()).data());
    glUniformMatrix4fv(uniform("view"), 1, GL_FALSE, camera.viewMatrix().data());
    for (const SceneItem& item : scene.items) {
        glUniformMatrix4fv(uniform("pose"), 1, GL_FALSE, matrixOf(item.drawnPose()).data());
        glUniform3f(uniform("tint"), f(item.tint.red), f(item.tint.green), f(item.tint.blue));
        meshes_.of(item.mesh).body.draw();
    }
}

} // namespace gapwise::bench
