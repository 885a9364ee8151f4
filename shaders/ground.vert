#version 330 core
// The ground under the parts, as wide as the shadow's field.
uniform mat4 uView;
uniform mat4 uProjection;
uniform vec4 uField;
uniform float uGround;

out vec2 place;

void main() {
    place = vec2(gl_VertexID & 1, gl_VertexID >> 1);
    vec2 xz = uField.xy + place * uField.zw;
    gl_Position = uProjection * uView * vec4(xz.x, uGround, xz.y, 1.0);
}
