// Magnetic drain plug: paste and fine fuzz on the magnet, a few slivers.
#version 3.7;
#include "bench.inc"
#include "parts.inc"
Camera(<-30, 74, -78>, <1, 17, 0>, 35, <-4,32,-6>, 4)
Light(240)
Bench(T_Paper)
#local S = seed(11);
union {
  object { Hexagon(24, 9, T_Steel) scale <1,-1,1> translate y*9 }
  object { Ring(6, 16, 8.5, 11.5, 0.8, T_Steel) }
  object { Ring(9.5, 14.5, 11.5, 13, 0.3, texture { pigment { rgb <0.65,0.32,0.2> } Metal(1,0.4,0.6,0.5,0.03) }) }
  object { Thread(11, 1.5, 15, T_Steel) translate y*27.5 }
  object { Disc(6.4, 26, 33.5, 0.7, T_Steel) }
  // paste
  sphere { 0, 1 scale <6.6,3.4,6.6> translate y*32.6 texture { pigment { rgb 0.03 } normal { granite 0.8 scale 1.5 } finish { diffuse 0.6 specular 0.7 roughness 0.02 reflection { 0.03, 0.2 } } } }
  // fuzz stands along the field
  union {
    #for (I, 0, 3800)
      #local A = 2*pi*rand(S); #local B = acos(1-1.25*rand(S));
      #local D = <sin(B)*cos(A), cos(B), sin(B)*sin(A)>;
      #local P0 = <6.3,3.2,6.3>*D + y*32.6;
      #local L = 0.3 + 1.5*rand(S)*rand(S)*(0.4+B);
      #local Q = vnormalize(D*<1,1.1,1> + 0.55*<rand(S)-0.5, rand(S)-0.5, rand(S)-0.5>);
      cone { P0-Q*0.3, 0.11, P0+Q*L, 0.02 }
    #end
    texture { pigment { bozo color_map { [0 rgb 0.10] [1 rgb 0.34] } scale 0.4 } finish { diffuse 0.6 specular 0.6 roughness 0.03 metallic reflection { 0.05, 0.2 metallic } } }
  }
  #for (I, 0, 16)
    #local A = 2*pi*rand(S); #local B = 0.2+1.1*rand(S);
    box { <-0.16-0.2*rand(S),-0.05,-0.9-rand(S)>, <0.2,0.08,1.1> texture { T_Bright } rotate <360*rand(S),360*rand(S),360*rand(S)> translate <6.5*sin(B)*cos(A), 33+3.5*cos(B), 6.5*sin(B)*sin(A)> }
  #end
  rotate z*0
}
