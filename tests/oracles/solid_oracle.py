#!/usr/bin/env python3
"""Solves a body of eight-node hexahedra with SciPy, to check Clomwright.Numerics.Solid against.

Written apart from the library and from other formulas: full 6 x 33 strain matrices, numpy's inverse for the modes, a sparse matrix
assembled from triplets, SciPy's direct solver. Reads one problem as JSON from standard input, writes the displacements as JSON.

The problem: "points" [[x, y, z]], "cells" [{"nodes": 8 numbers, "material", "stiffness", "weights": 8 or null}] with nodes in the order of
t fastest, then s, then z, and the weights of the Gauss points in the same order; "materials" [{"local": 6 x 6, in (ss, zz, tt, sz, zt, ts),
"isotropic"}]; "springs" [[node, axis, stiffness]]; "loads" [[force of every degree of freedom]]; "modes": whether the incompatible ones are on.
"""
import json
import sys

import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as spl

CORNERS = np.array([[2 * s - 1, 2 * z - 1, 2 * t - 1] for z in (0, 1) for s in (0, 1) for t in (0, 1)], float)
GAUSS = CORNERS / np.sqrt(3)
VOIGT = [(0, 0), (1, 1), (2, 2), (0, 1), (1, 2), (2, 0)]


def slopes(at):
    """8 x 3: derivatives of the shape functions to (xi, eta, zeta)."""
    one = 1 + CORNERS * at
    return np.stack([CORNERS[:, 0] * one[:, 1] * one[:, 2], one[:, 0] * CORNERS[:, 1] * one[:, 2], one[:, 0] * one[:, 1] * CORNERS[:, 2]], 1) / 8


def strain_matrix(gradients):
    """6 x 3n, engineering shear strains, from n gradients in (x, y, z)."""
    b = np.zeros((6, 3 * len(gradients)))
    for n, g in enumerate(gradients):
        for row, (i, j) in enumerate(VOIGT):
            b[row, 3 * n + i] += g[j]
            if i != j:
                b[row, 3 * n + j] += g[i]
    return b


def global_elasticity(material, jacobian):
    """D in (x, y, z), through the fourth-order tensor."""
    local = np.array(material["local"], float).reshape(6, 6)
    if material["isotropic"]:
        return local
    s = jacobian[:, 0] / np.linalg.norm(jacobian[:, 0])
    z = jacobian[:, 1] - (jacobian[:, 1] @ s) * s
    z /= np.linalg.norm(z)
    t = np.cross(s, z)
    if t @ jacobian[:, 2] < 0:
        t = -t
    axes = np.stack([s, z, t])
    tensor = np.zeros((3, 3, 3, 3))
    for p, (i, j) in enumerate(VOIGT):
        for q, (k, l) in enumerate(VOIGT):
            for a, b in {(i, j), (j, i)}:
                for c, d in {(k, l), (l, k)}:
                    tensor[a, b, c, d] = local[p, q]
    turned = np.einsum("abcd,ai,bj,ck,dl->ijkl", tensor, axes, axes, axes, axes, optimize=True)
    return np.array([[turned[i, j, k, l] for k, l in VOIGT] for i, j in VOIGT])


def stiffness(points, material, weights, modes):
    centre = points.T @ slopes(np.zeros(3))
    d = global_elasticity(material, centre)
    k = np.zeros((33, 33))
    for q in range(8):
        jacobian = points.T @ slopes(GAUSS[q])
        det = np.linalg.det(jacobian)
        gradients = slopes(GAUSS[q]) @ np.linalg.inv(jacobian)
        bubble = np.diag(-2 * GAUSS[q]) @ np.linalg.inv(centre) * (np.linalg.det(centre) / det)
        b = strain_matrix(np.vstack([gradients, bubble]))
        k += abs(det) * weights[q] * b.T @ d @ b
    if not modes:
        return k[:24, :24]
    return k[:24, :24] - k[:24, 24:] @ np.linalg.inv(k[24:, 24:]) @ k[24:, :24]


def main():
    problem = json.load(sys.stdin)
    points = np.array(problem["points"], float)
    rows, columns, values = [], [], []
    for cell in problem["cells"]:
        k = cell["stiffness"] * stiffness(points[cell["nodes"]], problem["materials"][cell["material"]], cell["weights"] or np.ones(8), problem["modes"])
        dofs = (3 * np.array(cell["nodes"])[:, None] + np.arange(3)).ravel()
        rows.append(np.repeat(dofs, 24))
        columns.append(np.tile(dofs, 24))
        values.append(k.ravel())
    springs = np.array(problem["springs"], float).reshape(-1, 3)
    dofs = (3 * springs[:, 0] + springs[:, 1]).astype(int)
    used = np.unique(np.concatenate(rows))
    size = 3 * len(points)
    matrix = sp.csc_matrix((np.concatenate(values + [springs[:, 2]]), (np.concatenate(rows + [dofs]), np.concatenate(columns + [dofs]))), (size, size))
    factor = spl.splu(matrix[used][:, used], permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True}, diag_pivot_thresh=0.0)
    answers = []
    for load in problem["loads"]:
        u = np.zeros(size)
        right = np.array(load, float)[used]
        u[used] = factor.solve(right)
        u[used] += factor.solve(right - matrix[used][:, used] @ u[used])
        answers.append(u.tolist())
    json.dump(answers, sys.stdout)


main()
