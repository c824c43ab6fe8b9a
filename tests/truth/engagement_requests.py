"""The fifteen requests, by name. Twelve on the training transmission, three on partial sheets of others."""


def request(temp, rng, selection, sheet=None, **faults):
    return {"kind": "engagement", "fluid": "low-viscosity", "temperature_C": temp, "rangeSelection": selection, "range": rng,
            **({"faults": faults} if faults else {}), **({"transmission": sheet} if sheet else {})}


def on(circuit, severity):
    return {"severity": severity, "circuit": circuit}


SMALL_BOX = {"pump": {"displacement_cm3": 14}, "feed": {"hole_mm": 1.6}, "clutch": {"area_cm2": 70, "faces": 12, "stroke_cm3": 24},
             "ratios": {"first": 4.4}, "vehicle": {"mass_kg": 1500, "wheelRadius_m": 0.31}, "idle_rpm": 750,
             "converter": {"capacity": 155, "torqueRatio": 1.9}}
WIDE_REVERSE = {"clutches": {"reverse": {"area_cm2": 120, "spring_N": 1300, "stroke_cm3": 40, "radius_mm": 75}},
                "seal": {"circuits": ["reverse", "high"], "width_mm": 18}, "commands": {"reverseFactor": 1.5, "clutchMargin": 1.4}}
OTHER_COMMANDS = {"commands": {"clutchLeast_kPa": 300, "lineLead_kPa": 150, "lineLeast_kPa": 550}, "sump": {"fill_L": 7, "spare_L": 0.4},
                  "inertia": {"engine_kgm2": 0.22, "turbine_kgm2": 0.05}, "finalDrive": 3.9, "fluid": "standard"}

SCENARIOS = {
    "frost healthy": request(-20, "drive", "electronic"),
    "cold healthy": request(20, "drive", "electronic"),
    "hot healthy, reverse": request(100, "reverse", "mechanical"),
    "cold crack 0.25 mm": request(20, "drive", "electronic", transferSeal=0.625),
    "hot crack 0.25 mm": request(100, "drive", "electronic", transferSeal=0.625),
    "hot crack 0.25 mm, mechanical": request(100, "drive", "mechanical", transferSeal=0.625),
    "hot crack 0.16 mm": request(100, "drive", "electronic", transferSeal=0.4),
    "cold hard lip": request(0, "drive", "electronic", hardLip=on("forward", 0.8)),
    "hot clutch control, reverse": request(110, "reverse", "electronic", clutchControl=on("reverse", 1)),
    "hot low fluid, reverse": request(100, "reverse", "mechanical", lowFluid=0.95),
    "hot friction wear": request(100, "drive", "electronic", frictionWear=1),
    "hot pump wear and pressure control": request(95, "drive", "mechanical", pumpWear=0.9, pressureControl=0.5),
    "small box, frost, feed restriction": request(-20, "drive", "electronic", SMALL_BOX, feedRestriction=0.5),
    "wide reverse, hot crack 0.40 mm": request(105, "reverse", "electronic", WIDE_REVERSE, transferSeal=1),
    "other commands, cool, low fluid and thin fluid": {k: v for k, v in request(
        0, "drive", "mechanical", OTHER_COMMANDS, lowFluid=0.3, thinFluid=0.5).items() if k != "fluid"},
}
