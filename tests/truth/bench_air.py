"""The bench rig of the lesson on air, without src/engine: plain holes, and the six units, wet and dry, by nozzle.py and SciPy.

Wet, the rings' gap is 10 um + what they have worn over 25 um; dry, the film is gone and all of the gap leaks. The piston goes
over where what is held overcomes the return spring. Supply in kPa gauge, holes in mm, held in percent.
Run: /usr/bin/python3 tests/truth/bench_air.py   (needs scipy; rewrites bench_air.json)
"""
import json
import math
import os

from scipy.optimize import brentq

from nozzle import OUTSIDE, nozzle, slot

CIRCUITS = ["forward", "reverse", "high"]
# Sheet of the training transmission (model paper, 12): m.
RINGS, PISTON, SEAL = (0.377, 25e-6, 2e-3), (0.040, 1.5e-3), (0.014, 3e-3)
AREA, SPRING = 85e-4, 900.0
# Number of the unit on the page: fault, its amount on the paper's scale (m), circuit. Unit 5's valve lies beside the case.
UNITS = [("seal", 0.25e-3, None), ("rings", 25e-6 + 0.2 * 95e-6, "reverse"), ("port", 0.7 * 3e-3, "forward"),
         ("piston", 0.6 * 0.15e-3, "high"), (None, 0, None), (None, 0, None)]
RIGS = [(275, 1.5), (275, 3.0), (207, 1.5), (340, 1.0), (120, 2.0)]


def disc(d):
    return math.pi * d * d / 4


def ways(unit, place, wet):
    """[(w, h, L)], [area] of what lets air out."""
    fault, amount, where = unit
    if place == "transferSeal":
        return ([(SEAL[0], amount, SEAL[1])] if fault == "seal" else []), []
    mine = where == place
    h = amount if mine and fault == "rings" else RINGS[1]
    slots = [(RINGS[0], 10e-6 + (h - 25e-6) if wet else h, RINGS[2])]
    if mine and fault == "piston":
        slots.append((PISTON[0], amount, PISTON[1]))
    return slots, ([disc(amount)] if mine and fault == "port" else [])


def leak(parts, p):
    slots, holes = parts
    return sum(min(slot(w, h, length, p, OUTSIDE), nozzle(w * h, p, OUTSIDE)) for w, h, length in slots) + sum(nozzle(a, p, OUTSIDE) for a in holes)


def held(parts, supply, hole):
    full = OUTSIDE + supply * 1e3
    if leak(parts, full) == 0:
        return 100.0
    p = brentq(lambda p: nozzle(disc(hole * 1e-3), full, p) - leak(parts, p), OUTSIDE, full, xtol=1e-9, rtol=1e-15)
    return (p - OUTSIDE) / (10 * supply)


def main():
    plain = [{"leak": d, "hole": 1.5, "supply": 275, "held": held(([], [disc(d * 1e-3)]), 275, 1.5)} for d in (1.0, 1.5, 2.0, 2.1, 3.0)]
    units = []
    for i, unit in enumerate(UNITS):
        for place in CIRCUITS + ["transferSeal"]:
            for supply, hole in RIGS:
                for wet in (True, False):
                    percent = held(ways(unit, place, wet), supply, hole)
                    thud = place != "transferSeal" and percent / 100 * supply * 1e3 * AREA > SPRING
                    units.append([i + 1, place, supply, hole, wet, percent, thud])
    here = os.path.dirname(os.path.abspath(__file__))
    with open(os.path.join(here, "bench_air.json"), "w") as out:
        out.write('{"plain": ' + json.dumps(plain) + ',\n"units": [\n' + ",\n".join(json.dumps(u) for u in units) + "\n]}\n")
    for row in plain:
        print(row)


if __name__ == "__main__":
    main()
