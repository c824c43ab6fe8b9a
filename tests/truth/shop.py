"""Comebacks and a shelf, played car by car and day by day with chance; nothing of src/shop is read.

Run: python3 tests/truth/shop.py   (standard library alone, 7 s; rewrites shop.json beside it)
"""
import json
import os
import random

here = os.path.dirname(os.path.abspath(__file__))


def batches(access, extra, price, rate, beside, left, renewed, cars=20, runs=60_000):
    """Hours of the shop for batches of cars, and how many batches saw no comeback."""
    out = {"left": 0.0, "renewed": 0.0, "noneLeft": 0, "noneRenewed": 0}
    for _ in range(runs):
        for name, chance, work in (("left", left, 0.0), ("renewed", renewed, extra + price / rate)):
            back = sum(random.random() < chance for _ in range(cars))
            out[name] += cars * work + back * (access + beside / rate)
            out["none" + name.capitalize()] += back == 0
    return {name: value / runs for name, value in out.items()}


def shelf(keep, a_year, days, years=40_000):
    """Orders one for each one used; cars that find none wait in line. The wait varies about its mean, as real ones do."""
    now, end = 0.0, 365.0 * years
    due, on_shelf, waiting = [], keep, 0
    served = cars = 0
    held = 0.0
    gap = 365.0 / a_year
    while now < end:
        next_car = now + random.expovariate(1 / gap)
        while due and due[0] <= next_car:
            at = due.pop(0)
            held += on_shelf * (at - now)
            now = at
            if waiting:
                waiting -= 1
            else:
                on_shelf += 1
        held += on_shelf * (next_car - now)
        now = next_car
        cars += 1
        if on_shelf:
            on_shelf -= 1
            served += 1
        else:
            waiting += 1
        # Orders may overtake each other: each has a wait of its own, half to one and a half of the mean.
        due.append(now + days * random.uniform(0.5, 1.5))
        due.sort()
    return {"found": served / cars, "lying": held / now}


if __name__ == "__main__":
    random.seed(2718)
    jobs = [
        {"access": 6, "extra": 0.1, "price": 10, "rate": 100, "beside": 0, "left": 0.08, "renewed": 0.02},
        {"access": 6, "extra": 0.1, "price": 100, "rate": 100, "beside": 0, "left": 0.08, "renewed": 0.02},
        {"access": 14, "extra": 1, "price": 180, "rate": 90, "beside": 400, "left": 0.35, "renewed": 0.04},
    ]
    shelves = [(1, 26, 14), (3, 26, 14), (2, 26, 7), (5, 52, 14), (1, 2, 14), (0, 12, 10), (4, 40, 30)]
    answer = {
        "jobs": [{"asked": job, **batches(**job)} for job in jobs],
        "shelves": [{"keep": k, "aYear": y, "days": d, **shelf(k, y, d)} for k, y, d in shelves],
    }
    with open(os.path.join(here, "shop.json"), "w") as out:
        json.dump(answer, out, indent=1)
        out.write("\n")
