#!/usr/bin/python3
"""Rival of src/log: reads the three example logs and works out, from the definitions in README.md alone,
when each range was selected, the interval in which the turbine stood, the largest slip of each take-off, and the ratios.
Standard library only. Rewrites log.json:

    /usr/bin/python3 tests/truth/log.py
"""

import csv
import json
import statistics
from pathlib import Path

HERE = Path(__file__).parent
LOGS = HERE.parent.parent / "public" / "logs"
RATIO = {"drive": 4.0, "reverse": 3.4}
BLANK = {"", "---", "N/A"}


def number(cell, comma):
    cell = cell.strip()
    if cell in BLANK:
        return None
    return float(cell.replace(",", ".") if comma else cell)


def fahrenheit(value):
    return (value - 32) * 5 / 9


def load(name, delimiter, head, comma, time_scale, columns, letters, temperature=lambda t: t):
    text = (LOGS / name).read_bytes().decode("utf-8-sig")
    rows = list(csv.reader(text.splitlines(), delimiter=delimiter))[head:]
    out = []
    for row in rows:
        get = lambda key: number(row[columns[key]], comma) if key in columns else None
        out.append(
            {
                "t": get("t") * time_scale,
                "turbine": get("turbine"),
                "output": get("output"),
                "range": letters.get(row[columns["range"]].strip()),
                "temp": None if get("temp") is None else temperature(get("temp")),
                "brake": None
                if "brake" not in columns
                else row[columns["brake"]].strip() in ("ON", "1"),
                "throttle": get("throttle"),
            }
        )
    start = out[0]["t"]
    for row in out:
        row["t"] -= start
    return out


def drop_gone(rows, key):
    """A reading under 30 between two of 200 or more, each a quarter of a second away or less, is none."""
    gone = [
        i
        for i in range(1, len(rows) - 1)
        if rows[i][key] < 30
        and rows[i - 1][key] >= 200
        and rows[i + 1][key] >= 200
        and rows[i]["t"] - rows[i - 1]["t"] <= 0.25
        and rows[i + 1]["t"] - rows[i]["t"] <= 0.25
    ]
    for i in gone:
        rows[i][key] = None
    return [rows[i]["t"] for i in gone]


def selections(rows):
    for i in range(1, len(rows)):
        now, was = rows[i]["range"], rows[i - 1]["range"]
        if now in ("drive", "reverse") and was in ("park", "neutral"):
            end = i
            while (
                end + 1 < len(rows)
                and rows[end + 1]["range"] == now
                and rows[end + 1]["t"] - rows[end]["t"] <= 2
                and rows[end + 1]["t"] - rows[i]["t"] <= 12
            ):
                end += 1
            yield i, end


def stop(rows, first, end):
    """(shortest, longest), or how long it was watched without standing."""
    selected_after, selected_by = rows[first - 1]["t"], rows[first]["t"]
    turned = []
    watched = 0
    for row in rows[first : end + 1]:
        if row["output"] is not None and row["output"] > 20:
            break
        watched = row["t"] - selected_by
        if row["turbine"] is None:
            continue
        if row["turbine"] < 30:
            still = [r for r in turned if r["turbine"] == turned[-1]["turbine"]] if turned else []
            # Only the unbroken run of the last value counts.
            run = 0
            for r in reversed(turned):
                if r["turbine"] != turned[-1]["turbine"]:
                    break
                run += 1
            since = turned[-run]["t"] if still else selected_by
            return {"low": since - selected_by, "high": row["t"] - selected_after}
        turned.append(row)
    return {"watched": watched, "lowest": min(r["turbine"] for r in turned)}


def takeoff(rows, first, end):
    part = rows[first : end + 1]
    if part[0]["brake"] is not None:
        held = next(i for i, r in enumerate(part) if r["brake"])
        return next(r["t"] for r in part[held:] if not r["brake"])
    return next(r["t"] for r in part if r["throttle"] >= 2)


def slip(rows, first, end):
    begun = takeoff(rows, first, end)
    ratio = RATIO[rows[first]["range"]]
    known = [
        (r["t"] - begun, abs(r["turbine"] - ratio * r["output"]))
        for r in rows[first : end + 1]
        if r["turbine"] is not None and r["output"] is not None
    ]
    inside = [j for j, (after, _) in enumerate(known) if 1 - 1e-9 <= after <= 4 + 1e-9]
    k = max(inside, key=lambda j: (known[j][1], -j))
    peak = known[k][1]
    beside = [abs(peak - known[j][1]) for j in (k - 1, k + 1) if 0 <= j < len(known)]
    return {"peak": peak, "high": peak + max(beside) / 2, "rows": len(inside), "begun": begun}


def temperature(rows, first):
    for row in reversed(rows[: first + 1]):
        if row["temp"] is not None:
            return row["temp"]
    return None


def ratios(rows):
    """Plain median over steady seconds, another road to it than a weighted one: a check to half of one percent."""
    found = {}
    for key in ("drive", "reverse"):
        seen = []
        for a, b in zip(rows, rows[1:]):
            if b["range"] != key or None in (a["turbine"], b["turbine"], a["output"], b["output"]):
                continue
            if b["t"] - a["t"] > 0.5 or min(a["output"], b["output"]) < 300:
                continue
            if abs(b["output"] / a["output"] - 1) < 0.005:
                seen.append(b["turbine"] / b["output"])
        if seen:
            found[key] = statistics.median(seen)
    return found


FILES = {
    "practice-1": dict(
        delimiter=",",
        head=1,
        comma=False,
        time_scale=1,
        columns=dict(t=0, turbine=2, output=3, range=4, temp=5, brake=6, throttle=7),
        letters={"P": "park", "R": "reverse", "N": "neutral", "D": "drive"},
        temperature=fahrenheit,
    ),
    "practice-2": dict(
        delimiter=";",
        head=5,
        comma=True,
        time_scale=1,
        columns=dict(t=0, turbine=2, output=3, range=4, temp=5, throttle=6),
        letters={"Park": "park", "Reverse": "reverse", "Neutral": "neutral", "Drive": "drive"},
    ),
    "practice-3": dict(
        delimiter="\t",
        head=1,
        comma=False,
        time_scale=0.001,
        columns=dict(t=0, turbine=2, output=3, range=4, temp=5, brake=6),
        letters={"P": "park", "R": "reverse", "N": "neutral", "D": "drive"},
    ),
}

answers = {}
for name, how in FILES.items():
    rows = load(f"{name}.csv", **how)
    gone = drop_gone(rows, "turbine")
    answers[name] = {
        "rows": len(rows),
        "turbineGone": gone,
        "ratios": ratios(rows),
        "engagements": [
            {
                "range": rows[first]["range"],
                "at": rows[first]["t"],
                "temp": temperature(rows, first),
                "stop": stop(rows, first, end),
                "slip": slip(rows, first, end),
            }
            for first, end in selections(rows)
        ],
    }
(HERE / "log.json").write_text(json.dumps(answers, indent=1) + "\n")
