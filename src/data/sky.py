"""Forty situations under the night sky, each source of its light worked out anew from the papers that the program
names, by other ways: positions by ERFA's short series, tables read straight in between, integrals in small straight
steps, twilight scattered once along each line of sight without a table. Needs numpy and pyerfa.

    python3 sky.py ../main/resources/gloam/light ../test/resources/reference/recomputed/sky.csv
"""
import math
import random
import sys

import erfa
import numpy as np

LUMINANCE_OF_0 = 1.08e5  # cd/m2 of one V magnitude 0 in a square arcsecond
AU_KM = 149597870.7
EARTH = 6371.0


def cd(mag):
    return LUMINANCE_OF_0 * 10 ** (-0.4 * mag)


def unit(azimuth, altitude):
    a, h = np.radians(azimuth), np.radians(altitude)
    return np.array([np.cos(h) * np.cos(a), np.cos(h) * np.sin(a), np.sin(h)])  # north, east, up


def angle(a, b):
    return math.degrees(math.atan2(np.linalg.norm(np.cross(a, b)), float(np.dot(a, b))))


def lift(altitude):
    """Refraction at an apparent altitude, deg: Saemundsson's companion, Bennett 1982."""
    return (1 / math.tan(math.radians(altitude + 7.31 / (altitude + 4.4)))) / 60 if altitude > -2 else 0.0


class Moment:
    """Where things stand: rows of `axes` are north, east and up among the stars."""

    def __init__(self, lat, lon, height, utc):
        tt = utc + 69.184 / 86400
        day = 2400000.5
        turn = erfa.c2t06a(day, tt, day, utc, 0.0, 0.0)
        phi, lam = math.radians(lat), math.radians(lon)
        north = np.array([-math.sin(phi) * math.cos(lam), -math.sin(phi) * math.sin(lam), math.cos(phi)])
        east = np.array([-math.sin(lam), math.cos(lam), 0])
        up = np.array([math.cos(phi) * math.cos(lam), math.cos(phi) * math.sin(lam), math.sin(phi)])
        self.axes = np.array([north, east, up]) @ turn
        here = turn.T @ erfa.gd2gc(1, lam, phi, height) / 1000
        earth, _ = erfa.epv00(day, tt)
        sun = -np.array(earth['p']) * AU_KM
        moon = np.array(erfa.moon98(day, tt)['p']) * AU_KM
        self.sun, self.moon = (self.local(body - here) for body in (sun, moon))
        self.moon_km = np.linalg.norm(moon - here)
        self.phase = angle(here - moon, sun - moon)
        self.sun_star = sun / np.linalg.norm(sun)

    def local(self, vector):
        return self.axes @ (vector / np.linalg.norm(vector))

    def depression(self):
        return -math.degrees(math.asin(self.sun[2]))


def straight(table, first, second, x, y):
    i = min(len(first) - 2, int(np.searchsorted(first, x, 'right')) - 1)
    j = min(len(second) - 2, int(np.searchsorted(second, y, 'right')) - 1)
    p, q = (x - first[i]) / (first[i + 1] - first[i]), (y - second[j]) / (second[j + 1] - second[j])
    return (table[i][j] * (1 - p) * (1 - q) + table[i + 1][j] * p * (1 - q) + table[i][j + 1] * (1 - p) * q
            + table[i + 1][j + 1] * p * q)


def read(path):
    cells = {}
    for line in open(path, encoding='utf-8'):
        if not line.startswith('#') and line.strip():
            a, b, value = line.rstrip('\n').split('\t')
            cells[float(a), float(b)] = float(value) if value else None
    first, second = (sorted({key[k] for key in cells}) for k in (0, 1))
    return cells, first, second


class Diffuse:
    """Leinert et al. 1998, A&AS 127, 1: tables 16 and 35; S10 outside the air."""

    def __init__(self, folder):
        cells, self.lon, self.lat = read(folder + '/zodiacal.tsv')
        fill = lambda a, b: cells[a, b] if cells[a, b] is not None else fill(a, b + 5)
        self.dust = [[fill(a, b) for b in self.lat] for a in self.lon]
        cells, self.b, self.l = read(folder + '/starlight.tsv')
        self.stars = [[cells[b, l] if cells[b, l] is not None else cells[-b, l] for l in self.l]
                      + [cells[b, 0.0] if cells[b, 0.0] is not None else cells[-b, 0.0]] for b in self.b]
        self.l.append(360.0)

    def zodiacal(self, star, sun):
        lon, lat = erfa.eqec06(2451545.0, 0, math.atan2(star[1], star[0]), math.asin(star[2]))
        sun_lon, _ = erfa.eqec06(2451545.0, 0, math.atan2(sun[1], sun[0]), math.asin(sun[2]))
        apart = abs((math.degrees(lon - sun_lon) + 180) % 360 - 180)
        return straight(self.dust, self.lon, self.lat, apart, abs(math.degrees(lat)))

    def starlight(self, star):
        l, b = erfa.icrs2g(math.atan2(star[1], star[0]), math.asin(star[2]))
        held = max(-80.0, min(80.0, math.degrees(b)))
        return 10 ** 0.04 * straight(self.stars, self.b, self.l, held, math.degrees(l) % 360)


class Air:
    """Green 1992, ICQ 14, 55, and for light that fills the sky Noll et al. 2012, A&A 543, A92, eqs 2, 19, 20."""

    def __init__(self, height, extinction):
        self.extinction = extinction
        self.molecules_mag = 0.1451 * math.exp(-height / 7996)
        self.dust_mag = extinction - self.molecules_mag - 0.016

    def through(self, s10, up):
        x = math.log10(1.28 * s10)
        molecules = 1.407 * x - 2.692 if x <= 2.244 else 0.527 * x - 0.715
        dust = 1.309 * x - 2.598 if x <= 2.255 else 0.468 * x - 0.702
        mag = max(0, molecules) * self.molecules_mag + max(0, dust) * self.dust_mag + 0.016
        return s10 * cd(27.78) * 10 ** (-0.4 * mag / (up + 0.025 * math.exp(-11 * up)))

    def layer(self, up):
        """A thin layer's light against the zenith's: Garstang 1989, PASP 101, 306."""
        x = (1 - 0.96 * (1 - up * up)) ** -0.5
        return x * 10 ** (-0.4 * self.extinction * (x - 1))


def moonlight(now, air, line):
    """Krisciunas and Schaefer 1991, PASP 103, 1033, eqs 3, 15 to 21; nanolamberts as cd/m2."""
    path = lambda up: (1 - 0.96 * (1 - up * up)) ** -0.5
    brightness = 10 ** (-0.4 * (3.84 + 0.026 * now.phase + 4e-9 * now.phase ** 4)) * (384400 / now.moon_km) ** 2
    if now.phase < 7:
        brightness *= 1.35 - 0.05 * now.phase
    altitude = math.degrees(math.asin(now.moon[2]))
    seen = unit(math.degrees(math.atan2(now.moon[1], now.moon[0])), altitude + lift(altitude))
    rho = angle(seen, line)
    scatter = 10 ** 5.36 * (1.06 + math.cos(math.radians(rho)) ** 2) + 10 ** (6.15 - rho / 40)
    k = air.extinction
    return (scatter * brightness * 10 ** (-0.4 * k * path(now.moon[2]))
            * (1 - 10 ** (-0.4 * k * path(line[2]))) * 1e-5 / math.pi)


def town(distance, line, azimuth, height, air, steps=20000):
    """Garstang 1986, PASP 98, 364, dust of 1991, PASP 103, 1109: in straight steps; unit free."""
    molecules = 4.6e-27 * 2.55e19 * 1e5 * math.exp(-0.104 * height / 1000)
    clarity = max(0.0, air.dust_mag) / 1.0857 / (11.778 * molecules)
    for _ in range(60):  # dust falls the faster the more there is of it
        clarity = max(0.0, air.dust_mag) / 1.0857 * (0.657 + 0.059 * clarity) / (11.778 * molecules)
    fall = 0.657 + 0.059 * clarity
    edges = 200 * np.linspace(0, 1, steps + 1) ** 2
    u, du = (edges[1:] + edges[:-1]) / 2, np.diff(edges)
    place = np.outer(u, line) - distance * unit(azimuth, 0)
    s = np.maximum(1.0, np.linalg.norm(place, axis=1))
    h = np.maximum(1e-6, u * line[2])
    turned = np.clip(-(place @ line) / s, -1, 1)
    w = np.degrees(np.arccos(turned))
    dust_phase = np.where(w < 10, 7.5 * np.exp(-0.1249 * w ** 2 / (1 + 0.04996 * w ** 2)), np.where(
        w < 124, 1.88 * np.exp(-0.07226 * w + 0.0002406 * w ** 2),
        0.025 + 0.015 * np.sin(np.radians(2.25 * w - 369))))
    psi = np.arccos(np.minimum(1, h / s))
    sent = 2 * 0.15 * 0.85 * np.cos(psi) + 0.554 * 0.15 * psi ** 4
    column = lambda rate: (1 - np.exp(-rate * h)) / (rate * h)
    tau = molecules * (column(0.104) + 11.778 * clarity * column(fall)) * (s + u)
    twice = 1 + s * molecules * (11.11 * clarity * column(fall) + column(0.104) / 3)
    scattered = np.exp(-0.104 * h) * 3 / (16 * math.pi) * (1 + turned ** 2) \
        + 11.11 * clarity * np.exp(-fall * h) * dust_phase
    return float(np.sum(sent / s ** 2 * np.exp(-tau) * twice * scattered * du))


def towns(domes, line, height, air):
    total = 0.0
    for azimuth, people, distance in domes:
        half = town(distance, unit(azimuth, 45), azimuth, height, air)
        total += 0.01 * people * distance ** -2.5 * cd(21.9) * town(distance, line, azimuth, height, air) / half
    return total


def density(height, dust):
    return np.array([0.098 / 8 * np.exp(-height / 8), dust / 1.4 * np.exp(-height / 1.4),
                     0.030 * np.exp(-0.5 * ((height - 22) / 5) ** 2) / (5 * math.sqrt(2 * math.pi))])


def once(line, sun, dust):
    """Sunlight scattered once along a line of sight, air of molecules, dust and ozone in round shells."""
    sun = sun / np.linalg.norm(sun)
    reach = -EARTH * line[2] + math.sqrt((EARTH * line[2]) ** 2 + 2 * EARTH * 100 + 100 ** 2)
    t = reach * np.linspace(0, 1, 401) ** 2
    u, du = (t[1:] + t[:-1]) / 2, np.diff(t)
    place = np.outer(u, line) + [0, 0, EARTH]
    radius = np.linalg.norm(place, axis=1)
    here = density(radius - EARTH, dust)
    here_tau = here.sum(axis=0)
    before = np.cumsum(here_tau * du) - here_tau * du / 2
    along = place @ sun
    nearest = np.sqrt(np.maximum(0, radius ** 2 - along ** 2))
    lit = (along > 0) | (nearest > EARTH)
    out = -along + np.sqrt(along ** 2 + (EARTH + 100) ** 2 - radius ** 2)
    middle = np.clip(-along, 0, None)  # steps are small about the lowest point of the way to the Sun
    tau = np.zeros_like(u)
    for lo, hi in ((np.zeros_like(u), middle), (middle, out)):
        share = np.linspace(0, 1, 241)
        share = share ** 2 if lo is middle else 1 - (1 - share) ** 2
        v = lo[:, None] + (hi - lo)[:, None] * (share[1:] + share[:-1]) / 2
        heights = np.sqrt(radius[:, None] ** 2 + v ** 2 + 2 * v * along[:, None]) - EARTH
        tau += (density(heights, dust).sum(axis=0) * (hi - lo)[:, None] * np.diff(share)).sum(axis=1)
    c = float(line @ sun)
    henyey = lambda g: (1 - g * g) / (4 * math.pi * (1 + g * g - 2 * g * c) ** 1.5)
    turned = here[0] * 3 / (16 * math.pi) * (1 + c * c) \
        + 0.95 * here[1] * (0.97 * henyey(0.75) + 0.03 * henyey(-0.4))
    return float(np.sum(turned * np.where(lit, np.exp(-tau), 0) * np.exp(-before) * du))


KOOMEN = {0: (8.0, 15.0), 3: (1.0, 2.0)}  # 1952, JOSA 42, 353: candles a square foot at 2800 m, 30 m
PATAT = {5: 11.84, 6: 13.30, 7: 14.65, 8: 15.88, 9: 17.00, 10: 18.00, 11: 18.90, 12: 19.67, 13: 20.34,
         14: 20.89}  # 2006, A&A 455, 385, with a night of 21.61


def twilight_zenith(depression, height):
    up = max(0.0, min(1.0, (height - 30) / 2770))
    mags = {d: sum(w * -2.5 * math.log10(v * 10.7639 / LUMINANCE_OF_0) for w, v in zip((up, 1 - up), pair))
            for d, pair in KOOMEN.items()}
    mags.update({d: -2.5 * math.log10((cd(m) - cd(21.61)) / LUMINANCE_OF_0) for d, m in PATAT.items()})
    mags[28] = mags[14] + 14
    return cd(np.interp(depression, list(mags), list(mags.values())))


def twilight(now, air, line, height):
    depression = now.depression()
    if depression > 25:
        return 0.0
    dust = max(0.03, min(0.15, 0.4 * math.log(10) * air.dust_mag))
    held = min(12.0, depression)
    azimuth = math.degrees(math.atan2(now.sun[1], now.sun[0]))
    zenith = np.array([0, 0, 1.0])
    usual = once(zenith, unit(0, -3), dust)
    between = lambda depression: twilight_zenith(depression, 1415)  # half-way up from Koomen's low site
    left = max(0.0, min(1.0, (11 - held) / 4))
    trusted = 0.9 * left * left * (3 - 2 * left) * between(3) / between(held) / usual
    sun = unit(azimuth, -held)
    apart = math.degrees(math.atan2(line[1], line[0])) - azimuth
    airmass = min(3.1, 1 / line[2])
    often = 10 ** ((0.2977 + 0.3164 * max(0, math.cos(math.radians(apart)))) * (airmass - 1))
    first = trusted * once(line, sun, dust)
    return twilight_zenith(depression, height) * (first + (1 - trusted * once(zenith, sun, dust)) * often)


def situations():
    draw = random.Random(40)
    found = 0
    while found < 40:
        lat, lon, height = draw.uniform(-60, 68), draw.uniform(-180, 180), draw.uniform(0, 3000)
        extinction = round(0.016 + 0.1451 * math.exp(-height / 7996) + 0.12 * math.exp(-height / 1500)
                           + draw.uniform(-0.01, 0.06), 3)
        utc = round((61000 + draw.uniform(0, 3600)) * 1440) / 1440
        azimuth, altitude = round(draw.uniform(0, 360), 1), round(draw.uniform(9, 85), 1)
        domes = [(round(draw.uniform(0, 360)), round(draw.uniform(2, 300)) * 1000, round(draw.uniform(6, 60)))
                 for _ in range(draw.choice((0, 0, 1, 2)))]
        dark = round(draw.uniform(20.8, 21.9), 2)
        lat, lon, height = round(lat, 3), round(lon, 3), round(height)
        now = Moment(lat, lon, height, utc)
        moon = math.degrees(math.asin(now.moon[2]))
        twilit = now.depression() < 18
        wanted = found % 5
        if now.depression() < 3 or -8 < moon < 6 or angle(now.moon, unit(azimuth, altitude)) < 11 \
                or twilit != (wanted in (1, 3)) or (moon > 0) != (wanted in (2, 3)):
            continue
        found += 1
        yield lat, lon, height, extinction, dark, domes, utc, azimuth, altitude, now


def main(folder, path):
    diffuse = Diffuse(folder)
    with open(path, 'w', encoding='utf-8') as out:
        out.write('# source: src/data/sky.py, from the papers named there\n'
                  '# retrieved: computed, not printed in the papers\n'
                  '# units: degrees; height in m; extinction in mag; dark zenith in mag/arcsec2; towns as azimuth '
                  'people km; light in cd/m2\n'
                  '# tolerance and why: zodiacal and stars 8 %, since tables of 5 to 10 deg are read straight here and in '
                  'the logarithm there; towns 2 %, two integrals of one formula; airglow 4 %, what the first two leave '
                  'of the zenith; moon 4 %, a place to 0.02 deg near the aureole; twilight 0.25 mag, the zenith read '
                  'straight between measurements 1 to 3 deg apart, the height of Koomen\'s sites to 3 deg alone\n'
                  'latitude,longitude,height,extinction,dark,towns,at,azimuth,altitude,'
                  'zodiacal,stars,townLight,airglow,moon,twilight\n')
        for lat, lon, height, extinction, dark, domes, utc, azimuth, altitude, now in situations():
            air = Air(height, extinction)
            line = unit(azimuth, altitude)
            star = now.axes.T @ unit(azimuth, altitude - lift(altitude))
            midnight = lambda hour: (lambda z: (air.through(diffuse.zodiacal(z, -z), 1),
                                               air.through(diffuse.starlight(z), 1)))(
                np.array([math.cos(math.radians(lat)) * math.cos(hour * math.pi / 12),
                          math.cos(math.radians(lat)) * math.sin(hour * math.pi / 12), math.sin(math.radians(lat))]))
            hours = [midnight(hour / 4) for hour in range(96)]
            others = sum(np.percentile([pair[k] for pair in hours], 25) for k in (0, 1)) \
                + towns(domes, np.array([0, 0, 1.0]), height, air)
            lights = (air.through(diffuse.zodiacal(star, now.sun_star), line[2]),
                      air.through(diffuse.starlight(star), line[2]), towns(domes, line, height, air),
                      max(0.2 * cd(dark), cd(dark) - others) * air.layer(line[2]),
                      moonlight(now, air, line) if now.moon[2] > 0 else 0.0, twilight(now, air, line, height))
            iau = erfa.jd2cal(2400000.5, utc)
            minutes = round(iau[3] * 1440)
            at = '%d-%02d-%02dT%02d:%02dZ' % (iau[0], iau[1], iau[2], minutes // 60, minutes % 60)
            out.write('%g,%g,%d,%g,%g,%s,%s,%g,%g,' % (lat, lon, height, extinction, dark,
                                                     ';'.join('%d %d %d' % d for d in domes), at, azimuth, altitude)
                      + ','.join('%.4g' % light for light in lights) + '\n')


if __name__ == '__main__':
    main(*sys.argv[1:])
