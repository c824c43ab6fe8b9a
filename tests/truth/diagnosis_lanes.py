"""Many slightly different transmissions at once: the laws of rival.py and plant.py on arrays (model.md 1 to 5, 10, 11).

A lane is one car: a fault at a severity, and the twelve shared differences of diagnosis.md 3. Quantities are arrays with one
entry for each lane; a lane that repeats another is worked out once.
"""
import math

import numpy as np

from nozzle import CD as AIR_CD, GAS, HEAT_RATIO, MU as AIR_MU, OUTSIDE, T as AIR_T
from rival import CD, GENERIC, K_ENTRY, RET, density

CIRCUITS = ("forward", "reverse", "high")
NUISANCES = ("line", "ring.forward", "ring.reverse", "ring.high", "pump", "feed", "kv40", "kv100", "crack", "hot", "cold", "frost")
SD = np.array([0.10, 0.10, 0.10, 0.10, 0.20, 0.10, 0.10, 0.10, 0.20, 3.0, 3.0, 3.0]) / math.sqrt(3)
WARMTH_C = {"frost": 0.0, "cold": 20.0, "hot": 95.0}
NO_GAP = 1e40  # flow resistance of a gap that is not there


def z_of(v):
    return v + 0.7 + np.exp(-1.47 - 1.84 * v - 0.51 * v * v)


def kinematic(v40, v100, temp_c):
    w40, w100 = (np.log10(np.log10(z_of(v))) for v in (v40, v100))
    t40, t100, t = (np.log10(c + 273.15) for c in (40.0, 100.0, temp_c))
    z = 10 ** (10 ** (w40 + (w40 - w100) / (t100 - t40) * (t40 - t)))
    x = z - 0.7
    return x - np.exp(-0.7487 - 3.295 * x + 0.6119 * x * x - 0.3193 * x**3)


def densities(rho15, temp_c):
    a, d = 0.6278 / rho15, temp_c - 15.0
    return rho15 * np.exp(-a * d * (1 + 0.8 * a * d))


def ramp(t, low, high):
    return np.clip((t - low) / (high - low), 0.0, 1.0)


class Cars:
    """sev: {fault or (fault, circuit): array}; z: lanes x 12; more: further factors for the crack's own grid."""

    def __init__(self, sheet, sev, z, crack_m=None, crack_width_m=None, crack_length=1.0, command=1.0):
        self.sheet, self.n = sheet, len(z)
        self.sev, self.z, self.command = sev, z, command
        self.crack_m, self.crack_width_m, self.crack_length = crack_m, crack_width_m, crack_length

    def s(self, fault, circuit=None):
        return self.sev.get((fault, circuit) if circuit else fault, 0.0) * np.ones(self.n)

    def factor(self, name):
        j = NUISANCES.index(name)
        return 1 + SD[j] * self.z[:, j]

    def viscosities(self):
        f = self.sheet["fluid"]
        v40, v100, rho15 = GENERIC[f] if isinstance(f, str) else (f["kv40_cSt"], f["kv100_cSt"], f["density15_kgm3"])
        thin = 1 - 0.4 * self.s("thinFluid")
        return v40 * thin * self.factor("kv40"), v100 * thin * self.factor("kv100"), rho15

    def ring_height(self, c):
        # the factor is on the sound height: wear goes to a fixed worst
        s = self.s("sealingRings", c)
        return (1 - s) * self.sheet["rings"]["height_um"] * 1e-6 * self.factor("ring." + c) + s * 120e-6

    def crack(self, c):
        """(width, height, length) in m, of the gap on one circuit"""
        seal = self.sheet["seal"]
        h = 0.40e-3 * self.s("transferSeal") if self.crack_m is None else self.crack_m
        w = seal["width_mm"] * 1e-3 * self.factor("crack") if self.crack_width_m is None else self.crack_width_m
        return w * np.ones(self.n), h * (c in seal["circuits"]), seal["length_mm"] * 1e-3 * self.crack_length


def gap(mu, rho, w, h, length):
    none = h <= 0
    safe = np.where(none, 1.0, h)
    return np.where(none, NO_GAP, 12 * mu * length / (w * safe**3)), np.where(none, 0.0, K_ENTRY * rho / 2 / (w * safe) ** 2)


def gap_flow(p, g):
    return 2 * p / (g[0] + np.sqrt(g[0] ** 2 + 4 * g[1] * p))


def hole(rho, nu, area):
    d = np.sqrt(4 * np.maximum(area, 1e-18) / math.pi)
    return np.where(area > 0, CD * area * np.sqrt(2 / rho), 0.0), rho / 2 * (RET * nu / (CD * d)) ** 2


def hole_flow(p, h):
    return h[0] * p / np.sqrt(np.sqrt(p * p + h[1] ** 2))


class Warm:
    """All cars at one temperature, with what leaks, feeds and pumps there."""

    def __init__(self, cars, warmth):
        sh, s = cars.sheet, cars.s
        self.cars, self.sheet = cars, sh
        self.t = t = WARMTH_C[warmth] + SD[NUISANCES.index(warmth)] * cars.z[:, NUISANCES.index(warmth)]
        v40, v100, rho15 = cars.viscosities()
        self.nu = nu = kinematic(v40, v100, t) * 1e-6
        self.rho = rho = densities(rho15, t)
        self.mu = mu = nu * rho
        pump, line, feed, piston = sh["pump"], sh["line"], sh["feed"], sh["piston"]
        worn = s("pumpWear")
        self.vd = pump["displacement_cm3"] * 1e-6
        cs = (1 - worn) * pump["slip"] * cars.factor("pump") + worn * 1.6e-6
        self.slip = cs * self.vd / (2 * math.pi * mu)
        self.suction = pump["suction_kPa"] * 1e3 / (mu * pump["filter_perM3"] * (1 + 59 * s("filter")))
        self.swell = density(rho15, 20.0) / rho - 1
        self.line_factor = 1 - 0.75 * s("pressureControl")
        self.clearance = gap(mu, rho, line["clearanceWidth_mm"] * 1e-3, line["clearanceHeight_um"] * 1e-6 * cars.factor("line"),
                             line["clearanceLength_mm"] * 1e-3)
        self.bleed = hole(rho, nu, math.pi / 4 * (line["bleedHole_mm"] * 1e-3) ** 2 * np.ones(cars.n))
        self.bore = gap(mu, rho, line["boreWidth_mm"] * 1e-3, 0.25e-3 * s("regulatorBore"), line["boreLength_mm"] * 1e-3)
        self.sound_feed = math.pi / 4 * (feed["hole_mm"] * 1e-3) ** 2 * cars.factor("feed")
        area = self.sound_feed * (1 - 0.9 * s("feedRestriction"))
        self.feed_R, self.feed_k = feed["passage_perM3"] * mu, rho / 2 / (CD * area) ** 2
        self.band = feed["band_kPa"] * 1e3
        self.leaks, self.ports, self.holds_back = {}, {}, {}
        for c in CIRCUITS:
            lip = lambda h: gap(mu, rho, piston["sealWidth_mm"] * 1e-3, h, piston["sealLength_mm"] * 1e-3)
            rings, (cw, ch, cl) = sh["rings"], cars.crack(c)
            self.leaks[c] = [gap(mu, rho, rings["width_mm"] * 1e-3, cars.ring_height(c), rings["length_mm"] * 1e-3),
                             gap(mu, rho, cw, ch, cl), lip(0.15e-3 * s("pistonSeal", c)),
                             lip(s("hardLip", c) * (0.25e-3 - 0.22e-3 * ramp(t, 0, 60)))]
            self.ports[c] = hole(rho, nu, math.pi / 4 * (3e-3 * s("openPort", c)) ** 2)
            self.holds_back[c] = 1 - 0.6 * s("clutchControl", c) * ramp(t, 40, 100)

    def at(self, keep):
        """The same for some lanes alone: every array of one entry for each lane is cut."""
        cut = lambda v: v[keep] if isinstance(v, np.ndarray) and v.ndim else (
            tuple(map(cut, v)) if isinstance(v, tuple) else [cut(x) for x in v] if isinstance(v, list) else
            {k: cut(x) for k, x in v.items()} if isinstance(v, dict) else v)
        new = object.__new__(Warm)
        new.__dict__ = {k: v if k in ("sheet", "cars") else cut(v) for k, v in self.__dict__.items()}
        return new

    def drawn(self, rpm):
        sump = self.sheet["sump"]
        margin = np.maximum(0.0, 1e-3 * (sump["spare_L"] + sump["fill_L"] * self.swell - sump["pullDown_L"] * rpm / 1000))
        return np.clip(300 * (self.missing() - margin), 0.0, 0.9)

    def missing(self):
        return self.missing_m3

    def pump_ideal(self, rpm):
        return np.minimum(self.vd * rpm / 60 * (1 - self.drawn(rpm)), self.suction)

    def line_leak(self, p):
        return gap_flow(p, self.clearance) + hole_flow(p, self.bleed) + gap_flow(p, self.bore)

    def clutch_leak(self, c, p):
        return sum(gap_flow(p, g) for g in self.leaks[c]) + hole_flow(p, self.ports[c])

    def feed(self, c, pl, pc, command):
        x = np.clip((command * self.holds_back[c] - pc) / self.band, 0.0, 1.0)
        dp = np.maximum(pl - pc, 0.0)
        r = x * self.feed_R
        return 2 * dp * x / (r + np.sqrt(r * r + 4 * self.feed_k * dp) + 1e-300)


def warm(cars, warmth):
    w = Warm(cars, warmth)
    w.missing_m3 = 3e-3 * cars.s("lowFluid")
    return w


def halve(f, low, high, times=48):
    """Root of a falling function between arrays."""
    low, high = low.copy(), high.copy()
    for _ in range(times):
        mid = (low + high) / 2
        up = f(mid) > 0
        low, high = np.where(up, mid, low), np.where(up, high, mid)
    return (low + high) / 2


def steady(w, rpm, line, clutch, circuit):
    """Line and clutch pressure [Pa], cooler flow [m3/s]; line, clutch: commands [Pa]."""
    cmd = line * w.line_factor * w.cars.command
    asked = clutch * w.cars.command
    supply = w.pump_ideal(rpm)

    def clutch_at(pl):
        if circuit is None:
            return np.zeros_like(pl)
        return halve(lambda pc: w.feed(circuit, pl, pc, asked) - w.clutch_leak(circuit, pc), np.zeros_like(pl),
                     np.minimum(pl, asked * w.holds_back[circuit]))

    def surplus(pl):
        return supply - w.slip * pl - w.line_leak(pl) - (w.clutch_leak(circuit, clutch_at(pl)) if circuit else 0.0)

    over = surplus(cmd)
    pl = np.where(over >= 0, cmd, halve(surplus, np.zeros_like(cmd), cmd, 40))
    left = np.maximum(over, 0.0)
    cooler = w.sheet["cooler"]
    return pl, clutch_at(pl), np.minimum(left, cooler["pressure_kPa"] * 1e3 / (cooler["resistance_perM3"] * w.mu))


def air_slot(w, h, length, p):
    mass = w * h**3 * (p * p - OUTSIDE**2) / (24 * AIR_MU * length * GAS * AIR_T)
    return np.minimum(mass, air_nozzle(w * h, p, OUTSIDE))


def air_nozzle(area, p1, p2):
    g = HEAT_RATIO
    r = np.maximum(p2 / p1, (2 / (g + 1)) ** (g / (g - 1)))
    return AIR_CD * area * p1 * np.sqrt(2 * g / ((g - 1) * GAS * AIR_T) * np.maximum(0.0, r ** (2 / g) - r ** ((g + 1) / g)))


def air_held(cars, where):
    """What the tester's gauge holds, percent of 275 kPa."""
    full, sh = 275e3 + OUTSIDE, cars.sheet
    if where == "transferSeal":
        w, h, length = cars.crack(sh["seal"]["circuits"][0])
        leak = lambda p: air_slot(w, h, length, p)
    else:
        rings, piston = sh["rings"], sh["piston"]
        pw, pl = piston["sealWidth_mm"] * 1e-3, piston["sealLength_mm"] * 1e-3
        rh = 10e-6 + cars.ring_height(where) - 25e-6
        lip = cars.s("hardLip", where) * (0.25e-3 - 0.22e-3 * 20 / 60)
        port = math.pi / 4 * (3e-3 * cars.s("openPort", where)) ** 2
        leak = lambda p: (air_slot(rings["width_mm"] * 1e-3, rh, rings["length_mm"] * 1e-3, p) + air_nozzle(port, p, OUTSIDE)
                          + air_slot(pw, 0.15e-3 * cars.s("pistonSeal", where), pl, p) + air_slot(pw, lip, pl, p))
    tester = math.pi / 4 * 1.5e-3**2
    ends = np.ones(cars.n)
    p = halve(lambda p: air_nozzle(tester, full, p) - leak(p), OUTSIDE * ends, full * ends, 60)
    return 100 * (p - OUTSIDE) / 275e3
