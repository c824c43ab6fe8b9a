"""What the questions ask for, computed without src/engine: by tests/truth (model.md from the paper alone) and SciPy.

Run: python3 tests/content/question-keys.py   (needs numpy, scipy; rewrites question-keys.json beside it)
The wrong rules are not repeated here: a wrong rule has no outside truth, only a name.
"""
import json
import math
import os
import sys

from scipy.optimize import brentq

here = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(here, "..", "truth"))
from air import answer as air_test  # noqa: E402
from nozzle import OUTSIDE, nozzle  # noqa: E402
from plant import Plant  # noqa: E402
from rival import Fluid, Gap, Hole  # noqa: E402

LMIN = 60000.0
LOW = "low-viscosity"
IDLE = (700, 600e3, 400e3)
LOAD = (1500, 1000e3, 800e3)


def steady(temp_c, point=IDLE, applied=("forward",), faults=None, fluid=LOW):
    """Nested brentq: clutch inside line. Returns kPa and L/min. In Reverse both commands are 1.3 times as high."""
    boost = 1.3 if applied[0] == "reverse" else 1.0
    rpm, line, command = point[0], boost * point[1], boost * point[2]
    plant = Plant({"temperature_C": temp_c, "faults": faults or {}, "fluid": fluid}, list(applied))

    def clutch(c, pl):
        held = command * plant.holds_back[c]
        top = min(held, pl)
        spare = lambda pc: plant.feed_flow(c, pl, pc, command) - plant.clutch_leak(c, pc)
        return top if spare(top) >= 0 else brentq(spare, 0, top, xtol=1e-7)

    def balance(pl):
        taken = plant.line_leak(pl) + sum(plant.clutch_leak(c, clutch(c, pl)) for c in applied)
        return plant.pump(rpm, pl) - taken

    command_line = line * plant.line_factor
    pl = command_line if balance(command_line) >= 0 else brentq(balance, 0, command_line, xtol=1e-7)
    out = {"line": pl / 1e3, "pump": plant.pump(rpm, pl) * LMIN, "intake": plant.pump_ideal(rpm) * LMIN,
           "clearances": plant.line_parts[0].flow(pl) * LMIN, "bleed": plant.line_parts[1].flow(pl) * LMIN,
           "left": max(0.0, balance(pl)) * LMIN}
    for c in applied:
        pc = clutch(c, pl)
        out[c] = pc / 1e3
        out[c + "-leak"] = plant.clutch_leak(c, pc) * LMIN
        out[c + "-holds"] = plant.holds(c, pc)
    return out


def kpa_for(torque, mu_f=0.13, spring=900.0):
    return (torque / (mu_f * 10 * 0.065) + spring) / 85e-4 / 1e3


def crack(height_mm, temp_c, kpa=400):
    f = Fluid(LOW, temp_c)
    g = Gap(f, 0.014, height_mm * 1e-3, 0.003)
    q = g.flow(kpa * 1e3)
    return q * LMIN, 100 * g.R * q / (kpa * 1e3)


def hole(d_mm, temp_c, kpa):
    return Hole(Fluid(LOW, temp_c), math.pi / 4 * (d_mm * 1e-3) ** 2).flow(kpa * 1e3) * LMIN


def worn_slip(temp_c):
    """model.md 3: what the pump loses from no pressure to 600 kPa at wear 0.11. Slip does not ask for speed."""
    plant = Plant({"temperature_C": temp_c, "faults": {"pumpWear": 0.11}}, [])
    return (plant.pump(700, 0) - plant.pump(700, 600e3)) * LMIN


def gentle_kpa():
    """model.md 6: where the engine on a fifth of the throttle balances the stalled impeller; the turbine has twice that."""
    impeller = lambda n: (n / 170) ** 2
    engine = lambda n: 0.8 * min(max(20 + (700 - n), 0), 80) + 0.2 * 180 - 8
    n = brentq(lambda n: engine(n) - impeller(n), 700, 5000, xtol=1e-10)
    return kpa_for(2 * impeller(n))


def crossing():
    need = gentle_kpa()
    return brentq(lambda t: steady(t, faults={"transferSeal": 0.25 / 0.4})["forward"] - need, 0, 130)


keys = {
    "worn-pump-slip-100": worn_slip(100),
    "growth-thin-at-400": crack(0.05, 100)[0] / crack(0.05, 20)[0],
    "port-leak-growth-percent": 100 * (hole(1.5, 100, 400) / hole(1.5, 20, 400) - 1),
    "leak-wide-20-at-400": crack(0.40, 20)[0],
    "share-wide-20-at-400": crack(0.40, 20)[1],
    "needed-gentle": gentle_kpa(),
    "needed-standing": kpa_for(2 * (700 / 170) ** 2),
    "split-60": steady(60, faults={"transferSeal": 0.625})["forward"],
    "split-80": steady(80, faults={"transferSeal": 0.625})["forward"],
    "crossing-default-gentle": crossing(),
    "split-100": steady(100, faults={"transferSeal": 0.625})["forward"],
    "split-high-100": steady(100, applied=("high",), faults={"transferSeal": 0.625})["high"],
    "split-reverse-100": steady(100, applied=("reverse",), faults={"transferSeal": 0.625})["reverse"],
    "healthy-reverse-100": steady(100, applied=("reverse",))["reverse"],
    "split-line-reverse-100": steady(100, applied=("reverse",), faults={"transferSeal": 0.625})["line"],
}



def forward(temp_c, faults, point=IDLE):
    return steady(temp_c, point, faults=faults)["forward"]


ON_FORWARD = lambda severity: {"severity": severity, "circuit": "forward"}
stall = lambda rpm: 2 * (rpm / 170) ** 2
AT_REST = (700, 500e3, 250e3)  # model.md 7: 250 kPa at least, line 200 above it and 500 at least

keys.update({
    # what-pressure-does: model.md 5 by hand
    "force-at-400": 400e3 * 85e-4,
    "holds-at-400": 0.13 * 10 * 0.065 * (400e3 * 85e-4 - 900),
    "spring-pressure": 900 / 85e-4 / 1e3,
    "holds-worn-400": 0.065 * 10 * 0.065 * (400e3 * 85e-4 - 900),
    "torque-firm": stall(1500),
    "holds-worn-load-100": steady(100, LOAD, faults={"frictionWear": 1})["forward-holds"],
    # pump-and-regulator
    "pump-draws-idle": 17 * 700 / 1000,
    "budget-hot-left": steady(100)["left"],
    "budget-hot-clearances": steady(100)["clearances"],
    "budget-hot-bleed": steady(100)["bleed"],
    "more-worn-line-100": steady(100, faults={"pumpWear": 0.25})["line"],
    "more-worn-line-load": steady(100, LOAD, faults={"pumpWear": 0.25})["line"],
    "bore-line-100": steady(100, faults={"regulatorBore": 0.6})["line"],
    "bore-line-load": steady(100, LOAD, faults={"regulatorBore": 0.6})["line"],
    # regulator-to-clutch
    "rings-reverse-100": steady(100, applied=("reverse",), faults={"sealingRings": ON_FORWARD(0.4)})["reverse"],
    "rings-100": forward(100, {"sealingRings": ON_FORWARD(0.4)}),
    "port-20": forward(20, {"openPort": ON_FORWARD(0.7)}),
    "port-100": forward(100, {"openPort": ON_FORWARD(0.7)}),
    "piston-100": forward(100, {"pistonSeal": ON_FORWARD(0.8)}),
    "choked-100": forward(100, {"feedRestriction": 0.8}),
    "feed-hole-400": hole(1.9, 100, 400),
    # turbine-must-stop
    "torque-standing": stall(700),
})


def held(where, faults=None):
    """model.md 11: what stays of the supply behind the tester's hole [%]."""
    return air_test({"circuit": where, "faults": faults or {}})["held_percent"]


keys.update({
    # regulator-to-clutch: what its questions quote
    "healthy-forward-100": forward(100, {}),
    "valve-100": forward(100, {"clutchControl": ON_FORWARD(0.8)}),
    "piston-20": forward(20, {"pistonSeal": ON_FORWARD(0.8)}),
    "choked-20": forward(20, {"feedRestriction": 0.8}),
    "feed-hole-200": hole(1.9, 100, 200),
    "air-sound": held("forward"),
    "air-piston": held("forward", {"pistonSeal": ON_FORWARD(0.8)}),
    "air-seal-split": held("transferSeal", {"transferSeal": 0.625}),
    # turbine-must-stop: what its questions quote
    "stop-settles-crack-20": forward(20, {"transferSeal": 0.625}, AT_REST),
    "stop-settles-crack-100": forward(100, {"transferSeal": 0.625}, AT_REST),
})


def swollen(litres, from_c, to_c):
    """How much more room a fill takes, by the densities of the rival fluid [L]."""
    return litres * (Fluid(LOW, from_c).rho / Fluid(LOW, to_c).rho - 1)


keys.update({
    # outside-first: eight litres over the pipe
    "plug-runs-out": swollen(8, 20, 80) - swollen(8, 20, 40),
})


# Two nozzles in a row, of 1.5 and 2 mm.
def behind(hole, lost, supply=275e3):
    full = OUTSIDE + supply
    p = brentq(lambda p: nozzle(math.pi * hole**2 / 4, full, p) - lost(p), OUTSIDE, full, xtol=1e-9)
    return 100 * (p - OUTSIDE) / supply


keys.update({
    "bench-held-wide": behind(1.5e-3, lambda p: nozzle(math.pi * 2e-3**2 / 4, p, OUTSIDE)),
})

keys.update({
    # the-next-best-test: Shannon's sum by hand, two names of eight in 5 min, eight to one
    "next-quarter-rate": -(1 / 4 * math.log2(1 / 4) + 3 / 4 * math.log2(3 / 4)) / 5 * 10,
    "next-eight-to-one": math.log2(8),
})

keys.update({
    # putting-back: over the rings lie drums, air, bridge, body and pan
    "back-lines-again": 1 + len(["drums", "air", "bridge", "body", "pan"]),
})

if __name__ == "__main__":
    with open(os.path.join(here, "question-keys.json"), "w") as out:
        json.dump(keys, out, indent=2)
        out.write("\n")
