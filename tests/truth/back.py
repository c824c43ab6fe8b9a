"""The way back together, without src: every order of the job card by enumeration, and what the car reads by the second model.

Run: python3 tests/truth/back.py   (needs numpy, scipy; rewrites back.json beside it)
What has to be done before a line is written out in full here, near and far, by the trade's reasons (common practice, no source).
"""
import importlib.util
import json
import os

here = os.path.dirname(os.path.abspath(__file__))
spec = importlib.util.spec_from_file_location("keys", os.path.join(here, "..", "content", "question-keys.py"))
keys = importlib.util.module_from_spec(spec)
spec.loader.exec_module(keys)

CASE = ["clean", "lip", "rings", "drums"]
BODY = CASE + ["air", "bridge", "balls", "body"]
# Every line that is out of sight, out of reach or spoiled once this one is done.
ALL_BEFORE = {
    "clean": [],
    "lip": ["clean"],                       # the piston covers its bore
    "rings": ["clean"],                     # the rings cover theirs
    "balls": ["clean"],
    "drums": ["clean", "lip", "rings"],     # nobody feels a lip or a gap in the case
    "air": CASE,                            # a piston without its drum flies
    "bridge": CASE + ["air"],               # it sits where the nozzle has to
    "body": CASE + ["air", "bridge", "balls"],
    "pan": BODY,
    "fill": BODY + ["pan"],
    "level": BODY + ["pan", "fill"],
    "relearn": BODY + ["pan", "fill", "level"],
    "drive": BODY + ["pan", "fill", "level", "relearn"],
}


def walk():
    """All cards that can come about, what each lets be signed next, and how many whole orders there are."""
    ways = {frozenset(): 1}
    cards = {}
    layer = [frozenset()]
    for _ in range(len(ALL_BEFORE)):
        after = {}
        for done in layer:
            free = [s for s in ALL_BEFORE if s not in done and all(b in done for b in ALL_BEFORE[s])]
            cards["+".join(sorted(done))] = sorted(free)
            for s in free:
                more = done | {s}
                after[more] = after.get(more, 0) + ways[done]
        ways, layer = after, list(after)
    return cards, sum(ways.values())


GONE_WRONG = {
    "none": {},
    "lip": {"pistonSeal": {"severity": 0.7, "circuit": "forward"}},
    "rings": {"sealingRings": {"severity": 0.2, "circuit": "forward"}},
    "balls": {"openPort": {"severity": 0.8, "circuit": "forward"}},
    "bridge": {"transferSeal": 0.25 / 0.4},
}
# Ball and bridge lie past the ports that the nozzle sits on.
IN_THE_CASE = ("none", "lip", "rings")
FIRM = 2 * (1500 / 170) ** 2  # N m on the clutch at 1500 rpm, turbine standing: model.md 6


def reads(name):
    faults = GONE_WRONG[name]
    out = {}
    for when, temp in (("cold", 20), ("hot", 100)):
        out[when] = {}
        for circuit in ("forward", "reverse"):
            idle = keys.steady(temp, keys.IDLE, (circuit,), faults)
            load = keys.steady(temp, keys.LOAD, (circuit,), faults)
            out[when][circuit] = {"kPa": idle[circuit], "pulls": bool(load[circuit + "-holds"] >= FIRM)}
    seen = faults if name in IN_THE_CASE else {}
    out["air"] = keys.air_test({"circuit": "forward", "faults": seen})["held_percent"]
    return out


if __name__ == "__main__":
    cards, orders = walk()
    with open(os.path.join(here, "back.json"), "w") as out:
        json.dump({"orders": orders, "cards": cards, "reads": {name: reads(name) for name in GONE_WRONG}}, out)
        out.write("\n")
