// The worn dog ring beside the new one that replaces it.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
Camera(<-10, 178, -190>, <0, 8, -4>, 47, <0,26,-36>, 4)
Light(300)
Bench(T_Paper)
union {
  Ring_Body(26, 46, 20, T_Turned, T_Steel)
  #for (I, 0, 5) object { Dog(31.5, 45, 7.4, 8, 2, 2, 3.0, 2.6, 0.4, 0.6, T_Peened, T_Bright) rotate y*60*I translate y*19.95 } #end
  rotate y*24 translate <-55,0,-4>
}
union {
  Ring_Body(26, 46, 20, T_Phosphate, T_Phosphate)
  #for (I, 0, 5) object { Dog(31.5, 45, 7.7, 8, 4, 4, 0.35, 0.35, 0.3, 0, T_Phosphate, T_Phosphate) rotate y*60*I translate y*19.95 } #end
  rotate y*2 translate <55,0,4>
}
