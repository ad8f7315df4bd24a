"""Makes splines_scipy.json: B-spline surfaces and smoothing parameters by SciPy and NumPy.

Run: python3 tests/reference/splines/make_splines.py
The surfaces are sums of products of scipy.interpolate.BSpline elements. The smoothing is restricted maximum likelihood
over the dense covariance matrix of the cells, its scale found by scipy.optimize: other formulas than those of the core.
"""

import json
from pathlib import Path

import numpy as np
import scipy
from scipy.interpolate import BSpline
from scipy.optimize import minimize_scalar

INTERVALS = [450, 300, 200]
SIZES = [0.25, 0.5, 1, 2, 4, 8]


def elements(start, end, intervals):
    """The cubic B-splines on a uniform grid of knots that reaches three intervals past both ends."""
    step = (end - start) / intervals
    knots = start + step * np.arange(-3, intervals + 4)
    return [BSpline.basis_element(knots[i : i + 5], extrapolate=False) for i in range(intervals + 3)]


def design(splines, places, order=0):
    columns = [spline.derivative(order)(places) if order else spline(places) for spline in splines]
    return np.nan_to_num(np.column_stack(columns))


def products(a, b):
    """Row-wise products; function i along a and j along b is number i + (count along a) j."""
    return np.einsum("ni,nj->nji", a, b).reshape(len(a), -1)


def surface(random):
    across = {"from": -700.0, "to": 800.0, "intervals": 3}
    up = {"from": -600.0, "to": 900.0, "intervals": 5}
    splines = [elements(*stretch.values()) for stretch in (across, up)]
    coefficients = random.normal(0, 3, len(splines[0]) * len(splines[1]))
    # Some of the places lie outside the stretches, where the splines fall to zero.
    a, b = random.uniform(-1000, 1100, 40), random.uniform(-900, 1300, 40)
    values = {
        f"{da}{db}": (products(design(splines[0], a, da), design(splines[1], b, db)) @ coefficients).tolist()
        for da, db in [(0, 0), (1, 0), (0, 1), (2, 0), (1, 1), (0, 2)]
    }
    return {"across": across, "up": up, "coefficients": coefficients.tolist(), "a": a.tolist(), "b": b.tolist(), "values": values}


def restricted(covariance, free, y):
    """-2 log restricted likelihood but for a constant (Patterson and Thompson 1971)."""
    inverse = np.linalg.inv(covariance)
    normal = free.T @ inverse @ free
    beta = np.linalg.solve(normal, free.T @ inverse @ y)
    left = y - free @ beta
    return np.linalg.slogdet(covariance)[1] + np.linalg.slogdet(normal)[1] + left @ inverse @ left


def best_scale(value):
    found = minimize_scalar(value, bounds=(np.log(0.01), np.log(100)), method="bounded", options={"xatol": 1e-8})
    return found.fun, float(np.exp(found.x / 2))


def smoothing(random, hump, noise):
    at, height = [0.0, 750.0], [-700.0, 1100.0]
    a, b = (each.ravel() for each in np.meshgrid(np.arange(50, 701, 50.0), np.arange(-650, 1051, 85.0)))
    sd = random.uniform(0.2, 0.5, len(a))
    y = 4 + 0.01 * a - 0.006 * b + 2e-6 * a * b - 4e-6 * b**2 + noise * sd * random.normal(size=len(a))
    if hump:
        y += hump["rise"] * np.exp(-((a - 350) ** 2 + (b - 100) ** 2) / (2 * hump["radius"] ** 2))
    y = np.round(y, 3)
    sd = np.round(sd, 3)
    u, v = (a - a.mean()) / 1000, (b - b.mean()) / 1000
    free = np.column_stack([np.ones_like(u), u, v, u * v, u**2, v**2])
    errors = np.diag(sd**2)
    without, factor = best_scale(lambda log: restricted(np.exp(log) * errors, free, y))
    tried = []
    for interval in INTERVALS:
        counts = [max(2, int(np.floor((end - start) / interval + 0.5))) for start, end in (at, height)]
        basis = products(design(elements(*at, counts[0]), a), design(elements(*height, counts[1]), b))
        for size in SIZES:
            wavy = size**2 * basis @ basis.T
            value, scale = best_scale(lambda log: restricted(wavy + np.exp(log) * errors, free, y))
            tried.append({"interval": interval, "sd": size, "gain": without - value, "factor": scale})
    return {
        "at": at,
        "height": height,
        "cells": {"a": a.tolist(), "b": b.tolist(), "value": y.tolist(), "sd": sd.tolist()},
        "plain": {"factor": factor},
        "tried": tried,
    }


random = np.random.default_rng(7)
told = {
    "made_by": f"make_splines.py with NumPy {np.__version__} and SciPy {scipy.__version__}",
    "surfaces": [surface(random) for _ in range(3)],
    "smoothing": [
        smoothing(random, hump, noise)
        for hump, noise in [
            (None, 1.0),
            (None, 2.5),
            ({"rise": 4.0, "radius": 250.0}, 1.0),
            ({"rise": 4.0, "radius": 100.0}, 1.0),
            ({"rise": -3.0, "radius": 150.0}, 2.0),
            ({"rise": 0.5, "radius": 150.0}, 1.0),
        ]
    ],
}
Path(__file__).with_name("splines_scipy.json").write_text(json.dumps(told, separators=(",", ":")) + "\n")
