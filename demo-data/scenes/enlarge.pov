// Brings a rendered picture up to camera size, with a little grain.
// Declare=Turn=1 stores it turned a quarter to the left
// (for a file whose orientation tag says 6). The picture comes from the file "render.png".
#version 3.7;
global_settings { assumed_gamma 1.0 }
#ifndef (Turn) #declare Turn = 0; #end
camera { orthographic location <0.5,0.5,-1> right x*1 up y*1 direction z }
box { <0,0,0>, <1,1,0.01>
  texture {
    pigment { image_map { png "render.png" interpolate 3 once } #if (Turn) rotate z*90 translate x #end }
    finish { ambient 0 emission 1 diffuse 0 }
  }
  texture {
    pigment { bumps color_map { [0 rgbt <0,0,0,0.955>] [0.5 rgbt <0.3,0.3,0.3,1>] [1 rgbt <1,1,1,0.972>] } scale <1.7/image_width, 1.7/image_height, 1> }
    finish { ambient 0 emission 1 diffuse 0 }
  }
}
