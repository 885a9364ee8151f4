#version 330 core
// Parts seen straight from below: how high above the ground each point hangs.
layout(location = 0) in vec3 position;

uniform mat4 uModel;
uniform vec4 uField;  // Low x, low z, width, depth of the shadow's field in the datum axes.
uniform float uGround; // Height of the ground, mm.
uniform float uReach;  // Height over which a shadow fades, mm.

out float height;

void main() {
    vec4 inDatum = uModel * vec4(position, 1.0);
    height = (inDatum.y - uGround) / uReach;
    vec2 place = (inDatum.xz - uField.xy) / uField.zw * 2.0 - 1.0;
    gl_Position = vec4(place, clamp(height * 0.1, 0.0, 1.0) * 2.0 - 1.0, 1.0);
}
