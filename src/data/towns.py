"""Checks of the glow of towns: Garstang 1986, PASP 98, 364, dust as in Garstang 1991, PASP 103, 1109, added up in
small straight steps. Writes src/test/resources/reference/garstang-1986/town-shape.csv, which tests hold the
program's own integral to.

    python3 towns.py ../test/resources/reference/garstang-1986/town-shape.csv
"""
import math
import sys

MOLECULES = 4.6e-27 * 2.55e19 * 1e5  # per km at sea level
FALL = 0.104  # per km


def phase_of_dust(deg):
    if deg < 10:
        return 7.5 * math.exp(-0.1249 * deg ** 2 / (1 + 0.04996 * deg ** 2))
    if deg < 124:
        return 1.88 * math.exp(-0.07226 * deg + 0.0002406 * deg ** 2)
    return 0.025 + 0.015 * math.sin(math.radians(2.25 * deg - 369))


def column(fall, height, length):
    return length * (1 - math.exp(-fall * height)) / (fall * height)


def glow(distance, altitude, azimuth, clarity, steps=40000, reach=200.0):
    a = 0.657 + 0.059 * clarity
    up, flat = math.sin(math.radians(altitude)), math.cos(math.radians(altitude))
    x, y = flat * math.cos(math.radians(azimuth)), flat * math.sin(math.radians(azimuth))
    total = 0.0
    for i in range(steps):
        u0, u1 = reach * (i / steps) ** 2, reach * ((i + 1) / steps) ** 2
        u = (u0 + u1) / 2
        h = max(1e-6, u * up)
        dx, dy = u * x - distance, u * y
        s = max(1.0, math.sqrt(dx * dx + dy * dy + h * h))
        turned = -(dx * x + dy * y + h * up) / s
        w = math.degrees(math.acos(max(-1, min(1, turned))))
        psi = math.acos(min(1, h / s))
        emitted = (2 * 0.15 * 0.85 * math.cos(psi) + 0.554 * 0.15 * psi ** 4) / (2 * math.pi)
        dust = 11.778 * clarity * MOLECULES
        tau = lambda length: MOLECULES * column(FALL, h, length) + dust * column(a, h, length)
        twice = 1 + 11.11 * clarity * MOLECULES * column(a, h, s) + MOLECULES * column(FALL, h, s) / 3
        scattered = MOLECULES * (math.exp(-FALL * h) * 3 / (16 * math.pi) * (1 + turned ** 2)
                                 + 11.11 * clarity * math.exp(-a * h) * phase_of_dust(w))
        total += emitted / s ** 2 * math.exp(-tau(s) - tau(u)) * twice * scattered * (u1 - u0)
    return total


if __name__ == '__main__':
    with open(sys.argv[1], 'w') as out:
        out.write('# source: Garstang 1986, PASP 98, 364, with the phase function of Garstang 1991, PASP 103, 1109; '
                  'evaluated by src/data/towns.py in 40 000 steps\n'
                  '# retrieved: computed, not printed in the papers\n'
                  '# units: distanceKm of the town, altitudeDeg and azimuthDeg (from the town) of the line of sight, '
                  'clarity K, ratio to what is 45 deg high over the town\n'
                  '# tolerance and why: 0.5 %, both are integrals of one formula\n')
        out.write('distanceKm,clarity,altitudeDeg,azimuthDeg,ratio\n')
        for r, k in ((5, 0.5), (15, 0.5), (30, 0.5), (30, 1), (80, 0.5)):
            half = glow(r, 45, 0, k)
            for alt, az in ((90, 0), (60, 0), (40, 0), (30, 0), (20, 0), (14, 0), (10, 0), (14, 45), (14, 90),
                            (14, 180)):
                out.write('%g,%g,%g,%g,%.5g\n' % (r, k, alt, az, glow(r, alt, az, k) / half))
