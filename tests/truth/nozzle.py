"""Air through a slot and through a nozzle (model.md 11). SI, absolute pressures, steady, air at 20 C.

Where the paper names a law and no constant: Sutherland as in the US Standard Atmosphere of 1976 (1.458e-6, 110.4 K),
specific gas constant 287.05 J/(kg K), heat ratio 1.4.
"""
T, OUTSIDE, CD = 293.15, 101325.0, 0.65
GAS, HEAT_RATIO = 287.05, 1.4
MU = 1.458e-6 * T**1.5 / (T + 110.4)


def slot(w, h, length, p1, p2):
    """Isothermal compressible laminar flow, kg/s."""
    return w * h**3 * (p1 * p1 - p2 * p2) / (24 * MU * length * GAS * T)


def nozzle(area, p1, p2):
    """Isentropic, from rest at p1; p2 counts until the throat is at the speed of sound."""
    g = HEAT_RATIO
    r = max(p2 / p1, (2 / (g + 1)) ** (g / (g - 1)))
    speed = (2 * g / ((g - 1) * GAS * T) * max(0.0, r ** (2 / g) - r ** ((g + 1) / g))) ** 0.5
    return CD * area * p1 * speed
