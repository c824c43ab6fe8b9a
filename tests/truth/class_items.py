"""A class of 48 who answered 12 questions, some of them not all, and what classical test theory says of each question.

The coefficient is worked out as the difference of two means, (M1 - M0) / s * sqrt(p q), which is the point-biserial
correlation as textbooks print it, with s the standard deviation of the whole; src/quiz/class sums products instead.

Run: python3 tests/truth/class_items.py   (standard library alone, 1 s; rewrites class_items.json beside it)
"""
import json
import math
import os
import random
import statistics

here = os.path.dirname(os.path.abspath(__file__))
random.seed(20261129)
OPTIONS = ["a", "b", "c"]  # "a" is right

learners = []
for n in range(48):
    able = random.gauss(0, 1)
    answers = []
    for q in range(12):
        if q % 3 == 2 and random.random() < 0.2:
            continue
        hard = (q - 6) / 3
        right = random.random() < 1 / (1 + math.exp(hard - able))
        option = "a" if right else random.choice(OPTIONS[1:])
        answers.append({"item": f"q{q}", "option": option, "certainty": random.choice([1, 2, 3])})
    learners.append({"name": f"Learner {n + 1}", "answers": answers})

# A question that few were asked, and one that everybody had right.
for n, learner in enumerate(learners):
    if n < 29:
        learner["answers"].append({"item": "few", "option": "a" if n % 2 else "b", "certainty": 2})
    learner["answers"].append({"item": "easy", "option": "a", "certainty": 3})

items = {}
for name in [f"q{q}" for q in range(12)] + ["few", "easy"]:
    scores, rests, chosen, sure = [], [], {}, 0
    for learner in learners:
        mine = [a for a in learner["answers"] if a["item"] == name]
        if not mine:
            continue
        others = [a["option"] == "a" for a in learner["answers"] if a["item"] != name]
        scores.append(mine[0]["option"] == "a")
        rests.append(statistics.fmean(others))
        chosen[mine[0]["option"]] = chosen.get(mine[0]["option"], 0) + 1
        sure += mine[0]["certainty"] == 3 and mine[0]["option"] != "a"
    p = statistics.fmean(scores)
    r = None
    if len(scores) >= 30 and 0 < p < 1:
        of_right = statistics.fmean(rest for rest, score in zip(rests, scores) if score)
        of_wrong = statistics.fmean(rest for rest, score in zip(rests, scores) if not score)
        r = (of_right - of_wrong) / statistics.pstdev(rests) * math.sqrt(p * (1 - p))
    items[name] = {
        "answers": len(scores),
        "right": sum(scores),
        "certainAndWrong": sure,
        "p": p if len(scores) >= 30 else None,
        "itemRest": r,
        "chosen": chosen,
    }

with open(os.path.join(here, "class_items.json"), "w", encoding="utf-8") as file:
    json.dump({"learners": learners, "items": items}, file, indent=1)
    file.write("\n")
