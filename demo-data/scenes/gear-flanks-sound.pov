// Straight-cut gear with sound, evenly polished flanks.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
#local Z = 25; #local M = 3.5; #local H = 22; #local RA = M*(Z/2+1.15); #local RF = M*(Z/2-1.1);
Camera(<70, 172, -104>, <4, 72, -4>, 37, <6,92,-2>, 4)
Light(260)
Bench(T_Paper)
union {
  object { Gear_Rim(Z, M, 0.15, H, RF-4, Run_Flanks(RF+0.6, RA-0.1, H, T_Peened, T_Steel)) }
  Web(15, 23, RF-4, H, 8, T_Turned)
  Bore_Splines(20, 13.2, 15.2, 16.2, H, 0.5, T_Steel)
  rotate x*-90 translate y*RA rotate y*14
}
