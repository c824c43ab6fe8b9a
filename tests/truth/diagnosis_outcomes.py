"""What readings that the physics does not give say: the tables of diagnosis.md 2.2, one row of chances for each cell."""
import itertools
import math

import numpy as np

from diagnosis_lanes import CIRCUITS

CODES = ("P0731", "P0736", "P0733")
LEAKS_AND_CONTROLS = ("transferSeal", "sealingRings", "pistonSeal", "openPort", "regulatorBore", "pressureControl", "feedRestriction")
OUTCOMES = {"fluidLevel": ("full", "low", "veryLow"), "fluidLook": ("normal", "dark", "metal", "foam"), "cable": ("inAdjustment", "out"),
            "gaugeFlutter.park.3000.cold": ("steady", "flutters"), "panFilter": ("clean", "dust", "metal", "clogged"),
            "boreVacuum": ("holds", "leaks")}
OUTCOMES |= {f"solenoidCurrent.{where}": ("inRange", "off") for where in ("line",) + CIRCUITS}
OUTCOMES |= {f"airWhere.{c}": ("quiet", "rings", "drum", "passage") for c in CIRCUITS}
OUTCOMES["codes"] = tuple(frozenset(c for c, on in zip(CODES, bits) if on) for bits in itertools.product((0, 1), repeat=3))


def clip(x, low, high):
    return min(max(x, low), high)


def phi(x):
    return 0.5 * math.erfc(-x / math.sqrt(2))


def chances(test, fault, circuit, s):
    """Of each outcome in the order of OUTCOMES; `fault` healthy stands for every fault a table does not name."""
    if test == "fluidLevel":
        v = clip(1.2 * s - 0.1, 0.05, 0.9)
        return (0.05, 0.95 - v, v) if fault == "lowFluid" else (0.88, 0.10, 0.02)
    if test == "fluidLook":
        if fault == "frictionWear":
            d = 0.15 + 0.65 * s
            return 0.95 - d, d, 0.03, 0.02
        if fault == "pumpWear":
            m = 0.10 + 0.45 * s
            return 0.82 - m, 0.12, m, 0.06
        if fault == "lowFluid":
            f = 0.10 + 0.65 * s
            return 0.80 - f, 0.15, 0.05, f
        if fault in LEAKS_AND_CONTROLS:
            d = 0.10 + 0.30 * s
            return 0.94 - d, d, 0.04, 0.02
        return (0.68, 0.20, 0.10, 0.02) if fault == "filter" else (0.86, 0.08, 0.03, 0.03)
    if test == "cable":
        return (0.35, 0.65) if fault == "feedRestriction" else (0.95, 0.05)
    if test.startswith("solenoidCurrent."):
        where = test.split(".")[1]
        if fault == "pressureControl" and where == "line":
            return 0.35, 0.65
        return (0.45, 0.55) if fault == "clutchControl" and circuit == where else (0.96, 0.04)
    if test.startswith("gaugeFlutter"):
        if fault == "lowFluid":
            p = 0.04 + 0.90 * phi((clip(0.9 * s, 0, 0.9) - 0.15) / 0.08)
            return 1 - p, p
        return (0.75, 0.25) if fault == "filter" else (0.95, 0.05)
    if test == "panFilter":
        if fault == "filter":
            c = clip(0.35 + 0.6 * s, 0, 0.93)
            return 0.97 - c, 0.02, 0.01, c
        if fault == "frictionWear":
            d = 0.25 + 0.60 * s
            return 0.93 - d, d, 0.04, 0.03
        if fault == "pumpWear":
            m = 0.20 + 0.55 * s
            return 0.87 - m, 0.09, m, 0.04
        if fault in LEAKS_AND_CONTROLS:
            d = 0.10 + 0.30 * s
            return 0.92 - d, d, 0.05, 0.03
        return 0.84, 0.09, 0.04, 0.03
    if test == "boreVacuum":
        d = clip(0.25 + 0.70 * s, 0, 0.93)
        return (1 - d, d) if fault == "regulatorBore" else (0.94, 0.06)
    if test.startswith("airWhere."):
        a = {"sealingRings": (0.85, 0.10, 0.05), "pistonSeal": (0.10, 0.85, 0.05), "hardLip": (0.10, 0.85, 0.05),
             "openPort": (0.06, 0.06, 0.88)}.get(fault)
        if a is None or circuit != test.split(".")[1]:
            return 0.91, 0.05, 0.02, 0.02
        d = clip(0.20 + 0.90 * s, 0, 0.93)
        return (1 - d, *(d * x for x in a))
    raise KeyError(test)


def code_chances(nominal, fault):
    """nominal: the sound-in-all-else car's {test: reading on the solver's scale} for one cell."""
    g = lambda y, a, b: 0.04 + 0.86 * phi((y - a) / b)
    stored = []
    for r in ("drive", "reverse"):
        if fault == "turbineSensor":
            late = 5.0
        else:
            late = max(nominal[f"stopTime.{r}.hot"], nominal[f"stopTime.{r}.cold"])
        stored.append(max(g(late, 1.5, 0.25), g(nominal[f"takeoffSlip.{r}.hot"], math.log(180), 0.4)))
    stored.append(0.04 if fault == "turbineSensor" else g(300 - nominal["clutch.high.1500.hot"], 0, 60))
    return tuple(math.prod(p if code in outcome else 1 - p for code, p in zip(CODES, stored)) for outcome in OUTCOMES["codes"])
