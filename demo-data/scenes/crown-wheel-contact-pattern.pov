// Crown wheel: marking compound on the flanks, the pattern wiped out of it in the middle where
// the pinion has touched. Simplified teeth.
#version 3.7;
#include "bench.inc"
#include "parts.inc"
Camera(<-24, 138, -158>, <3, 8, -4>, 50, <-6,26,-50>, 4)
Light(300)
Bench(T_Mat)
#declare T_Compound = texture { pigment { bozo turbulence 0.6 color_map { [0 rgb <0.80,0.52,0.03>] [1 rgb <0.68,0.40,0.02>] } scale 2.5 } normal { bumps 0.35 scale <1.5,0.6,1.5> } finish { diffuse 0.8 specular 0.3 roughness 0.03 reflection { 0.0, 0.08 } } }
// Bevel teeth as a grid: Z teeth, from RI to RO, on a cone that falls by Slope, spiral Sp (deg).
#macro Bevel(Z, RI, RO, Slope, Deep, Sp, TA, TB, Paint)
  #local NS = 18; #local NJ = 13; #local NI = NS*Z;
  #local P = array[NI][NJ+2]; #local W = array[NI][NJ+2];
  #for (J, 0, NJ+1)
    #local F = min(1, max(0, (J-1)/(NJ-1))); #local R = RI+(RO-RI)*F;
    #for (I, 0, NI-1)
      #local Ph = mod(I, NS)/NS;
      #local A = 2*pi*I/NI + radians(Sp)*(F-F*F*0.25);
      #local Tr = min(1, max(0, (abs(Ph-0.5)-0.10)/0.24)); #local Tr = Tr*Tr*(3-2*Tr)*0.35+Tr*0.65;
      #local HH = (1-Tr)*Deep*(0.75+0.25*F);
      #local P[I][J] = <R*sin(A), (J = 0 | J = NJ+1 ? -8 : HH) - Slope*(R-RI), R*cos(A)>;
      #local K = (Ph-0.27)/0.13; #local FF = (F-0.45-0.02*sin(I*1.3))/0.25;
      #local W[I][J] = (Paint & K*K+FF*FF > 1 & Ph > 0.02 & Ph < 0.60 & J > 0 & J < NJ+1 & abs(Ph-0.5) > 0.07 ? 1 : 0);
    #end
  #end
  Grid_Mesh(P, W, NI, NJ+2, TA, TB)
#end
union {
  object { Bevel(37, 52, 80, 0.22, 7.5, 22, T_Steel, T_Compound, 1) translate y*22 }
  Ring(38, 53, 6, 25, 1, T_Turned)
  Ring(38, 79.5, 0, 9.5, 1, T_Turned)
  #for (I, 0, 9) union { cylinder { y*20, y*25.03, 3.4 texture { pigment { rgb 0.015 } } } translate z*45.5 rotate y*36*I } #end
  rotate y*6 translate <6,0,6>
}
