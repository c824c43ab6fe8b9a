"""Hypotheses, tests and the table of predictions (diagnosis.md 1 to 4), from the lanes of diagnosis_lanes.py.

    table_of(sheet)    mean and slopes of 34 numeric readings for each hypothesis cell, kept in the system's folder for
                       temporary files, because it takes minutes
"""
import hashlib
import json
import math
import os
import tempfile

import numpy as np

from diagnosis_lanes import CIRCUITS, Cars, NUISANCES, SD, air_held, steady, warm
from diagnosis_motion import NOT_STOPPED_S, stop_times, takeoff_slip
from rival import GENERIC

S_MIN = {"transferSeal": 0.30, "sealingRings": 0.10, "pistonSeal": 0.35, "pumpWear": 0.25, "regulatorBore": 0.45, "pressureControl": 0.20,
         "filter": 0.55, "lowFluid": 0.60, "thinFluid": 0.60, "feedRestriction": 0.25, "openPort": 0.35, "frictionWear": 0.30,
         "turbineSensor": 1.0, "hardLip": 0.70, "clutchControl": 0.25}
ON_A_CIRCUIT = ("sealingRings", "pistonSeal", "openPort", "hardLip", "clutchControl")
CLASSES = [(f, c) for f in S_MIN for c in (CIRCUITS if f in ON_A_CIRCUIT else (None,))] + [("healthy", None), ("unlisted", None)]
NODES = np.round(np.arange(1, 21) * 0.05, 10)

# id: (kind, conditions, error, minutes, set-ups, invasive); numeric tests alone
RANGES = ("drive", "reverse")


def numeric_tests():
    t = {"engineOffTurbine": ("rpm",), "fluidCup": ("cup",)}
    for r in RANGES:
        for w in ("frost", "cold", "hot"):
            t[f"stopTime.{r}.{w}"] = ("stop", r, w)
        t[f"takeoffSlip.{r}.hot"] = ("slip", r, "hot")
    for place, rpm, w in (("park", 700, "cold"), ("park", 700, "hot"), ("drive", 700, "hot"), ("reverse", 700, "hot"),
                          ("drive", 1500, "cold"), ("drive", 1500, "hot"), ("drive", 3000, "cold")):
        t[f"line.{place}.{rpm}.{w}"] = ("line", place, rpm, w)
    for c in CIRCUITS:
        for rpm in (700, 1500):
            for w in ("cold", "hot"):
                t[f"clutch.{c}.{rpm}.{w}"] = ("clutch", c, rpm, w)
    for rpm in (700, 1500):
        t[f"coolerFlow.park.{rpm}.hot"] = ("cooler", rpm, "hot")
    for where in CIRCUITS + ("transferSeal",):
        t[f"airTest.{where}"] = ("held", where)
    return t


NUMERIC = numeric_tests()
WIDTH = {"line": 1400.0, "clutch": 1200.0, "stop": 2.5, "slip": 5.5, "cooler": 9.0, "held": 100.0, "cup": 1.5, "rpm": 800.0}
SLIP_ADD = 30.0


def error_sd(kind, m):
    """Of the reading itself, at the predicted value, on the solver's scale."""
    if kind == "stop":
        return np.hypot(0.08, 0.05 * np.minimum(m, 3))
    if kind in ("line", "clutch"):
        return np.maximum(0.02 * m, 10.0)
    return {"slip": lambda: 0.25 + 0 * m, "cooler": lambda: np.hypot(0.2, 0.08 * m), "held": lambda: np.hypot(4, 0.05 * m),
            "cup": lambda: 0.06 + 0 * m, "rpm": lambda: 15.0 + 0 * m}[kind]()


def discrepancy_sd(kind, m):
    return {"line": 0.015 * m, "clutch": 0.02 * m, "stop": 0.05 * m, "cooler": 0.05 * m, "held": 3.0 + 0 * m, "slip": 0.15 + 0 * m,
            "cup": 0 * m, "rpm": 0 * m}[kind]


def rows():
    """[(fault, circuit, severity)]: what is worked out; the sound car is the last but one, the false sensor the last."""
    out = [(f, c, s) for f, c in CLASSES if f not in ("healthy", "unlisted", "turbineSensor") for s in NODES]
    return out + [("healthy", None, 0.0), ("turbineSensor", None, 1.0)]


def lanes_for(sheet, cars, circuit, warmth):
    """Cars that differ in what this circuit at this warmth can feel, and which of them each row and difference is."""
    felt = {k: v for k, v in cars["sev"].items() if not isinstance(k, tuple) or k[1] == circuit}
    z = cars["z"].copy()
    for j, name in enumerate(NUISANCES):
        if (name.startswith("ring.") and name != f"ring.{circuit}") or (name in ("hot", "cold", "frost") and name != warmth):
            z[:, j] = 0
    if "transferSeal" in felt:
        seen = (felt["transferSeal"] > 0) & (circuit in sheet["seal"]["circuits"])
        felt["transferSeal"] = felt["transferSeal"] * seen
        z[~seen, NUISANCES.index("crack")] = 0
    keys = list(felt)
    both = np.column_stack([felt[k] for k in keys] + [z])
    one, back = np.unique(both, axis=0, return_inverse=True)
    sev = {k: one[:, i] for i, k in enumerate(keys)}
    return Cars(sheet, sev, one[:, len(keys):]), back.ravel()


def reading(sheet, cars, test):
    kind, *at = NUMERIC[test]
    n = len(cars["z"])
    if kind == "rpm":
        return np.zeros(n)
    if kind == "cup":
        v40 = Cars(sheet, cars["sev"], cars["z"]).viscosities()[0]
        return np.log(v40 * np.ones(n))
    if kind == "held":
        return air_held(Cars(sheet, cars["sev"], cars["z"]), at[0])
    circuit = {"stop": lambda: applied(sheet, at[0]), "slip": lambda: applied(sheet, at[0]), "clutch": lambda: at[0],
               "line": lambda: None if at[0] == "park" else applied(sheet, at[0]), "cooler": lambda: None}[kind]()
    lanes, back = lanes_for(sheet, cars, circuit, at[-1])
    if kind == "stop":
        return stop_times(lanes, at[0], at[1], h=0.002)[back]
    if kind == "slip":
        return np.log(takeoff_slip(lanes, at[0], h=0.002) + SLIP_ADD)[back]
    rpm = at[-2]
    a = sheet["commands"]
    line, clutch = (a["idleLine_kPa"], a["idleClutch_kPa"]) if rpm == 700 or kind == "cooler" else (a["loadLine_kPa"], a["loadClutch_kPa"])
    boost = a["reverseFactor"] if circuit == applied(sheet, "reverse") else 1.0
    pl, pc, cooler = steady(warm(lanes, at[-1]), rpm, line * 1e3 * boost, clutch * 1e3 * boost, circuit)
    return {"line": pl / 1e3, "clutch": pc / 1e3, "cooler": cooler * 6e4}[kind][back]


def applied(sheet, rng):
    return sheet["applyChart"]["1" if rng == "drive" else "R"][0]


def cars_of(rows_):
    """One lane for each row at z = 0, then at +1 and -1 of each difference."""
    sets = [np.zeros(len(NUISANCES))] + [sign * e for e in np.eye(len(NUISANCES)) for sign in (1.0, -1.0)]
    z = np.vstack([np.tile(one, (len(rows_), 1)) for one in sets])
    sev = {}
    for i, (f, c, s) in enumerate(rows_):
        if f in ("healthy", "turbineSensor"):
            continue
        key = (f, c) if c else f
        sev.setdefault(key, np.zeros(len(rows_)))[i] = s
    return {"sev": {k: np.tile(v, len(sets)) for k, v in sev.items()}, "z": z}


def worked_out(sheet):
    """{test: (m0, y+, y-) of rows, rows x 12, rows x 12}"""
    list_ = rows()
    cars, out = cars_of(list_), {}
    for test in NUMERIC:
        y = reading(sheet, cars, test).reshape(1 + 2 * len(NUISANCES), len(list_))
        sensor = len(list_) - 1
        if test == "engineOffTurbine":
            y[:, sensor] = 300.0
        if test.startswith("stopTime"):
            y[:, sensor] = NOT_STOPPED_S
        out[test] = y
        print("  worked out", test, flush=True)
    return out


def kept(sheet):
    here = os.path.dirname(os.path.abspath(__file__))
    text = json.dumps({k: v for k, v in sheet.items() if k != "name"}, sort_keys=True)
    for name in ("rival.py", "nozzle.py", "diagnosis_lanes.py", "diagnosis_motion.py", "diagnosis_table.py"):
        text += open(os.path.join(here, name)).read()
    path = os.path.join(tempfile.gettempdir(), f"rival-table-{hashlib.sha256(text.encode()).hexdigest()[:16]}.npz")
    if not os.path.exists(path):
        np.savez(path, **worked_out(sheet))
    return dict(np.load(path))
