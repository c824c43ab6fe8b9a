"""The sums behind variation-keys.py, family by family. A family returns its numbers by name, (value, wrong values) where it is asked."""
import math
import os
import sys

from scipy.optimize import brentq

here = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(here, "..", "truth"))
from air import answer as air_test  # noqa: E402
from air import slots_and_holes  # noqa: E402
from diagnosis_requests import SECOND  # noqa: E402
from nozzle import OUTSIDE, nozzle, slot  # noqa: E402
from plant import Plant  # noqa: E402
from rival import GENERIC, Fluid, Gap, Hole, density  # noqa: E402
from sheet import TRAINING, laid_over  # noqa: E402

LMIN = 60000.0
SHEET = {"first": TRAINING, "second": laid_over(TRAINING, SECOND)}
RATIO = {box: sheet["ratios"] for box, sheet in SHEET.items()}


def plant(box, temp_c, applied, faults=None, fluid=None):
    request = {"temperature_C": temp_c, "faults": faults or {}, "transmission": {} if box == "first" else SECOND}
    return Plant({**request, **({"fluid": fluid} if fluid else {})}, list(applied))


def steady(box, temp_c, circuit="forward", point="idle", faults=None, fluid=None, given=None):
    """Nested brentq: clutch inside line. Returns kPa and L/min. In Reverse both commands are boosted."""
    c, sheet = SHEET[box]["commands"], SHEET[box]
    boost = c["reverseFactor"] if circuit == "reverse" else 1.0
    rpm, line, command = {"idle": (sheet["idle_rpm"], boost * c["idleLine_kPa"], boost * c["idleClutch_kPa"]),
                          "load": (c["load_rpm"], boost * c["loadLine_kPa"], boost * c["loadClutch_kPa"])}[point]
    rpm, line, command = given(rpm, line, command) if given else (rpm, line, command)
    p, asked = plant(box, temp_c, (circuit,), faults, fluid), command * 1e3

    def clutch(pl):
        top = min(asked * p.holds_back[circuit], pl)
        spare = lambda pc: p.feed_flow(circuit, pl, pc, asked) - p.clutch_leak(circuit, pc)
        return top if spare(top) >= 0 else brentq(spare, 0, top, xtol=1e-7)

    balance = lambda pl: p.pump(rpm, pl) - p.line_leak(pl) - p.clutch_leak(circuit, clutch(pl))
    wanted = line * 1e3 * p.line_factor
    pl = wanted if balance(wanted) >= 0 else brentq(balance, 0, wanted, xtol=1e-7)
    pc = clutch(pl)
    return {"line": pl / 1e3, "clutch": pc / 1e3, "pump": p.pump(rpm, pl) * LMIN, "intake": p.pump_ideal(rpm) * LMIN,
            "clearances": p.line_parts[0].flow(pl) * LMIN, "bleed": p.line_parts[1].flow(pl) * LMIN,
            "leak": p.clutch_leak(circuit, pc) * LMIN, "rings": p.leaks[circuit][0].flow(pc) * LMIN,
            "left": max(0.0, balance(pl)) * LMIN}


def tap(box, temp_c, circuit="forward", faults=None, **more):
    return steady(box, temp_c, circuit, faults=faults, **more)["clutch"]


def in_seal(mm):
    return {"transferSeal": mm / 0.4}


def at(circuit, severity):
    return {"severity": severity, "circuit": circuit}


SEALED, SPARED, HURT = ({"first": "forward", "second": "reverse"}, {"first": "high", "second": "forward"}, {"first": "forward", "second": "high"})


# what-slip-is: model.md 8
def slip_in_gear(box, gear, output, slip):
    r, other = RATIO[box][gear], RATIO[box]["third" if gear == "first" else "first"]
    turbine = int(r * output + slip + 0.5)
    return {"turbine": turbine, "slip": (turbine - r * output, {
        "forgot-ratio": turbine - output, "divided": turbine - output / r, "other-ratio": abs(turbine - other * output)})}


def belt_slip(pulleys, blade, slip):
    motor = pulleys * blade + slip
    return {"motor": motor, "slip": (motor - pulleys * blade, {
        "forgot-ratio": motor - blade, "at-the-blade": motor / pulleys - blade})}


def slip_limit(turbine):
    return {"limit": (max(80, 0.03 * turbine), {"floor-only": 80, "added": 80 + 0.03 * turbine, "engagement-limit": 100})}


def pressure_raised(command):
    return {"raised": (1.3 * command, {"raise-alone": 0.3 * command, "by-130": 2.3 * command})}


def false_reading(box, gear, reads):
    return {"slip": (reads - RATIO[box][gear] * 0, {"true-slip": 0, "times-ratio": reads * RATIO[box][gear]})}


# do-it-together, the-next-best-test, other-complaints: by hand; Shannon's sum
def halvings(p):
    return -(p * math.log2(p) + (1 - p) * math.log2(1 - p))


def worth_of_a_part(access, left, renewed):
    return {"worth": (left * access / 100 - renewed * access / 100, {
        "the-rest-alone": renewed * access / 100, "forgot-the-rest": left * access / 100, "whole-access": access})}


def where_it_pays(costs, left, renewed):
    return {"access": (costs / ((left - renewed) / 100), {"forgot-the-rest": costs / (left / 100), "own-cost": costs})}


def bill_of_a_year(cars, part, access, renewed, left):
    return {"bill": (cars * (part + renewed / 100 * access), {
        "comebacks-alone": cars * renewed / 100 * access, "work-alone": cars * part, "left-alone": cars * left / 100 * access})}


def used_meanwhile(aYear, days):
    return {"used": (aYear * days / 365, {"a-week": aYear * 7 / 365, "a-month": aYear / 12}), "every": 365 / aYear}


def served(kept, mean):
    """Found by all who come while fewer than `kept` were used: Poisson, summed term by term."""
    return sum(math.exp(-mean) * mean**k / math.factorial(k) for k in range(kept))


def kept_on_the_shelf(mean):
    keep = next(n for n in range(60) if served(n, mean) >= 0.9)
    return {"keep": (keep, {"average": mean, "one-spare": mean + 1, "four-times": 4 * mean}),
            "found": 100 * served(keep, mean), "found-less": 100 * served(keep - 1, mean)}


def cheap_check_first(cheap, dear, names):
    return {"mean": ((cheap + (names - 1) * (cheap + dear)) / names, {"always-both": cheap + dear, "mean-of-two": (cheap + dear) / 2})}


def halvings_to_one(boxes):
    return {"questions": (math.log2(boxes), {"one-by-one": boxes - 1, "half-of-them": boxes / 2})}


def halvings_in_ten(taken, all, takes):
    return {"worth": halvings(taken / all), "rate": (halvings(taken / all) / takes * 10, {
        "names-taken": taken / all / takes * 10, "whole-halving": 10 / takes})}


def half_in_ten(takes):
    return {"rate": (1 / takes * 10, {"upside": takes / 10, "in-one-minute": 1 / takes})}


def best_for_its_minutes(best, taken, first, second, third):
    rates = {"look": 10 * halvings(taken / 16) / first, "gauge": 10 * 1 / second, "bench": 10 * halvings(6 / 16) / third}
    most = max(rates.values())
    return {**rates, "truth": {name: rate == most for name, rate in rates.items()}}


def what_pays(pays, access, seal, filter, sealSpares, filterSpares):
    seal_pays, filter_pays = sealSpares / 100 * access > seal, filterSpares / 100 * access > filter
    return {"seal-worth": sealSpares / 100 * access, "filter-worth": filterSpares / 100 * access, "truth": {
        "seal": seal_pays and not filter_pays, "filter": filter_pays and not seal_pays,
        "both": seal_pays and filter_pays, "neither": not seal_pays and not filter_pays}}


# codes-are-questions, live-data, proving-the-repair, what-slip-is: by hand; JCGM 100, 5.1.2
def frame_slip(box, output, slip):
    r = RATIO[box]["first"]
    turbine = int(r * output + slip + 0.5)
    return {"turbine": turbine, "slip": (turbine - r * output, {"no-ratio": turbine - output, "divided": turbine / r - output})}


def items_on_a_line(line, items):
    return {"each": (line / items, {"unshared": line, "multiplied": line * items})}


def longest_between_rows(step, **rest):
    park, drive, turned, stood = rest["from"], rest["from"] + step, rest["from"] + rest["rows"] * step, rest["from"] + (rest["rows"] + 1) * step
    return {"drive": drive, "turned": turned, "stood": stood,
            "longest": (stood - park, {"first-row": stood - drive, "turning-row": turned - drive})}


def stop_in_rows(found, step, limit, **rest):
    park, drive, turned, stood = (rest["from"] + n * step for n in (0, 1, rest["rows"], rest["rows"] + 1))
    least, most = turned - drive, stood - park
    return {"least": least, "most": most, "truth": {
        "in-time": most < limit, "late": least > limit, "open": least <= limit <= most}}


def doubt_of_two(before, after):
    return {"doubt": (math.sqrt(before**2 + after**2), {"added": before + after, "larger": max(before, after), "less": after - before})}


def proved_or_not(found, was, change, before, after):
    doubt = math.sqrt(before**2 + after**2)
    return {"is": was + change, "doubt": doubt, "truth": {
        "risen": change > doubt, "fallen": -change > doubt, "same": abs(change) <= doubt}}


def slip_or_not(found, box, gear, output, slip):
    r = RATIO[box][gear]
    turbine = int(r * output + 0.5) + slip
    real, limit = turbine - r * output, max(80, 0.03 * turbine)
    return {"turbine": turbine, "expected": r * output, "limit": limit, "truth": {
        "sound": abs(real) <= 1, "within": 1 < real <= limit, "over": real > limit}}


# what-pressure-does, how-hard-the-converter-pushes: model.md 5 and 6 by hand
def part(box, circuit):
    s = SHEET[box]
    c = {**s["clutch"], **s["clutches"].get(circuit, {})}
    return c["area_cm2"] * 1e-4, c["spring_N"], c["faces"], c["friction"] * c["faces"] * c["radius_mm"] * 1e-3


def force_on_piston(box, circuit, pressure):
    a, spring, faces, _ = part(box, circuit)
    f = pressure * 1e3 * a
    return {"force": (f, {"spring-added": f + spring, "spring-taken": f - spring, "each-face": faces * f})}


def press_force(hand, small, large):
    return {"force": (hand / small * large, {"same-force": hand, "upside-down": hand / large * small})}


def torque_held(box, circuit, pressure):
    a, spring, faces, arm = part(box, circuit)
    t = arm * (pressure * 1e3 * a - spring)
    return {"push": pressure * 1e3 * a, "holds": (t, {"forgot-spring": arm * pressure * 1e3 * a, "one-face": t / faces, "diameter": 2 * t})}


def pressure_needed(box, circuit, torque):
    a, spring, _, arm = part(box, circuit)
    return {"lever": 100 * arm, "needed": ((torque / arm + spring) / a / 1e3, {
        "forgot-spring": torque / arm / a / 1e3, "spring-helps": (torque / arm - spring) / a / 1e3})}


def spring_alone(box, circuit, weak):
    a, spring, faces, _ = part(box, circuit)
    p = weak * spring / a / 1e3
    return {"begins": (p, {"doubled": 2 * p, "per-face": p / faces})}


def friction_lost(box, circuit, pressure, left):
    a, spring, _, arm = part(box, circuit)
    t = lambda share_p, share_f: share_f * arm * max(0, share_p * pressure * 1e3 * a - spring)
    return {"sound": t(1, 1), "worn": (t(1, left / 100), {"unchanged": t(1, 1), "less-pressure": t(left / 100, 1)})}


def stall(box, rpm):
    c = SHEET[box]["converter"]
    return c["torqueRatio"] * (rpm / c["capacity"]) ** 2


def torque_standing(box, known, at):
    tr = SHEET[box]["converter"]["torqueRatio"]
    return {"taken": stall(box, known) / tr, "torque": (stall(box, at), {
        "no-ratio": stall(box, at) / tr, "no-square": stall(box, known) * at / known})}


def torque_at_more_speed(box, more, **rest):
    t = stall(box, rest["from"])
    return {"at-idle": t, "torque": (more**2 * t, {"followed": more * t, "unchanged": t})}


def least_stop(spin, holds, push):
    return {"time": (spin / (holds - push), {"held-not-left": spin / holds, "push-alone": spin / push})}


def seen_at_rest(box, turbine):
    r = RATIO[box]["first"]
    return {"slip": (turbine - 0 * r, {"times-ratio": turbine * r, "by-ratio": turbine / r})}


def which_command_holds(enough, box, engine):
    a, spring, _, arm = part(box, "forward")
    needed = (stall(box, engine) / arm + spring) / a / 1e3
    shares = {"low": (1.15, 1.45, 1.8), "middle": (0.8, 1.15, 1.5), "high": (0.6, 0.82, 1.15)}[enough]
    offered = dict(zip(("low", "middle", "high"), (10 * int(s * needed / 10 + 0.5) for s in shares)))
    least = min((p for p in offered.values() if p >= needed))
    return {**offered, "torque": stall(box, engine), "needed": needed, "truth": {k: p == least for k, p in offered.items()}}


def which_stops_first(first, loader, truck, bus, left, more):
    lefts = {"loader": left, "truck": int(left / more + 0.5), "bus": int(left * more + 0.5)}
    times = {k: s / lefts[k] for k, s in (("loader", loader), ("truck", truck), ("bus", bus))}
    return {**{k + "-time": t for k, t in times.items()}, "truth": {k: t == min(times.values()) for k, t in times.items()}}


# hot-fluid-thin-fluid, thin-gap-open-hole: model.md 1, 2 and 3 by the rival's own laws
OILS = {"32": (32, 5.4, 865), "46": (46, 6.8, 870), "68": (68, 8.7, 876), "100": (100, 11.2, 880)}


def oil(name, temp_c):
    v40, v100, rho = OILS[name]
    return Fluid({"kv40_cSt": v40, "kv100_cSt": v100, "density15_kgm3": rho}, temp_c)


def own_fluid(box, temp_c):
    return Fluid(SHEET[box]["fluid"], temp_c)


def hole_leak(mm, kpa, fl):
    return Hole(fl, math.pi / 4 * (mm * 1e-3) ** 2).flow(kpa * 1e3) * LMIN


def dynamic_from_kinematic(fluid, hot):
    f = Fluid(fluid, hot)
    nu, rho = f.nu * 1e6, f.rho / 1e3
    return {"kinematic": nu, "dynamic": (f.mu * 1e3, {"forgot-density": nu, "divided": nu / rho})}


def between_two_numbers(fluid, at):
    v40, v100, _ = GENERIC[fluid]
    return {"between": (Fluid(fluid, at).nu * 1e6, {"straight-line": v40 + (v100 - v40) * (at - 40) / 60, "hot-number": v100})}


def press_oil_warm(at, **rest):
    v40, v100, _ = OILS[rest["oil"]]
    return {"warm": (oil(rest["oil"], at).nu * 1e6, {"straight-line": v40 + (v100 - v40) * (at - 40) / 60, "grade-number": v40})}


def times_thinner(fluid, cold, thins):
    hot = math.floor(10 * cold / thins + 0.5) / 10
    v40, v100, _ = GENERIC[fluid]
    return {"hot": hot, "thinner": (cold / hot, {"other-fluid": v40 / v100, "subtracted": cold - hot, "upside-down": hot / cold})}


def pump_slip(box, wear, warm, hot):
    line = SHEET[box]["commands"]["idleLine_kPa"] * 1e3

    def slip(temp_c):
        p = plant(box, temp_c, (), {"pumpWear": wear})
        return (p.pump(900, 0) - p.pump(900, line)) * LMIN

    thinner = own_fluid(box, warm).mu / own_fluid(box, hot).mu
    return {"warm-slip": slip(warm), "slip": (slip(hot), {
        "root": slip(warm) * math.sqrt(thinner), "upside-down": slip(warm) / thinner, "unchanged": slip(warm)})}


def rings_hot(box, pressure, cold, hot):
    r = SHEET[box]["rings"]
    leak = lambda t: Gap(own_fluid(box, t), r["width_mm"] * 1e-3, r["height_um"] * 1e-6, r["length_mm"] * 1e-3).flow(pressure * 1e3) * LMIN
    a, b = own_fluid(box, cold), own_fluid(box, hot)
    return {"cold-leak": leak(cold), "leak": (leak(hot), {
        "hole-rule": leak(cold) * math.sqrt(a.rho / b.rho), "root": leak(cold) * math.sqrt(a.mu / b.mu), "upside-down": leak(cold) * b.mu / a.mu})}


def through_hole(hole, pressure, a, b):
    before = hole_leak(hole, pressure, a)
    return {"cold-leak": before, "leak": (hole_leak(hole, pressure, b), {
        "gap-rule": before * a.mu / b.mu, "root": before * math.sqrt(a.mu / b.mu)})}


def plug_left_out(box, hole, pressure, cold, hot):
    return through_hole(hole, pressure, own_fluid(box, cold), own_fluid(box, hot))


def scored_seat(hole, pressure, cold, hot, **rest):
    return through_hole(hole, pressure, oil(rest["oil"], cold), oil(rest["oil"], hot))


def crack(box, mm, kpa, temp_c):
    """Leak [L/min] and the share of the pressure that rubbing takes."""
    s = SHEET[box]["seal"]
    g = Gap(own_fluid(box, temp_c), s["width_mm"] * 1e-3, mm * 1e-3, s["length_mm"] * 1e-3)
    q = g.flow(kpa * 1e3)
    return q * LMIN, g.R * q / (kpa * 1e3)


def not_viscous(box, pressure, hot, **rest):
    warm, cool = (crack(box, rest["crack"], pressure, t)[1] for t in (hot, 20))
    return {"hot-share": 100 * warm, "rest": (pressure * (1 - warm), {
        "viscous-part": pressure * warm, "cold-share": pressure * (1 - cool), "all": pressure})}


def wide_crack(box, pressure, hot, **rest):
    before, after = (crack(box, rest["crack"], pressure, t)[0] for t in (20, hot))
    thinner = own_fluid(box, 20).mu / own_fluid(box, hot).mu
    return {"cold-leak": before, "thinner": thinner, "leak": (after, {"gap-rule": before * thinner, "unchanged": before})}


def gap_or_hole(cold, hot, sinks, **rest):
    a, b = oil(rest["oil"], cold), oil(rest["oil"], hot)
    seen = {"gap": sinks * a.mu / b.mu, "hole": sinks * math.sqrt(a.rho / b.rho), "sound": 0}[rest["is"]]
    thinner = a.mu / b.mu
    return {"thinner": thinner, "sinks-hot": seen, "truth": {
        "gap": seen > 0 and seen / sinks > 0.9 * thinner, "hole": seen > 0 and seen / sinks < 1.1, "sound": seen == 0}}


def least_thinned(best, a, b, c, thins):
    rates = {"a": thins + 1.4, "b": thins + 0.7, "c": thins + 1, best: thins}
    hot = {k: math.floor(10 * v / rates[k] + 0.5) / 10 for k, v in (("a", a), ("b", b), ("c", c))}
    thinner = {k: v / hot[k] for k, v in (("a", a), ("b", b), ("c", c))}
    return {**{k + "-hot": v for k, v in hot.items()}, "truth": {k: v == min(thinner.values()) for k, v in thinner.items()}}


def doubled_opening(leak, wider, **_):
    return {"leak": (leak * wider**3, {"followed": leak * wider, "squared": leak * wider**2})}


# pump-and-regulator, regulator-to-clutch, holds-cold-slips-hot, ...: model.md 3 to 6, 10 by the rival
def pump_draws(box, speed):
    turn = SHEET[box]["pump"]["displacement_cm3"]
    return {"turn": turn, "flow": (turn * speed / 1000, {
        "per-second": turn * speed / 60000, "tenfold": turn * speed / 100, "doubled": turn * speed / 500})}


def what_is_left(box, hot):
    s = steady(box, hot)
    parts = {k: s[k] for k in ("pump", "clearances", "bleed")}
    return {**parts, "clutch": s["leak"], "cold-left": steady(box, 20)["left"], "left": (s["left"], {
        "forgot-clearances": s["pump"] - s["bleed"] - s["leak"], "forgot-bleed": s["pump"] - s["clearances"] - s["leak"], "all-of-it": s["pump"]})}


def low_command(box, severity, cold):
    c, f = SHEET[box]["commands"], {"pressureControl": severity}
    line = lambda t, p, f=f: steady(box, t, point=p, faults=f)["line"]
    return {"idle-cold": line(cold, "idle"), "idle-hot": line(90, "idle"), "line": (line(cold, "load"), {
        "same-loss": c["loadLine_kPa"] - (c["idleLine_kPa"] - line(cold, "idle")), "speed-cures": line(cold, "load", {})})}


def starved_pump(box, severity, cold):
    f, rpm = {"filter": severity}, (SHEET[box]["idle_rpm"], SHEET[box]["commands"]["load_rpm"])
    idle, load, sound = (steady(box, cold, point=p, faults=g)["intake"] for p, g in (("idle", f), ("load", f), ("load", {})))
    return {"at-idle": idle, "at-load": (load, {"with-speed": idle * rpm[1] / rpm[0], "healthy": sound})}


def share_of_the_crack(box, hot, **rest):
    s = steady(box, hot, SEALED[box], faults=in_seal(rest["crack"]))
    return {"all": s["leak"], "rings": s["rings"], "crack-leak": (s["leak"] - s["rings"], {
        "all-of-it": s["leak"], "ring-part": s["rings"], "added": s["leak"] + s["rings"]})}


def sister_beside_rings(box, severity, hot):
    f = {"sealingRings": at("forward", severity)}
    worn, sound = tap(box, hot, "forward", f), tap(box, hot)
    return {"worn": worn, "sound": sound, "reverse": (tap(box, hot, "reverse", f), {"same-as-forward": worn, "not-boosted": sound})}


def feed_choked(box, severity, hot):
    left, f = 1 - 0.9 * severity, {"feedRestriction": severity}
    return {"left": 100 * left, "cold": tap(box, 20, faults=f), "sound": tap(box, hot), "choked": (tap(box, hot, faults=f), {
        "area-share": SHEET[box]["commands"]["idleClutch_kPa"] * left, "unchanged": tap(box, hot)})}


def feed_at_drop(box, drop, more):
    flow = lambda kpa: hole_leak(SHEET[box]["feed"]["hole_mm"], kpa, own_fluid(box, 90))
    return {"before": flow(drop), "after": (flow(drop * more), {
        "followed": more * flow(drop), "unchanged": flow(drop), "squared": more**2 * flow(drop)})}


def worn_pump_fast(box, severity, hot):
    c, f = SHEET[box]["commands"], {"pumpWear": severity}
    idle, load = (steady(box, hot, point=p, faults=f)["line"] for p in ("idle", "load"))
    return {"at-idle": idle, "at-load": (load, {
        "as-at-idle": idle, "same-share": idle * c["loadLine_kPa"] / c["idleLine_kPa"], "all-of-it": c["loadLine_kPa"]})}


def reverse_boost(drive, boost):
    return {"reverse": (drive * boost, {"not-boosted": drive, "doubled": 2 * drive})}


def kpa_for(box, circuit, torque):
    a, spring, _, arm = part(box, circuit)
    return (torque / arm + spring) / a / 1e3


def gentle(box, circuit):
    """Where the engine on a fifth of the throttle balances the stalled impeller."""
    k, idle = SHEET[box]["converter"]["capacity"], SHEET[box]["idle_rpm"]
    engine = lambda n: 0.8 * min(max(20 + (idle - n), 0), 80) + 0.2 * 180 - 8
    n = brentq(lambda n: engine(n) - (n / k) ** 2, idle, 5000, xtol=1e-10)
    return kpa_for(box, circuit, stall(box, n))


def crosses(box, mm, fluid=None):
    c = SEALED[box]
    return brentq(lambda t: tap(box, t, c, in_seal(mm), fluid=fluid) - gentle(box, c), -20, 139, xtol=1e-9)


def where_it_crosses(box, **rest):
    t = crosses(box, rest["crack"])
    good = 20 * math.floor(t / 20)
    has = lambda t: tap(box, t, SEALED[box], in_seal(rest["crack"]))
    return {"need": gentle(box, SEALED[box]), "low-p": has(good - 20), "good-p": has(good), "bad-p": has(good + 20),
            "crossing": (t, {"last-good": good, "first-bad": good + 20, "healthy-line": good - 20})}


def thinner_crossing(box, to, **rest):
    before, after = crosses(box, rest["crack"], rest["from"]), crosses(box, rest["crack"], to)
    return {"holds": 10 * math.floor(before / 10), "crossing": (after, {"unchanged": before, "wrong-way": 2 * before - after})}


def spared_by_the_seal(box, hot, **rest):
    f = in_seal(rest["crack"])
    low, sound = tap(box, hot, HURT[box], f), tap(box, hot, HURT[box])
    return {"low": low, "sound": sound, "has": (tap(box, hot, SPARED[box], f), {"same-reading": low, "halfway": (low + sound) / 2})}


def short_of_need(box, hot, **rest):
    c, name = SHEET[box]["commands"], SEALED[box]
    least = lambda rpm, line, command: (rpm, c["lineLeast_kPa"], c["clutchLeast_kPa"])
    has = tap(box, hot, name, in_seal(rest["crack"]), given=least)
    need, asked = kpa_for(box, name, stall(box, SHEET[box]["idle_rpm"])), c["clutchLeast_kPa"]
    return {"need": need, "has": has, "cold": tap(box, 20, name, in_seal(rest["crack"]), given=least),
            "short": (need - has, {"from-command": asked - has, "over-need": asked - need})}


def holds_cold_slips_hot(slips, box, port, sound, **rest):
    c = SEALED[box]
    pair = lambda f: (tap(box, 20, c, f), tap(box, 100, c, f))
    others = [pair({}), pair({"openPort": at(c, port)})]
    cars = {slips: pair(in_seal(rest["crack"]))}
    cars.update(zip([k for k in "abc" if k != slips], others if sound == "first" else others[::-1]))
    need, out = gentle(box, c), {}
    for k, (cold, hot) in cars.items():
        out |= {k + "-cold": cold, k + "-hot": hot}
    return {**out, "need": need, "truth": {k: hot < need < cold for k, (cold, hot) in cars.items()}}


def line_cold_hot_fast(box, wear, low, **rest):
    f = {"pump": {"pumpWear": wear}, "command": {"pressureControl": low}, "sound": {}}[rest["is"]]
    cold, hot, fast = (steady(box, t, point=p, faults=f)["line"] for t, p in ((20, "idle"), (100, "idle"), (100, "load")))
    asked = SHEET[box]["commands"]["idleLine_kPa"]
    return {"cold": cold, "hot": hot, "fast": fast, "truth": {
        "sound": hot > 0.95 * asked, "pump": cold > 0.95 * asked and hot < 0.9 * asked, "command": cold < 0.9 * asked}}


def which_ranges_suffer(box, wear, pumpWear, **rest):
    f = {"seal": in_seal(rest["crack"]), "rings": {"sealingRings": at("forward", wear)}, "pump": {"pumpWear": pumpWear}, "sound": {}}[rest["is"]]
    has = {c: tap(box, 100, c, f) for c in ("forward", "reverse", "high")}
    good = {c: tap(box, 100, c) for c in has}
    low = {c for c in has if has[c] < 0.9 * good[c]}
    return {**has, **{c + "-sound": p for c, p in good.items()}, "truth": {
        "seal": low == set(SHEET[box]["seal"]["circuits"]), "rings": low == {"forward"}, "pump": len(low) == 3, "sound": not low}}


# air-on-the-bench: model.md 11
def air(box, where, faults=None):
    return air_test({"circuit": where, "faults": faults or {}, "transmission": {} if box == "first" else SECOND})["held_percent"]


def behind(hole_mm, lost, supply=275e3):
    full = OUTSIDE + supply
    p = brentq(lambda p: nozzle(math.pi * (hole_mm * 1e-3) ** 2 / 4, full, p) - lost(p), OUTSIDE, full, xtol=1e-9)
    return 100 * (p - OUTSIDE) / supply


def percent_on_a_rig(supply, held):
    reads = 5 * math.floor(supply * held / 500 + 0.5)
    return {"reads": reads, "held": (100 * reads / supply, {"lost": 100 - 100 * reads / supply, "reading": reads})}


def plate_on_the_rig(leak):
    held = behind(1.5, lambda p: nozzle(math.pi * (leak * 1e-3) ** 2 / 4, p, OUTSIDE))
    return {"held": (held, {"areas": 100 * 1.5**2 / leak**2, "diameters": 150 / leak, "nothing": 0})}


def bored_out(box, severity, hole):
    def held(mm, faults):
        slots, _ = slots_and_holes({"circuit": "forward", "faults": faults, "transmission": {} if box == "first" else SECOND})
        return behind(mm, lambda p: sum(min(slot(w, h, n, p, OUTSIDE), nozzle(w * h, p, OUTSIDE)) for w, h, n in slots))

    f = {"sealingRings": at("forward", severity)}
    return {"narrow": held(1.5, f), "held": (held(hole, f), {"as-narrow": held(1.5, f), "sound": held(hole, {})})}


def beside_its_sisters(leaks, box, severity):
    f = {} if leaks == "none" else {"pistonSeal": at(leaks, severity)}
    held = {c: air(box, c, f) for c in ("forward", "reverse", "high")}
    low = {c for c in held if held[c] < air(box, c) - 10}
    return {**held, "truth": {**{c: low == {c} for c in held}, "none": not low}}


def cold_hot_and_air(box, gap, hole, valve, **rest):
    f = {"gap": {"pistonSeal": at("forward", gap)}, "hole": {"openPort": at("forward", hole)},
         "valve": {"clutchControl": at("forward", valve)}, "sound": {}}[rest["is"]]
    cold, hot, held, good = tap(box, 20, faults=f), tap(box, 100, faults=f), air(box, "forward", f), air(box, "forward")
    asked, leaks = SHEET[box]["commands"]["idleClutch_kPa"], held < good - 10
    return {"cold": cold, "hot": hot, "held": held, "sound": good, "truth": {
        "gap": leaks and cold > 0.85 * asked and hot < 0.7 * cold, "hole": leaks and cold < 0.75 * asked,
        "valve": not leaks and hot < 0.9 * asked, "sound": not leaks and hot > 0.9 * asked}}


# outside-first, whose-parts, parts-that-seal, putting-back: by hand, and Darcy's law
def swell(box, temp_c):
    rho = GENERIC[SHEET[box]["fluid"]][2]
    return density(rho, 20) / density(rho, temp_c) - 1


def runs_out_too_hot(box, middle, hot):
    fill = SHEET[box]["sump"]["fill_L"]
    return {"out": (fill * (swell(box, hot) - swell(box, middle)), {"wrong-leg": fill * swell(box, middle), "all-of-it": fill * swell(box, hot)})}


def fill_swells(box, fill, hot):
    s = round(100 * swell(box, hot)) / 100
    return {"share": 100 * s, "grows": (fill * s, {"tenth-of-it": fill * s / 10, "like-the-car": SHEET[box]["sump"]["fill_L"] * s})}


def less_media(box, frost, media, less):
    p = SHEET[box]["pump"]
    start = lambda share: 60 * p["suction_kPa"] * 1e3 / (own_fluid(box, frost).mu * p["filter_perM3"] / share * p["displacement_cm3"] * 1e-6)
    before = start(media / 100)
    return {"from": before, "less-from": (start(media / less / 100), {"same-speed": before, "other-way": before * less})}


def longest_pour(maker):
    return {"longest": (maker + maker / 5, {"as-long": maker, "half": 1.5 * maker})}


def media_by_pours(maker, unknown):
    return {"media": (100 * maker / unknown, {"upside": 100 * unknown / maker, "by-difference": 100 - 100 * maker / unknown})}


def alike_pours(alike, maker, within, over, far, quick):
    shares = {"a": over, "b": far, "c": quick, **({} if alike == "none" else {alike: within})}
    pours = {k: math.floor(maker * v + 0.5) for k, v in shares.items()}
    fits = {k: maker / 1.2 <= v <= 1.2 * maker for k, v in pours.items()}
    return {**pours, "truth": {**fits, "none": not any(fits.values())}}


def seal_shrinks(reach, drop):
    return {"shrinks": (reach * 108e-6 * drop, {"rubber-alone": reach * 120e-6 * drop, "as-steel": reach * 12e-6 * drop})}


def still_squeezed(seals, reach, drop, spare, short):
    reaches = {"a": reach, "b": 2 * reach, "c": 3 * reach}
    loses = {k: r * 108e-6 * drop for k, r in reaches.items()}
    squeeze = {k: math.floor(100 * v * (spare if k == seals else short) + 0.5) / 100 for k, v in loses.items()}
    return {**{k + "-loses": v for k, v in loses.items()}, **{k + "-squeeze": v for k, v in squeeze.items()},
            "truth": {k: squeeze[k] > loses[k] for k in loses}}


def let_out(over, apart, holds):
    return {"out": (over * holds / apart, {"down-to-max": (over - apart / 2) * holds / apart, "middle-to-mark": 2 * over * holds / apart})}


# A family's function has its name, with underscores.
families = {name.replace("_", "-"): made for name, made in list(globals().items()) if callable(made)}
