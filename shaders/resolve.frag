#version 330 core
// Several samples to a pixel where nothing has an outline.
uniform sampler2D uColour;
uniform int uSamples; // Along each side of a pixel.

layout(location = 0) out vec4 colour;

void main() {
    ivec2 first = ivec2(gl_FragCoord.xy) * uSamples;
    vec3 sum = vec3(0.0);
    for (int y = 0; y < uSamples; ++y)
        for (int x = 0; x < uSamples; ++x)
            sum += texelFetch(uColour, first + ivec2(x, y), 0).rgb;
    colour = vec4(sum / float(uSamples * uSamples), 1.0);
}
