"""200 random `steady` requests from one fixed seed. Every third carries a partial sheet of another transmission."""
import random

from plant import ONE_CIRCUIT

SEED, COUNT = 20250217, 200
CIRCUITS = ["forward", "reverse", "high"]
FAULTS = ["transferSeal", "hardLip", "clutchControl", "sealingRings", "pistonSeal", "pumpWear", "regulatorBore",
          "pressureControl", "filter", "lowFluid", "thinFluid", "feedRestriction", "openPort", "frictionWear", "turbineSensor"]
# key: lowest, highest, digits kept after the point (or significant digits, for the powers of ten)
SHEET = {
    "pump": {"displacement_cm3": (11, 26, 1), "slip": (1e-8, 9e-8, "e"), "filter_perM3": (2e8, 8e8, "e"), "suction_kPa": (40, 75, 0)},
    "line": {"clearanceWidth_mm": (250, 600, 0), "clearanceHeight_um": (25, 50, 1), "clearanceLength_mm": (3, 7, 1),
             "bleedHole_mm": (0.8, 2.2, 2), "boreWidth_mm": (35, 70, 0), "boreLength_mm": (4, 9, 1)},
    "feed": {"hole_mm": (1.3, 2.8, 2), "passage_perM3": (8e9, 4e10, "e"), "band_kPa": (12, 35, 0)},
    "rings": {"width_mm": (250, 550, 0), "height_um": (20, 38, 1), "length_mm": (1.6, 3, 1)},
    "seal": {"width_mm": (8, 24, 1), "length_mm": (2, 5, 1)},
    "piston": {"sealWidth_mm": (30, 80, 0), "sealLength_mm": (1, 2.5, 1)},
    "clutch": {"area_cm2": (55, 130, 0), "spring_N": (500, 1500, 0), "stroke_cm3": (18, 50, 0), "compliance_m3Pa": (6e-11, 2e-10, "e"),
               "faces": (6, 14, 0), "radius_mm": (50, 85, 0), "friction": (0.11, 0.15, 3)},
    "sump": {"fill_L": (6, 10, 1), "spare_L": (0.3, 0.9, 2), "pullDown_L": (0.1, 0.4, 2)},
    "cooler": {"pressure_kPa": (300, 550, 0), "resistance_perM3": (4e11, 1e12, "e")},
    "ratios": {"first": (3.2, 4.6, 2), "reverse": (2.8, 3.9, 2)},  # change nothing in a steady state, on purpose
}
NAMES = ["standard", "low-viscosity", "ultra-low"]
SEALS = [["high"], ["forward"], ["reverse", "high"], ["forward", "reverse", "high"], []]


def between(rng, low, high, digits):
    value = rng.uniform(low, high)
    if digits == "e":
        return float(f"{value:.3g}")
    return round(value, digits) if digits else round(value)


def some(rng, group):
    keys = rng.sample(sorted(group), rng.randint(1, len(group)))
    return {k: between(rng, *group[k]) for k in group if k in keys}


def own_fluid(rng):
    v100 = round(rng.uniform(3.0, 9.5), 2)
    return {"kv40_cSt": round(v100 * rng.uniform(4.0, 6.0), 2), "kv100_cSt": v100, "density15_kgm3": round(rng.uniform(820, 885), 1)}


def random_sheet(rng):
    groups = rng.sample(sorted(SHEET), rng.choice([1, 1, 2, 2, 3, 5, len(SHEET)]))
    sheet = {g: some(rng, SHEET[g]) for g in SHEET if g in groups}
    if rng.random() < 0.35:
        sheet.setdefault("seal", {})["circuits"] = rng.choice(SEALS[:4])
    if rng.random() < 0.4:
        circuits = rng.sample(CIRCUITS, rng.choice([1, 1, 2]))
        sheet["clutches"] = {c: some(rng, SHEET["clutch"]) for c in CIRCUITS if c in circuits}
    if rng.random() < 0.3:
        sheet["fluid"] = own_fluid(rng) if rng.random() < 0.5 else rng.choice(NAMES)
    return sheet


def random_temperature(rng):
    low, high = rng.choice([(-25, 135), (-25, 0), (0, 40), (70, 135), (70, 135)])
    return round(rng.uniform(low, high), 1)


def random_faults(rng, applied):
    faults = {}
    for f in rng.sample(FAULTS, rng.choice([0, 1, 1, 2, 2, 3, 4, 6, 15])):
        s = round(rng.choice([rng.random(), rng.random() ** 2, 1.0]), 3)
        if f == "turbineSensor":
            s = rng.choice([0, 1])
        # circuits mostly among the applied ones, so that the fault is felt
        where = rng.choice(applied) if applied and rng.random() < 0.85 else rng.choice(CIRCUITS)
        faults[f] = {"severity": s, "circuit": where} if f in ONE_CIRCUIT else s
    return faults


def random_request(rng, number):
    r = {"kind": "steady"}
    kind = rng.random()
    if kind < 0.55:
        r["fluid"] = rng.choice(NAMES)
    elif kind < 0.85:
        r["fluid"] = own_fluid(rng)  # else the sheet's, or the default
    r["temperature_C"] = random_temperature(rng)
    # half near idle: that is where the pump falls short and the line is not regulated
    r["engine_rpm"] = round(rng.uniform(500, 6000) if rng.random() < 0.5 else rng.uniform(500, 1000))
    r["line_kPa"] = round(rng.uniform(300, 1500), 1)
    r["clutch_kPa"] = round(rng.uniform(200, 1200), 1)
    chosen = rng.sample(CIRCUITS, rng.choice([0, 1, 1, 1, 1, 2, 2, 3, 3]))
    r["applied"] = [c for c in CIRCUITS if c in chosen]
    faults = random_faults(rng, r["applied"])
    if faults:
        r["faults"] = faults
    if number % 3 == 0:
        r["transmission"] = random_sheet(rng)
    return r


def requests():
    rng = random.Random(SEED)
    return [random_request(rng, n) for n in range(COUNT)]
