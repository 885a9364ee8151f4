#version 330 core
// A matt body in soft studio light that stays with the eye; cut faces flat and hatched; what is not known in
// stripes.
in vec3 normalInView;
in vec3 pointInView;
in vec3 pointInDatum;

uniform vec3 uTint;
uniform vec3 uPaper;        // What stripes fade to.
uniform int uLook;          // 0 body, 1 cut face, 2 body of which something is not known.
uniform int uParallel;      // 1: every line of sight has one direction.
uniform float uId;          // Of the part, in (0, 1]: tells parts apart where outlines are sought.
uniform vec3 uHatchAcross;  // Square to the hatching, in the datum axes; its length is 1 / spacing in mm.
uniform float uStripePixels;
uniform vec2 uOrigin;       // Of this piece in the whole picture, so that stripes run on.

layout(location = 0) out vec4 colour;
layout(location = 1) out vec4 kind;

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

// Share of a pixel that a band of the given share of each period covers.
float bands(float along, float share) {
    float width = fwidth(along);
    float inBand = abs(fract(along) - 0.5) - (0.5 - share * 0.5);
    return clamp(inBand / max(width, 1e-5) + 0.5, 0.0, 1.0);
}

void main() {
    vec3 toEye = uParallel == 1 ? vec3(0.0, 0.0, 1.0) : normalize(-pointInView);
    vec3 n = normalize(gl_FrontFacing ? normalInView : -normalInView);
    vec3 shown = lit(n, toEye);
    if (uLook == 1) {
        vec3 base = mix(uTint, vec3(1.0), 0.35);
        float line = bands(dot(pointInDatum, uHatchAcross), 0.13);
        shown = mix(base, uTint * 0.45, line * 0.65);
    } else if (uLook == 2) {
        float stripe = bands((gl_FragCoord.x + gl_FragCoord.y + uOrigin.x + uOrigin.y) / uStripePixels, 0.5);
        shown = mix(shown, mix(shown, uPaper, 0.75), stripe);
    }
    colour = vec4(clamp(shown, 0.0, 1.0), 1.0);
    kind = vec4(n.xy * 0.5 + 0.5, uId, 1.0);
}
