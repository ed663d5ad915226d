// One dog seen along the radius: the left flank still has its undercut, the right one has worn
// to a ramp, so the gear is thrown out on the overrun.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
Camera(<-46, 56, -136>, <-1, 20.5, -38>, 21, <0,24,-45>, 6)
Light(260)
light_source { <-160, 190, -420> rgb 0.55 area_light x*120, y*120, 2, 2 }
Bench(T_Mat)
union {
  Ring_Body(26, 46, 20, T_Turned, T_Steel)
  #for (I, 0, 5)
    object { Dog(31.5, 45, 7.8, 9, 9, -18, 0.45, 1.6, 0.4, 0.2, T_Peened, T_Bright) rotate y*60*I translate y*19.95 }
  #end
  rotate y*180
}
