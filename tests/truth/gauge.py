"""What the fifteen cars of the gauge bench read, without src/engine: by the second model (rival.py, plant.py) and SciPy.

Run: python3 tests/truth/gauge.py   (needs numpy, scipy; rewrites gauge.json beside it)
"""
import importlib.util
import json
import os

here = os.path.dirname(os.path.abspath(__file__))
spec = importlib.util.spec_from_file_location("keys", os.path.join(here, "..", "content", "question-keys.py"))
keys = importlib.util.module_from_spec(spec)
spec.loader.exec_module(keys)

# Number of the car on the page: fault, severity, circuit of those that sit in one.
CARS = [
    ("openPort", 0.7, "forward"), ("pumpWear", 0.4, None), ("sealingRings", 0.25, "high"), ("frictionWear", 0.8, None),
    ("regulatorBore", 0.6, None), ("pistonSeal", 0.7, "forward"), ("transferSeal", 0.6, None), ("filter", 1.0, None),
    ("feedRestriction", 0.8, None), ("turbineSensor", 1.0, None), ("hardLip", 0.9, "forward"), ("lowFluid", 0.9, None),
    ("pressureControl", 0.5, None), ("clutchControl", 0.6, "reverse"), ("thinFluid", 0.9, None),
]
# Rows of the sheet: what is applied, and whose tap (the line where there is none).
ROWS = [((), None), (("reverse",), None), (("forward",), None), (("high",), None),
        (("forward",), "forward"), (("reverse",), "reverse"), (("high",), "high")]
COLUMNS = [(20, keys.IDLE), (20, keys.LOAD), (100, keys.IDLE), (100, keys.LOAD)]


def reading(faults, applied, tap, temp_c, point):
    if not applied:
        # Park: idle's command at any engine speed, and no clutch to feed.
        plant = keys.Plant({"temperature_C": temp_c, "faults": faults, "fluid": keys.LOW}, [])
        top = 600e3 * plant.line_factor
        spare = lambda p: plant.pump(point[0], p) - plant.line_leak(p)
        return (top if spare(top) >= 0 else keys.brentq(spare, 0, top, xtol=1e-7)) / 1e3
    out = keys.steady(temp_c, point, applied, faults)
    return out["line" if tap is None else tap]


if __name__ == "__main__":
    sheets = []
    for fault, severity, circuit in CARS:
        faults = {fault: severity if circuit is None else {"severity": severity, "circuit": circuit}}
        sheets.append([round(reading(faults, a, t, temp, point), 3) for a, t in ROWS for temp, point in COLUMNS])
    with open(os.path.join(here, "gauge.json"), "w") as out:
        json.dump(sheets, out)
        out.write("\n")
