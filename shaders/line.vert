#version 330 core
// One piece of a line, an instance of four corners, as a strip of even width in the picture.
layout(location = 0) in vec3 start;
layout(location = 1) in vec3 end;

uniform mat4 uModel;
uniform mat4 uView;
uniform mat4 uProjection;
uniform vec2 uViewport;  // In pixels.
uniform float uWidth;    // In pixels.
uniform float uTowardEye; // The line is drawn so many mm nearer to the eye than it lies.

out vec2 across; // Pixels from the middle of the line, and half its width.

vec4 clipOf(vec3 point) {
    vec4 inView = uView * uModel * vec4(point, 1.0);
    inView.z += uTowardEye;
    return uProjection * inView;
}

void main() {
    vec4 a = clipOf(start);
    vec4 b = clipOf(end);
    vec2 pixelsA = a.xy / a.w * uViewport * 0.5;
    vec2 pixelsB = b.xy / b.w * uViewport * 0.5;
    vec2 along = pixelsB - pixelsA;
    float size = length(along);
    along = size > 1e-4 ? along / size : vec2(1.0, 0.0);
    vec2 square = vec2(-along.y, along.x);

    float outward = (gl_VertexID & 1) == 0 ? -1.0 : 1.0;
    bool atEnd = gl_VertexID >= 2;
    float reach = uWidth * 0.5 + 1.0; // One pixel more to fade out in.
    vec4 clip = atEnd ? b : a;
    // Ends reach on by half a width, so that pieces join without notches.
    vec2 offset = square * outward * reach + along * (atEnd ? 0.5 : -0.5) * uWidth * 0.5;
    clip.xy += offset / (uViewport * 0.5) * clip.w;
    across = vec2(outward * reach, uWidth * 0.5);
    gl_Position = clip;
}
