"""Luminance of a twilight sky by direction, as a multiple of the zenith with the Sun 3 deg down: light scattered once,
in a round Earth's air
of molecules, ozone and dust. Sizes: molecules 0.098 at 550 nm falling with 8 km, ozone 0.030 about 22 km, dust falling
with 1.4 km and scattering forwards (Henyey and Greenstein 1941, ApJ 93, 70: 0.97 of g = 0.75 and 0.03 of g = -0.4,
albedo 0.95). Needs numpy.

    python3 twilight.py ../main/resources/gloam/light/twilight.tsv
"""
import math
import sys

import numpy as np

EARTH_KM = 6371.0
TOP_KM = 100.0
DEPRESSIONS = range(13)
ALTITUDES = (2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 33, 36, 40, 45, 50, 60, 70, 80, 90)
AZIMUTHS = tuple(range(0, 181, 10))
DUSTS = (0.03, 0.15)
LEAST = 1e-12


def air(height, dust):
    molecules = 0.098 / 8.0 * np.exp(-height / 8.0)
    particles = dust / 1.4 * np.exp(-height / 1.4)
    ozone = 0.030 * np.exp(-0.5 * ((height - 22) / 5.0) ** 2) / (5 * math.sqrt(2 * math.pi))
    return molecules, particles, ozone


def depth(height, up, dust):
    """Optical depth from a height to space along a cosine of the zenith distance; infinite through the Earth."""
    radius = EARTH_KM + height
    nearest = radius * math.sqrt(max(0, 1 - up * up))
    if up < 0 and nearest < EARTH_KM:
        return math.inf
    length = math.sqrt((EARTH_KM + TOP_KM) ** 2 - nearest * nearest) - radius * up
    along = length * np.linspace(0, 1, 160) ** 1.3
    heights = np.sqrt(radius ** 2 + along ** 2 + 2 * radius * along * up) - EARTH_KM
    return float(np.trapezoid(sum(air(heights, dust)), along))


def sunlight(dust):
    """What of the Sun's light comes to a height with the Sun at a cosine of the zenith distance."""
    heights = np.concatenate([np.linspace(0, 30, 61), np.linspace(31, 100, 70)])
    cosines = np.linspace(-0.35, 0.35, 561)
    return heights, cosines, np.array([[math.exp(-depth(h, c, dust)) for c in cosines] for h in heights])


def henyey(cosine, g):
    return (1 - g * g) / (4 * math.pi * (1 + g * g - 2 * g * cosine) ** 1.5)


def luminance(table, dust, depression, altitude, azimuth):
    heights, cosines, shares = table
    a, z, d = math.radians(altitude), math.radians(azimuth), math.radians(depression)
    line = np.array([math.cos(a) * math.cos(z), math.cos(a) * math.sin(z), math.sin(a)])
    sun = np.array([math.cos(d), 0, -math.sin(d)])
    low = EARTH_KM * math.sin(a)
    length = -low + math.sqrt(low ** 2 + (EARTH_KM + TOP_KM) ** 2 - EARTH_KM ** 2)
    along = length * np.linspace(0, 1, 600) ** 1.5
    place = np.outer(along, line) + np.array([0, 0, EARTH_KM])
    radius = np.linalg.norm(place, axis=1)
    height = np.maximum(0, radius - EARTH_KM)
    up = place @ sun / radius
    molecules, particles, ozone = air(height, dust)
    taken = molecules + particles + ozone
    before = np.concatenate([[0], np.cumsum((taken[1:] + taken[:-1]) / 2 * np.diff(along))])
    i = np.clip(np.searchsorted(heights, height) - 1, 0, len(heights) - 2)
    j = np.clip(np.searchsorted(cosines, up) - 1, 0, len(cosines) - 2)
    p = (height - heights[i]) / (heights[i + 1] - heights[i])
    q = np.clip((up - cosines[j]) / (cosines[1] - cosines[0]), 0, 1)
    share = (shares[i, j] * (1 - q) + shares[i, j + 1] * q) * (1 - p) \
        + (shares[i + 1, j] * (1 - q) + shares[i + 1, j + 1] * q) * p
    share[up < cosines[0]] = 0
    cosine = float(line @ sun)
    turned = molecules * 3 / (16 * math.pi) * (1 + cosine ** 2) \
        + 0.95 * particles * (0.97 * henyey(cosine, 0.75) + 0.03 * henyey(cosine, -0.4))
    return float(np.trapezoid(turned * share * np.exp(-before), along))


if __name__ == '__main__':
    with open(sys.argv[1], 'w') as out:
        out.write('# Twilight scattered once, by direction, made by src/data/twilight.py: multiples of the zenith '
                  'with the Sun 3 deg down\n'
                  '# dust depth, depression of the Sun, altitude; then one column for each azimuth from the Sun; '
                  'degrees\n'
                  '#\t\t\t%s\n' % '\t'.join(map(str, AZIMUTHS)))
        for dust in DUSTS:
            table = sunlight(dust)
            unit = luminance(table, dust, 3, 90, 0)
            for depression in DEPRESSIONS:
                for altitude in ALTITUDES:
                    lights = [luminance(table, dust, depression, altitude, azimuth) for azimuth in AZIMUTHS]
                    out.write('\t'.join(['%g' % dust, str(depression), str(altitude)]
                                        + ['%.3e' % max(LEAST, light / unit) for light in lights]) + '\n')
