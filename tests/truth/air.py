"""60 bench air tests (model.md 11): what leaks at full supply, and what the tester holds behind its own hole.

Behind the tester's 1.5 mm hole the pressure is where that hole's flow equals the leaks: one equation, brentq to the last
bit, and bisection of the same laws in 80-bit numbers beside it (the difference is printed).
Run: /usr/bin/python3 tests/truth/air.py   (needs numpy, scipy; rewrites air.json)
"""
import json
import os
import random

import numpy as np
from scipy.optimize import brentq

from nozzle import OUTSIDE, nozzle, slot
from plant import disc, hard_lip_gap, lerp, severity
from sheet import sheet_of
from steady_requests import SHEET, SEALS, some

SUPPLY, TESTER_HOLE = 275e3, 1.5e-3
SEED = 20250218
CIRCUITS = ["forward", "reverse", "high"]
TOUCHING = ["sealingRings", "pistonSeal", "hardLip", "openPort"]


def slots_and_holes(request):
    """[(w, h, L)] of the slots and [area] of the open ports."""
    sheet, faults, where = sheet_of(request), request.get("faults", {}), request["circuit"]
    s = lambda key, circuit=None: severity(faults, key, circuit)
    if where == "transferSeal":
        seal = sheet["seal"]
        return [(seal["width_mm"] * 1e-3, 0.40e-3 * s("transferSeal"), seal["length_mm"] * 1e-3)], []
    rings, piston = sheet["rings"], sheet["piston"]
    in_oil = lerp(rings["height_um"] * 1e-6, 120e-6, s("sealingRings", where))
    lip = lambda h: (piston["sealWidth_mm"] * 1e-3, h, piston["sealLength_mm"] * 1e-3)
    slots = [(rings["width_mm"] * 1e-3, 10e-6 + (in_oil - 25e-6), rings["length_mm"] * 1e-3),
             lip(0.15e-3 * s("pistonSeal", where)), lip(hard_lip_gap(s("hardLip", where), 20.0))]
    return slots, [disc(3e-3 * s("openPort", where))]


def leak(parts, p1):
    slots, holes = parts
    total = sum(nozzle(a, p1, OUTSIDE) for a in holes)
    return total + sum(min(slot(w, h, length, p1, OUTSIDE), nozzle(w * h, p1, OUTSIDE)) for w, h, length in slots)


def answer(request):
    parts, full = slots_and_holes(request), SUPPLY + OUTSIDE
    surplus = lambda p: nozzle(disc(TESTER_HOLE), full, p) - leak(parts, p)
    p = full if leak(parts, full) == 0 else brentq(surplus, OUTSIDE, full, xtol=1e-9, rtol=1e-15, maxiter=500)
    return {"flow_gs": leak(parts, full) * 1e3, "held_percent": 100 * (p - OUTSIDE) / SUPPLY}


def held_by_bisection(request):
    """The same equation halved 80 times in extended precision."""
    parts, full = slots_and_holes(request), np.longdouble(SUPPLY + OUTSIDE)
    low, high = np.longdouble(OUTSIDE), full
    for _ in range(80):
        p = (low + high) / 2
        low, high = (p, high) if nozzle(disc(TESTER_HOLE), full, p) > leak(parts, p) else (low, p)
    return float(100 * (high - OUTSIDE) / SUPPLY)


def requests():
    """The printed ones, each touching fault over its severities, then mixed ones, some on other sheets."""
    rng = random.Random(SEED)
    on = lambda where, **faults: {"kind": "airTest", "circuit": where, **({"faults": faults} if faults else {})}
    at = lambda where, s: {"severity": s, "circuit": where}
    out = [on("forward"), on("high"), on("transferSeal"), on("forward", sealingRings=at("forward", 0.2)), on("transferSeal", transferSeal=0.625)]
    out += [on("transferSeal", transferSeal=s) for s in (0.02, 0.1, 0.25, 0.4, 1)]
    for f in TOUCHING:
        out += [on(c, **{f: at(c, s)}) for c, s in zip(CIRCUITS * 2, (0.02, 0.1, 0.3, 0.5, 0.75, 1))]
    # of another circuit, or no business of air: these must change nothing
    out += [on("forward", sealingRings=at("reverse", 1), openPort=at("high", 1)), on("reverse", transferSeal=1, pumpWear=1, thinFluid=1),
            on("transferSeal", sealingRings=at("forward", 1), frictionWear=1, clutchControl=at("forward", 1))]
    while len(out) < 60:
        where = rng.choice(CIRCUITS + ["transferSeal"])
        faults = {f: at(where if where in CIRCUITS and rng.random() < 0.85 else rng.choice(CIRCUITS), round(rng.random() ** 2, 3))
                  for f in rng.sample(TOUCHING, rng.randint(1, 4))}
        if where == "transferSeal" or rng.random() < 0.3:
            faults["transferSeal"] = round(rng.random(), 3)
        r = on(where, **faults)
        if len(out) % 2:
            r["transmission"] = {g: some(rng, SHEET[g]) for g in rng.sample(["rings", "seal", "piston", "pump", "feed"], rng.randint(1, 5))}
            if rng.random() < 0.3:
                r["transmission"].setdefault("seal", {})["circuits"] = rng.choice(SEALS[:4])
        out.append(r)
    return out


def main():
    cases = [{"request": r, "answer": answer(r)} for r in requests()]
    here = os.path.dirname(os.path.abspath(__file__))
    with open(os.path.join(here, "air.json"), "w") as f:
        f.write("[\n" + ",\n".join(json.dumps(c) for c in cases) + "\n]\n")
    held = [c["answer"]["held_percent"] for c in cases]
    print(len(cases), "cases | sheets", sum("transmission" in c["request"] for c in cases), "| held over 50 %", sum(h > 50 for h in held), "under 10 %", sum(h < 10 for h in held))
    print("worst against bisection, of 100 %:", max(abs(c["answer"]["held_percent"] - held_by_bisection(c["request"])) for c in cases))
    for c in cases[:5]:
        print(c["request"]["circuit"], c["request"].get("faults", {}), c["answer"])


if __name__ == "__main__":
    main()
