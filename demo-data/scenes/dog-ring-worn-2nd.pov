// Dog ring of 2nd gear: the top corners of the dogs have gone round and bright.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
Camera(<-62, 98, -128>, <0, 11, -6>, 39, <-12,26,-36>, 4)
Light(260)
Bench(T_Mat)
union {
  Ring_Body(26, 46, 20, T_Turned, T_Steel)
  #for (I, 0, 5)
    object { Dog(31.5, 45, 7.4, 8, 2, 2, 2.9, 2.5, 0.4, 0.6, T_Peened, T_Bright) rotate y*60*I translate y*19.95 }
  #end
  rotate y*14
}
