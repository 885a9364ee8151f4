"""Holds `gapwise measure` against NumPy and SciPy: measure_references.py CASE PROGRAM SHEET FRAME.

What the program says of the chains is reckoned anew from the frame file and the sheet: the sums by NumPy, the scatter by
its own random numbers, the ends of intervals by SciPy's normal law, and the lever by solving the two end readings as a
linear system. A reference that is missing is a failure.
"""

import json
import math
import subprocess
import sys

import numpy
import scipy.stats

TRIALS = 200_000
checked = 0


def gapwise(*arguments):
    command = [sys.argv[2], "measure", sys.argv[3], "--json", *map(str, arguments)]
    ended = subprocess.run(command, capture_output=True, text=True)
    if ended.returncode not in (0, 1):
        raise SystemExit(f"{command}: status {ended.returncode}\n{ended.stderr}")
    return json.loads(ended.stdout)


def expect(what, actual, expected, within):
    global checked
    checked += 1
    if not math.isclose(actual, expected, rel_tol=0.0, abs_tol=within):
        raise SystemExit(f"{what}: gapwise says {actual!r}, the reference {expected!r}")


def read():
    with open(sys.argv[4], encoding="utf-8") as file:
        return json.load(file)


def measured(report):
    """Value and U of every quantity that was read."""
    return {
        each["quantity"]: (each["after"]["value"], each["after"]["expanded_uncertainty"])
        for each in report["quantities"]
        if each["after"]
    }


def link(dimension, values):
    """Value and half width of a link: what was measured, else the drawing."""
    return values.get(dimension["id"], (dimension["nominal_mm"], dimension["tolerance_mm"]))


def chains():
    report = gapwise()
    frame = read()
    values = measured(report)
    dimensions = {each["id"]: each for each in frame["dimensions"]}
    told = {each["chain"]: each for each in report["chains"]}
    for chain in frame["chains"]:
        signs = numpy.array([1.0 if each[0] == "+" else -1.0 for each in chain["links"]])
        links = numpy.array([link(dimensions[each[1:]], values) for each in chain["links"]])
        said = told[chain["id"]]
        expect(f"{chain['id']} value", said["value_mm"], float(signs @ links[:, 0]), 1e-9)
        expect(f"{chain['id']} root sum of squares", said["rss_mm"], float(numpy.linalg.norm(links[:, 1])), 1e-9)
        expect(f"{chain['id']} worst case", said["worst_mm"], float(numpy.abs(links[:, 1]).sum()), 1e-9)


def trials():
    for drawn in gapwise("--trials", TRIALS)["trials"]:
        chain = next(each for each in gapwise()["chains"] if each["chain"] == drawn["chain"])
        mean, deviation = chain["value_mm"], chain["standard_mm"]
        if deviation == 0.0:
            continue
        numbers = numpy.random.default_rng(1).normal(mean, deviation, TRIALS)
        error = deviation / math.sqrt(TRIALS)
        expect(f"{drawn['chain']} mean", drawn["mean_mm"], float(numbers.mean()), 7.0 * error)
        expect(f"{drawn['chain']} deviation", drawn["standard_mm"], float(numbers.std(ddof=1)), 5.0 * error)
        law = scipy.stats.norm(mean, deviation)
        least, most = law.interval(0.95)
        expect(f"{drawn['chain']} 95 %, least", drawn["least95_mm"], least, 0.05 * deviation)
        expect(f"{drawn['chain']} 95 %, most", drawn["most95_mm"], most, 0.05 * deviation)
        window = chain.get("window_mm") or [None, None]
        if window[0] is not None:
            expect(f"{drawn['chain']} below", drawn["below"], law.cdf(window[0]), 0.005)
        if window[1] is not None:
            expect(f"{drawn['chain']} above", drawn["above"], law.sf(window[1]), 0.005)


def lever():
    report = gapwise()
    plan = read()["lever"]
    values = measured(report)
    readings = numpy.array([values[plan["nose_reading"]][0], values[plan["turbine_reading"]][0]])
    plays = []
    for edge in (0.0, plan["bearing_length_mm"]):
        span = plan["span_mm"] + edge
        nose, turbine = (plan["nose_mm"] - edge / 2.0) / span, (plan["turbine_mm"] - edge / 2.0) / span
        plays.append(numpy.linalg.solve([[1.0 + nose, nose], [turbine, 1.0 + turbine]], readings))
    plays = numpy.array(plays)
    for column, end in enumerate(("compressor", "turbine")):
        band = report["play"][f"{end}_band_mm"]
        expect(f"{end} play, least", band[0], float(plays[:, column].min()), 1e-9)
        expect(f"{end} play, most", band[1], float(plays[:, column].max()), 1e-9)


CASES = {"chains": chains, "trials": trials, "lever": lever}

if __name__ == "__main__":
    CASES[sys.argv[1]]()
    if checked == 0:
        raise SystemExit("nothing was checked")
    print(f"{checked} values agree.")
