"""Size of a crack in the transfer seal from pressures at its circuits' taps (diagnosis.md 7), on a grid.

    estimate(sheet, readings)            the paper's grid: 41 heights, 24 widths
    estimate(sheet, readings, fine=True) twice as many cells each way, and each cell's normal law worked out again
"""
import math

import numpy as np

from diagnosis_lanes import Cars, NUISANCES, SD, gap, gap_flow, steady, warm
from diagnosis_table import applied

GAIN_SD, ZERO_KPA = 0.015, 4.0
LENGTH_SD, COMMAND_SD = 0.20 / math.sqrt(3), 0.02 / math.sqrt(3)
SHARED = ("line", "ring.forward", "ring.reverse", "pump", "feed", "kv40", "kv100", "hot", "cold")
WARMTH_C = {"cold": 20.0, "hot": 95.0}


def pressures(sheet, readings, h, w, z, length=1.0, command=1.0):
    """kPa, readings x cells"""
    out, done = [], {}
    a = sheet["commands"]
    for r in readings:
        warmth = "hot" if r["temperature_C"] > 50 else "cold"
        key = (r["circuit"], r["engine_rpm"], r["temperature_C"])
        if key not in done:
            off = (r["temperature_C"] - WARMTH_C[warmth]) / SD[NUISANCES.index(warmth)]
            zz = np.tile(z, (len(h), 1))
            zz[:, NUISANCES.index(warmth)] += off
            cars = Cars(sheet, {}, zz, crack_m=h, crack_width_m=w, crack_length=length, command=command)
            line, clutch = (a["idleLine_kPa"], a["idleClutch_kPa"]) if r["engine_rpm"] == 700 else (a["loadLine_kPa"], a["loadClutch_kPa"])
            boost = a["reverseFactor"] if r["circuit"] == applied(sheet, "reverse") else 1.0
            done[key] = steady(warm(cars, warmth), r["engine_rpm"], line * 1e3 * boost, clutch * 1e3 * boost, r["circuit"])[1] / 1e3
        out.append(done[key])
    return np.array(out)


def posterior(sheet, readings, fine):
    heights = np.arange(0.04, 0.44 + 1e-9, 0.005 if fine else 0.01)
    widths = np.exp(np.linspace(math.log(4), math.log(40), 48 if fine else 24))
    h, w = (g.ravel() * 1e-3 for g in np.meshgrid(heights, widths, indexing="ij"))
    at = lambda z, **more: pressures(sheet, readings, h, w, z, **more)
    still = np.zeros(len(NUISANCES))
    m = at(still)
    J = []
    for name in SHARED:
        e = still.copy()
        e[NUISANCES.index(name)] = 1.0
        J.append((at(e) - at(-e)) / 2)
    J.append((at(still, length=1 + LENGTH_SD) - at(still, length=1 - LENGTH_SD)) / 2)
    J.append((at(still, command=1 + COMMAND_SD) - at(still, command=1 - COMMAND_SD)) / 2)
    J.append(GAIN_SD * m)
    J.append(np.full_like(m, ZERO_KPA))
    J = np.array(J)  # differences x readings x cells
    y = np.array([r["value"] for r in readings], float)
    S = np.einsum("jrc,jsc->crs", J, J)
    S[:, range(len(y)), range(len(y))] += (np.maximum(0.02 * m, 10.0) ** 2 + (0.02 * m) ** 2).T
    d = (y[:, None] - m).T
    log_p = -0.5 * np.einsum("cr,cr->c", d, np.linalg.solve(S, d[:, :, None])[:, :, 0]) - 0.5 * np.linalg.slogdet(S)[1]
    p = np.exp(log_p - log_p.max())
    return heights, widths, h, w, p / p.sum()


def quantiles(x, p, q=(0.05, 0.5, 0.95)):
    """Each value's mass spread evenly to half way to its neighbors."""
    edges = np.concatenate([[x[0]], (x[1:] + x[:-1]) / 2, [x[-1]]])
    return [float(np.interp(one, np.append(0, np.cumsum(p)), edges)) for one in q]


def spread(x, p):
    by = np.argsort(x)
    return [float(np.interp(q, np.cumsum(p[by]), x[by])) for q in (0.05, 0.5, 0.95)]


def estimate(sheet, readings, fine=False):
    heights, widths, h, w, p = posterior(sheet, readings, fine)
    table = p.reshape(len(heights), len(widths))
    lh, lw = np.log(h), np.log(w)
    mean = lambda v: float((p * v).sum())
    cov = lambda a, b: mean((a - mean(a)) * (b - mean(b)))
    cars = Cars(sheet, {}, np.zeros((len(h), len(NUISANCES))))
    hot = warm(cars, "hot")
    a = sheet["commands"]
    crack_on = sheet["seal"]["circuits"][0]
    boost = a["reverseFactor"] if crack_on == applied(sheet, "reverse") else 1.0
    settled = steady(warm(Cars(sheet, {}, np.zeros((len(h), len(NUISANCES))), crack_m=h, crack_width_m=w), "hot"), sheet["idle_rpm"],
                     a["idleLine_kPa"] * 1e3 * boost, a["idleClutch_kPa"] * 1e3 * boost, crack_on)[1]
    flowing = gap_flow(settled, gap(hot.mu, hot.rho, w, h, sheet["seal"]["length_mm"] * 1e-3)) * 6e4
    ranked = np.sort(p)[::-1]
    area = int(np.searchsorted(np.cumsum(ranked), 0.9)) + 1
    wh2 = w * 1e3 * (h * 1e3) ** 2
    return {"height_mm": quantiles(heights, table.sum(1)), "width_mm": [math.exp(q) for q in quantiles(np.log(widths), table.sum(0))],
            "leak_Lmin": spread(flowing, p),
            "correlation": cov(lh, lw) / math.sqrt(cov(lh, lh) * cov(lw, lw)), "sdLnWidth": math.sqrt(cov(lw, lw)),
            "width_height2_mm3": spread(wh2, p)[1], "regionShare": area / len(p)}
