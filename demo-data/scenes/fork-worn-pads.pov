// Selector fork: the pads are worn thin and blued by the groove of the ring.
#version 3.7;
#include "bench.inc"
#include "parts.inc"
Camera(<-40, 150, -150>, <2, 4, 18>, 37, <-30,8,-10>, 4)
Light(280)
Bench(T_Mat)
#local F_Pad = function(x,y,z) { 0.86 - abs(z+4)*0.045 }
object { Fork(42, T_Bronze, Tempered(F_Pad), 6.2) translate x*3 }
