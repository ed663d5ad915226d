// The gears of the layshaft with their dog rings, assembled, on V-blocks.
#version 3.7;
#include "bench.inc"
#include "gear.inc"
#include "parts.inc"
Camera(<-120, 190, -265>, <-10, 44, 0>, 43, <-20,70,-30>, 4)
Light(320)
light_source { <-220, 330, -420> rgb <1,0.98,0.95>*0.5 area_light x*160, z*160, 2, 2 }
Bench(T_Mat)
#local M = 3;
#macro Cluster_Gear(Z, H, Y0, Dogs)
  #local RF = M*(Z/2-1.25);
  union {
    object { Gear_Rim(Z, M, 0, H, min(RF-3, 44), Run_Flanks(RF+0.6, RF+M*2.2, H, T_Peened, T_Steel)) }
    Web(15, 22, min(RF-3,44), H, H-2.5, T_Turned)
    #if (Dogs != 0) #for (I, 0, 5) object { Dog(24, min(RF-1.5,35), 5.2, 6, 3, 3, 0.6, 0.6, 0.4, 0, T_Peened, T_Bright) rotate y*60*I #if (Dogs > 0) translate y*(H-0.05) #else scale <1,-1,1> translate y*0.05 #end } #end #end
    rotate y*Z*7 translate y*Y0
  }
#end
#macro Small_Ring(Y0) union { Ring_Body(20, 37, 17, T_Turned, T_Steel)
  #for (I, 0, 5) object { Dog(25, 36, 5.2, 6, 3, 3, 0.6, 0.6, 0.4, 0, T_Peened, T_Bright) rotate y*60*I translate y*16.95 }
    object { Dog(25, 36, 5.2, 6, 3, 3, 0.6, 0.6, 0.4, 0, T_Peened, T_Bright) scale <1,-1,1> rotate y*60*I translate y*0.05 } #end
  rotate y*30 translate y*Y0 } #end
#macro V_Block() difference { box { <-24,0,-9>, <24,46,9> } box { <-14,-14,-10>, <30,30,10> rotate z*45 translate y*49 } box { <-30,-1,-4>, <-20,9,4> } texture { T_Steel } } #end
union {
  object { Disc(13, -112, 112, 1.5, T_Steel) }
  object { Shaft_Splines(20, 14.4, 16.4, 10, 150, 0.6, T_Steel) translate y*-75 }
  object { Thread(11, 1.5, 18, T_Steel) translate y*118 }
  Cluster_Gear(32, 17, -86, 1)
  Small_Ring(-60)
  Cluster_Gear(28, 16, -34, -1)
  Cluster_Gear(24, 15, -16, 1)
  Small_Ring(7)
  Cluster_Gear(21, 15, 32, -1)
  Cluster_Gear(18, 15, 49, 0)
  Ring(14, 20, 65, 78, 0.8, T_Steel)
  rotate z*-90 translate y*58 rotate y*0
}
object { V_Block() rotate y*90 translate <-99,6,0> } box { <-116,0,-30>,<-82,6,30> texture { T_Milled } }
object { V_Block() rotate y*90 translate <94,6,0> } box { <78,0,-30>,<112,6,30> texture { T_Milled } }
