"""What each test still tells and what it costs (diagnosis.md 2 and 6), every cell against every outcome: nothing is dropped."""
import numpy as np
from scipy.special import ndtr

from diagnosis_lanes import CIRCUITS
from diagnosis_outcomes import OUTCOMES
from diagnosis_posterior import EPS, LIMIT_S
from diagnosis_table import CLASSES, NUMERIC

SETUP_MIN = {"hot": 20, "cold": 90, "frost": 120, "scan": 3, "lift": 4, "gaugeLine": 12, "gaugeForward": 12, "gaugeReverse": 12,
             "gaugeHigh": 12, "coolerHose": 8, "panOff": 30, "valveBodyOff": 45, "sealFixture": 15}
OWN_MIN = {"codes": 2, "engineOffTurbine": 1, "fluidLevel": 6, "fluidLook": 2, "cable": 5, "solenoidCurrent": 5, "fluidCup": 10, "stopTime": 2,
           "takeoffSlip": 3, "line": 2, "gaugeFlutter": 2, "clutch": 2, "coolerFlow": 4, "panFilter": 5, "airTest": 4, "airWhere": 3, "boreVacuum": 8}
SETUPS = {"codes": ["scan"], "engineOffTurbine": ["scan"], "solenoidCurrent": ["scan"], "stopTime": ["scan"], "takeoffSlip": ["scan"],
          "fluidLevel": ["lift"], "fluidLook": ["lift"], "cable": ["lift"], "fluidCup": ["lift"], "line": ["gaugeLine"],
          "gaugeFlutter": ["gaugeLine"], "coolerFlow": ["coolerHose"], "panFilter": ["panOff"], "airTest": ["panOff", "valveBodyOff"],
          "airWhere": ["panOff", "valveBodyOff"], "boreVacuum": ["panOff", "valveBodyOff"]}
ENGINE_RUNS = ("stopTime", "takeoffSlip", "line", "gaugeFlutter", "clutch", "coolerFlow")
FROM = {"slip": 3.4, "cup": 2.5}
SPAN = {"line": (0, 1400), "clutch": (0, 1200), "stop": (0, 2.5), "slip": (3.4, 8.9), "cooler": (0, 9), "held": (0, 100), "cup": (2.5, 4), "rpm": (0, 800)}
LEAST_BITS = 0.03
ALL_TESTS = [*NUMERIC, *OUTCOMES]


def minutes(test, state):
    kind, *at = test.split(".")
    need = [f"gauge{at[0].capitalize()}"] if kind == "clutch" else list(SETUPS[kind])
    if test == "airTest.transferSeal":
        need.append("sealFixture")
    fitted = state.get("fitted", [])
    total = OWN_MIN[kind] + sum(SETUP_MIN[s] for s in need if s not in fitted)
    warmth = at[-1] if at and at[-1] in ("hot", "cold", "frost") else None
    if warmth and warmth != state.get("temperature", "cold"):
        total += SETUP_MIN[warmth]
    if kind in ENGINE_RUNS:
        total += 60 if "valveBodyOff" in fitted else 20 if "panOff" in fitted else 0
    return total


def cut_at(test, mu, S, w):
    """Edges of the bins."""
    points = np.concatenate([mu + a * np.sqrt(S) for a in (-1.3, -0.4, 0.4, 1.3)])
    order = np.argsort(points, kind="stable")
    heap = np.cumsum(np.tile(w / 4, 4)[order])
    edges = [points[order][min(np.searchsorted(heap, q), len(heap) - 1)] for q in np.linspace(0.02, 0.98, 20)]
    if NUMERIC[test][0] == "stop":
        edges = [e for e in edges if e < LIMIT_S] + [LIMIT_S]
    return np.unique(edges)


def finer(test, mu, S, w, bins=100):
    """A cut of its own, for comparison: even steps over all that can be read."""
    low, high = (mu - 5 * np.sqrt(S)).min(), (mu + 5 * np.sqrt(S)).max()
    edges = np.linspace(low, high, 20 * bins)
    return np.unique(np.append(edges[edges < LIMIT_S], LIMIT_S)) if NUMERIC[test][0] == "stop" else edges


def outcome_chances(posterior, test, cut):
    """cells x outcomes"""
    cells = posterior.cells
    if test in OUTCOMES:
        return cells.tables[test]
    mu, S, _ = posterior.predicted(test)
    edges = cut(test, mu, S, posterior.weights())
    sd = np.sqrt(S)[:, None]
    below = np.column_stack([np.zeros(cells.n), ndtr((edges[None, :] - mu[:, None]) / sd), np.ones(cells.n)])
    kind = NUMERIC[test][0]
    low, high = SPAN[kind]
    wild = np.concatenate([[0.0], np.clip((edges - low) / (high - low), 0, 1), [1.0]])
    if kind == "stop":
        wild = np.append(0.5 * wild[:-1], 1.0)  # half is "not stopped", above the last edge
    eps = np.where(cells.unlisted, posterior.eps(test), 0.0)[:, None]
    return np.diff((1 - eps) * below + eps * wild[None, :], axis=1)


def bits(posterior, test, cut=cut_at):
    """Mutual information of class and outcome, by adding up every class and every outcome."""
    w, p = posterior.weights(), outcome_chances(posterior, test, cut)
    joint = np.array([(w[:, None] * p)[posterior.cells.cls == k].sum(0) for k in range(len(CLASSES))])
    classes, outcomes = joint.sum(1), joint.sum(0)
    total = 0.0
    for k in range(joint.shape[0]):
        for o in range(joint.shape[1]):
            if joint[k, o] > 0:
                total += joint[k, o] * np.log2(joint[k, o] / (classes[k] * outcomes[o]))
    return float(total)


def proposals(posterior, state, taken):
    """[(test, bits, minutes)] best rate first."""
    warm_enough = lambda t: not t.endswith(".frost") or state.get("coldMorning") or state.get("temperature") == "frost"
    out = [(t, bits(posterior, t), minutes(t, state)) for t in ALL_TESTS if t not in taken and warm_enough(t)]
    return sorted([o for o in out if o[1] >= LEAST_BITS], key=lambda o: -o[1] / o[2])
