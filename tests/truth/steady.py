"""200 random plants to steady state: all unknown pressures AND flows solved together (model.md 4).

Method. Unknowns: line pressure, leftover flow, pump flow, each line-gap flow, and per applied circuit its pressure, feed
flow and every leak flow. Equations: gap law in its given form dp = R Q + k Q|Q| (never the quadratic formula), hole law,
node balances, and "line = command if the pump can feed it" as the complementarity min(command - line, leftover) = 0.
scipy.optimize.root (hybr) from several starts, then Newton with residuals in 80-bit extended precision down to 1e-14 of
scale. Each case is also solved by nested brentq; the difference is printed, and brentq stands in (and is named in
`method`) where hybr did not converge.
Run: python3 tests/truth/steady.py   (needs numpy, scipy; rewrites steady.json)
"""
import json
import os
import random

import numpy as np
from scipy.optimize import brentq, root

from rival import Gap, Plant

L_MIN = 60000.0
CIRCUITS = ["forward", "reverse", "direct"]
LD = np.longdouble


def random_request(rng):
    r = {}
    if rng.random() < 0.65:
        r["fluid"] = rng.choice(["standard", "low-viscosity", "ultra-low"])
    else:
        v100 = round(rng.uniform(3.0, 9.5), 2)
        r["fluid"] = {"kv40_cSt": round(v100 * rng.uniform(4.0, 6.0), 2), "kv100_cSt": v100,
                      "density15_kgm3": round(rng.uniform(820, 885), 1)}
    r["temperature_C"] = round(rng.uniform(-30, 140) if rng.random() < 0.5 else rng.uniform(70, 140), 1)
    # half near idle: that is where the pump falls short and the line is not regulated
    r["engine_rpm"] = round(rng.uniform(500, 6000) if rng.random() < 0.5 else rng.uniform(500, 1000))
    r["line_kPa"] = round(rng.uniform(300, 1500), 1)
    r["clutch_kPa"] = round(rng.uniform(200, 1200), 1)
    n = rng.choice([1, 1, 2, 3])
    chosen = rng.sample(CIRCUITS, n)
    r["applied"] = [c for c in CIRCUITS if c in chosen]
    faults = {}
    names = ["transferSeal", "sealingRings", "pistonSeal", "pumpWear", "regulatorBore", "pressureControl", "filter",
             "lowFluid", "thinFluid", "feedRestriction", "openPort", "frictionWear", "turbineSensor"]
    for f in rng.sample(names, rng.choice([0, 1, 1, 2, 2, 3, 4, 6, 13])):
        s = round(rng.choice([rng.random(), rng.random() ** 2, 1.0]), 3)
        if f == "turbineSensor":
            s = rng.choice([0, 1])
        # circuits mostly among the applied ones, so that the fault is felt
        where = rng.choice(r["applied"]) if rng.random() < 0.85 else rng.choice(CIRCUITS)
        faults[f] = {"severity": s, "circuit": where} if f in ("sealingRings", "pistonSeal", "openPort") else s
    if faults:
        r["faults"] = faults
    return r


class System:
    def __init__(self, req):
        self.req = req
        self.plant = p = Plant(req["fluid"], req["temperature_C"], req.get("faults", {}), req["applied"])
        self.n = req["engine_rpm"] / 60.0
        self.cmd = req["line_kPa"] * 1e3 * p.line_factor
        self.pcmd = req["clutch_kPa"] * 1e3
        self.qin = p.pump_ideal(self.n)
        self.slip = p.cs * p.VD / (2 * np.pi * p.fluid.mu)
        self.size = 3 + len(p.line_gaps) + sum(2 + len(v) for v in p.leaks.values())
        # pressures scaled by the line command, flows by what the pump draws
        self.scale = np.full(self.size, self.qin)
        self.scale[0] = self.cmd
        i = 3 + len(p.line_gaps)
        for v in p.leaks.values():
            self.scale[i] = self.cmd
            i += 2 + len(v)

    def residual(self, y, extended=False):
        t = LD if extended else float
        y = np.asarray(y, dtype=t) * self.scale.astype(t)
        p, out = self.plant, []
        pl, left, qp = y[0], y[1], y[2]
        out.append(min((t(self.cmd) - pl) / t(self.cmd), left / t(self.qin)))
        out.append((qp - (t(self.qin) - t(self.slip) * pl)) / t(self.qin))
        i, spent = 3, left
        for g in p.line_gaps:
            out.append((pl - (t(g.R) * y[i] + t(g.k) * y[i] * abs(y[i]))) / t(self.cmd))
            spent, i = spent + y[i], i + 1
        for parts in p.leaks.values():
            pc, feed = y[i], y[i + 1]
            x = min(max((t(self.pcmd) - pc) / t(p.BAND), t(0)), t(1))
            out.append((feed - x * hole(p.feed, pl - pc, t)) / t(self.qin))
            i, lost = i + 2, t(0)
            for e in parts:
                if isinstance(e, Gap):
                    out.append((pc - (t(e.R) * y[i] + t(e.k) * y[i] * abs(y[i]))) / t(self.cmd))
                else:
                    out.append((y[i] - hole(e, pc, t)) / t(self.qin))
                lost, i = lost + y[i], i + 1
            out.append((feed - lost) / t(self.qin))
            spent = spent + feed
        out.append((qp - spent) / t(self.qin))
        return np.array(out, dtype=t)

    def start(self, f_line, f_clutch):
        """Flows consistent with guessed pressures."""
        p = self.plant
        pl = f_line * self.cmd
        pc = f_clutch * min(pl, self.pcmd)
        y = [pl, 0.0, p.pump(self.n, pl)] + [g.flow(pl) for g in p.line_gaps]
        for c, parts in p.leaks.items():
            y += [pc, p.clutch_leak(c, pc)] + [e.flow(pc) for e in parts]
        return np.array(y) / self.scale

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
        i = 3 + len(self.plant.line_gaps)
        for parts in self.plant.leaks.values():
            ok = ok and -1e-12 <= z[i] <= min(z[0], self.pcmd / self.cmd) + 1e-12
            i += 2 + len(parts)
        return ok

    def solve(self):
        for fl, fc in ((0.999, 0.97), (0.9, 0.9), (0.6, 0.8), (0.3, 0.5), (0.1, 0.5), (0.03, 0.3), (0.99, 0.3), (0.5, 0.1)):
            s = root(self.residual, self.start(fl, fc), method="hybr", tol=1e-13)
            m, y = self.polish(s.x)
            if m < 1e-14 and self.physical(y):
                return "root", m, y
        m, y = self.polish(self.from_brentq())
        return ("brentq, polished" if m < 1e-12 else "brentq"), m, y

    def clutch(self, c, pl):
        p = self.plant
        top = min(pl, self.pcmd)
        f = lambda pc: p.feed_flow(pl, pc, self.pcmd) - p.clutch_leak(c, pc)
        return brentq(f, 0, top, xtol=1e-9, rtol=1e-15, maxiter=500) if top > 0 else 0.0

    def surplus(self, pl):
        p = self.plant
        return p.pump(self.n, pl) - p.line_leak(pl) - sum(p.clutch_leak(c, self.clutch(c, pl)) for c in p.leaks)

    def from_brentq(self):
        pl = self.cmd if self.surplus(self.cmd) >= 0 else brentq(self.surplus, 0, self.cmd, xtol=1e-8, rtol=1e-15)
        p = self.plant
        y = [pl, max(0.0, self.surplus(pl)) if pl == self.cmd else 0.0, p.pump(self.n, pl)] + [g.flow(pl) for g in p.line_gaps]
        for c, parts in p.leaks.items():
            pc = self.clutch(c, pl)
            y += [pc, p.clutch_leak(c, pc)] + [e.flow(pc) for e in parts]
        return np.array(y) / self.scale

    def answer(self, y):
        z = np.asarray(y, dtype=LD) * self.scale.astype(LD)
        p = self.plant
        a = {"line_kPa": float(z[0] / 1000), "circuits": {}}
        i = 3 + len(p.line_gaps)
        balance = z[2] - z[1] - sum(z[3:i])
        nodes = []
        for c, parts in p.leaks.items():
            lost = sum(z[i + 2:i + 2 + len(parts)])
            a["circuits"][c] = {"pressure_kPa": float(z[i] / 1000), "leak_Lmin": float(lost * L_MIN), "holds_Nm": float(p.holds(float(z[i])))}
            balance -= z[i + 1]
            nodes.append(abs(z[i + 1] - lost))
            i += 2 + len(parts)
        a["pump_Lmin"] = float(z[2] * L_MIN)
        a["leftOver_Lmin"] = float(z[1] * L_MIN) if z[1] > 1e-15 * self.qin else 0.0
        return a, float(max(nodes + [abs(balance)]) / self.qin)


def hole(h, dp, t):
    return t(h.c) * dp / (dp * dp + t(h.pc) ** 2) ** t(0.25)


def worst(a, b, path=""):
    """Largest relative difference between two answers (absolute floor 1e-9 in the printed unit)."""
    if isinstance(a, dict):
        return max((worst(a[k], b[k], f"{path}/{k}") for k in a), key=lambda t: t[0])
    return (abs(a - b) / max(abs(a), 1e-6), path)


def main():
    rng = random.Random(20240611)
    cases, methods, diffs = [], {}, []
    for n in range(200):
        s = System(random_request(rng))
        method, residual, y = s.solve()
        a, balance = s.answer(y)
        b, _ = s.answer(s.from_brentq())
        diffs.append((worst(a, b), n))
        methods[method] = methods.get(method, 0) + 1
        cases.append({"request": {"kind": "steady", **s.req}, "answer": a, "method": method,
                      "massBalance_ofPump": balance, "residual": residual})
    here = os.path.dirname(os.path.abspath(__file__))
    with open(os.path.join(here, "steady.json"), "w") as f:
        f.write("[\n" + ",\n".join(json.dumps(c) for c in cases) + "\n]\n")
    print("methods", methods, "| worst residual", max(c["residual"] for c in cases), "| worst balance", max(c["massBalance_ofPump"] for c in cases))
    print("worst against nested brentq", sorted(diffs)[-4:])
    full = sum(v["pressure_kPa"] < c["request"]["clutch_kPa"] - 20 for c in cases for v in c["answer"]["circuits"].values())
    print("circuits", sum(len(c["answer"]["circuits"]) for c in cases), "with the feed wide open", full)
    print("regulated", sum(c["answer"]["leftOver_Lmin"] > 0 for c in cases), "of", len(cases))


if __name__ == "__main__":
    main()
