"""What the four cars of "Before and after" read, without src/engine: the second model, SciPy, and the law of the difference.

Run: python3 tests/truth/proof.py   (needs numpy, scipy; 5 s; rewrites proof.json beside it)
The faults are worked out from their sizes: a crack of 0.25 mm of the worst 0.4, half a crack of 0.127 mm, rings at a fifth.
"""
import importlib.util
import json
import math
import os

import numpy as np

from engagement import Run, T_SELECT

here = os.path.dirname(os.path.abspath(__file__))
spec = importlib.util.spec_from_file_location("keys", os.path.join(here, "..", "content", "question-keys.py"))
keys = importlib.util.module_from_spec(spec)
spec.loader.exec_module(keys)

FORWARD = {"severity": 0.2, "circuit": "forward"}
CARS = {"sound": {}, "half": {"transferSeal": 0.127 / 0.4}, "rings": {"sealingRings": FORWARD},
        "untouched": {"transferSeal": 0.25 / 0.4}}


def stops(temp, faults):
    """Selection to turbine under 50 rpm with the brake held [s]; null where the brake comes off first."""
    run = Run({"kind": "engagement", "fluid": "low-viscosity", "temperature_C": temp, "rangeSelection": "electronic",
               "range": "drive", "faults": faults}).solve()
    below = run.marks.get("turbineBelow50_s")
    return None if below is None or below - T_SELECT > 2.5 else below - T_SELECT


def gauge(kpa):
    return max(0.02 * kpa, 10.0)


if __name__ == "__main__":
    out = {"cars": [], "pairs": []}
    for name, faults in CARS.items():
        for temp in (20, 60, 85, 95):
            idle, load = keys.steady(temp, keys.IDLE, faults=faults), keys.steady(temp, keys.LOAD, faults=faults)
            out["cars"].append({"car": name, "temp": temp, "tap": idle["forward"], "line": idle["line"],
                                "tapFast": load["forward"], "stop": stops(temp, faults)})
    # A million pairs of readings drawn by chance, in place of the law: what 2 sd of their difference come to.
    dice = np.random.default_rng(24)
    at = {(c["car"], c["temp"]): c for c in out["cars"]}
    for temp in (20, 95):
        was, now = at[("untouched", temp)]["tap"], at[("sound", temp)]["tap"]
        drawn = dice.normal(now, gauge(now), 1_000_000) - dice.normal(was, gauge(was), 1_000_000)
        out["pairs"].append({"temp": temp, "difference": float(np.mean(drawn)), "doubt": float(2 * np.std(drawn))})
    with open(os.path.join(here, "proof.json"), "w") as file:
        json.dump(out, file, indent=1)
        file.write("\n")
