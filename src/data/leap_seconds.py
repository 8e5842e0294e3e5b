"""Writes the leap second table of the jar in the form of the U.S. Naval Observatory's tai-utc.dat, from 1972 on.

Reads leap-seconds.list of the IANA time zone database (Debian's package tzdata).
Usage: python3 leap_seconds.py OUTPUT
"""
import datetime
import sys

LIST = "/usr/share/zoneinfo/leap-seconds.list"
NTP_EPOCH = datetime.date(1900, 1, 1)
JD_OF_NTP_EPOCH = 2415020.5

with open(LIST, encoding="utf-8") as source, open(sys.argv[1], "w", encoding="utf-8", newline="\n") as out:
    for line in source:
        if line.strip() and not line.startswith("#"):
            ntp_seconds, offset_s = line.split()[:2]
            days = int(ntp_seconds) // 86400
            day = NTP_EPOCH + datetime.timedelta(days=days)
            month = f"{day:%b}".upper()
            out.write(f" {day.year} {month} {day.day:2d} =JD {days + JD_OF_NTP_EPOCH}  TAI-UTC= {int(offset_s):5d}.0"
                      "       S + (MJD - 41317.) X 0.0      S\n")
