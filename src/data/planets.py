"""Writes the planetary ephemeris of the jar, a file for each year from 2000 to 2059: JPL DE405, with Jupiter to Neptune
after JPL DE431.

Reads the casacore table of Debian's package casacore-data-jpl-de405 and writes JPL's own binary form (big endian,
one record a block). A file holds the records that its year touches and, where the table has one, another on either
side. Pluto, nutations and librations are left out. DE405 knew the outer planets less well (Neptune
by the 2050s 1.2 seconds of arc): their places from the Sun are those of DE431, which the files of Debian's package
swe-standard-data hold to a thousandth of a second of arc, added to DE405's Sun and fitted anew at DE405's nodes.
Usage: /usr/bin/python3 planets.py DIRECTORY
Packages: casacore-data-jpl-de405 python3-casacore python3-numpy libswe2.0 swe-standard-data
"""
import ctypes
import datetime
import math
import os
import struct
import sys

import numpy
from casacore.tables import table
from numpy.polynomial import chebyshev

TABLE = "/usr/share/casacore/data/ephemerides/DE405"
FIRST_YEAR, LAST_YEAR = 2000, 2059
MJD_ZERO = datetime.date(1858, 11, 17)
JD_OF_MJD_ZERO = 2400000.5
RECORD_DAYS = 32
# Mercury, Venus, Earth-Moon barycentre, Mars, Jupiter, Saturn, Uranus, Neptune, Pluto, Moon, Sun, nutations, librations
KEPT = [True] * 8 + [False, True, True, False, False]
SUN = 10
NUMBER_IN_SWE = {4: 5, 5: 6, 6: 7, 7: 8}  # Jupiter, Saturn, Uranus, Neptune
FROM_FILES = 2
# heliocentric, geometric, rectangular, equatorial, J2000, ICRS
SWE_FLAGS = FROM_FILES | 8 | 16 | 4096 | 2048 | 32 | 131072

swe = ctypes.CDLL("libswe.so.2")
swe.swe_calc.argtypes = [ctypes.c_double, ctypes.c_int, ctypes.c_int, ctypes.c_void_p, ctypes.c_char_p]
swe.swe_set_ephe_path(b"/usr/share/libswe/ephe")

source = table(TABLE, ack=False)
constants = {name: value for name, value in source.getkeywords().items()
             if isinstance(value, float) and name not in ("MJD0", "dMJD", "TDATEF", "TDATEB", "CENTER")}
starts, counts, granules = source.getcolkeyword("x", "Description").reshape(3, 13).tolist()



def from_sun_km(item, jd):
    """Heliocentric place of an outer planet, ICRS, by DE431."""
    place, error = (ctypes.c_double * 6)(), ctypes.create_string_buffer(256)
    used = swe.swe_calc(jd, NUMBER_IN_SWE[item], SWE_FLAGS, place, error)
    assert used >= 0 and used & FROM_FILES, error.value
    return numpy.array(place[:3]) * constants["AU"]


def coefficients(x, item):
    """An item's coefficients of one record: granule, component, term."""
    size = counts[item] * granules[item] * 3
    return numpy.array(x[starts[item] - 3:starts[item] - 3 + size]).reshape(granules[item], 3, counts[item])


def cosine(halves, count):
    """Cosine of so many half angles between Chebyshev points; rounded, so that every machine has the same bytes."""
    return round(math.cos(math.pi * halves / (2 * count)), 15)


def of_de431(x, item, start_jd):
    """An outer planet's coefficients in the form of DE405, its place being DE405's Sun and DE431's way from it."""
    fitted = numpy.empty((granules[item], 3, counts[item]))
    days = RECORD_DAYS / granules[item]
    count = counts[item]
    for granule in range(granules[item]):
        jds = [start_jd + days * (granule + (cosine(2 * node + 1, count) + 1) / 2) for node in range(count)]
        in_sun_granules = [(jd - start_jd) / RECORD_DAYS * granules[SUN] for jd in jds]
        sun = [chebyshev.chebval(2 * (g - int(g)) - 1, coefficients(x, SUN)[int(g)].T) for g in in_sun_granules]
        places = numpy.array(sun) + [from_sun_km(item, jd) for jd in jds]
        for axis in range(3):
            for term in range(count):
                terms = [places[node][axis] * cosine(term * (2 * node + 1), count) for node in range(count)]
                fitted[granule][axis][term] = math.fsum(terms) * (1 if term == 0 else 2) / count
    return fitted


pointers, next_start = [], 3
for item, kept in enumerate(KEPT):
    components = 2 if item == 11 else 3
    size = counts[item] * granules[item] * components if kept else 0
    pointers.append((next_start, counts[item] if kept else 0, granules[item] if kept else 0))
    next_start += size
record_doubles = next_start - 1

def record(row, mjd):
    """A record's numbers, those of the outer planets fitted anew."""
    x = source.getcell("x", row)
    numbers = [mjd + JD_OF_MJD_ZERO, mjd + RECORD_DAYS + JD_OF_MJD_ZERO]
    for item, kept in enumerate(KEPT):
        if kept:
            of_item = of_de431(x, item, numbers[0]) if item in NUMBER_IN_SWE else coefficients(x, item)
            numbers.extend(of_item.ravel())
    assert len(numbers) == record_doubles
    return numbers


def mjd_of_new_year(year):
    """Modified Julian date of the first of January."""
    return (datetime.date(year, 1, 1) - MJD_ZERO).days


def header(first, last):
    """The header records of a file from one Julian date to another."""
    names = list(constants)
    head, values = bytearray(8 * record_doubles), bytearray(8 * record_doubles)
    for line, title in enumerate(("JPL Planetary Ephemeris DE405/LE405, Jupiter to Neptune after DE431",
                                  f"Start Epoch: JED= {first:11.1f}", f"Final Epoch: JED= {last:11.1f}")):
        head[84 * line:84 * (line + 1)] = title.ljust(84).encode("ascii")
    for i in range(400):
        head[252 + 6 * i:258 + 6 * i] = (names[i] if i < len(names) else "").ljust(6).encode("ascii")
    struct.pack_into(">3d", head, 2652, first, last, float(RECORD_DAYS))
    struct.pack_into(">i", head, 2676, len(names))
    struct.pack_into(">2d", head, 2680, constants["AU"], constants["EMRAT"])
    for item in range(12):
        struct.pack_into(">3i", head, 2696 + 12 * item, *pointers[item])
    struct.pack_into(">i", head, 2840, int(constants["DENUM"]))
    struct.pack_into(">3i", head, 2844, *pointers[12])
    struct.pack_into(f">{len(names)}d", values, 0, *constants.values())
    return head + values


wanted = range(mjd_of_new_year(FIRST_YEAR) - 2 * RECORD_DAYS, mjd_of_new_year(LAST_YEAR + 1) + RECORD_DAYS)
rows = {int(source.getcell("MJD", row)): row for row in range(source.nrows())}
records = {mjd: record(row, mjd) for mjd, row in sorted(rows.items()) if mjd in wanted}
assert all(b - a == RECORD_DAYS for a, b in zip(list(records), list(records)[1:]))

for year in range(FIRST_YEAR, LAST_YEAR + 1):
    inside = range(mjd_of_new_year(year) - 2 * RECORD_DAYS + 1, mjd_of_new_year(year + 1) + RECORD_DAYS)
    of_year = [numbers for mjd, numbers in records.items() if mjd in inside]
    with open(os.path.join(sys.argv[1], f"unxp{year}.405"), "wb") as out:
        out.write(header(of_year[0][0], of_year[-1][1]))
        for numbers in of_year:
            out.write(struct.pack(f">{record_doubles}d", *numbers))
