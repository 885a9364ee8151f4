#version 330 core
// Cut faces flat and hatched, bodies of which something is not known in stripes, as in part.frag.
noperspective in vec3 shade;
in vec3 pointInDatum;

uniform vec3 uTint;
uniform vec3 uPaper;
uniform int uCut; // 1 cut face, 0 body of which something is not known.
uniform vec3 uHatchAcross;
uniform float uStripePixels;
uniform vec2 uOrigin;

layout(location = 0) out vec4 colour;

// Share of a pixel that a band of the given share of each period covers.
float bands(float along, float share) {
    float width = fwidth(along);
    float inBand = abs(fract(along) - 0.5) - (0.5 - share * 0.5);
    return clamp(inBand / max(width, 1e-5) + 0.5, 0.0, 1.0);
}

void main() {
    if (uCut == 1) {
        vec3 base = mix(uTint, vec3(1.0), 0.35);
        float line = bands(dot(pointInDatum, uHatchAcross), 0.13);
        colour = vec4(mix(base, uTint * 0.45, line * 0.65), 1.0);
    } else {
        float stripe = bands((gl_FragCoord.x + gl_FragCoord.y + uOrigin.x + uOrigin.y) / uStripePixels, 0.5);
        colour = vec4(mix(shade, mix(shade, uPaper, 0.75), stripe), 1.0);
    }
}
