"""What the questions that vary ask for, computed without src: by hand, by tests/truth (the model from the paper alone) and SciPy.

Run: python3 tests/content/variation-keys.py   (needs numpy, scipy and Node; rewrites variation-keys.json beside it)
Node is asked for one thing: in which settings the questions are put. Every number is worked out here, the wrong rules too:
what a mistake is called stands in the site, and where it leads is a sum like any other.
"""
import json
import os
import subprocess
import sys

here = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, here)
from variation_sums import families  # noqa: E402


def asked():
    root = os.path.join(here, "..", "..")
    node = os.path.join(root, "node_modules", ".bin", "node")
    script = os.path.join(here, "variation-settings.ts")
    out = subprocess.run([node if os.path.exists(node) else "node", script], cwd=root, capture_output=True, check=True, text=True)
    return json.loads(out.stdout)


def rounded(value):
    if isinstance(value, dict):
        return {k: rounded(v) for k, v in value.items()}
    return value if isinstance(value, bool) else float(f"{value:.10g}")


def worked(family, setting):
    """Numbers by name, wrong values by number and rule, and which options are true."""
    made = families[family](**setting)
    numbers, wrong = {}, {}
    for name, value in made.items():
        if name == "truth":
            continue
        numbers[name], rules = value if isinstance(value, tuple) else (value, None)
        if rules:
            wrong[name] = rules
    return rounded({"numbers": numbers, "wrong": wrong, "truth": made.get("truth", {})})


if __name__ == "__main__":
    keys = {q["question"]: {i: worked(q["family"], s) for i, s in q["settings"].items()} for q in asked()}
    with open(os.path.join(here, "variation-keys.json"), "w") as out:
        out.write("{\n")
        out.write(",\n".join(f'  {json.dumps(q)}: {json.dumps(v, ensure_ascii=False)}' for q, v in sorted(keys.items())))
        out.write("\n}\n")
