// Shim pack laid out in a row by thickness, the micrometer beside it.
#version 3.7;
#include "bench.inc"
#include "parts.inc"
Camera(<-8, 176, -150>, <0, 0, -4>, 53, <0,0,-20>, 4)
Light(280)
Bench(T_Mat)
#local Marks = array[5] { "0.10", "0.15", "0.20", "0.30", "0.50" };
#for (I, 0, 4)
  object { Shim(17, 24, 0.25+I*0.12, Marks[I], T_Steel) rotate y*(4-3*mod(I*2,3)) translate <-84+I*42, 0, (mod(I,2) ? -46 : -24)> }
#end
// the rest of the pack, a loose stack
#for (I, 0, 5) object { Shim(17, 24, 0.5, "", T_Steel) rotate y*I*50 translate <78+1.2*sin(I*2), I*0.52, 34+1.0*cos(I*3)> } #end
object { Micrometer(2.2) translate <-66, 9.2, 44> rotate y*6 }
