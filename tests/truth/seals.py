"""How long the seven seals of the two-seals bench take to engage, without src/engine: by the second model and SciPy.

Time from selecting Drive until the turbine is below 50 rpm [s], or null where a code is stored.
Run: python3 tests/truth/seals.py   (needs numpy, scipy; rewrites seals.json beside it)
"""
import json
import os

from engagement import Run, T_SELECT
from engagement_requests import on, request

TEMPS = [-20, 0, 10, 20, 31, 45, 60, 75, 100, 120]
SEALS = {
    "sound": {},
    "split-0.15": {"transferSeal": 0.15 / 0.4}, "split-0.25": {"transferSeal": 0.25 / 0.4}, "split-0.4": {"transferSeal": 1.0},
    "hard-50": {"hardLip": on("forward", 0.5)}, "hard-75": {"hardLip": on("forward", 0.75)}, "hard-100": {"hardLip": on("forward", 1.0)},
}


def stops(temp, faults):
    run = Run(request(temp, "drive", "electronic", **faults)).solve()
    below = run.marks.get("turbineBelow50_s")
    if below is None or any("code" in event for event in run.events):
        return None
    return round(below - T_SELECT, 4)


if __name__ == "__main__":
    out = {"temps_C": TEMPS, **{name: [stops(temp, faults) for temp in TEMPS] for name, faults in SEALS.items()}}
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "seals.json"), "w") as f:
        json.dump(out, f)
        f.write("\n")
