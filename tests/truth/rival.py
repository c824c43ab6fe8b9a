"""The elements of model.md 1 and 2: the fluid, the gap, the hole, and the feed (4). SI, gauge pressure.

Written from the paper alone. Nothing here was read from or checked against src/engine: it is the rival the engine is
compared with.
"""
import math

GENERIC = {  # class: v40 cSt, v100 cSt, rho15 kg/m3
    "standard": (35.0, 7.3, 865.0),
    "low-viscosity": (29.6, 6.0, 845.0),
    "ultra-low": (18.5, 4.4, 835.0),
}
CD, RET, K_ENTRY = 0.65, 10.0, 1.5


def d341_z(v):
    return v + 0.7 + math.exp(-1.47 - 1.84 * v - 0.51 * v * v)


def kinematic_cst(v40, v100, temp_c):
    w40, w100 = (math.log10(math.log10(d341_z(v))) for v in (v40, v100))
    t40, t100, t = (math.log10(c + 273.15) for c in (40.0, 100.0, temp_c))
    slope = (w40 - w100) / (t100 - t40)
    z = 10 ** (10 ** (w40 + slope * t40 - slope * t))
    x = z - 0.7
    return x - math.exp(-0.7487 - 3.295 * x + 0.6119 * x * x - 0.3193 * x**3)


def density(rho15, temp_c):
    a, d = 0.6278 / rho15, temp_c - 15.0
    return rho15 * math.exp(-a * d * (1 + 0.8 * a * d))


class Fluid:
    def __init__(self, name_or_spec, temp_c, thin=1.0):
        if isinstance(name_or_spec, str):
            v40, v100, rho15 = GENERIC[name_or_spec]
        else:
            v40, v100, rho15 = (name_or_spec[k] for k in ("kv40_cSt", "kv100_cSt", "density15_kgm3"))
        self.nu = kinematic_cst(v40 * thin, v100 * thin, temp_c) * 1e-6
        self.rho = density(rho15, temp_c)
        self.mu = self.nu * self.rho
        self.swell = density(rho15, 20.0) / self.rho - 1  # of the volume it had at 20 C


class Gap:
    """dp = R Q + K rho/2 (Q/(w h))^2"""

    def __init__(self, fluid, w, h, length):
        self.R = 12 * fluid.mu * length / (w * h**3)
        self.k = K_ENTRY * fluid.rho / 2 / (w * h) ** 2

    def flow(self, dp):
        # the root of the quadratic in the form that does not cancel
        m = abs(dp)
        q = 2 * m / (self.R + math.sqrt(self.R**2 + 4 * self.k * m))
        return math.copysign(q, dp) if dp else 0.0


class Hole:
    """Q = Cd A sqrt(2/rho) dp / (dp^2 + pc^2)^(1/4)"""

    def __init__(self, fluid, area):
        d = math.sqrt(4 * area / math.pi)
        self.c = CD * area * math.sqrt(2 / fluid.rho)
        self.pc = fluid.rho / 2 * (RET * fluid.nu / (CD * d)) ** 2

    def flow(self, dp):
        return self.c * dp / (dp * dp + self.pc**2) ** 0.25 if dp else 0.0


class Feed:
    """Passage and hole in series, hole opened by x: dp = R Q + k (Q / x)^2. Zero for dp <= 0: it never flows back."""

    def __init__(self, fluid, area, passage):
        self.R = passage * fluid.mu
        self.k = fluid.rho / 2 / (CD * area) ** 2

    def flow(self, dp, x):
        if dp <= 0 or x <= 0:
            return 0.0
        return 2 * dp * x / (x * self.R + math.sqrt((x * self.R) ** 2 + 4 * self.k * dp))
