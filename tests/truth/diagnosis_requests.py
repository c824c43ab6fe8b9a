"""Thirty-two requests, by name: cold and hot, few readings and many, every kind of test, two with a false sensor, other circuits than
the forward one, other priors, and six on the second training transmission (its sheet given in full, as the site prints it)."""
COLD, HOT, FROST = 20, 95, 0


def stop(rng, temp, value):
    return {"test": "stopTime", "range": rng, "temperature_C": temp, "value": value}


def slip(rng, value, temp=HOT):
    return {"test": "takeoffSlip", "range": rng, "temperature_C": temp, "value": value}


def line(place, rpm, temp, value):
    return {"test": "linePressure", "range": place, "engine_rpm": rpm, "temperature_C": temp, "value": value}


def tap(circuit, rpm, temp, value):
    return {"test": "clutchPressure", "circuit": circuit, "engine_rpm": rpm, "temperature_C": temp, "value": value}


def cooler(rpm, value, temp=HOT):
    return {"test": "coolerFlow", "range": "park", "engine_rpm": rpm, "temperature_C": temp, "value": value}


def flutter(value, temp=COLD):
    return {"test": "gaugeFlutter", "range": "park", "engine_rpm": 3000, "temperature_C": temp, "value": value}


def air(where, value):
    return {"test": "airTest", "circuit": where, "value": value}


def whence(circuit, value):
    return {"test": "airWhere", "circuit": circuit, "value": value}


def current(where, value):
    return {"test": "solenoidCurrent", "circuit": where, "value": value}


def seen(test, value):
    return {"test": test, "value": value}


def ask(*readings, **more):
    return {"kind": "diagnosis", "readings": list(readings), **more}


def state(temperature="cold", *fitted, **more):
    return {"temperature": temperature, "fitted": list(fitted), **more}


SECOND = {
    "pump": {"displacement_cm3": 13, "slip": 2.4e-8, "filter_perM3": 420000000, "suction_kPa": 60},
    "line": {"clearanceWidth_mm": 300, "clearanceHeight_um": 35, "clearanceLength_mm": 4, "bleedHole_mm": 1.3, "boreWidth_mm": 44, "boreLength_mm": 6},
    "feed": {"hole_mm": 1.7, "passage_perM3": 26000000000, "band_kPa": 25},
    "rings": {"width_mm": 300, "height_um": 24, "length_mm": 2},
    "seal": {"circuits": ["reverse", "high"], "width_mm": 11, "length_mm": 2.5},
    "piston": {"sealWidth_mm": 34, "sealLength_mm": 1.5},
    "clutch": {"area_cm2": 62, "spring_N": 620, "stroke_cm3": 21, "compliance_m3Pa": 8e-11, "faces": 8, "radius_mm": 58, "friction": 0.13},
    "clutches": {"reverse": {"area_cm2": 74, "spring_N": 780, "stroke_cm3": 27}, "high": {"area_cm2": 55, "spring_N": 560, "stroke_cm3": 18, "faces": 10}},
    "converter": {"capacity": 205, "torqueRatio": 1.9}, "inertia": {"engine_kgm2": 0.14, "turbine_kgm2": 0.026}, "idle_rpm": 750,
    "ratios": {"first": 3.1, "reverse": 2.7, "third": 1}, "finalDrive": 4.1, "vehicle": {"mass_kg": 1450, "wheelRadius_m": 0.31, "drag_N": 120},
    "commands": {"idleLine_kPa": 620, "idleClutch_kPa": 420, "load_rpm": 1600, "loadLine_kPa": 1100, "loadClutch_kPa": 880, "reverseFactor": 1.4,
                 "clutchMargin": 1.5, "clutchLeast_kPa": 260, "clutchMost_kPa": 1250, "lineLead_kPa": 220, "lineLeast_kPa": 520},
    "sump": {"fill_L": 6.5, "spare_L": 0.4, "pullDown_L": 0.2}, "cooler": {"pressure_kPa": 380, "resistance_perM3": 740000000000},
    "fluid": "ultra-low", "applyChart": {"1": ["forward"], "2": ["forward"], "3": ["forward", "high"], "4": ["high"], "R": ["reverse"]},
}

REQUESTS = {
    "crack, hot taps": ask(tap("forward", 700, HOT, 255), tap("reverse", 700, 97, 350), tap("high", 1500, HOT, 785), state=state("hot", "gaugeForward")),
    "crack, cold tap too": ask(stop("drive", HOT, 1.6), tap("forward", 700, HOT, 240), tap("forward", 1500, 22, 730), tap("reverse", 1500, HOT, 640),
                               line("park", 700, HOT, 590), state=state("hot", "scan", "gaugeForward", "gaugeReverse")),
    "small crack, early": ask(stop("drive", HOT, 1.0), stop("reverse", HOT, 0.95), seen("fluidLook", "normal"), state=state("hot", "scan", "lift")),
    "small crack, two taps": ask(tap("forward", 1500, HOT, 480), tap("reverse", 700, HOT, 405), stop("drive", HOT, 0.95), state=state("hot", "scan")),
    "wide split, both warmths": ask(tap("forward", 700, 103, 108), tap("forward", 1500, 12, 345), tap("reverse", 700, COLD, 268), tap("high", 700, HOT, 390)),
    "rings of Reverse": ask(seen("codes", ["P0736"]), stop("drive", 93, 0.76), stop("reverse", 93, None), tap("reverse", 700, HOT, 190), state=state("hot", "scan")),
    "rings of high, by air": ask(seen("codes", ["P0733"]), tap("high", 1500, HOT, 420), air("high", 9), whence("high", "rings"),
                                 state=state("cold", "scan", "panOff", "valveBodyOff")),
    "piston of high": ask(tap("high", 700, HOT, 300), tap("high", 1500, COLD, 795), air("high", 40), whence("high", "drum")),
    "open port in Reverse": ask(stop("reverse", COLD, 1.9), stop("reverse", HOT, 2.0), stop("drive", COLD, 0.74), tap("reverse", 1500, COLD, 560),
                                state=state("hot", "scan", "gaugeReverse")),
    "pump or bore": ask(line("park", 700, HOT, 330), line("drive", 1500, HOT, 820), line("park", 700, COLD, 598), cooler(700, 0.1), state=state("hot", "gaugeLine", "coolerHose")),
    "pump, metal in the pan": ask(line("drive", 700, 90, 300), line("reverse", 700, 90, 330), cooler(1500, 1.0), seen("fluidLook", "metal"), seen("panFilter", "metal"),
                                  seen("boreVacuum", "holds")),
    "bore by vacuum": ask(line("park", 700, HOT, 360), seen("panFilter", "clean"), seen("boreVacuum", "leaks"), state=state("cold", "panOff", "valveBodyOff")),
    "pressure control": ask(line("park", 700, COLD, 430), line("drive", 1500, COLD, 720), current("line", "off"), state=state("cold", "scan", "gaugeLine")),
    "filter on a cold morning": ask(stop("drive", 2, 2.1), line("drive", 3000, COLD, 480), flutter("steady"), state=state("frost", "scan", coldMorning=True)),
    "filter, clogged": ask(line("drive", 3000, 16, 300), line("drive", 1500, 16, 820), seen("panFilter", "clogged"), seen("fluidLevel", "full")),
    "low fluid": ask(seen("fluidLevel", "veryLow"), flutter("flutters"), stop("drive", COLD, 1.4), cooler(700, 0.5), seen("fluidLook", "foam"), state=state("hot", "lift")),
    "thin fluid": ask(seen("fluidCup", 20.5), line("park", 700, HOT, 600), tap("reverse", 700, HOT, 470), stop("reverse", HOT, 0.95)),
    "feed restriction": ask(seen("cable", "out"), stop("drive", COLD, 1.7), stop("reverse", COLD, 1.5), line("park", 700, COLD, 603), state=state("cold", "scan", "lift", "gaugeLine")),
    "friction": ask(slip("drive", 520), stop("drive", HOT, 1.2), tap("forward", 1500, HOT, 784), seen("fluidLook", "dark"), state=state("hot", "scan", "gaugeForward")),
    "friction in both": ask(slip("drive", 310, 100), slip("reverse", 180, 100), seen("panFilter", "dust"), line("drive", 1500, HOT, 990)),
    "false sensor": ask(seen("codes", ["P0731", "P0736"]), seen("engineOffTurbine", 305), stop("drive", HOT, None), state=state("hot", "scan")),
    "false sensor, half looked at": ask(stop("drive", COLD, None), stop("reverse", COLD, None), slip("drive", 9), line("park", 700, COLD, 600), state=state("cold", "scan")),
    "hard lip of Reverse": ask(stop("reverse", COLD, 1.3), stop("reverse", HOT, 0.71), stop("drive", COLD, 0.75), whence("reverse", "drum"), state=state("hot", "scan")),
    "clutch control of high": ask(seen("codes", ["P0733"]), current("high", "off"), tap("high", 1500, HOT, 560), tap("high", 1500, COLD, 790), air("high", 88)),
    "nothing wrong": ask(seen("codes", []), stop("drive", COLD, 0.74), stop("drive", HOT, 0.72), stop("reverse", HOT, 0.7), line("park", 700, HOT, 598),
                         tap("forward", 700, HOT, 385), tap("reverse", 700, HOT, 505), seen("engineOffTurbine", 2), state=state("hot", "scan", "gaugeLine")),
    "contradiction, other priors": ask(stop("drive", HOT, 2.3), tap("forward", 700, HOT, 396), slip("drive", 12), line("park", 700, HOT, 410), cooler(1500, 4.0),
                                       priors={"unlisted": 6, "frictionWear": 0, "transferSeal": 3}),
    "second: crack": ask(stop("reverse", HOT, None), tap("reverse", 700, HOT, 228), tap("high", 700, HOT, 181), tap("forward", 700, HOT, 404),
                         tap("high", 1500, COLD, 552), state=state("hot", "scan"), transmission=SECOND),
    "second: pump": ask(line("park", 700, HOT, 320), line("drive", 1500, HOT, 800), cooler(700, 0.1), transmission=SECOND),
    "second: late cold": ask(stop("drive", 12, 1.3), stop("drive", HOT, 0.7), stop("reverse", 12, 0.75), state=state("hot", "scan"), transmission=SECOND),
    "second: false sensor": ask(stop("drive", COLD, None), seen("codes", ["P0731"]), seen("engineOffTurbine", 290), slip("reverse", 15), transmission=SECOND),
    "second: friction": ask(slip("drive", 700), slip("reverse", 400), line("park", 700, COLD, 622), seen("fluidLook", "dark"), transmission=SECOND),
    "second: air": ask(air("transferSeal", 55), air("reverse", 84), seen("fluidCup", 18.4), current("reverse", "inRange"), transmission=SECOND),
}
