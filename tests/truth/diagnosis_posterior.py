"""From readings to probabilities (diagnosis.md 5), and how well one fault explains them (8)."""
import math

import numpy as np
from scipy.special import ndtr
from scipy.stats import chi2

from diagnosis_lanes import NUISANCES, SD
from diagnosis_outcomes import OUTCOMES, chances, code_chances
from diagnosis_table import CLASSES, NODES, NUMERIC, ON_A_CIRCUIT, S_MIN, SLIP_ADD, WIDTH, discrepancy_sd, error_sd, kept, rows

GAIN_SD = 0.015
EPS, KAPPA, B0 = 0.003, 0.7, (0.15, 0.35)
LIMIT_S = 2.5
NAMES = [*S_MIN, "healthy", "unlisted"]
NOMINAL_C = {"frost": 0.0, "cold": 20.0, "hot": 95.0}
BAND_C = {"frost": (-5, 5), "cold": (10, 30), "hot": (85, 105)}


def group_of(test):
    """The group of readings that breaks together on a car with a cause outside the list (1.2)."""
    kind, *at = test.split(".")
    return {"clutch": f"clutch.{at[0] if at else ''}", "line": "line", "stopTime": f"stop.{at[0] if at else ''}",
            "takeoffSlip": f"slip.{at[0] if at else ''}", "coolerFlow": "cooler", "airTest": f"air.{at[0] if at else ''}",
            "fluidCup": "cup", "engineOffTurbine": "sensor"}[kind]


class Cells:
    """All 638 hypotheses: class, severity, prior share within the name, and what each test reads on them."""

    def __init__(self, sheet):
        list_ = rows()
        first = {}
        for i, (f, c, s) in enumerate(list_):
            first.setdefault((f, c), i)
        self.cls, self.severity, self.share, self.b0 = [], [], [], []
        low, part = [], []  # interpolation: (1 - part) of row low + part of row low + 1
        for k, (f, c) in enumerate(CLASSES):
            if f == "unlisted":
                steps = [(0.0, first[("healthy", None)], 0.0)] * 2
            elif f in ("healthy", "turbineSensor"):
                steps = [(S_MIN.get(f, 0.0), first[(f, c)], 0.0)]
            else:
                steps = []
                for i in range(round((1 - S_MIN[f]) / 0.025) + 1):
                    s = round(S_MIN[f] + 0.025 * i, 10)
                    at = s / 0.05 - 1
                    node = min(int(at + 1e-9), len(NODES) - 2)
                    steps.append((s, first[(f, c)] + node, round(at - node, 10)))
            for s, row, p in steps:
                self.cls.append(k)
                self.severity.append(s)
                self.share.append(1 / len(steps) / (3 if f in ON_A_CIRCUIT else 1))
                low.append(row)
                part.append(p)
            self.b0 += list(B0) if f == "unlisted" else [0.0] * len(steps)
        self.cls, self.share, self.b0 = np.array(self.cls), np.array(self.share), np.array(self.b0)
        self.unlisted = np.array([CLASSES[k][0] == "unlisted" for k in self.cls])
        self.n = len(self.cls)
        low, part = np.array(low), np.array(part)
        between = lambda a: (a[low].T * (1 - part) + a[np.minimum(low + 1, len(list_) - 1)].T * part).T
        self.m, self.J, self.r2, self.nominal = {}, {}, {}, {}
        last = np.append(self.cls[1:] != self.cls[:-1], True)
        for test, y in kept(sheet).items():
            kind = NUMERIC[test][0]
            m0, up, down = y[0], y[1::2].T, y[2::2].T
            b = (up + down) / 2 - m0[:, None]
            m = between(m0 + b.sum(1))
            J = between((up - down) / 2)
            curve = between(np.sqrt(2 * (b * b).sum(1)))
            gain = GAIN_SD * m if kind in ("line", "clutch") else 0 * m
            step = np.where(last, 0.0, np.append(np.diff(m), 0.0))
            self.m[test], self.J[test] = m, np.column_stack([J, gain])
            self.r2[test] = error_sd(kind, m) ** 2 + discrepancy_sd(kind, m) ** 2 + curve**2 + step**2 / 12
            self.nominal[test] = between(m0)
        self.tables = {test: self.outcome_table(test) for test in OUTCOMES}

    def outcome_table(self, test):
        out = []
        for i, k in enumerate(self.cls):
            fault, circuit = CLASSES[k]
            seen = "healthy" if fault == "unlisted" else fault
            if test == "codes":
                p = np.array(code_chances({t: v[i] for t, v in self.nominal.items()}, seen))
            else:
                p = np.array(chances(test, seen, circuit, self.severity[i]))
            if fault == "unlisted":
                r = self.b0[i] if test == "codes" else self.b0[i] / 3
                p = (1 - r) * p + r / len(p)
            out.append(p)
        return np.array(out)

    def prior(self, weights):
        by_name = {n: weights.get(n, 2.0 if n == "unlisted" else 1.0) for n in NAMES}
        w = np.array([by_name[CLASSES[k][0]] for k in self.cls]) * self.share
        return w / w.sum()


def normal(y, mu, S):
    return np.exp(-((y - mu) ** 2) / (2 * S)) / np.sqrt(2 * math.pi * S)


def uniform(kind, unlisted):
    width = WIDTH[kind]
    return np.where(unlisted, 0.5, 0.7) / width if kind == "stop" else np.full(len(unlisted), 1 / width)


class Posterior:
    def __init__(self, cells, weights):
        self.cells = cells
        with np.errstate(divide="ignore"):
            self.log_w = np.log(cells.prior(weights))
        self.z = np.zeros((cells.n, len(NUISANCES) + 1))
        self.P = np.tile(np.eye(len(NUISANCES) + 1), (cells.n, 1, 1))
        self.broken = {}
        self.d2, self.counted = np.zeros(cells.n), 0

    def predicted(self, test, temp_c=None):
        """Mean, variance, P J' of a reading now."""
        cells = self.cells
        m, J = cells.m[test], cells.J[test]
        if temp_c is not None:
            warmth = test.split(".")[-1]
            j = NUISANCES.index(warmth)
            m = m + J[:, j] * (temp_c - NOMINAL_C[warmth]) / SD[j]
        PJ = np.einsum("hij,hj->hi", self.P, J)
        return m + (J * self.z).sum(1), (J * PJ).sum(1) + cells.r2[test], PJ

    def eps(self, test):
        return np.where(self.cells.unlisted, KAPPA * self.broken.get(group_of(test), self.cells.b0), EPS)

    def take(self, test, value, temp_c=None):
        cells = self.cells
        if test in OUTCOMES:
            outcome = frozenset(value) if test == "codes" else value
            self.log_w += np.log(cells.tables[test][:, OUTCOMES[test].index(outcome)])
            return
        kind = NUMERIC[test][0]
        mu, S, PJ = self.predicted(test, temp_c)
        eps, group = self.eps(test), group_of(test)
        b = self.broken.get(group, cells.b0)
        if kind == "stop" and (value is None or value > LIMIT_S):
            N, U = ndtr((mu - LIMIT_S) / np.sqrt(S)), np.where(cells.unlisted, 0.5, 0.3)
            self.log_w += np.log(np.maximum((1 - eps) * N + eps * U, 1e-300))
        else:
            y = {"slip": lambda: math.log(value + SLIP_ADD), "cup": lambda: math.log(value)}.get(kind, lambda: value)()
            N, U = normal(y, mu, S), uniform(kind, cells.unlisted)
            lik = (1 - eps) * N + eps * U
            self.log_w += np.log(np.maximum(lik, 1e-300))
            a = (1 - eps) * N / lik
            K = PJ / S[:, None]
            self.z += (a * (y - mu))[:, None] * K
            self.P -= a[:, None, None] * K[:, :, None] * PJ[:, None, :]
            self.d2 += np.minimum((y - mu) ** 2 / S, 25.0)
            self.counted += 1
        sound, wild = (1 - KAPPA) * N + KAPPA * U, N
        self.broken[group] = np.where(cells.unlisted, b * sound / (b * sound + (1 - b) * wild + 1e-300), 0.0)

    def weights(self):
        w = np.exp(self.log_w - self.log_w.max())
        return w / w.sum()

    def faults(self):
        w, cells, out = self.weights(), self.cells, []
        for name in NAMES:
            mine = [k for k, (f, _) in enumerate(CLASSES) if f == name]
            p = sum(w[cells.cls == k].sum() for k in mine)
            one = {"fault": name, "probability": p}
            if name in ON_A_CIRCUIT:
                one["circuits"] = {CLASSES[k][1]: w[cells.cls == k].sum() for k in mine}
            if p > 0.01 and name not in ("healthy", "unlisted", "turbineSensor"):
                one["severity"] = self.severities(w, mine, p)
            out.append(one)
        return sorted(out, key=lambda o: -o["probability"])

    def severities(self, w, mine, p):
        """5, 50 and 95 %: each cell's weight is spread evenly over its 0.025 of severity, within [sMin, 1]."""
        cells = self.cells
        at = np.isin(cells.cls, mine)
        s = np.array([cells.severity[i] for i in np.flatnonzero(at)])
        steps, inverse = np.unique(s, return_inverse=True)
        mass = np.bincount(inverse, w[at]) / p
        edges = np.clip(np.append(steps - 0.0125, steps[-1] + 0.0125), steps[0], 1.0)
        return [float(np.interp(q, np.append(0, np.cumsum(mass)), edges)) for q in (0.05, 0.5, 0.95)]

    def fit(self):
        w, n = self.weights(), self.counted
        w = np.where(self.cells.unlisted, 0, w)
        d2 = float((w * self.d2).sum() / w.sum()) if w.sum() > 0 else 0.0
        p = float(chi2.sf(d2, n)) if n else None
        out = {"d2": d2, "readings": n, "p": p}
        if n >= 4:
            out["singleFaultFits"] = not (d2 / n > 1.3 if n >= 20 else d2 / n > 1.4 if n >= 10 else p < 0.02)
        return out
