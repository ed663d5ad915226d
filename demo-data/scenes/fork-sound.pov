// Selector fork with sound pads.
#version 3.7;
#include "bench.inc"
#include "parts.inc"
Camera(<60, 150, -140>, <4, 4, 16>, 38, <30,8,-10>, 4)
Light(280)
Bench(T_Paper)
object { Fork(42, T_Bronze, T_Bright, 8.6) rotate y*-12 }
