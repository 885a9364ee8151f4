#version 330 core
in vec2 place;

uniform sampler2D uShadow;
uniform vec4 uInk; // Colour of the deepest shadow and its strength.

layout(location = 0) out vec4 colour;

void main() {
    colour = vec4(uInk.rgb, uInk.a * texture(uShadow, place).r);
}
