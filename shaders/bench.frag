#version 330 core
// The bench top: one calm tint, a line along its edges, a broader one at its front.
in vec2 place;

uniform vec3 uTop;
uniform vec3 uInk;
uniform float uEdgePixels;

layout(location = 0) out vec4 colour;

void main() {
    vec2 fromEdge = min(place, 1.0 - place) / fwidth(place);
    float front = (1.0 - place.y) / fwidth(place.y) / 3.0;
    float edge = min(min(fromEdge.x, fromEdge.y), front);
    float line = 1.0 - clamp(edge - uEdgePixels + 0.5, 0.0, 1.0);
    colour = vec4(mix(uTop, uInk, line), 1.0);
}
