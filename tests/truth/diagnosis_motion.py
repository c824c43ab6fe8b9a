"""Engagements of many cars at once: time until the turbine stops, and slip at take-off (model.md 6 to 8; diagnosis.md 2).

The equations are those of engagement.py, with its readings E1 to E21. They are marched by the two-stage Rosenbrock method of
Verwer (gamma = 1 - 1/sqrt 2) with an approximate Jacobian (of second order with any): the stick-slip of the clutch and the
stiffness of the filled circuit alone.
"""
import math

import numpy as np

from diagnosis_lanes import hole, hole_flow, warm
from sheet import clutch_of

RPM = 30 / math.pi
GAMMA = 1 - 1 / math.sqrt(2)
CIRCUIT_OF = {"drive": "forward", "reverse": "reverse"}
RATIO_OF = {"drive": "first", "reverse": "reverse"}
SELECT, BRAKE, FULL, END = 0.5, 3.0, 6.0, 7.0
NOT_STOPPED_S = 5.0


class Motion:
    def __init__(self, w, rng):
        sh, cars = w.sheet, w.cars
        self.w, self.rng = w, rng
        self.c = c = sh["applyChart"]["1" if rng == "drive" else "R"][0]
        self.asks, self.idle = sh["commands"], sh["idle_rpm"]
        clutch = clutch_of(sh, c)
        self.boost = self.asks["reverseFactor"] if rng == "reverse" else 1.0
        self.ratio, self.final = sh["ratios"][RATIO_OF[rng]], sh["finalDrive"]
        self.wheel, self.mass = sh["vehicle"]["wheelRadius_m"], sh["vehicle"]["mass_kg"]
        self.drag = sh["vehicle"].get("drag_N", 150.0)
        self.je, self.jt = sh["inertia"]["engine_kgm2"], sh["inertia"]["turbine_kgm2"]
        self.capacity, self.tr0 = sh["converter"]["capacity"], sh["converter"]["torqueRatio"]
        self.area, self.spring = clutch["area_cm2"] * 1e-4, clutch["spring_N"]
        self.ps, self.give = self.spring / self.area, clutch["compliance_m3Pa"]
        worn = cars.s("frictionWear")
        self.lane = {"stroke": clutch["stroke_cm3"] * 1e-6 * (1 + worn)}
        self.sound = clutch["friction"] * clutch["faces"] * clutch["radius_mm"] * 1e-3
        self.lane["grip"] = self.sound * (1 - 0.72 * worn)
        self.lane["exhaust_c"], self.lane["exhaust_p"] = hole(w.rho, w.nu, w.sound_feed)
        n = cars.n
        self.lane["raised"], self.lane["vented"] = np.zeros(n, bool), np.zeros(n, bool)
        self.lane["line"] = np.full(n, 4e5)
        self.y = np.zeros((4, n))
        self.y[0] = self.y[1] = (self.idle + 12) / RPM
        self.held = np.ones(n, bool)

    def cut(self, keep):
        self.w = self.w.at(keep)
        self.lane = {k: v[keep] for k, v in self.lane.items()}
        self.y, self.held = self.y[:, keep], self.held[keep]

    def pressure(self, V):
        vs = self.lane["stroke"]
        ps = self.ps
        first = 0.8 * ps * np.maximum(V, 0.0) / (0.05 * vs)
        second = 0.8 * ps + 0.2 * ps * (V - 0.05 * vs) / (0.95 * vs)
        third = ps + (V - vs) / self.give
        p = np.where(V <= 0.05 * vs, first, np.where(V <= vs, second, third))
        slope = np.where(V <= 0.05 * vs, 0.8 * ps / (0.05 * vs), np.where(V <= vs, 0.2 * ps / (0.95 * vs), 1 / self.give))
        return p, slope

    def torque_capacity(self, p):
        return self.lane["grip"] * np.maximum(0.0, p * self.area - self.spring)

    def line_and_feed(self, we, pc, tp):
        a, w, L = self.asks, self.w, self.lane
        most = a["clutchMost_kPa"] * 1e3
        want = np.clip(a["clutchMargin"] * (self.tr0 * tp / self.sound + self.spring) / self.area, a["clutchLeast_kPa"] * 1e3, most)
        want = np.where(L["raised"], np.minimum(1.3 * want, most), want) * self.boost
        cmd = np.maximum(a["lineLeast_kPa"] * 1e3, want + a["lineLead_kPa"] * 1e3) * w.line_factor
        supply = w.pump_ideal(we * RPM)
        balance = lambda pl: supply - w.slip * pl - w.line_leak(pl) - w.feed(self.c, pl, pc, want)
        short = balance(cmd) < 0
        if not short.any():
            pl = cmd
        else:
            # Illinois' rule on the lanes that fall short: the bracket is [0, command]
            sub = w.at(short)
            args = supply[short], pc[short], want[short]
            f = lambda p: args[0] - sub.slip * p - sub.line_leak(p) - sub.feed(self.c, p, args[1], args[2])
            pl = cmd.copy()
            pl[short] = false_position(f, np.zeros(short.sum()), cmd[short], L["line"][short])
        L["line"] = pl
        return pl, np.where(L["vented"], 0.0, w.feed(self.c, pl, pc, want))

    def rhs(self, t, y):
        we, wt, V, v = y
        s = wt / we
        u = min(max(0.2 * (t - BRAKE), 0.0), 0.6) if self.drives else 0.0
        s0 = np.clip(s, 0.0, 1.0)
        tp = np.where(s > 1, 0.0, (we * RPM / self.capacity) ** 2 * (1 - s0**5))
        tr = np.maximum(1.0, self.tr0 - (self.tr0 - 1) * s0 / 0.86)
        n = we * RPM
        te = (1 - u) * np.clip(20 + self.idle - n, 0.0, 80.0) + u * 180.0 * np.clip((6500 - n) / 1500, 0.0, 1.0) - 8
        pc, slope = self.pressure(V)
        _, feed = self.line_and_feed(we, pc, tp)
        L = self.lane
        out = self.w.clutch_leak(self.c, pc)
        if L["vented"].any():
            out = out + np.where(L["vented"], hole_flow(np.maximum(pc, 0), (L["exhaust_c"], L["exhaust_p"])), 0.0)
        most = self.torque_capacity(pc)
        per = self.ratio * self.final / self.wheel
        slip = wt - per * v
        tc = most * np.tanh(slip / 2)
        force = tc * per - self.drag
        a = np.where(self.held | ((v <= 0) & (force <= 0)), 0.0, force / self.mass)
        return np.array([(te - tp) / self.je, (tr * tp - tc) / self.jt, feed - out, a]), most, slip, slope, pc

    def step(self, t, h):
        y = self.y
        f, most, slip, slope, pc = self.rhs(t, y)
        per = self.ratio * self.final / self.wheel
        k = most * (1 - np.tanh(slip / 2) ** 2) / 2  # d torque / d slip
        move = np.where(self.held, 0.0, per / self.mass)
        g = GAMMA * h
        # J = -k (1/Jt, -move) (1, -per)^T on (turbine, vehicle): rank one, so Sherman and Morrison solve it
        b = 1 + g * k * (1 / self.jt + move * per)
        dp = 1e3
        stiff = slope * (self.w.clutch_leak(self.c, np.maximum(pc, 0) + dp) - self.w.clutch_leak(self.c, np.maximum(pc, 0))) / dp

        def solve(r):
            r = r.copy()
            q = g * k * (r[1] - per * r[3]) / b
            r[1] -= q / self.jt
            r[3] += q * move
            r[2] /= 1 + g * stiff
            return r

        k1 = solve(f)
        k2 = solve(self.rhs(t + h, y + h * k1)[0] - 2 * k1)
        self.y = y + h * (1.5 * k1 + 0.5 * k2)
        self.y[3] = np.maximum(self.y[3], 0.0)


def false_position(f, low, high, guess, times=40):
    """Root of a falling f between low and high, by false position with Illinois' halving."""
    fl, fh = f(low), f(high)
    x = np.clip(guess, low, high)
    side = np.zeros(len(low), int)
    for _ in range(times):
        fx = f(x)
        up = fx > 0
        fh = np.where(up & (side == 1), fh / 2, fh)
        fl = np.where(~up & (side == -1), fl / 2, fl)
        low, fl = np.where(up, x, low), np.where(up, fx, fl)
        high, fh = np.where(up, high, x), np.where(up, fh, fx)
        side = np.where(up, 1, -1)
        new = np.where(fl == fh, (low + high) / 2, high - fh * (high - low) / np.where(fl == fh, 1, fh - fl))
        new = np.clip(new, low, high)
        if np.max(np.abs(new - x)) < 0.5:
            return new
        x = new
    return x


def stop_times(cars, rng, warmth, h=0.001):
    """Seconds from selection until the turbine turns slower than 30 rpm, brake held; 5 where it does not stop."""
    m = Motion(warm(cars, warmth), rng)
    m.drives = False
    out = np.full(cars.n, NOT_STOPPED_S)
    lane = np.arange(cars.n)
    line = 30 / RPM
    for i in range(round(NOT_STOPPED_S / h)):
        before = m.y[1].copy()
        m.step(SELECT + i * h, h)
        down = m.y[1] < line
        if down.any():
            share = (before[down] - line) / (before[down] - m.y[1][down])
            out[lane[down]] = (i + share) * h
            keep = ~down
            m.cut(keep)
            lane = lane[keep]
            if not len(lane):
                break
    return out


def takeoff_slip(cars, rng, warmth="hot", h=0.001, electronic=True):
    """Largest |slip| [rpm] from 4.0 to 7.0 s of the engagement, the controller at work."""
    m = Motion(warm(cars, warmth), rng)
    m.drives = True
    n, L = cars.n, m.lane
    since = np.full(n, np.nan)
    parked = np.zeros(n, bool)
    peak = np.zeros(n)
    per = m.ratio * m.final / m.wheel
    per_sample = round(0.01 / h)
    for i in range(round((END - SELECT) / h) + 1):
        t = SELECT + i * h
        if i % per_sample == 0:
            slip = np.abs(m.y[1] - per * m.y[3]) * RPM
            output = m.y[3] * m.final / m.wheel * RPM
            if t >= 4.0 - 1e-9:
                peak = np.maximum(peak, slip)
            u = min(max(0.2 * (t - BRAKE), 0.0), 0.6)
            park_now = L["vented"] & ~parked & (m.y[3] < 5 / 3.6) if electronic else np.zeros(n, bool)
            on = ~L["vented"] & ((output > 20) | (u >= 0.02 - 1e-9)) & (slip > np.maximum(80.0, 0.03 * m.y[1] * RPM))
            since = np.where(on, np.where(np.isnan(since), t, since), np.nan)
            trip = on & (t - since >= 0.3 - 1e-9)
            since = np.where(trip, t, since)
            second = trip & L["raised"]
            L["raised"] = (L["raised"] | trip) & ~second
            L["vented"] = L["vented"] | second
            if electronic:
                park_now |= second & (m.y[3] < 5 / 3.6)
            parked |= park_now
            m.y[3] = np.where(parked & (t > BRAKE), 0.0, m.y[3])
            m.held = parked | (t < BRAKE - 1e-9)
        if t < END - 1e-9:
            m.step(t, h)
    return peak
