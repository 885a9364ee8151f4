#version 330 core
// The ends of a line as thin as the driver draws it.
layout(location = 0) in vec3 position;

uniform mat4 uModel;
uniform mat4 uView;
uniform mat4 uProjection;
uniform float uTowardEye; // The line is drawn so many mm nearer to the eye than it lies.

void main() {
    vec4 inView = uView * uModel * vec4(position, 1.0);
    inView.z += uTowardEye;
    gl_Position = uProjection * inView;
}
