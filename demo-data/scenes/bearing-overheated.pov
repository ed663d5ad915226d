// Ball bearing that ran dry: inner ring blue, temper colours running out to straw.
#version 3.7;
#include "bench.inc"
#include "parts.inc"
Camera(<-38, 112, -92>, <0, 5, -2>, 40, <-4,16,-20>, 4)
Light(260)
Bench(T_Paper)
#local RI = 20; #local RO = 40;
#local F_Heat = function(x,y,z) { 1.02 - (sqrt(x*x+z*z)-RI)/(RO-RI)*0.70 - x*0.0045 - z*0.002 }
#local F_Cage = function(x,y,z) { 0.66 - x*0.004 }
#local F_Ball = function(x,y,z) { 0.72 }
union {
  Ball_Bearing(RI, RO, 18, 9, Tempered(F_Heat), Tempered(F_Heat), Tempered(F_Ball), Tempered(F_Cage))
  rotate y*12
}
