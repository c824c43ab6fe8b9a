"""Thirty-two requests of kind `diagnosis` answered from the papers alone.

Run: /usr/bin/python3 tests/truth/diagnosis.py   (needs numpy, scipy; rewrites diagnosis.json)
  --check   answers the worked examples that came with the paper instead, and prints the differences
"""
import json
import os
import sys

from diagnosis_bits import proposals
from diagnosis_leak import estimate
from diagnosis_posterior import Cells, Posterior
from diagnosis_requests import REQUESTS
from sheet import sheet_of

HERE = os.path.dirname(os.path.abspath(__file__))
LONG = {"linePressure": "line", "clutchPressure": "clutch"}
LEAK_FROM = 0.2
SHORT = {v: k for k, v in LONG.items()}


def warmth_of(temp_c):
    return "frost" if temp_c <= 5 else "cold" if temp_c <= 30 else "hot"


def id_of(reading):
    parts = [LONG.get(reading["test"], reading["test"])]
    parts += [str(reading[k]) for k in ("range", "circuit", "engine_rpm") if k in reading]
    if "temperature_C" in reading:
        parts.append(warmth_of(reading["temperature_C"]))
    return ".".join(parts)


def named(test):
    kind, *at = test.split(".")
    out = {"test": SHORT.get(kind, kind)}
    if at and at[-1] in ("frost", "cold", "hot"):
        out["temperature_C"] = {"frost": 0, "cold": 20, "hot": 95}[at.pop()]
    if at:
        out["circuit" if kind in ("clutch", "airTest", "airWhere", "solenoidCurrent") else "range"] = at.pop(0)
    if at:
        out["engine_rpm"] = int(at[0])
    return out


CELLS = {}


def cells_of(request):
    sheet = sheet_of(request)
    key = json.dumps(sheet, sort_keys=True)
    if key not in CELLS:
        CELLS[key] = Cells(sheet)
    return CELLS[key]


def posterior_of(request):
    p = Posterior(cells_of(request), request.get("priors", {}))
    for r in request["readings"]:
        p.take(id_of(r), r["value"], r.get("temperature_C"))
    return p


def answer(request):
    p = posterior_of(request)
    taken = {id_of(r) for r in request["readings"]}
    out = {"faults": p.faults(), "next": [{**named(t), "bits": b, "minutes": m} for t, b, m in proposals(p, request.get("state", {}), taken)],
           "fit": p.fit()}
    sheet = sheet_of(request)
    taps = [r for r in request["readings"] if r["test"] == "clutchPressure" and r["circuit"] in sheet["seal"]["circuits"]]
    if len(taps) >= 2 and next(f["probability"] for f in out["faults"] if f["fault"] == "transferSeal") >= LEAK_FROM:
        out["leak"] = estimate(sheet, taps)
        out["leakFinerGrid"] = estimate(sheet, taps, fine=True)
    return out


def check():
    with open(os.path.join(HERE, "diagnosis-examples.json")) as f:
        examples = [e for e in json.load(f) if "error" not in e["answer"]]
    for e in examples:
        mine = answer(e["request"])
        told = e["answer"]
        here = {f["fault"]: f for f in mine["faults"]}
        worst = sorted(((abs(here[f["fault"]]["probability"] - f["probability"]), f["fault"], here[f["fault"]]["probability"], f["probability"]) for f in told["faults"]), reverse=True)
        print(e["name"])
        print("  probabilities", [(round(d, 5), n, round(a, 5), round(b, 5)) for d, n, a, b in worst[:4]])
        print("  severities", [(f["fault"], [round(x, 3) for x in here[f["fault"]]["severity"]], f["severity"]) for f in told["faults"] if "severity" in f and "severity" in here[f["fault"]]])
        key = lambda o: json.dumps({k: v for k, v in o.items() if k not in ("bits", "minutes")}, sort_keys=True)
        a, b = {key(o): o for o in mine["next"]}, {key(o): o for o in told["next"]}
        print("  next: only mine", [(k, round(a[k]["bits"], 3)) for k in a.keys() - b.keys()], "only told", [(k, b[k]["bits"]) for k in b.keys() - a.keys()])
        print("  bits differ by", [round(x, 3) for x in sorted((a[k]["bits"] - b[k]["bits"] for k in a.keys() & b.keys()), key=abs)[-5:]],
              "minutes", [(k, a[k]["minutes"], b[k]["minutes"]) for k in a.keys() & b.keys() if a[k]["minutes"] != b[k]["minutes"]])
        print("  fit", {k: round(v, 4) if isinstance(v, float) else v for k, v in mine["fit"].items()}, told["fit"])


def rounded(x):
    if isinstance(x, dict):
        return {k: rounded(v) for k, v in x.items()}
    if isinstance(x, list):
        return [rounded(v) for v in x]
    return float(f"{x:.7g}") if isinstance(x, float) else x


def freeze():
    out = []
    for name, request in REQUESTS.items():
        a = answer(request)
        out.append(json.dumps({"name": name, "request": request, "answer": rounded(a)}))
        top = [(f["fault"], round(float(f["probability"]), 4)) for f in a["faults"][:3]]
        print(f"{name:30s}", top, {k: v for k, v in a["fit"].items()}, a["next"][:1], "leak" in a, flush=True)
    with open(os.path.join(HERE, "diagnosis.json"), "w") as f:
        f.write("[\n" + ",\n".join(out) + "\n]\n")


if __name__ == "__main__":
    check() if "--check" in sys.argv else freeze()
