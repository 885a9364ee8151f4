"""Holds `gapwise torque` against GNU units and SciPy: torque_references.py CASE PROGRAM.

Nothing here knows the formulas of the program: the other program converts, the moments are vectors, and what the
program solves is solved by root finding. A reference that is missing is a failure.
"""

import json
import math
import subprocess
import sys

# The unit as Gapwise names it, as GNU units reads it, and its factors as SciPy has them.
UNITS = {
    "N·m": "N m",
    "lbf·ft": "lbf ft",
    "lbf·in": "lbf inch",
    "kgf·m": "kgf m",
    "kgf·cm": "kgf cm",
}

checked = 0


def gapwise(*arguments):
    command = [sys.argv[2], "torque", *map(str, arguments), "--json"]
    ended = subprocess.run(command, capture_output=True, text=True)
    if ended.returncode not in (0, 1):
        raise SystemExit(f"{command}: status {ended.returncode}\n{ended.stderr}")
    return json.loads(ended.stdout)


def expect(what, actual, expected, relative):
    global checked
    checked += 1
    if not math.isclose(actual, expected, rel_tol=relative, abs_tol=0.0):
        raise SystemExit(f"{what}: gapwise says {actual!r}, the reference {expected!r}")


def converted(value, unit):
    """Every other unit's value, by its name."""
    return {to["unit"]: to["value"] for to in gapwise("convert", f"{value} {unit}")["converted"]}


def units():
    for source in UNITS:
        for value in (1.0, 32.4, 0.07):
            for target, ours in converted(value, source).items():
                asked = ["/usr/bin/units", "--terse", "--output-format", "%.17g",
                         f"{value} {UNITS[source]}", UNITS[target]]
                answer = subprocess.run(asked, capture_output=True, text=True, check=True).stdout
                expect(f"{value} {source} in {target}", ours, float(answer), 1e-12)


def constants():
    from scipy import constants as c

    factors = {
        "N·m": 1.0,
        "lbf·ft": c.pound_force * c.foot,
        "lbf·in": c.pound_force * c.inch,
        "kgf·m": c.kilogram_force,
        "kgf·cm": c.kilogram_force * c.centi,
    }
    for unit, factor in factors.items():
        expect(f"1 {unit}", gapwise("convert", f"1 {unit}")["torque_Nm"], factor, 1e-12)
        for target, ours in converted(25.0, unit).items():
            expect(f"25 {unit} in {target}", ours, 25.0 * factor / factors[target], 1e-12)


def flank_diameter(diameter, pitch):
    """By the basic profile: three quarters of the sharp triangle's height less, taken from tan 60°."""
    return diameter - 0.75 * pitch / 2.0 * math.tan(math.radians(60.0))


def root_diameter(diameter, pitch):
    return diameter - 17.0 / 12.0 * pitch / 2.0 * math.tan(math.radians(60.0))


def work_torque(force, pitch, flank, friction, head):
    """Torque by the work of one slow turn: raising the load, rubbing on the flanks, rubbing under the head."""
    raised = force * pitch
    flanks = friction * force / math.cos(math.radians(30.0)) * math.pi * flank
    under_head = friction * force * math.pi * head
    return (raised + flanks + under_head) / (2.0 * math.pi)


# Name, diameter, pitch, mean diameter under the head.
THREADS = [
    ("M8x1-LH", 8.0, 1.0, 10.3),
    ("M16x1.5", 16.0, 1.5, 20.0),
    ("M6", 6.0, 1.0, 7.74),
    ("M24", 24.0, 3.0, 29.8),
]


def long_form():
    from scipy.optimize import brentq

    for name, diameter, pitch, head in THREADS:
        flank = flank_diameter(diameter, pitch)
        for friction in (0.08, 0.12, 0.2):
            for torque in (5.0, 110.0):

                def spare(force):
                    return work_torque(force, pitch, flank, friction, head) - torque

                expected = brentq(spare, 1e-3, 1e4, xtol=1e-12)
                ours = gapwise("preload", name, "--torque", torque, "--bearing-diameter", head,
                               "--friction-thread", friction, "--friction-head", friction)
                expect(f"force in {name} of {torque} N·m", ours["force_kN"], expected, 1e-9)


def yield_point():
    """90 % of the yield stress, von Mises with the torsion of a fully plastic round section."""
    from scipy.optimize import brentq

    yields_88 = {6.0: 640, 8.0: 640, 16.0: 640, 24.0: 660}
    for name, diameter, pitch, head in THREADS:
        flank = flank_diameter(diameter, pitch)
        stem = (flank + root_diameter(diameter, pitch)) / 2.0
        for grade, stress in (("8.8", yields_88[diameter]), ("10.9", 940), ("12.9", 1100)):
            for friction in (0.08, 0.14):

                def spare(force):
                    rub = friction / math.cos(math.radians(30.0)) * flank / 2.0
                    twist = force * (pitch / (2.0 * math.pi) + rub)
                    tension = force / (math.pi * stem**2 / 4.0)
                    shear = twist / (math.pi * stem**3 / 12.0)
                    return 0.9 * stress - math.hypot(tension, math.sqrt(3.0) * shear)

                expected = brentq(spare, 1.0, 1e7) / 1000.0
                ours = gapwise("preload", name, "--class", grade, "--bearing-diameter", head,
                               "--friction-thread", friction)
                # VDI 2230 prints 1.155 for 1/cos 30°.
                expect(f"{name} {grade} at the yield point", ours["force_kN"], expected, 2e-4)


def moments():
    import numpy as np

    drive = np.array([0.0, 0.0, 0.0])
    cases = ((300, 45, 0), (300, 45, 45), (300, 45, -45), (300, 45, 90), (420, 60, 133), (250, 80, 180))
    for length, adapter, angle in cases:
        grip = drive - np.array([length, 0.0, 0.0])
        turn = np.radians(angle)
        fastener = drive + adapter * np.array([np.cos(turn), np.sin(turn), 0.0])
        hand = np.array([0.0, -1.0, 0.0])  # square to the wrench
        at_drive = np.cross(grip - drive, hand)[2]
        at_fastener = np.cross(grip - fastener, hand)[2]
        ours = gapwise("wrench", "--target", "24 N·m", "--length", length, "--adapter", adapter,
                       "--angle", angle)
        expect(f"{adapter} mm at {angle}°", ours["setting"]["torque_Nm"],
               24.0 * at_drive / at_fastener, 1e-12)
        expect(f"uncorrected, {adapter} mm at {angle}°", ours["uncorrected"]["torque_Nm"],
               24.0 * at_fastener / at_drive, 1e-12)


CASES = {
    "units": units,
    "constants": constants,
    "long_form": long_form,
    "yield_point": yield_point,
    "moments": moments,
}
CASES[sys.argv[1]]()
print(f"{checked} numbers agree.")
if checked < 6:
    raise SystemExit("too few numbers were compared")
