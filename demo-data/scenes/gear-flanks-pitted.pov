// Straight-cut gear: pits in the flanks below the pitch line.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
#local Z = 25; #local M = 3.5; #local H = 22; #local RP = M*Z/2; #local RA = M*(Z/2+1.15); #local RF = M*(Z/2-1.1);
Camera(<-84, 160, -98>, <-10, 83, -8>, 22, <-14,92,0>, 4)
Light(260)
Bench(T_Mat)
// Pits: small cells, only in a band about and below the pitch line, thicker mid-face.
#local F_Cell = function { pattern { crackle form <1,0,0> metric 2 turbulence 0.15 scale 1.25 } }
#local F_Pit = function(x,y,z) {
  (F_Cell(x,y,z) < 0.62*(f_noise3d(x*0.30,y*0.22,z*0.30+7)-0.05))
  * (sqrt(x*x+z*z) > RP-3.2) * (sqrt(x*x+z*z) < RP+0.9) * (abs(y-H/2) < H/2-1.5) }
#local T_Pit = texture { pigment { granite color_map { [0 rgb <0.03,0.025,0.02>] [1 rgb <0.14,0.12,0.10>] } scale 0.4 } normal { granite 1 scale 0.4 } finish { ambient 0 diffuse 0.7 specular 0.3 roughness 0.05 } }
union {
  object { Gear_Rim(Z, M, 0.15, H, RF-4,
    texture { function { F_Pit(x,y,z) } texture_map {
      [0.5 function { min(1, max(0, (sqrt(x*x+z*z) - RF-0.6)*1.6)) * (abs(y-H/2) < H/2-0.5) } texture_map { [0.35 T_Peened] [0.65 T_Steel] }]
      [0.5 T_Pit] } }) }
  Web(15, 23, RF-4, H, 8, T_Turned)
  Bore_Splines(20, 13.2, 15.2, 16.2, H, 0.5, T_Steel)
  rotate x*-90 translate y*RA rotate y*-4
}
