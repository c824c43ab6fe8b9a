"""Two filters in front of the training pump, without src/engine: Darcy's law by hand on the second model's fluid (rival.py).

Run: python3 tests/truth/filters.py   (needs scipy through plant.py; rewrites filters.json beside it)
"""
import json
import os

from plant import Plant
from rival import Fluid

LOW = "low-viscosity"
# model.md 3: 17 cm3, 3.4e8 1/m3, 60 kPa. The pour is the lesson's own: 0.96 L under 100 mm of fluid, g = 9.81.
VD, RF, LIMIT = 17e-6, 3.4e8, 60e3
POURED, HEAD, G = 0.96e-3, 0.1, 9.81


def under_pump(media, temp_c, rpm):
    """Pascal wanted and lost, share of the asked flow that comes."""
    mu = Fluid(LOW, temp_c).mu
    asked = VD * rpm / 60
    wanted = mu * RF / media * asked
    got = min(asked, LIMIT / (mu * RF / media))
    return wanted / 1e3, mu * RF / media * got / 1e3, got / asked


def pour(media, temp_c):
    """The head of fluid pushes: rho g h = mu R Q."""
    f = Fluid(LOW, temp_c)
    return POURED / (f.rho * G * HEAD / (f.mu * RF / media))


def starved_below(media, rpm):
    """By halving; None where the limit is not met between -30 and 140 C."""
    low, high = -30.0, 140.0
    over = lambda t: under_pump(media, t, rpm)[0] * 1e3 - LIMIT
    if over(low) < 0 or over(high) > 0:
        return None
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if over(middle) > 0 else (low, middle)
    return (low + high) / 2


if __name__ == "__main__":
    cases = []
    for media in (0.2, 0.5, 1.0, 1.2):
        for temp_c in (-30, -10, 0, 20, 40, 100, 140):
            for rpm in (600, 700, 3000, 4000):
                wanted, lost, share = under_pump(media, temp_c, rpm)
                # The same by the plant of the second model, whose filter fault is a factor of 1 to 60.
                if media <= 1:
                    plant = Plant({"temperature_C": temp_c, "faults": {"filter": (1 / media - 1) / 59}, "fluid": LOW}, [])
                    assert abs(plant.pump_ideal(rpm) / (VD * rpm / 60) - share) < 1e-12
                cases.append({"media": media, "temp": temp_c, "rpm": rpm, "wanted": wanted, "lost": lost, "share": share,
                              "pour": pour(media, temp_c), "starved": starved_below(media, rpm)})
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "filters.json"), "w") as out:
        json.dump(cases, out)
        out.write("\n")
