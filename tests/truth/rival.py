"""The elements of model.md 1-5, 10 and 12, written from the paper alone (SI, gauge pressure).

Nothing here was read from or checked against src/engine: it is the rival the engine is compared with.
Every number below is in model.md 12 (the invented training gearbox) or 10 (fault ranges).
"""
import math

GENERIC = {  # class: v40 cSt, v100 cSt, rho15 kg/m3
    "standard": (35.0, 7.3, 865.0),
    "low-viscosity": (29.6, 6.0, 845.0),
    "ultra-low": (18.5, 4.4, 835.0),
}
CD, RET, K_ENTRY = 0.65, 10.0, 1.5
THROUGH_TRANSFER = ("forward", "reverse")


def d341_z(v):
    return v + 0.7 + math.exp(-1.47 - 1.84 * v - 0.51 * v * v)


def kinematic_cst(v40, v100, temp_c):
    w40, w100 = (math.log10(math.log10(d341_z(v))) for v in (v40, v100))
    t40, t100, t = (math.log10(c + 273.15) for c in (40.0, 100.0, temp_c))
    slope = (w40 - w100) / (t100 - t40)
    z = 10 ** (10 ** (w40 + slope * t40 - slope * t))
    x = z - 0.7
    return x - math.exp(-0.7487 - 3.295 * x + 0.6119 * x * x - 0.3193 * x**3)


class Fluid:
    def __init__(self, name_or_spec, temp_c, thin=1.0):
        if isinstance(name_or_spec, str):
            v40, v100, rho15 = GENERIC[name_or_spec]
        else:
            v40, v100, rho15 = (name_or_spec[k] for k in ("kv40_cSt", "kv100_cSt", "density15_kgm3"))
        self.nu = kinematic_cst(v40 * thin, v100 * thin, temp_c) * 1e-6
        a, d = 0.6278 / rho15, temp_c - 15.0
        self.rho = rho15 * math.exp(-a * d * (1 + 0.8 * a * d))
        self.mu = self.nu * self.rho


class Gap:
    """dp = R Q + K rho/2 (Q/(w h))^2"""

    def __init__(self, fluid, w, h, length):
        self.R = 12 * fluid.mu * length / (w * h**3)
        self.k = K_ENTRY * fluid.rho / 2 / (w * h) ** 2

    def drop(self, q):
        return self.R * q + self.k * q * abs(q)

    def flow(self, dp):
        # the root of the quadratic in the form that does not cancel
        m = abs(dp)
        q = 2 * m / (self.R + math.sqrt(self.R**2 + 4 * self.k * m))
        return math.copysign(q, dp) if dp else 0.0


class Hole:
    def __init__(self, fluid, area):
        d = math.sqrt(4 * area / math.pi)
        self.c = CD * area * math.sqrt(2 / fluid.rho)
        self.pc = fluid.rho / 2 * (RET * fluid.nu / (CD * d)) ** 2

    def flow(self, dp):
        return self.c * dp / (dp * dp + self.pc**2) ** 0.25


def lerp(a, b, s):
    return a + (b - a) * s


def severity(faults, key, circuit=None):
    f = faults.get(key, 0)
    if isinstance(f, dict):
        return f["severity"] if circuit is None or f.get("circuit") == circuit else 0.0
    return f if circuit is None else 0.0


class Plant:
    """Pump, line leaks and applied circuits of one request at one temperature."""

    VD, DP_MAX, RF = 15e-6, 60e3, 3.4e8
    BAND = 20e3
    CLUTCH_A, SPRING, N, RM = 85e-4, 900.0, 10, 0.065

    def __init__(self, fluid, temp_c, faults, applied):
        s = lambda key, circuit=None: severity(faults, key, circuit)
        self.fluid = fl = Fluid(fluid, temp_c, lerp(1, 0.6, s("thinFluid")))
        self.cs = lerp(3e-8, 6e-7, s("pumpWear"))
        self.air = lerp(0, 0.5, s("lowFluid"))
        self.rf = self.RF * lerp(1, 60, s("filter"))
        self.line_factor = lerp(1, 0.45, s("pressureControl"))
        self.mu_f = 0.13 * lerp(1, 0.5, s("frictionWear"))
        self.stroke = 30e-6 * lerp(1, 2, s("frictionWear"))
        self.feed_area_healthy = math.pi / 4 * 1.9e-3**2
        self.feed = Hole(fl, self.feed_area_healthy * lerp(1, 0.1, s("feedRestriction")))
        self.line_gaps = [Gap(fl, 0.400, 45e-6, 4e-3)]
        if s("regulatorBore") > 0:
            self.line_gaps.append(Gap(fl, 0.050, 0.25e-3 * s("regulatorBore"), 6e-3))
        self.leaks = {}
        for c in applied:
            parts = [Gap(fl, 0.377, lerp(25e-6, 120e-6, s("sealingRings", c)), 2e-3)]
            if c in THROUGH_TRANSFER and s("transferSeal") > 0:
                parts.append(Gap(fl, 0.014, 0.40e-3 * s("transferSeal"), 3e-3))
            if s("pistonSeal", c) > 0:
                parts.append(Gap(fl, 0.040, 0.15e-3 * s("pistonSeal", c), 1.5e-3))
            if s("openPort", c) > 0:
                parts.append(Hole(fl, math.pi / 4 * (3e-3 * s("openPort", c)) ** 2))
            self.leaks[c] = parts

    def pump_ideal(self, rev_s):
        return min(self.VD * rev_s * (1 - self.air), self.DP_MAX / (self.fluid.mu * self.rf))

    def pump(self, rev_s, p):
        return self.pump_ideal(rev_s) - self.cs * self.VD * p / (2 * math.pi * self.fluid.mu)

    def line_leak(self, p):
        return sum(g.flow(p) for g in self.line_gaps)

    def clutch_leak(self, c, p):
        return sum(e.flow(p) for e in self.leaks[c])

    def feed_flow(self, pl, pc, pcmd):
        return min(max((pcmd - pc) / self.BAND, 0.0), 1.0) * self.feed.flow(pl - pc)

    def holds(self, p, mu_f=None):
        return (self.mu_f if mu_f is None else mu_f) * self.N * self.RM * max(0.0, p * self.CLUTCH_A - self.SPRING)
