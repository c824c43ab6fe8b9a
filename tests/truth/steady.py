"""200 random plants to steady state: all unknown pressures AND flows solved together (model.md 4).

Method. Unknowns: line pressure, leftover flow, pump flow, each line-leak flow, and per applied circuit its pressure, the
flow per opening of its feed, and every leak flow. Equations: the gap law and the feed law in their printed form (never
as the quadratic formula), the hole law, node balances, and "line = command if the pump can feed it" as the
complementarity min(command - line, leftover) = 0. scipy.optimize.root (hybr) from several starts, then Newton with
residuals in 80-bit extended precision down to 1e-17 of scale. Each case is also solved by nested brentq on the solved
quadratics; the difference is printed, and brentq stands in (and is named in `method`) where hybr did not converge.
Run: /usr/bin/python3 tests/truth/steady.py   (needs numpy, scipy; rewrites steady.json)
"""
import json
import os

import numpy as np
from scipy.optimize import brentq, root

from plant import Plant
from rival import Gap
from steady_requests import requests

L_MIN = 60000.0
LD = np.longdouble
STARTS = ((0.999, 0.97), (0.999, 0.999), (0.9, 0.9), (0.6, 0.8), (0.3, 0.5), (0.1, 0.5), (0.03, 0.3), (0.99, 0.3), (0.5, 0.1), (0.01, 0.1))


def leak_residual(e, p, q, t, pressure, flow):
    if isinstance(e, Gap):
        return (p - (t(e.R) * q + t(e.k) * q * abs(q))) / t(pressure)
    return (q - t(e.c) * p / (p * p + t(e.pc) ** 2) ** t(0.25)) / t(flow)


class System:
    def __init__(self, req):
        self.plant = p = Plant(req, req["applied"])
        self.rpm = req["engine_rpm"]
        self.cmd = req["line_kPa"] * 1e3 * p.line_factor
        self.asked = req["clutch_kPa"] * 1e3
        self.held = {c: self.asked * p.holds_back[c] for c in p.leaks}
        self.qin = p.pump_ideal(self.rpm)
        self.slip = p.cs * p.vd / (2 * np.pi * p.fluid.mu)
        # pressures scaled by the line command, flows by what the pump draws
        self.scale = np.array([self.cmd, self.qin, self.qin] + [self.qin] * len(p.line_parts)
                              + [s for v in p.leaks.values() for s in [self.cmd] + [self.qin] * (1 + len(v))])
        self.size = len(self.scale)

    def residual(self, y, extended=False):
        t = LD if extended else float
        y = np.asarray(y, dtype=t) * self.scale.astype(t)
        p, cmd, qin = self.plant, t(self.cmd), t(self.qin)
        pl, left, qp = y[0], y[1], y[2]
        out = [min((cmd - pl) / cmd, left / qin), (qp - (qin - t(self.slip) * pl)) / qin]
        i, spent = 3, left
        for e in p.line_parts:
            out.append(leak_residual(e, pl, y[i], t, cmd, qin))
            spent, i = spent + y[i], i + 1
        for c, parts in p.leaks.items():
            pc, per_opening = y[i], y[i + 1]
            x = min(max((t(self.held[c]) - pc) / t(p.band), t(0)), t(1))
            feed = x * per_opening
            out.append((max(pl - pc, t(0)) - (t(p.feed.R) * feed + t(p.feed.k) * per_opening * abs(per_opening))) / cmd)
            i, lost = i + 2, t(0)
            for e in parts:
                out.append(leak_residual(e, pc, y[i], t, cmd, qin))
                lost, i = lost + y[i], i + 1
            out.append((feed - lost) / qin)
            spent = spent + feed
        out.append((qp - spent) / qin)
        return np.array(out, dtype=t)

    def guess(self, pl, left, pressures):
        """Every flow that goes with these pressures."""
        p = self.plant
        y = [pl, left, p.pump(self.rpm, pl)] + [e.flow(pl) for e in p.line_parts]
        for c, parts in p.leaks.items():
            pc = pressures[c]
            x = min(max((self.held[c] - pc) / p.band, 0.0), 1.0)
            y += [pc, p.feed.flow(pl - pc, x) / x if x > 0 else 0.0] + [e.flow(pc) for e in parts]
        return np.array(y) / self.scale

    def start(self, f_line, f_clutch):
        pl = f_line * self.cmd
        return self.guess(pl, 0.0, {c: f_clutch * min(pl, h) for c, h in self.held.items()})

    def jacobian(self, y):
        y = np.asarray(y, dtype=LD)
        r0, J = self.residual(y, True), np.zeros((self.size, self.size))
        for j in range(self.size):
            step = LD(1e-9) * max(abs(y[j]), LD(1e-9))
            z = y.copy()
            z[j] += step
            J[:, j] = np.asarray((self.residual(z, True) - r0) / step, dtype=float)
        return J

    def polish(self, y):
        y = np.asarray(y, dtype=LD)
        best = None
        for _ in range(40):
            r = self.residual(y, True)
            m = float(np.max(np.abs(r)))
            if best is None or m < best[0]:
                best = (m, y.copy())
            if m < 1e-17 or not np.isfinite(m):
                break
            try:
                y = y + np.linalg.solve(self.jacobian(y), -np.asarray(r, dtype=float)).astype(LD)
            except np.linalg.LinAlgError:
                break
        return best

    def physical(self, y):
        z = np.asarray(y, dtype=float)
        ok = -1e-12 <= z[0] <= 1 + 1e-12 and z[1] >= -1e-12
        i = 3 + len(self.plant.line_parts)
        for c, parts in self.plant.leaks.items():
            ok = ok and -1e-12 <= z[i] <= min(z[0], self.held[c] / self.cmd) + 1e-12
            i += 2 + len(parts)
        return ok

    def solve(self):
        for fl, fc in STARTS:
            s = root(self.residual, self.start(fl, fc), method="hybr", tol=1e-13)
            m, y = self.polish(s.x)
            if m < 1e-14 and self.physical(y):
                return "root", m, y
        m, y = self.polish(self.from_brentq())
        return ("brentq, polished" if m < 1e-12 else "brentq"), m, y

    def clutch(self, c, pl):
        p = self.plant
        top = min(pl, self.held[c])
        f = lambda pc: p.feed_flow(c, pl, pc, self.asked) - p.clutch_leak(c, pc)
        return brentq(f, 0, top, xtol=1e-9, rtol=1e-15, maxiter=500) if top > 0 else 0.0

    def surplus(self, pl):
        p = self.plant
        return p.pump(self.rpm, pl) - p.line_leak(pl) - sum(p.clutch_leak(c, self.clutch(c, pl)) for c in p.leaks)

    def from_brentq(self):
        pl = self.cmd if self.surplus(self.cmd) >= 0 else brentq(self.surplus, 0, self.cmd, xtol=1e-8, rtol=1e-15)
        left = max(0.0, self.surplus(pl)) if pl == self.cmd else 0.0
        return self.guess(pl, left, {c: self.clutch(c, pl) for c in self.plant.leaks})

    def answer(self, y):
        z = np.asarray(y, dtype=LD) * self.scale.astype(LD)
        p = self.plant
        a = {"line_kPa": float(z[0] / 1000), "circuits": {}}
        i = 3 + len(p.line_parts)
        balance = z[2] - z[1] - sum(z[3:i])
        nodes = []
        for c, parts in p.leaks.items():
            lost = sum(z[i + 2:i + 2 + len(parts)])
            a["circuits"][c] = {"pressure_kPa": float(z[i] / 1000), "leak_Lmin": float(lost * L_MIN), "holds_Nm": float(p.holds(c, float(z[i])))}
            x = min(max((LD(self.held[c]) - z[i]) / LD(p.band), LD(0)), LD(1))
            balance -= x * z[i + 1]
            nodes.append(abs(x * z[i + 1] - lost))
            i += 2 + len(parts)
        left = float(z[1]) if z[1] > 1e-15 * self.qin else 0.0
        a["pump_Lmin"] = float(z[2] * L_MIN)
        a["leftOver_Lmin"] = left * L_MIN
        a["cooler_Lmin"] = p.cooler(left) * L_MIN
        return a, float(max(nodes + [abs(balance)]) / self.qin)


def worst(a, b, path=""):
    """Largest relative difference between two answers (absolute floor 1e-6 in the printed unit)."""
    if isinstance(a, dict):
        return max((worst(a[k], b[k], f"{path}/{k}") for k in a), key=lambda t: t[0], default=(0.0, path))
    return (abs(a - b) / max(abs(a), 1e-6), path)


def main():
    cases, methods, diffs = [], {}, []
    for n, request in enumerate(requests()):
        s = System(request)
        method, residual, y = s.solve()
        a, balance = s.answer(y)
        b, _ = s.answer(s.from_brentq())
        diffs.append((worst(a, b), n))
        methods[method] = methods.get(method, 0) + 1
        cases.append({"request": request, "answer": a, "method": method, "massBalance_ofPump": balance, "residual": residual})
    here = os.path.dirname(os.path.abspath(__file__))
    with open(os.path.join(here, "steady.json"), "w") as f:
        f.write("[\n" + ",\n".join(json.dumps(c) for c in cases) + "\n]\n")
    print("methods", methods, "| worst residual", max(c["residual"] for c in cases), "| worst balance", max(c["massBalance_ofPump"] for c in cases))
    print("worst against nested brentq", sorted(diffs)[-4:])
    circuits = [(c, v) for c in cases for v in c["answer"]["circuits"].values()]
    full = sum(v["pressure_kPa"] < c["request"]["clutch_kPa"] * 0.4 for c, v in circuits)
    print("circuits", len(circuits), "under four tenths of the command", full, "| sheets", sum("transmission" in c["request"] for c in cases),
          "| nothing applied", sum(not c["request"]["applied"] for c in cases))
    print("regulated", sum(c["answer"]["leftOver_Lmin"] > 0 for c in cases), "of", len(cases),
          "| cooler limited", sum(0 < c["answer"]["cooler_Lmin"] < c["answer"]["leftOver_Lmin"] for c in cases))
    counts = {}
    for c in cases:
        for f in c["request"].get("faults", {}):
            counts[f] = counts.get(f, 0) + 1
    print("faults", counts)


if __name__ == "__main__":
    main()
