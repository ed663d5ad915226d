// Drop gears in mesh on their centre distance, at the end of the case.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
#include "parts.inc"
#local M = 2.75; #local Z1 = 27; #local Z2 = 33; #local H = 14; #local A = M*(Z1+Z2)/2;
#local R1 = M*(Z1/2-1.25); #local R2 = M*(Z2/2-1.25);
Camera(<-66, 262, -150>, <-2, 24, 2>, 40, <-4,30,-14>, 4)
Light(300)
Bench(T_Mat)
// case: floor, wall, flange with its bolts
#local C1 = <-A*0.55,0,0>; #local C2 = <A*0.45,0,0>;
#macro Hull(Y0, Y1, D)
  merge { cylinder { C1+y*Y0, C1+y*Y1, M*(Z1/2+1)+D } cylinder { C2+y*Y0, C2+y*Y1, M*(Z2/2+1)+D }
    prism { linear_sweep linear_spline Y0, Y1, 5, <C1.x, M*(Z1/2+1)+D>, <C2.x, M*(Z2/2+1)+D>, <C2.x, -M*(Z2/2+1)-D>, <C1.x, -M*(Z1/2+1)-D>, <C1.x, M*(Z1/2+1)+D> } }
#end
union {
difference { object { Hull(-18, 9, 13) } object { Hull(-4, 30, 5.5) } object { Hull(8.6, 30, 40) texture { T_Milled } } texture { T_Cast } }
object { Ring(20, 26, -5, -1.5, 0.8, T_Milled) translate C1 } object { Ring(22, 28, -5, -1.5, 0.8, T_Milled) translate C2 }
#for (I, 0, 8)
  #local An = radians(I*40+8); #local CC = (cos(An) < 0 ? C1 : C2); #local RR = (cos(An) < 0 ? M*(Z1/2+1) : M*(Z2/2+1))+9.2;
  union { cylinder { -y*12, y*8.64, 7.6 texture { T_Cast } } object { Thread(3, 1, 13, T_Steel) translate y*21.5 } cylinder { y*5, y*9.5, 3 texture { T_Steel } }
    translate CC + <RR*cos(An), 0, RR*sin(An)> }
#end
#macro Drop_Gear(Z, RR, Turn, Nut)
  union {
    object { Gear_Rim(Z, M, -0.1, H, RR-3, Run_Flanks(RR+0.6, RR+M*2.2, H, T_Turned, T_Peened)) }
    Web(15, 20, RR-3, H, 6, T_Turned)
    #for (I, 0, 5) cylinder { <0,3,(20+RR-5)/2>, <0,10.2,(20+RR-5)/2>, 4.4 texture { pigment { rgb 0.01 } finish { diffuse 0.5 } } rotate y*60*I } #end
    object { Shaft_Splines(22, 12.6, 14.4, 9, H+1, 0.6, T_Steel) }
    object { Disc(11.5, 0, H+12, 1, T_Steel) }
    object { Ring(12, 18, H, H+2, 0.5, T_Steel) }
    object { Hexagon(27, 9, T_Steel) translate y*(H+2) rotate y*Nut }
    rotate y*Turn
  }
#end
object { Drop_Gear(Z1, R1, 90, 11) translate C1 }
object { Drop_Gear(Z2, R2, -90+180/Z2, 20) translate C2 }
translate y*18 }
