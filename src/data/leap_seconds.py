"""Writes the leap second table of the jar: the day from which each value of TAI - UTC holds, and that value.

Reads leap-seconds.list of the IANA time zone database (Debian's package tzdata).
Usage: python3 leap_seconds.py OUTPUT
"""
import datetime
import sys

LIST = "/usr/share/zoneinfo/leap-seconds.list"
NTP_EPOCH = datetime.date(1900, 1, 1)

with open(LIST, encoding="utf-8") as source, open(sys.argv[1], "w", encoding="utf-8", newline="\n") as out:
    out.write("# TAI - UTC in seconds, from 0h UTC of the day; source: leap-seconds.list of IANA tzdata (IERS Bulletin C)\n")
    for line in source:
        if line.strip() and not line.startswith("#"):
            ntp_seconds, offset_s = line.split()[:2]
            out.write(f"{NTP_EPOCH + datetime.timedelta(seconds=int(ntp_seconds))}\t{offset_s}\n")
