# Reference run for StraightLineExamples: a rear-driven car from rest over 402 m through four gears, by the classical Runge-Kutta
# method with a fixed step of 20 microseconds, in plain Python 3 with nothing of Layshaft's. Prints time and speed at each distance.
import math

G, RHO = 9.80665, 1.225  # ISO 2533, sea level
MASS, AREA, ROLL, DOUBLES, WHEELS = 780.0, 0.62, 0.013, 44.73, 3.2
SHARE, HEIGHT, BASE, GRIP = 0.52, 0.42, 2.4, 1.1
RADIUS = 1.9 / (2 * math.pi)
RATIOS, FINAL, EFFICIENCY, SHIFT = [2.40, 1.80, 1.44, 1.20, 1.00], 3.9, 0.92, 0.12
LIMIT, LAUNCH = 8000.0, 4000.0


def torque(rpm):  # a straight line from 200 N.m at 3000 rpm to 160 N.m at 8000 rpm
    return 200 - 40 * (min(max(rpm, 3000), 8000) - 3000) / 5000


def rpm_at(speed, gear):
    return speed / RADIUS * RATIOS[gear] * FINAL * 60 / (2 * math.pi)


def resistance(speed):
    rolling = ROLL * (1 + speed / DOUBLES) * MASS * G
    return 0.5 * RHO * AREA * speed * speed, rolling


def driving(speed, gear):
    drag, rolling = resistance(speed)
    rpm = max(rpm_at(speed, gear), LAUNCH if gear == 0 else 0)
    force = torque(rpm) * RATIOS[gear] * FINAL * EFFICIENCY / RADIUS
    # the load on the driven wheels is MASS*G*SHARE + (F - rolling)*HEIGHT/BASE, and F is GRIP times it at most
    most = min(GRIP * (MASS * G * SHARE - rolling * HEIGHT / BASE) / (1 - GRIP * HEIGHT / BASE), GRIP * MASS * G)
    by_engine = (force - drag - rolling) / (MASS + WHEELS / RADIUS ** 2)
    by_grip = (most - drag - rolling) / (MASS + WHEELS / 2 / RADIUS ** 2)
    return min(by_engine, by_grip)


def coasting(speed):
    drag, rolling = resistance(speed)
    return -(drag + rolling) / (MASS + WHEELS / RADIUS ** 2)


def step(law, x, v, h):
    a1 = law(v)
    a2 = law(v + h / 2 * a1)
    a3 = law(v + h / 2 * a2)
    a4 = law(v + h * a3)
    return x + h * v + h * h / 6 * (a1 + a2 + a3), v + h / 6 * (a1 + 2 * a2 + 2 * a3 + a4)


def run(h, marks):
    t = x = v = 0.0
    gear, coast_until, rows = 0, -1.0, []
    while marks:
        law = coasting if t < coast_until - h / 2 else (lambda s: driving(s, gear))
        x2, v2 = step(law, x, v, h)
        if x2 >= marks[0]:
            part = (marks[0] - x) / (x2 - x)
            rows.append((marks.pop(0), t + part * h, v + part * (v2 - v), gear + 1))
        t, x, v = t + h, x2, v2
        if t >= coast_until and rpm_at(v, gear) >= LIMIT and gear < len(RATIOS) - 1:
            gear, coast_until = gear + 1, t + SHIFT
    return rows


print("distance_m,time_s,speed_mps")
for distance, time, speed, gear in run(2e-5, [20.0, 60.0, 100.0, 201.0, 402.0]):
    print(f"{distance:.0f},{time:.5f},{speed:.5f}")
