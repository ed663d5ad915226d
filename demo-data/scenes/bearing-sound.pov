// Ball bearing, washed and sound, brass cage.
#version 3.7;
#include "bench.inc"
#include "parts.inc"
Camera(<36, 108, -92>, <0, 6, -3>, 34, <4,16,-20>, 4)
Light(260)
Bench(T_Mat)
union { Ball_Bearing(20, 40, 18, 9, T_Steel, T_Steel, T_Chrome, T_Brass) rotate y*-8 }
