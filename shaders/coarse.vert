#version 330 core
// The light of part.frag, told at corners only: for bodies that move.
layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;

uniform mat4 uModel;
uniform mat4 uView;
uniform mat4 uProjection;
uniform vec3 uTint;
uniform int uParallel; // 1: every line of sight has one direction.

noperspective out vec3 shade;
out vec3 pointInDatum;

const vec3 KEY = normalize(vec3(-0.30, 0.85, 0.55));
const vec3 FROM_RIGHT = normalize(vec3(0.85, 0.15, 0.45));
const vec3 FROM_LEFT = normalize(vec3(-0.85, 0.15, 0.45));

vec3 lit(vec3 n, vec3 toEye) {
    float key = clamp(dot(n, KEY) * 0.65 + 0.35, 0.0, 1.0);
    float fill = 0.24 * max(dot(n, FROM_RIGHT), 0.0) + 0.15 * max(dot(n, FROM_LEFT), 0.0);
    float sky = n.y * 0.5 + 0.5;
    float facing = clamp(dot(n, toEye), 0.0, 1.0);
    float light = 0.45 + 0.33 * key + fill + 0.10 * sky;
    light *= mix(0.80, 1.0, smoothstep(0.0, 0.55, facing));
    float glint = pow(max(dot(n, normalize(KEY + toEye)), 0.0), 28.0);
    return uTint * light + vec3(0.10 * glint);
}

void main() {
    vec4 inDatum = uModel * vec4(position, 1.0);
    vec4 inView = uView * inDatum;
    vec3 toEye = uParallel == 1 ? vec3(0.0, 0.0, 1.0) : normalize(-inView.xyz);
    pointInDatum = inDatum.xyz;
    shade = lit(mat3(uView) * (mat3(uModel) * normal), toEye);
    gl_Position = uProjection * inView;
}
