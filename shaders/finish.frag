#version 330 core
// Outlines where one part, or one face of a part, stands before another; then several samples to a pixel.
uniform sampler2D uColour;
uniform sampler2D uKind;
uniform sampler2D uDepth;
uniform int uSamples;      // Along each side of a pixel.
uniform float uReach;      // Half the width of an outline, in samples.
uniform vec4 uInk;
uniform vec2 uNearFar;     // Of the camera, mm.
uniform int uParallel;
uniform float uJump;       // A step in depth of more than this many mm is an outline.

layout(location = 0) out vec4 colour;

float depthAt(ivec2 at) {
    float depth = texelFetch(uDepth, at, 0).r;
    if (uParallel == 1)
        return mix(uNearFar.x, uNearFar.y, depth);
    float ndc = depth * 2.0 - 1.0;
    return 2.0 * uNearFar.x * uNearFar.y / (uNearFar.y + uNearFar.x - ndc * (uNearFar.y - uNearFar.x));
}

bool outlined(ivec2 at, ivec2 last) {
    float here = depthAt(at);
    vec3 kind = texelFetch(uKind, at, 0).rgb;
    float id = kind.b;
    // Where a face is seen at a grazing angle its facets step in depth too; there only larger steps count.
    vec2 across = kind.rg * 2.0 - 1.0;
    float facing = sqrt(max(1.0 - dot(across, across), 0.0));
    float jump = uJump / max(facing, 0.04);
    // A wide outline needs more directions, or it would be beaded.
    int directions = uReach > 2.5 ? 8 : 4;
    for (int i = 0; i < directions; ++i) {
        float angle = float(i) * 3.14159265 / float(directions);
        ivec2 offset = ivec2(round(vec2(cos(angle), sin(angle)) * uReach));
        ivec2 one = clamp(at + offset, ivec2(0), last);
        ivec2 other = clamp(at - offset, ivec2(0), last);
        if (texelFetch(uKind, one, 0).b != id || texelFetch(uKind, other, 0).b != id)
            return true;
        if (id > 0.0 && abs(depthAt(one) + depthAt(other) - 2.0 * here) > jump)
            return true;
    }
    return false;
}

void main() {
    ivec2 last = textureSize(uColour, 0) - 1;
    ivec2 first = ivec2(gl_FragCoord.xy) * uSamples;
    vec3 sum = vec3(0.0);
    for (int y = 0; y < uSamples; ++y)
        for (int x = 0; x < uSamples; ++x) {
            ivec2 at = first + ivec2(x, y);
            vec3 sampled = texelFetch(uColour, at, 0).rgb;
            sum += outlined(at, last) ? mix(sampled, uInk.rgb, uInk.a) : sampled;
        }
    colour = vec4(sum / float(uSamples * uSamples), 1.0);
}
