"""Fifteen engagements in time (model.md 6-8), solved with scipy.integrate.solve_ivp (LSODA, rtol 1e-10).

Radau at 1e-8 is the check. A vehicle at rest is a mode left by an event, not a branch on v <= 0 in the right-hand side:
that branch gave Radau and BDF a huge false Jacobian entry and held the vehicle still for 40 ms too long.

Written from model.md alone; every reading of it that the paper leaves open is a numbered sentence in README.md and
is referred to here as [n]. Run: /usr/bin/python3 tests/truth/engagement.py   (needs numpy, scipy; rewrites engagement.json)
  --check   also solves with Radau (1e-8) and with a sharper and a blunter stick-slip, and prints the differences
"""
import json
import math
import os
import sys

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from engagement_requests import SCENARIOS
from plant import Plant
from rival import Hole
from sheet import sheet_of

RPM = 30 / math.pi
RATIO_OF = {"drive": "first", "reverse": "reverse"}
CHART_ROW = {"drive": "1", "reverse": "R"}
CODE = {"drive": "P0731", "reverse": "P0736"}
DRAG = 150.0
T_SELECT, T_BRAKE, T_FULL, T_END = 0.5, 3.0, 6.0, 7.0  # T_FULL: the throttle reaches 0.6
STEP = 0.01
CHECK_AFTER, CHECK_RPM = 1.5, 100.0
RATIO_RPM, RATIO_SHARE, RATIO_TIME, RAISE = 80.0, 0.03, 0.3, 1.3
MOVING_RPM, THROTTLE_ON = 20.0, 0.02
PARK_BELOW = 5 / 3.6
ENGAGED_RPM = 50.0


def throttle(t):
    return min(max(0.2 * (t - T_BRAKE), 0.0), 0.6)


def engine_torque(n, idle_rpm, u):
    idle = min(max(20 + (idle_rpm - n), 0.0), 80.0)
    full = 180.0 * min(max((6500 - n) / 1500, 0.0), 1.0)
    return (1 - u) * idle + u * full - 8


def converter(we, wt, capacity, ratio_at_rest):
    s = wt / we
    if s > 1:
        return 0.0, 1.0
    s = max(s, 0.0)
    return (we * RPM / capacity) ** 2 * (1 - s**5), max(1.0, ratio_at_rest - (ratio_at_rest - 1) * s / 0.86)


class Run:
    def __init__(self, req, stick=2.0, method="LSODA", rtol=1e-10):
        self.req, self.stick = req, stick
        self.options = dict(method=method, rtol=rtol, max_step=0.02)
        self.range = req["range"]
        sheet = sheet_of(req)
        self.circuit = sheet["applyChart"][CHART_ROW[self.range]][0]
        self.ratio = sheet["ratios"][RATIO_OF[self.range]]
        self.final, self.wheel = sheet["finalDrive"], sheet["vehicle"]["wheelRadius_m"]
        self.mass = sheet["vehicle"]["mass_kg"]
        self.je, self.jt = sheet["inertia"]["engine_kgm2"], sheet["inertia"]["turbine_kgm2"]
        self.idle, self.asks = sheet["idle_rpm"], sheet["commands"]
        self.capacity, self.tr0 = sheet["converter"]["capacity"], sheet["converter"]["torqueRatio"]
        self.boost = self.asks["reverseFactor"] if self.range == "reverse" else 1.0
        self.p = Plant(req, [self.circuit])
        self.exhaust = Hole(self.p.fluid, self.p.feed_area)
        c = self.p.clutches[self.circuit]
        self.area, self.spring = c["area_cm2"] * 1e-4, c["spring_N"]
        self.ps, self.compliance = self.spring / self.area, c["compliance_m3Pa"]
        self.stroke = c["stroke_cm3"] * 1e-6 * self.p.stroke_factor
        self.sound_grip = c["friction"] * c["faces"] * c["radius_mm"] * 1e-3
        self.selected = self.vented = self.raised = self.resting = False
        self.held = True
        self.calls = 0

    # --- hydraulics
    def pressure(self, V):
        Vs, ps = self.stroke, self.ps
        if V <= 0.05 * Vs:
            return 0.8 * ps * max(V, 0.0) / (0.05 * Vs)
        if V <= Vs:
            return 0.8 * ps + 0.2 * ps * (V - 0.05 * Vs) / (0.95 * Vs)
        return ps + (V - Vs) / self.compliance

    def commands(self, tp):
        """(line, clutch) in Pa, before any fade of the valve [6][7][8]"""
        a = self.asks
        least = a["lineLeast_kPa"] * 1e3
        if not self.selected or self.vented:
            return least * self.p.line_factor, 0.0
        needed = (self.tr0 * tp / self.sound_grip + self.spring) / self.area
        most = a["clutchMost_kPa"] * 1e3
        pcmd = min(max(a["clutchMargin"] * needed, a["clutchLeast_kPa"] * 1e3), most)
        if self.raised:
            pcmd = min(RAISE * pcmd, most)
        pcmd *= self.boost
        return max(least, pcmd + a["lineLead_kPa"] * 1e3) * self.p.line_factor, pcmd

    def line(self, we, pc, cmd, pcmd):
        rpm = we * RPM
        feeding = self.selected and not self.vented
        feed = lambda pl: self.p.feed_flow(self.circuit, pl, pc, pcmd) if feeding else 0.0
        f = lambda pl: self.p.pump(rpm, pl) - self.p.line_leak(pl) - feed(pl)
        pl = cmd if f(cmd) >= 0 else brentq(f, 0.0, cmd, xtol=1e-7, rtol=1e-14)
        return pl, feed(pl)

    def convert(self, we, wt):
        return converter(we, wt, self.capacity, self.tr0)

    def rhs(self, t, y):
        self.calls += 1
        we, wt, V, _ = y
        tp, tr = self.convert(we, wt)
        pc = self.pressure(V)
        cmd, pcmd = self.commands(tp)
        _, feed = self.line(we, pc, cmd, pcmd)
        out = self.p.clutch_leak(self.circuit, pc) + (self.exhaust.flow(pc) if self.vented else 0.0)
        tc = self.torque(y)
        a = 0.0 if self.held or self.resting else self.force(y) / self.mass
        return [(engine_torque(we * RPM, self.idle, throttle(t)) - tp) / self.je, (tr * tp - tc) / self.jt, feed - out, a]

    def force(self, y):
        return self.torque(y) * self.ratio * self.final / self.wheel - DRAG

    def torque(self, y):
        return self.p.holds(self.circuit, self.pressure(y[2])) * math.tanh(self.slip(y) / self.stick)

    def slip(self, y):
        return y[1] - self.ratio * y[3] * self.final / self.wheel

    # --- controller, on the exact state, every 10 ms
    def control(self, t, y):
        """Returns True when something the equations see has changed."""
        c = self.ctl
        slip, turbine, output = abs(self.slip(y)) * RPM, y[1] * RPM, y[3] * self.final / self.wheel * RPM
        if not self.selected or self.vented:
            if self.vented and self.req["rangeSelection"] == "electronic" and not c["parked"] and y[3] < PARK_BELOW:
                return self.park(t)
            return False
        if not c["checked"] and t >= T_SELECT + CHECK_AFTER - 1e-9:
            c["checked"] = True
            if slip > CHECK_RPM:
                self.log(t, "engagement not finished")
        active = output > MOVING_RPM or throttle(t) >= THROTTLE_ON - 1e-9
        if not (active and slip > max(RATIO_RPM, RATIO_SHARE * turbine)):
            c["since"] = None
            return False
        if c["since"] is None:
            c["since"] = t
        if t - c["since"] < RATIO_TIME - 1e-9:
            return False
        c["since"] = t
        if not self.raised:
            self.raised = True
            self.log(t, "pressure raised")
            return True
        self.log(t, "code stored", CODE[self.range])
        self.log(t, "clutch vented")
        self.raised, self.vented = False, True
        if self.req["rangeSelection"] == "electronic":
            if y[3] < PARK_BELOW:
                self.park(t)
            else:
                self.log(t, "Neutral")
        else:
            self.log(t, "Neutral")
        return True

    def park(self, t):
        self.ctl["parked"] = self.held = True
        self.log(t, "Park commanded")
        return True

    def log(self, t, event, code=None):
        self.events.append({"time_s": t, "event": event, **({"code": code} if code else {})})

    # --- march
    def solve(self):
        self.events, self.ctl = [], {"checked": False, "since": None, "parked": False}
        w0 = (self.idle + 12) / RPM  # [10]
        y, t = np.array([w0, w0, 0.0, 0.0]), 0.0
        rows, self.marks = [], {}
        n = round(T_END / STEP)
        k = 0  # next sample to record
        Vs = self.stroke
        kink = [lambda t, y: y[2] - 0.05 * Vs, lambda t, y: y[2] - Vs, lambda t, y: y[3], lambda t, y: self.force(y)]
        for e in kink:
            e.terminal = True
        kink[2].direction, kink[3].direction = -1, 1
        last = None
        while t < T_END - 1e-12:
            stop = next(x for x in (T_SELECT, T_BRAKE, T_FULL, T_END) if x > t + 1e-12)
            # a march must not begin on the kink that ended the last one; met again within it, it is left to error control
            use = [e for e in kink[:2] if e is not last]
            if not self.held:
                use.append(kink[3] if self.resting else kink[2])
            s = solve_ivp(self.rhs, (t, stop), y, dense_output=True, events=use,
                          atol=[1e-7, 1e-7, 1e-15, 1e-9], **self.options)
            assert s.success, s.message
            end = s.t[-1]
            cut, vented = None, self.vented
            while k <= n and k * STEP <= end + 1e-10:
                tk = k * STEP
                yk = s.sol(min(tk, end))
                rows.append(self.sample(tk, yk))
                k += 1
                self.note(tk, yk)
                if self.control(tk, yk):
                    cut = tk, yk.copy()
                    break
            self.locate(s, t, cut[0] if cut else end, vented)
            if cut:
                t, y = cut
                last = None
            else:
                t, y = end, s.y[:, -1].copy()
                hit = [e for e, te in zip(use, s.t_events) if len(te) and abs(te[-1] - end) < 1e-12]
                last = hit[0] if s.status == 1 and hit else None
                if last is kink[2]:
                    y[3], self.resting = 0.0, self.force(y) <= 0
                elif last is kink[3]:
                    self.resting = False
            if self.held and t > T_BRAKE:
                y[3] = 0.0  # the pawl stops the output at once [18]
            if abs(t - T_SELECT) < 1e-9 and not self.selected:
                self.selected = True
                self.log(t, "range selected")
            if abs(t - T_BRAKE) < 1e-9 and self.held and not self.ctl["parked"]:
                self.held, self.resting = False, self.force(y) <= 0
                self.log(t, "brake released")
        self.rows = np.array(rows)
        return self

    def note(self, t, y):
        if self.selected and abs(t - 2.0) < 1e-9:
            self.marks["slipAtCheck_rpm"] = abs(self.slip(y)) * RPM

    def locate(self, s, t0, t1, vented):
        """First passages, by root finding on the dense output."""
        if not self.selected or t1 <= t0 or vented:
            return
        wanted = {
            "clutchFull_s": lambda y: y[2] - self.stroke,
            "turbineBelow50_s": lambda y: 50 / RPM - y[1],
            "engaged_s": lambda y: np.minimum(ENGAGED_RPM / RPM - abs(self.slip(y)), y[2] - self.stroke),
        }
        grid = np.linspace(t0, t1, max(3, int((t1 - t0) / 0.001)))
        states = s.sol(grid)
        for key, f in wanted.items():
            if key in self.marks:
                continue
            values = f(states)
            for a, b, fa, fb in zip(grid, grid[1:], values, values[1:]):
                if fb > 0:
                    self.marks[key] = a if fa >= 0 else brentq(lambda x: f(s.sol(x)), a, b, xtol=1e-9)
                    break

    def sample(self, t, y):
        we, wt, V, v = y
        pc = self.pressure(V)
        cmd, pcmd = self.commands(self.convert(we, wt)[0])
        pl, _ = self.line(we, pc, cmd, pcmd)
        return [we * RPM, wt * RPM, v * self.final / self.wheel * RPM, pc / 1e3, pl / 1e3]


SERIES = ["engine_rpm", "turbine_rpm", "output_rpm", "clutch_kPa", "line_kPa"]


def six(x):
    return float(f"{x:.6g}")


def frozen(name, req, run):
    marks = {k: six(run.marks[k]) if k in run.marks else None
             for k in ("clutchFull_s", "turbineBelow50_s", "engaged_s", "slipAtCheck_rpm")}
    return {"name": name, "request": req, "step_s": STEP, **{k: [six(v) for v in run.rows[:, i]] for i, k in enumerate(SERIES)},
            "events": [{**e, "time_s": round(e["time_s"], 6)} for e in run.events], **marks}


def main():
    check, out = "--check" in sys.argv, []
    for name, req in SCENARIOS.items():
        r = Run(req).solve()
        out.append(frozen(name, req, r))
        m = out[-1]
        print(f"{name:32s} calls {r.calls:6d} full {m['clutchFull_s']} below50 {m['turbineBelow50_s']} engaged {m['engaged_s']}"
              f" slip@2.0 {m['slipAtCheck_rpm']:.1f} rpm |", "; ".join(f"{e['time_s']:.2f} {e['event']}{' ' + e['code'] if 'code' in e else ''}" for e in r.events))
        print(" " * 33 + "t: engine turbine output clutch line |", " | ".join(f"{t}: " + " ".join(f"{x:.4g}" for x in r.rows[round(t / STEP)]) for t in (1.5, 2.9, 3.6, 5, 7)), flush=True)
        if check:
            for label, kw in (("Radau 1e-8", dict(method="Radau", rtol=1e-8)), ("tanh dw/0.5", dict(stick=0.5)), ("tanh dw/4", dict(stick=4.0))):
                q = Run(req, **kw).solve()
                d = np.abs(q.rows - r.rows)
                peak = np.max(np.abs(r.rows), axis=0)
                print("    ", label, "max diff rpm,rpm,rpm,kPa,kPa", " ".join(f"{x:.3g}" for x in d.max(axis=0)),
                      "| share of peak", " ".join(f"{x:.2g}" for x in (d.max(axis=0) / np.maximum(peak, 1e-9))[:3]),
                      "| engaged", q.marks.get("engaged_s"), "| events same", [(e["event"]) for e in q.events] == [e["event"] for e in r.events],
                      "dt", max(abs(a["time_s"] - b["time_s"]) for a, b in zip(q.events, r.events)), flush=True)
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "engagement.json"), "w") as f:
        f.write("[\n" + ",\n".join(json.dumps(c, separators=(",", ":")) for c in out) + "\n]\n")


if __name__ == "__main__":
    main()
