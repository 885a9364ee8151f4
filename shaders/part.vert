#version 330 core
// Faces and cut faces of a part, from its own axes to the picture.
layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;

uniform mat4 uModel;
uniform mat4 uView;
uniform mat4 uProjection;

out vec3 normalInView;
out vec3 pointInView;
out vec3 pointInDatum;

void main() {
    vec4 inDatum = uModel * vec4(position, 1.0);
    vec4 inView = uView * inDatum;
    pointInDatum = inDatum.xyz;
    pointInView = inView.xyz;
    normalInView = mat3(uView) * (mat3(uModel) * normal);
    gl_Position = uProjection * inView;
}
