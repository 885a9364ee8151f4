#version 330 core
uniform vec3 uInk;

layout(location = 0) out vec4 colour;

void main() {
    colour = vec4(uInk, 1.0);
}
