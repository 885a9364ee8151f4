#version 330 core
// A level rectangle of the ground: the shadow's field, or the bench top.
uniform mat4 uView;
uniform mat4 uProjection;
uniform mat4 uAxes;   // Right, up and toward the person, in the datum axes.
uniform vec4 uField;
uniform float uGround;

out vec2 place;

void main() {
    place = vec2(gl_VertexID & 1, gl_VertexID >> 1);
    vec2 xz = uField.xy + place * uField.zw;
    gl_Position = uProjection * uView * uAxes * vec4(xz.x, uGround, xz.y, 1.0);
    gl_Position.z = gl_Position.w; // Behind everything.
}
