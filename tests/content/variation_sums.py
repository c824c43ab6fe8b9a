"""The sums behind variation-keys.py, family by family. A family returns its numbers by name, (value, wrong values) where it is asked."""
import os
import sys

here = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(here, "..", "truth"))

# The two sheets, as model.md 12 and the page of the model have them.
RATIO = {"first": {"first": 4.0, "reverse": 3.4, "third": 1.5}, "second": {"first": 3.1, "reverse": 2.7, "third": 1.0}}


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


families = {
    "slip-in-gear": slip_in_gear,
    "belt-slip": belt_slip,
    "slip-limit": slip_limit,
    "pressure-raised": pressure_raised,
    "false-reading": false_reading,
}
