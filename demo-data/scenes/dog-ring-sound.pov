// Dog ring with sound dogs: sharp corners, even witness marks.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
Camera(<52, 108, -122>, <0, 12, -8>, 36, <12,26,-36>, 4)
Light(260)
Bench(T_Paper)
union {
  Ring_Body(26, 46, 20, T_Turned, T_Steel)
  #for (I, 0, 5)
    object { Dog(31.5, 45, 7.6, 8, 4, 4, 0.4, 0.4, 0.35, 0, T_Peened, T_Bright) rotate y*60*I translate y*19.95 }
  #end
  rotate y*-22
}
