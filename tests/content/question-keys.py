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
from nozzle import OUTSIDE, nozzle, slot  # noqa: E402
from plant import Plant  # noqa: E402
from rival import Fluid, Gap, Hole  # noqa: E402

LMIN = 60000.0
LOW = "low-viscosity"
PRESS = {"kv40_cSt": 46, "kv100_cSt": 6.8, "density15_kgm3": 870}
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


def hole(d_mm, temp_c, kpa, fluid=LOW):
    return Hole(Fluid(fluid, temp_c), math.pi / 4 * (d_mm * 1e-3) ** 2).flow(kpa * 1e3) * LMIN


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


def crossing(fluid):
    need = gentle_kpa()
    return brentq(lambda t: steady(t, faults={"transferSeal": 0.25 / 0.4}, fluid=fluid)["forward"] - need, 0, 130)


keys = {
    "low-mu-90": Fluid(LOW, 90).mu * 1e3,
    "low-kv-70": Fluid(LOW, 70).nu * 1e6,
    "press-kv-60": Fluid(PRESS, 60).nu * 1e6,
    "thinner-high-index": 29.0 / 6.5,
    "worn-pump-slip-60": worn_slip(60),
    "worn-pump-slip-100": worn_slip(100),
    "growth-thin-at-400": crack(0.05, 100)[0] / crack(0.05, 20)[0],
    "port-leak-growth-percent": 100 * (hole(1.5, 100, 400) / hole(1.5, 20, 400) - 1),
    "sound-rings-leak-20": Gap(Fluid(LOW, 20), 0.377, 25e-6, 2e-3).flow(400e3) * LMIN,
    "sound-rings-leak-100": Gap(Fluid(LOW, 100), 0.377, 25e-6, 2e-3).flow(400e3) * LMIN,
    "port-leak-100": hole(1.5, 100, 400),
    "press-hole-60": hole(2, 60, 10000, PRESS),
    "two-hairs-not-viscous": 400 * (1 - crack(0.16, 100)[1] / 100),
    "leak-wide-20-at-400": crack(0.40, 20)[0],
    "leak-wide-100-at-400": crack(0.40, 100)[0],
    "share-wide-20-at-400": crack(0.40, 20)[1],
    "needed-gentle": gentle_kpa(),
    "needed-standing": kpa_for(2 * (700 / 170) ** 2),
    "split-60": steady(60, faults={"transferSeal": 0.625})["forward"],
    "split-80": steady(80, faults={"transferSeal": 0.625})["forward"],
    "crossing-default-gentle": crossing(LOW),
    "crossing-default-gentle-ultra": crossing("ultra-low"),
    "split-100": steady(100, faults={"transferSeal": 0.625})["forward"],
    "split-high-100": steady(100, applied=("high",), faults={"transferSeal": 0.625})["high"],
    "split-reverse-100": steady(100, applied=("reverse",), faults={"transferSeal": 0.625})["reverse"],
    "healthy-reverse-100": steady(100, applied=("reverse",))["reverse"],
    "split-line-reverse-100": steady(100, applied=("reverse",), faults={"transferSeal": 0.625})["line"],
}



def forward(temp_c, faults, point=IDLE):
    return steady(temp_c, point, faults=faults)["forward"]


ON_FORWARD = lambda severity: {"severity": severity, "circuit": "forward"}
cracked = steady(100, faults={"transferSeal": 0.625})
rings_beside = Gap(Fluid(LOW, 100), 0.377, 25e-6, 2e-3).flow(cracked["forward"] * 1e3) * LMIN
stall = lambda rpm: 2 * (rpm / 170) ** 2
AT_REST = (700, 500e3, 250e3)  # model.md 7: 250 kPa at least, line 200 above it and 500 at least

keys.update({
    # what-pressure-does: model.md 5 by hand
    "force-at-400": 400e3 * 85e-4,
    "jack-force": 300 / 2 * 40,
    "holds-at-400": 0.13 * 10 * 0.065 * (400e3 * 85e-4 - 900),
    "needed-for-200": kpa_for(200),
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
    "low-command-line-load-20": 1000 * (1 + 0.44 * (0.25 - 1)),
    "worst-filter-draws-load-20": steady(20, LOAD, faults={"filter": 1})["intake"],
    # regulator-to-clutch
    "split-loss-rest": cracked["forward-leak"] - rings_beside,
    "rings-reverse-100": steady(100, applied=("reverse",), faults={"sealingRings": ON_FORWARD(0.4)})["reverse"],
    "rings-100": forward(100, {"sealingRings": ON_FORWARD(0.4)}),
    "port-20": forward(20, {"openPort": ON_FORWARD(0.7)}),
    "port-100": forward(100, {"openPort": ON_FORWARD(0.7)}),
    "piston-100": forward(100, {"pistonSeal": ON_FORWARD(0.8)}),
    "choked-100": forward(100, {"feedRestriction": 0.8}),
    "feed-hole-400": hole(1.9, 100, 400),
    # two-range-selections
    "cable-100": forward(100, {"feedRestriction": 0.9}),
    "cable-20": forward(20, {"feedRestriction": 0.9}),
    # turbine-must-stop
    "torque-standing": stall(700),
    "torque-double-idle": stall(1400),
    "stop-missing-crack-100": kpa_for(stall(700)) - forward(100, {"transferSeal": 0.625}, AT_REST),
    "stop-seen-at-rest": 420,
    # how-hard-the-converter-pushes: spin over what is left over, by hand
    "stop-sum-weak": 2.8 / (60 - 34),
    # what-slip-is: model.md 8 by hand
    "slip-first": 1650 - 4 * 380,
    "belt-slip": 2880 - 3 * 930,
    "slip-limit-4000": max(80, 0.03 * 4000),
    "slip-raised-from-800": 800 * 1.3,
    "slip-as-seen": 300,
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
    "split-loss-all": cracked["forward-leak"],
    "split-loss-rings": rings_beside,
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
    # outside-first: eight litres over the pipe, twenty in a hoist
    "plug-runs-out": swollen(8, 20, 80) - swollen(8, 20, 40),
    "truck-swells": swollen(20, 20, 100),
})

keys.update({
    # live-data: by hand
    "live-each-asked": 40 / 8,
    "live-longest-asked": 14 - 12,
    # codes-are-questions: by hand, first gear of the training sheet
    "codes-slip-asked": 840 - 4 * 60,
})

keys.update({
    "pressures-pump-fast": steady(100, LOAD, faults={"pumpWear": 0.4})["line"],
    # by hand: 1.3 times
    "pressures-boost-asked": 650 * 1.3,
})

keys.update({
    # do-it-together: by hand; the shelf summed from e^-2 2^k / k!
    "together-asked-worth": (10 - 4) / 100 * 8,
    "together-deep-access": 1.2 / ((15 - 5) / 100),
    "together-asked-bill": 25 * 0.2 + 25 * 0.02 * 6,
    "together-shelf-meanwhile": 73 / 365 * 10,
    "together-shelf-keep": next(
        n for n in range(20) if sum(math.exp(-2) * 2**k / math.factorial(k) for k in range(n)) >= 0.9
    ),
    # parts-that-seal: by hand, 20 mm, (120 - 12) millionths a kelvin, 50 K
    "seals-press-shrinks": 20 * (120e-6 - 12e-6) * 50,
})


# Two nozzles in a row, of 1.5 and 2 mm; by hand, 60 of 250; and worn rings behind a hole of 3 mm.
def behind(hole, lost, supply=275e3):
    full = OUTSIDE + supply
    p = brentq(lambda p: nozzle(math.pi * hole**2 / 4, full, p) - lost(p), OUTSIDE, full, xtol=1e-9)
    return 100 * (p - OUTSIDE) / supply


keys.update({
    "bench-held-wide": behind(1.5e-3, lambda p: nozzle(math.pi * 2e-3**2 / 4, p, OUTSIDE)),
    "bench-asked": 100 * 60 / 250,
    "bench-wide-worn": behind(3e-3, lambda p: min(slot(0.377, 29e-6, 2e-3, p, OUTSIDE), nozzle(0.377 * 29e-6, p, OUTSIDE))),
})

keys.update({
    # whose-parts: Darcy's law by hand on the rival fluid; a fifth and two pours by hand
    "filter-quarter-from": 60 * 60e3 / (Fluid(LOW, 0).mu * 3.4e8 / 0.25 * 17e-6),
    "pour-longest": 12 * 1.2,
    "media-of-asked": 100 * 12 / 30,
})

keys.update({
    # the-next-best-test: Shannon's sum by hand, two names of eight in 5 min, half of a list in 25 min, eight to one
    "next-quarter-rate": -(1 / 4 * math.log2(1 / 4) + 3 / 4 * math.log2(3 / 4)) / 5 * 10,
    "next-half-rate": 10 / 25,
    "next-eight-to-one": math.log2(8),
})

keys.update({
    # proving-the-repair: by hand, JCGM 100, 5.1.2: 900 + 1600 = 2500, 81 + 144 = 225
    "proof-asked-doubt": 50.0,
    "proof-press-doubt": 15.0,
})

keys.update({
    # other-complaints: five names alike, by hand: one is found after 10 min, the other four after 10 + 40
    "other-asked-mean": (10 + 4 * (10 + 40)) / 5,
})

keys.update({
    # putting-back: by hand; over the rings lie drums, air, bridge, body and pan
    "back-lines-again": 1 + len(["drums", "air", "bridge", "body", "pan"]),
    "back-let-out": 20 / 10 * 0.8,
})

if __name__ == "__main__":
    with open(os.path.join(here, "question-keys.json"), "w") as out:
        json.dump(keys, out, indent=2)
        out.write("\n")
