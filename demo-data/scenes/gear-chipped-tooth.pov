// Straight-cut gear standing on its teeth: a corner of one tooth has broken away.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
#local Z = 29; #local M = 3; #local H = 19; #local RA = M*(Z/2+1.15); #local RF = M*(Z/2-1.1);
Camera(<-84, 150, -104>, <-6, 80, -6>, 28, <-4,92,-10>, 4)
Light(260)
Bench(T_Mat)
union {
  difference {
    object { Gear_Rim(Z, M, 0.15, H, RF-4, Run_Flanks(RF+0.8, RA-0.2, H, T_Peened, T_Steel)) }
    object { Fracture_Body(4, 0.5, T_Break) scale <5.2,7.0,5.6> rotate y*20 translate <0.6, H+0.6, RA-0.6> }
  }
  Web(15, 23, RF-4, H, 8, T_Turned)
  Bore_Splines(20, 13.2, 15.2, 16.2, H, 0.5, T_Steel)
  rotate x*-90 translate y*RA rotate y*-2
}
