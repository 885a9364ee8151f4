#pragma once

#include "geometry/base/result.h"
#include "viewer/render/gl_objects.h"
#include "viewer/scene/camera.h"
#include "viewer/scene/scene.h"

#include <array>
#include <map>
#include <set>
#include <string>
#include <string_view>

namespace gapwise {

/// A linked pair of shaders with its uniforms by name. Setting one that the shaders lack, or with another
/// type, and drawing before all are set, are mistakes of the caller.
class ShaderProgram {
public:
    /// From files of the shaders folder. An error quotes the driver's words.
    static Result<ShaderProgram> make(std::string_view vertexFile, std::string_view fragmentFile);

    /// Makes the program current.
    void use() const;
    void set(std::string_view name, int value);
    void set(std::string_view name, float value);
    void set(std::string_view name, std::array<float, 2> value);
    void set(std::string_view name, std::array<float, 3> value);
    void set(std::string_view name, std::array<float, 4> value);
    void set(std::string_view name, const Matrix& value);

    /// Asserts that every uniform has a value.
    void assertReady() const;

private:
    struct Uniform {
        int location = -1;
        unsigned type = 0U;
        bool set = false;
    };
    explicit ShaderProgram(gl::Program program) : program_{std::move(program)} {}
    void findUniforms();
    int locationOf(std::string_view name, unsigned type);

    gl::Program program_;
    std::map<std::string, Uniform, std::less<>> uniforms_{};
};

} // namespace gapwise
