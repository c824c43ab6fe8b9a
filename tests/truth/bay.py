"""What the bay's fifteen tests are worth, in words, by the second planner (diagnosis_*.py) and Shannon's sum, without src.

Run: python3 tests/truth/bay.py   (needs numpy, scipy; rewrites bay.json beside it)

How the page was read: the customer named Drive, so a fault of one clutch sits in the forward clutch. Cells of severity 0.05
apart weigh alike within a name. A reading in numbers is told roughly: in time under 1 s, not at all over 2.5 s; the command from
85 % of it, half from 50 %; the seal holds from 80 %; a standing turbine reads nothing under 150 rpm. Readings of one car count as
independent: what cars differ in is in each reading's own spread. Three in a thousand readings are anything.
"""
import json
import math
import os

import numpy as np
from scipy.special import ndtr

from diagnosis_bits import SPAN, minutes
from diagnosis_outcomes import OUTCOMES
from diagnosis_posterior import B0, EPS, KAPPA, Cells
from diagnosis_table import CLASSES, NUMERIC
from sheet import TRAINING

TESTS = {"codes": ("codes", None), "turbine": ("engineOffTurbine", [150]), "cold": ("stopTime.drive.cold", [1, 2.5]),
         "hotDrive": ("stopTime.drive.hot", [1, 2.5]), "hotReverse": ("stopTime.reverse.hot", [1, 2.5]),
         "current": ("solenoidCurrent.forward", None), "level": ("fluidLevel", None), "look": ("fluidLook", None),
         "cable": ("cable", None), "line": ("line.drive.700.hot", [300, 510]), "tap": ("clutch.forward.700.hot", [200, 340]),
         "pan": ("panFilter", None), "bore": ("boreVacuum", None), "air": ("airWhere.forward", None),
         "seal": ("airTest.transferSeal", [80])}
CARS = [("transferSeal", 0.625), ("turbineSensor", 1), ("regulatorBore", 0.8), ("clutchControl", 0.7), ("frictionWear", 0.7),
        ("healthy", 0), None, ("pistonSeal", 0.7), ("feedRestriction", 0.6), ("lowFluid", 0.8)]
SEEN_ON_SEVEN = {"codes": 1, "hotDrive": 2}
WAYS = [(1, []), (1, ["codes", "turbine", "level", "cable"]), (1, ["codes", "turbine", "level", "cable", "cold"]),
        (1, ["codes", "turbine", "level", "cable", "cold", "hotReverse", "line"]),
        (1, ["codes", "turbine", "level", "cable", "seal"]),
        (3, ["codes", "turbine", "level", "cable", "cold", "hotDrive", "hotReverse", "line"]),
        (3, ["line", "pan", "hotDrive", "bore", "cold"]), (7, ["cold", "codes", "hotDrive", "hotReverse", "tap"]),
        (5, ["look", "cable", "hotDrive", "line", "pan", "turbine"]), (6, list(TESTS))]

cells = Cells(TRAINING)
drive = np.array([CLASSES[k][1] in (None, "forward") for k in cells.cls])
one = np.array([CLASSES[k][0] in ("healthy", "unlisted", "turbineSensor") for k in cells.cls])
twentieth = np.array([abs(s * 20 - round(s * 20)) < 1e-6 for s in cells.severity])
names = np.array([CLASSES[k][0] for k in cells.cls])


def chances(key):
    """cells x what it can say"""
    test, cuts = TESTS[key]
    if cuts is None:
        table = cells.tables[test]
        if key != "codes":
            return table
        which = [("P0731" in codes) + 2 * ("P0736" in codes) for codes in OUTCOMES["codes"]]
        return np.column_stack([table[:, [i for i, w in enumerate(which) if w == k]].sum(1) for k in range(4)])
    kind = NUMERIC[test][0]
    low, high = SPAN[kind]
    sd = np.sqrt((cells.J[test] ** 2).sum(1) + cells.r2[test])
    eps = np.where(cells.unlisted, KAPPA * cells.b0, EPS)
    parts, under = [], np.zeros(cells.n)
    for i, cut in enumerate([*cuts, math.inf]):
        wild = 1.0 if cut == math.inf else min(1.0, (cut - low) / (high - low)) * (0.5 if kind == "stop" else 1.0)
        here = np.ones(cells.n) if cut == math.inf else (1 - eps) * ndtr((cut - cells.m[test]) / sd) + eps * wild
        parts.append(here - under)
        under = here
    return np.column_stack(parts)


SAYS = {key: chances(key) for key in TESTS}


def said(car, key):
    if car is None:
        return SEEN_ON_SEVEN.get(key, said(CARS[5], key))
    fault, s = car
    at = [i for i in range(cells.n) if drive[i] and names[i] == fault and (one[i] or abs(cells.severity[i] - s) < 1e-6)]
    assert len(at) == 1, car
    return int(np.argmax(SAYS[key][at[0]]))


kept = np.flatnonzero(drive & (one | twentieth))
ALL = sorted(set(names))
START = np.array([(2 if names[i] == "unlisted" else 1) / 18 / (names[kept] == names[i]).sum() for i in kept])


def bits(w, key):
    """Shannon 1948, section 12: the sum over both of p(name, said) log2 of p(name, said) / (p(name) p(said))."""
    joint = np.array([(w[:, None] * SAYS[key][kept])[names[kept] == n].sum(0) for n in ALL])
    rows, columns = joint.sum(1), joint.sum(0)
    return sum(joint[i, j] * math.log2(joint[i, j] / (rows[i] * columns[j]))
               for i in range(len(rows)) for j in range(len(columns)) if joint[i, j] > 0)


def way(number, keys):
    w, state, spent = START.copy(), {"temperature": "cold", "fitted": []}, 0
    for key in keys:
        test = TESTS[key][0]
        spent += minutes(test, state)
        w = w * SAYS[key][kept][:, said(CARS[number - 1], key)]
        w /= w.sum()
        state = stands_after(test, state)
    return {"car": number, "taken": keys, "minutes": spent, "names": {n: round(float(w[names[kept] == n].sum()), 5) for n in ALL},
            "next": {k: [round(bits(w, k), 5), minutes(TESTS[k][0], state)] for k in TESTS if k not in keys}}


def stands_after(test, state):
    """A temperature is taken on, and whatever was put on or off stays so; an engine that runs needs it together again."""
    from diagnosis_bits import ENGINE_RUNS, SETUPS
    kind, *at = test.split(".")
    fitted = list(state["fitted"])
    if kind in ENGINE_RUNS:
        fitted = [f for f in fitted if f not in ("panOff", "valveBodyOff")]
    need = [f"gauge{at[0].capitalize()}"] if kind == "clutch" else list(SETUPS[kind])
    if test == "airTest.transferSeal":
        need.append("sealFixture")
    warmth = at[-1] if at and at[-1] in ("hot", "cold") else state["temperature"]
    return {"temperature": warmth, "fitted": fitted + [n for n in need if n not in fitted]}


if __name__ == "__main__":
    out = {"said": [[said(car, key) for key in TESTS] for car in CARS], "ways": [way(*one_way) for one_way in WAYS]}
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "bay.json"), "w") as f:
        json.dump(out, f)
        f.write("\n")
