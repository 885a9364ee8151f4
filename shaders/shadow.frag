#version 330 core
in float height;

layout(location = 0) out float shade;

void main() {
    shade = exp(-max(height, 0.0));
}
