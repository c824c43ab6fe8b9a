"""Pump, line leaks, clutch circuits and the fifteen faults of one request at one temperature (model.md 3, 4, 5, 10)."""
import math

from rival import Feed, Fluid, Gap, Hole
from sheet import clutch_of, sheet_of

ONE_CIRCUIT = ("sealingRings", "pistonSeal", "openPort", "hardLip", "clutchControl")


def severity(faults, key, circuit=None):
    f = faults.get(key, 0.0)
    if isinstance(f, dict):
        return f["severity"] if circuit is None or f.get("circuit") == circuit else 0.0
    return f if circuit is None else 0.0


def lerp(healthy, worst, s):
    return (1 - s) * healthy + s * worst


def disc(d):
    return math.pi / 4 * d * d


def ramp(temp_c, low, high):
    return min(max((temp_c - low) / (high - low), 0.0), 1.0)


def hard_lip_gap(s, temp_c):
    """Height in m: 0.25 mm at 0 C and below, 0.03 mm at 60 C and above, in proportion to severity."""
    return s * lerp(0.25e-3, 0.03e-3, ramp(temp_c, 0, 60))


class Plant:
    def __init__(self, request, applied):
        self.sheet = sh = sheet_of(request)
        self.temp_c = t = request["temperature_C"]
        faults = request.get("faults", {})
        s = lambda key, circuit=None: severity(faults, key, circuit)
        self.fluid = fl = Fluid(request.get("fluid", sh["fluid"]), t, lerp(1, 0.6, s("thinFluid")))

        pump = sh["pump"]
        self.vd = pump["displacement_cm3"] * 1e-6
        self.cs = lerp(pump["slip"], 1.6e-6, s("pumpWear"))
        self.suction_limit = pump["suction_kPa"] * 1e3 / (fl.mu * pump["filter_perM3"] * lerp(1, 60, s("filter")))
        self.missing = 3e-3 * s("lowFluid")
        self.line_factor = lerp(1, 0.25, s("pressureControl"))

        line = sh["line"]
        self.line_parts = [
            Gap(fl, line["clearanceWidth_mm"] * 1e-3, line["clearanceHeight_um"] * 1e-6, line["clearanceLength_mm"] * 1e-3),
            Hole(fl, disc(line["bleedHole_mm"] * 1e-3))]
        if s("regulatorBore") > 0:
            self.line_parts.append(Gap(fl, line["boreWidth_mm"] * 1e-3, 0.25e-3 * s("regulatorBore"), line["boreLength_mm"] * 1e-3))

        feed = sh["feed"]
        self.band = feed["band_kPa"] * 1e3
        self.feed_area = disc(feed["hole_mm"] * 1e-3)
        self.feed = Feed(fl, self.feed_area * lerp(1, 0.1, s("feedRestriction")), feed["passage_perM3"])

        self.leaks = {c: self.circuit_leaks(c, s) for c in applied}
        self.holds_back = {c: 1 - 0.6 * s("clutchControl", c) * ramp(t, 40, 100) for c in applied}
        self.clutches = {c: clutch_of(sh, c) for c in applied}
        self.friction_factor = lerp(1, 0.28, s("frictionWear"))
        self.stroke_factor = 1 + s("frictionWear")

    def circuit_leaks(self, c, s):
        sh, fl = self.sheet, self.fluid
        rings, seal, piston = sh["rings"], sh["seal"], sh["piston"]
        height = lerp(rings["height_um"] * 1e-6, 120e-6, s("sealingRings", c))
        parts = [Gap(fl, rings["width_mm"] * 1e-3, height, rings["length_mm"] * 1e-3)]
        if c in seal["circuits"] and s("transferSeal") > 0:
            parts.append(Gap(fl, seal["width_mm"] * 1e-3, 0.40e-3 * s("transferSeal"), seal["length_mm"] * 1e-3))
        lip = lambda h: Gap(fl, piston["sealWidth_mm"] * 1e-3, h, piston["sealLength_mm"] * 1e-3)
        if s("pistonSeal", c) > 0:
            parts.append(lip(0.15e-3 * s("pistonSeal", c)))
        if s("hardLip", c) > 0:
            parts.append(lip(hard_lip_gap(s("hardLip", c), self.temp_c)))
        if s("openPort", c) > 0:
            parts.append(Hole(fl, disc(3e-3 * s("openPort", c))))
        return parts

    def air(self, rpm):
        sump = self.sheet["sump"]
        margin = max(0.0, 1e-3 * (sump["spare_L"] + sump["fill_L"] * self.fluid.swell - sump["pullDown_L"] * rpm / 1000))
        return min(max(300 * (self.missing - margin), 0.0), 0.9)

    def pump_ideal(self, rpm):
        return min(self.vd * rpm / 60 * (1 - self.air(rpm)), self.suction_limit)

    def pump(self, rpm, p):
        return self.pump_ideal(rpm) - self.cs * self.vd * p / (2 * math.pi * self.fluid.mu)

    def line_leak(self, p):
        return sum(e.flow(p) for e in self.line_parts)

    def clutch_leak(self, c, p):
        return sum(e.flow(p) for e in self.leaks[c])

    def feed_flow(self, c, pl, pc, command):
        x = (command * self.holds_back[c] - pc) / self.band
        return self.feed.flow(pl - pc, min(max(x, 0.0), 1.0))

    def cooler(self, left_over):
        c = self.sheet["cooler"]
        return min(left_over, c["pressure_kPa"] * 1e3 / (c["resistance_perM3"] * self.fluid.mu))

    def holds(self, circuit, p):
        c = self.clutches[circuit]
        grip = self.friction_factor * c["friction"] * c["faces"] * c["radius_mm"] * 1e-3
        return grip * max(0.0, p * c["area_cm2"] * 1e-4 - c["spring_N"])
