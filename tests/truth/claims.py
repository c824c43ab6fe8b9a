"""What the paper prints about its own version 2, worked out here: times of a sound box, the story, where each fault slips.

Prints only. Run: /usr/bin/python3 tests/truth/claims.py   (2 min)
"""
import sys

import numpy as np

from engagement import RPM, STEP, T_SELECT, Run
from engagement_requests import on, request
from plant import ONE_CIRCUIT
from steady_requests import FAULTS

NOT_EXPECTED = ("thinFluid", "hardLip", "turbineSensor")
CODE_TEMPERATURES = range(-10, 111, 10)


def run(*args, **faults):
    return Run(request(*args, **faults), rtol=1e-8).solve()


def since_selection(r, mark):
    return f"{r.marks[mark] - T_SELECT:.3f} s" if mark in r.marks else "never"


def descent(r):
    """Seconds from clutch full, and from 90 % of the free speed, until the turbine is under 50 rpm."""
    if "turbineBelow50_s" not in r.marks:
        return "none"
    turbine, start = r.rows[:, 1], r.rows[0, 1]
    t = np.arange(len(turbine)) * STEP
    left = t[np.argmax(turbine < 0.9 * start)]
    return f"from full {r.marks['turbineBelow50_s'] - r.marks['clutchFull_s']:.3f} s, from 90 % {r.marks['turbineBelow50_s'] - left:.2f} s"


def verdict(r):
    """One word for what the story of 7 s shows."""
    events = [e["event"] for e in r.events]
    if "code stored" in events:
        return "code"
    if "engaged_s" not in r.marks:
        return "never"
    if "pressure raised" in events:
        return "raise"
    return f"{r.marks['turbineBelow50_s'] - T_SELECT:.1f}" if "turbineBelow50_s" in r.marks else "open"


def sound():
    for name in ("drive", "reverse"):
        for t in (100, 60, 20, 0, -10, -20, -30):
            r = run(t, name, "electronic")
            print(f"sound {name} {t} C: turbine below 50 rpm after {since_selection(r, 'turbineBelow50_s')}; descent {descent(r)};"
                  f" slip at check {r.marks['slipAtCheck_rpm']:.0f} rpm; {verdict(r)}")


def story():
    for t in (20, 100):
        for selection in ("electronic", "mechanical"):
            r = run(t, "drive", selection, transferSeal=0.625)
            print(f"crack 0.25 mm {t} C {selection}: below 50 rpm after {since_selection(r, 'turbineBelow50_s')};",
                  "; ".join(f"{e['time_s']:.2f} {e['event']} {e.get('code', '')}".strip() for e in r.events),
                  f"| output at the code {max(r.rows[[round(e['time_s'] / STEP) for e in r.events if e['event'] == 'code stored'], 2], default=0):.0f} rpm")


def faults():
    print("fault at severity 1: code, never (not engaged in 7 s), raise (slipped once, saved), else seconds to 50 rpm; open: none of these")
    for name, circuit in (("drive", "forward"), ("reverse", "reverse")):
        print(f"{name:8s} {'':16s}", " ".join(f"{t:>6d}" for t in CODE_TEMPERATURES))
        for f in FAULTS:
            value = on(circuit, 1) if f in ONE_CIRCUIT else 1
            cells = [verdict(run(t, name, "electronic", **{f: value})) for t in CODE_TEMPERATURES]
            slips = any(c in ("code", "never") for c in cells)
            note = "" if f in NOT_EXPECTED else "ok" if slips else "NEVER SLIPS"
            print(f"{name:8s} {f:16s}", " ".join(f"{c:>6s}" for c in cells), note, flush=True)


if __name__ == "__main__":
    for part in (sound, story, faults) if len(sys.argv) == 1 else [globals()[sys.argv[1]]]:
        part()
