#version 330 core
// One direction of a soft blur.
in vec2 place;

uniform sampler2D uSource;
uniform vec2 uStep; // From one sample to the next, in shares of the source.

layout(location = 0) out float shade;

void main() {
    float sum = 0.0;
    float weights = 0.0;
    for (int i = -6; i <= 6; ++i) {
        float weight = exp(-float(i * i) / 12.0);
        sum += weight * texture(uSource, place + uStep * float(i)).r;
        weights += weight;
    }
    shade = sum / weights;
}
