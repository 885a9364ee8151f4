#include "viewer/render/shader_program.h"

#include "shaders/shaders.h"

#include <epoxy/gl.h>

#include <algorithm>
#include <cassert>

namespace gapwise {

namespace {

std::string withoutEnd(std::string text) {
    text.erase(std::ranges::find(text, '\0'), text.end());
    return text;
}

std::string shaderLog(unsigned shader) {
    int size = 0;
    glGetShaderiv(shader, GL_INFO_LOG_LENGTH, &size);
    std::string log(static_cast<std::size_t>(size) + 1U, '\0');
    glGetShaderInfoLog(shader, size, nullptr, log.data());
    return withoutEnd(log);
}

std::string programLog(unsigned program) {
    int size = 0;
    glGetProgramiv(program, GL_INFO_LOG_LENGTH, &size);
    std::string log(static_cast<std::size_t>(size) + 1U, '\0');
    glGetProgramInfoLog(program, size, nullptr, log.data());
    return withoutEnd(log);
}

Error refused(std::string_view file, std::string log) {
    return {.where = "shader " + std::string{file},
            .found = std::move(log),
            .allowed = "an OpenGL 3.3 driver that compiles it"};
}

/// Compiles a file and attaches it. Empty when all went well.
Errors attach(unsigned program, unsigned kind, std::string_view file) {
    const std::string_view text = shaderSource(file);
    assert(!text.empty());
    const char* start = text.data();
    const int size = static_cast<int>(text.size());
    const unsigned shader = glCreateShader(kind);
    glShaderSource(shader, 1, &start, &size);
    glCompileShader(shader);
    int compiled = 0;
    glGetShaderiv(shader, GL_COMPILE_STATUS, &compiled);
    Errors errors;
    if (!compiled)
        errors.push_back(refused(file, shaderLog(shader)));
    glAttachShader(program, shader);
    glDeleteShader(shader); // It lives on until its program dies.
    return errors;
}

} // namespace

Result<ShaderProgram> ShaderProgram::make(std::string_view vertexFile, std::string_view fragmentFile) {
    gl::Program program = gl::Program::make();
    Errors errors = attach(program.name(), GL_VERTEX_SHADER, vertexFile);
    for (Error& error : attach(program.name(), GL_FRAGMENT_SHADER, fragmentFile))
        errors.push_back(std::move(error));
    if (!errors.empty())
        return errors;
    glLinkProgram(program.name());
    int linked = 0;
    glGetProgramiv(program.name(), GL_LINK_STATUS, &linked);
    if (!linked)
        return refused(fragmentFile, programLog(program.name()));
    ShaderProgram made{std::move(program)};
    made.findUniforms();
    return made;
}

void ShaderProgram::findUniforms() {
    int count = 0;
    int longest = 0;
    glGetProgramiv(program_.name(), GL_ACTIVE_UNIFORMS, &count);
    glGetProgramiv(program_.name(), GL_ACTIVE_UNIFORM_MAX_LENGTH, &longest);
    for (int i = 0; i < count; ++i) {
        std::string name(static_cast<std::size_t>(longest) + 1U, '\0');
        int size = 0;
        unsigned type = 0U;
        glGetActiveUniform(program_.name(), static_cast<unsigned>(i), longest, nullptr, &size, &type,
                           name.data());
        name = withoutEnd(name);
        uniforms_[name] = {.location = glGetUniformLocation(program_.name(), name.c_str()), .type = type};
    }
}

int ShaderProgram::locationOf(std::string_view name, unsigned type) {
    const auto found = uniforms_.find(name);
    assert(found != uniforms_.end() && found->second.type == type);
    (void)type;
    found->second.set = true;
    return found->second.location;
}

void ShaderProgram::use() const {
    glUseProgram(program_.name());
}

void ShaderProgram::set(std::string_view name, int value) {
    const auto found = uniforms_.find(name);
    const bool sampler = found != uniforms_.end() && found->second.type == GL_SAMPLER_2D;
    glUniform1i(locationOf(name, sampler ? GL_SAMPLER_2D : GL_INT), value);
}

void ShaderProgram::set(std::string_view name, float value) {
    glUniform1f(locationOf(name, GL_FLOAT), value);
}

void ShaderProgram::set(std::string_view name, std::array<float, 2> value) {
    glUniform2fv(locationOf(name, GL_FLOAT_VEC2), 1, value.data());
}

void ShaderProgram::set(std::string_view name, std::array<float, 3> value) {
    glUniform3fv(locationOf(name, GL_FLOAT_VEC3), 1, value.data());
}

void ShaderProgram::set(std::string_view name, std::array<float, 4> value) {
    glUniform4fv(locationOf(name, GL_FLOAT_VEC4), 1, value.data());
}

void ShaderProgram::set(std::string_view name, const Matrix& value) {
    glUniformMatrix4fv(locationOf(name, GL_FLOAT_MAT4), 1, GL_FALSE, value.data());
}

void ShaderProgram::assertReady() const {
    assert(std::ranges::all_of(uniforms_, [](const auto& named) { return named.second.set; }));
}

} // namespace gapwise
