# Reference run for StraightLineExamples: a car rolls out from 60 to 20 m/s down a 1 % slope into a headwind of 5 m/s.
# R 4.2.2, package deSolve 1.34 (lsodar, relative tolerance 1e-12); nothing of Layshaft's.
library(deSolve)
g <- 9.80665; rho <- 1.225; mass <- 780; area <- 0.62; roll <- 0.013; doubles <- 44.73; wheels <- 3.2; radius <- 1.9 / (2 * pi)
angle <- atan(-0.01)
law <- function(t, y, p) {
  v <- y[1]
  air <- 0.5 * rho * area * (v + 5)^2
  rolling <- roll * (1 + v / doubles) * mass * g * cos(angle)
  list(c(-(air + rolling + mass * g * sin(angle)) / (mass + wheels / radius^2), v))
}
out <- lsodar(c(60, 0), c(0, 1000), law, NULL, rtol = 1e-12, atol = 1e-12, rootfunc = function(t, y, p) y[1] - 20)
end <- tail(out, 1)
cat(sprintf("time %.6f s, distance %.5f m, speed %.5f m/s\n", end[1], end[3], end[2]))
