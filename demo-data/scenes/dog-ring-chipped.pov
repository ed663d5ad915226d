// Dog ring: the outer corner of one dog has broken off; the others are still square.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
Camera(<-30, 92, -118>, <-2, 11, -9>, 39, <-8,26,-38>, 4)
Light(260)
Bench(T_Mat)
union {
  Ring_Body(26, 46, 20, T_Turned, T_Steel)
  #for (I, 0, 5)
    #if (I = 3)
      difference {
        object { Dog(31.5, 45, 7.6, 8, 3, 3, 0.7, 0.9, 0.35, 0.2, T_Peened, T_Bright) }
        object { Fracture_Body(9, 0.55, T_Break) scale <6,5.6,7.4> rotate y*25 translate <6.6, 9.0, 44> }
        rotate y*60*I translate y*19.95
      }
    #else
      object { Dog(31.5, 45, 7.6, 8, 3, 3, 0.7, 0.9, 0.35, 0.2, T_Peened, T_Bright) rotate y*60*I translate y*19.95 }
    #end
  #end
  rotate y*8
}
