// Dial gauge on the end of a shaft in its case: end float.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
#include "parts.inc"
Camera(<-62, 150, -250>, <8, 82, 0>, 45, <0,90,-8>, 4)
Light(300)
Bench(T_Mat)
// case end with the bearing and the shaft standing up through it
difference { object { Disc(62, 0, 22, 1.5, T_Cast) } cylinder { <0,-1,0>, <0,30,0>, 41 texture { T_Milled } } }
difference { object { Ring(42, 56, 20, 24, 0.8, T_Milled) } cylinder { 0, y*9, 1 } }
#for (I, 0, 5) union { object { Hexagon(10, 5, T_Steel) translate y*24 } object { Ring(2, 7.5, 23, 24.6, 0.3, T_Steel) } translate z*49 rotate y*(60*I+15) } #end
union { Ball_Bearing(20, 40, 18, 9, T_Steel, T_Steel, T_Chrome, T_Brass) translate y*4 }
object { Disc(20, 0, 27, 1, T_Steel) }
object { Shaft_Splines(20, 14.4, 16.4, 10, 22, 0.8, T_Steel) translate y*26 }
object { Disc(10, 40, 54, 1, T_Turned) }
object { Dial_Gauge(48) translate y*54 rotate y*12 }
// stand: magnetic base, post and arm
object { superellipsoid { <0.12,0.12> scale <22,20,26> } texture { pigment { rgb <0.10,0.105,0.11> } normal { bumps 0.1 scale 0.3 } finish { diffuse 0.7 specular 0.4 roughness 0.03 reflection { 0.02, 0.12 } } } translate <98,20,40> }
cylinder { <98,40,40>, <98,190,40>, 6 texture { T_Chrome } }
cylinder { <98,126,40>, <-3,126,18>, 5 texture { T_Chrome } }
superellipsoid { <0.3,0.3> scale <11,11,12> texture { T_Phosphate } translate <98,126,40> }
cylinder { <2,126,22>, <2,100,14>, 4 texture { T_Chrome } }
superellipsoid { <0.4,0.3> scale <9,8,9> texture { T_Phosphate } translate <1,126,19> }
