#version 330 core
uniform vec4 uInk;

layout(location = 0) out vec4 colour;

void main() {
    colour = uInk;
}
