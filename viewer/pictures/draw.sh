#!/bin/sh
# Draws the pictures of the README anew, with the built program: sh viewer/pictures/draw.sh [PROGRAM]
set -eu
cd "$(dirname "$0")/../.."
gapwise=${1:-.build/release/bin/gapwise}
draw() {
    name=$1
    shift
    "$gapwise" render "$@" --size 1600x900 --out "viewer/pictures/$name.png"
}
draw alder-72 alder-72 --explode 1
draw birch-150 birch-150
draw alder-72-section alder-72 --section
