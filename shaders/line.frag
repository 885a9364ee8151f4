#version 330 core
in vec2 across;

uniform vec4 uInk;

layout(location = 0) out vec4 colour;

void main() {
    float cover = clamp(across.y + 0.5 - abs(across.x), 0.0, 1.0);
    colour = vec4(uInk.rgb, uInk.a * cover);
}
