"""How checks split the lists of ten complaints, without src: every set of checks for every cause, and the quickest order by trying
every order. The table is written out anew, each cause with its own answer to each check (common practice, no source).
Times and pressures come from the second model (engagement.py, question-keys.py).

Run: python3 tests/truth/complaints.py   (needs numpy, scipy; rewrites complaints.json beside it)
"""
import importlib.util
import json
import os
from fractions import Fraction
from itertools import combinations, permutations

from engagement import Run, T_SELECT
from engagement_requests import on, request

here = os.path.dirname(os.path.abspath(__file__))
spec = importlib.util.spec_from_file_location("keys", os.path.join(here, "..", "content", "question-keys.py"))
keys = importlib.util.module_from_spec(spec)
spec.loader.exec_module(keys)

# Complaint: causes, then check: minutes and a letter for what each cause gives, in the order of the causes.
TABLE = {
    "lateCold": ("drainBack hardLip frost lowLevel filter",
                 {"twice": (5, "abbbb"), "reverse": (10, "babbb"), "sister": (20, "babaa"), "level": (30, "bbbab")}),
    "harsh": ("idleHigh learnLost noCurrent stuckValve play",
              {"idle": (5, "abbbb"), "learned": (10, "babbb"), "current": (20, "bbabb"), "line": (45, "bbaab")}),
    "flare": ("comingLeak accumulator comingPlates goingEarly falseSpeed",
              {"learned": (10, "aaabb"), "speeds": (15, "bbbba"), "warmth": (30, "aabbb"), "taps": (60, "aacbc")}),
    "shudder": ("misfire fluid lining tire mount",
                {"misfire": (10, "abbbb"), "gear": (10, "bbbab"), "unlocked": (15, "baabb"), "fluid": (90, "babbb")}),
    "noReverse": ("range boost leak valve pack",
                  {"range": (10, "abbbb"), "line": (45, "aabbb"), "tap": (60, "cbcca"), "air": (180, "bbabb")}),
    "oneGear": ("seal rings valve hole plates",
                {"reverse": (10, "abbbb"), "solenoid": (60, "bbabb"), "line": (45, "aaaaa"), "tap": (75, "cccba")}),
    "hot": ("falseTemp cooler neverLocks seal load",
            {"hand": (10, "abbbb"), "flow": (15, "babbb"), "log": (20, "ccabc"), "light": (45, "bbbba")}),
    "whine": ("bearing belt lowLevel filter pump",
              {"park": (5, "abbbb"), "listen": (10, "babbb"), "line": (20, "bbbba"), "level": (30, "bbabb")}),
    "stuck": ("supply ground plug range seal",
              {"codes": (10, "aabcd"), "supply": (20, "abbbb"), "ground": (10, "babbb"), "plug": (20, "bbabb")}),
    "code": ("battery floor dropout wheel seal",
             {"frame": (10, "abbbb"), "stand": (10, "babbb"), "harness": (20, "bbabb"), "gears": (45, "ddbac")}),
}


def left(causes, checks, taken, cause):
    i = causes.index(cause)
    return [other for j, other in enumerate(causes) if all(checks[key][1][j] == checks[key][1][i] for key in taken)]


def minutes_of(checks, order, causes, cause):
    """Follow an order of checks, leaving out what cannot change the list; stop where nothing can."""
    taken, spent = [], 0
    for key in order:
        names = left(causes, checks, taken, cause)
        if len({checks[key][1][causes.index(name)] for name in names}) > 1:
            taken.append(key)
            spent += checks[key][0]
    return spent


def best(checks, causes, names, spare):
    """Mean minutes of the best tree on these names: each heap may go on with another check."""
    choices = []
    for key in spare:
        heaps = {}
        for name in names:
            heaps.setdefault(checks[key][1][causes.index(name)], []).append(name)
        if len(heaps) > 1:
            rest = sum(Fraction(len(heap), len(names)) * best(checks, causes, heap, spare - {key})[0] for heap in heaps.values())
            choices.append((checks[key][0] + rest, key))
    return min(choices) if choices else (Fraction(0), None)


def mean_begun(checks, causes, first):
    heaps = {}
    for name in causes:
        heaps.setdefault(checks[first][1][causes.index(name)], []).append(name)
    spare = frozenset(checks) - {first}
    return checks[first][0] + sum(Fraction(len(heap), len(causes)) * best(checks, causes, heap, spare)[0] for heap in heaps.values())


def splits():
    out = {}
    for name, (causes, checks) in TABLE.items():
        causes = causes.split()
        sets = [list(s) for n in range(5) for s in combinations(checks, n)]
        out[name] = {
            "left": {" ".join(s): {cause: left(causes, checks, s, cause) for cause in causes} for s in sets},
            "best_min": float(best(checks, causes, causes, frozenset(checks))[0]),
            "begun_min": {key: float(mean_begun(checks, causes, key)) for key in checks},
            # One order for all causes cannot beat the best tree, and here none has to bend.
            "order_min": min(sum(minutes_of(checks, order, causes, c) for c in causes) / len(causes) for order in permutations(checks)),
            "fewest": min(len(s) for s in sets if len({tuple(left(causes, checks, s, c)) for c in causes})
                          == len({tuple(left(causes, checks, list(checks), c)) for c in causes})),
        }
    return out


def stops(temp, rng, **faults):
    run = Run(request(temp, rng, "electronic", **faults)).solve()
    return round(run.marks["turbineBelow50_s"] - T_SELECT, 4)


def tap(temp, circuit, of=None, **faults):
    return round(keys.steady(temp, keys.IDLE, [circuit], faults)[of or circuit], 3)


if __name__ == "__main__":
    frosty = {"hardLip": {"hardLip": on("forward", 1.0)}, "frost": {}, "lowLevel": {"lowFluid": 0.8}, "filter": {"filter": 0.28}}
    crack, rings, valve, hole = {"transferSeal": 0.625}, {"sealingRings": on("forward", 0.25)}, {"clutchControl": on("forward", 0.6)}, {"openPort": on("forward", 0.7)}
    slipping = {"seal": crack, "rings": rings, "valve": valve, "hole": hole, "plates": {}}
    plug = {"openPort": on("reverse", 0.7)}
    out = {
        "splits": splits(),
        "frost_s": {name: [stops(0, rng, **faults) for rng in ("drive", "reverse")] for name, faults in frosty.items()},
        "reverse_s": {name: stops(70, "reverse", **slipping[name]) for name in slipping},
        "tap_kPa": {name: [tap(temp, "forward", **faults) for temp in (20, 100)] for name, faults in slipping.items()},
        "line_kPa": {name: tap(100, "forward", "line", **faults) for name, faults in slipping.items()},
        "plug_kPa": [tap(100, "reverse", "line", **plug), tap(100, "reverse", **plug)],
    }
    with open(os.path.join(here, "complaints.json"), "w") as f:
        json.dump(out, f)
        f.write("\n")
