#!/usr/bin/env python3
"""Writes a ledger as a program of version 0.0.9 would have: a settled reading is the mean of its
samples, rounded to the gauge's resolution, halves upward.

Only Python's standard library and station/FORMAT.md are used, nothing of the program. The job, the
tables and the database's schema are those of the ledger version-1.ledger.

    python3 make_ledger_of_first_rules.py version-1.ledger OUT.ledger OUT.csv

OUT.csv has every reading's value by the rules of then and of 0.1.0, computed with fractions.
"""

import csv
import datetime
import fractions
import hashlib
import json
import math
import pathlib
import random
import sqlite3
import sys

PROGRAM = "0.0.9"
ID = "0f1e2d3c4b5a69788796a5b4c3d2e1f0"
START = datetime.datetime(2031, 3, 4, 8, 0, tzinfo=datetime.timezone.utc)
RESOLUTION_MM = fractions.Fraction(1, 1000)
SAMPLES = 7
EVERY_S = fractions.Fraction(1, 4)
PROFILE = """\
# A bore gauge that sends the deviation from the setting four times a second.
format = "boreledger-gauge/1"
name = "Settling line"
reads = "deviation"
unit = "mm"
resolution_mm = 0.001
max_error_mm = 0.002
[frame]
kind = "line"
ends_with = "\\n"
max_bytes = 32
[decode]
pattern = '^(?<value>[+-]?\\d+\\.\\d+)$'
[pick]
rule = "settle"
for_s = 1.5
within_mm = 0.002
move_mm = 0.005
"""


def text(value):
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def wall(t_s):
    at = START + datetime.timedelta(seconds=float(t_s))
    return at.isoformat(timespec="milliseconds").replace(".000+", "+").replace("+00:00", "Z")


def sample_thousandths(dice, nominal):
    """Thousandths of a millimetre that jitter by one, so that the mean has more digits."""
    return [nominal + dice.choice((0, 0, 1)) for _ in range(SAMPLES)]


def rounded(mean):
    """To the resolution, halves upward."""
    return math.floor(mean / RESOLUTION_MM + fractions.Fraction(1, 2)) * RESOLUTION_MM


def uncertainty(values_mm):
    """The mean's standard uncertainty from the scatter, in double precision."""
    mean = math.fsum(values_mm) / len(values_mm)
    squares = math.fsum((value - mean) * (value - mean) for value in values_mm)
    return math.sqrt(squares / (len(values_mm) - 1) / len(values_mm))


def reading(place, start_s, thousandths, setting):
    times_s = [start_s + i * EVERY_S for i in range(SAMPLES)]
    mean = fractions.Fraction(sum(thousandths), 1000 * SAMPLES)
    samples = []
    for t_s, value in zip(times_s, thousandths):
        line = f"{value / 1000:+.3f}\n"
        samples.append(
            {"t_s": float(t_s), "raw": line.encode().hex(), "value_mm": float(line)}
        )
    middle_s = (times_s[0] + times_s[-1]) / 2
    body = {
        "kind": "reading",
        "session": 7,
        "position": place,
        "t_s": float(middle_s),
        "wall": wall(middle_s),
        "value_mm": float(rounded(mean)),
        "standard_uncertainty_mm": uncertainty([each["value_mm"] for each in samples]),
        "rule": "settle",
        "setting": setting,
        "samples": samples,
        "cautions": [],
    }
    return body, mean


def places():
    yield {"at": "setting", "check": "opening"}, 0
    for cylinder in (1, 2, 3):
        for depth, worn in ((12.0, 9), (60.0, 4), (108.0, 1)):
            for axis, oval in (("thrust", 3), ("pin", 0)):
                place = {"at": "bore", "cylinder": cylinder, "depth_mm": depth, "axis": axis}
                yield place, 10 + cylinder + worn + oval
    yield {"at": "setting", "check": "closing"}, 0


def bodies(documents, table):
    job = next(each for each in documents if each["role"] == "job")
    tables = [each for each in documents if each["role"] == "table"]
    gauge = {
        "kind": "document",
        "role": "gauge",
        "name": "settling.gauge.toml",
        "sha256": hashlib.sha256(PROFILE.encode()).hexdigest(),
        "text": PROFILE,
    }
    yield {"kind": "ledger", "format": "boreledger-ledger/1", "id": ID, "wall": wall(0)}
    yield from [job, gauge, *tables]
    yield {
        "kind": "session",
        "job_name": "Pumphouse three",
        "job": job["sha256"],
        "gauge": gauge["sha256"],
        "tables": [each["sha256"] for each in tables],
        "measure": "BORE",
        "ring": None,
        "wall": wall(0),
        "setting_temp_c": 20.0,
        "block_temp_c": 20.0,
        "line": "a line",
        "program": PROGRAM,
    }
    # A seed for which an exact sum and a compensated one give the same doubles.
    dice = random.Random(9012)
    for i, (place, nominal) in enumerate(places()):
        setting = None if place["at"] == "setting" else 8
        body, mean = reading(place, 10 * (i + 1), sample_thousandths(dice, nominal), setting)
        table.append((8 + i, repr(body["value_mm"]), repr(float(mean))))
        last_s = body["t_s"]
        yield body
    yield {"kind": "ended", "session": 7, "t_s": last_s, "wall": wall(last_s)}


def link(previous, seq, body):
    digest = hashlib.sha256(b"\x00" + body).digest()
    return hashlib.sha256(b"\x01" + previous + seq.to_bytes(8, "big") + digest).digest()


def main():
    pattern, out, figures = (pathlib.Path(each) for each in sys.argv[1:4])
    old = sqlite3.connect(pattern.absolute().as_uri() + "?immutable=1", uri=True)
    rows = old.execute("SELECT body FROM entry WHERE kind = 'document' AND seq <= 6 ORDER BY seq")
    documents = [json.loads(row[0]) for row in rows]
    schema = [row[0] for row in old.execute("SELECT sql FROM sqlite_schema")]
    out.unlink(missing_ok=True)
    new = sqlite3.connect(out)
    for statement in schema:
        new.execute(statement)
    for name in ("application_id", "user_version"):
        new.execute(f"PRAGMA {name} = {old.execute(f'PRAGMA {name}').fetchone()[0]}")
    head, table = bytes(32), []
    for seq, body in enumerate(bodies(documents, table), start=1):
        stored = text(body)
        head = link(head, seq, stored.encode())
        new.execute("INSERT INTO entry (seq, body, hash) VALUES (?, ?, ?)", (seq, stored, head))
    new.commit()
    new.close()
    with figures.open("w", encoding="utf-8", newline="\n") as file:
        file.write(
            "# Made by make_ledger_of_first_rules.py with Python's fractions; each value is\n"
            "# the double nearest to the exact one. Tolerance: 1e-15 mm for as_now_mm, none for\n"
            "# as_then_mm.\n"
        )
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(("entry", "as_then_mm", "as_now_mm"))
        writer.writerows(table)


if __name__ == "__main__":
    main()
