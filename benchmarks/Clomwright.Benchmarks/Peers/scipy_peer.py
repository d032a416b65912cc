"""SciPy's direct solver (SuperLU) beside Clomwright. scipy_peer.py MATRIX: answers each line with wall and processor time (ms) of a full solve."""
import sys
import time

import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as spl

with open(sys.argv[1], "rb") as file:
    n, entries = np.fromfile(file, np.int64, 2)
    p, i = np.fromfile(file, np.int64, n + 1), np.fromfile(file, np.int64, entries)
    x, b = np.fromfile(file, np.float64, entries), np.fromfile(file, np.float64, n)
lower = sp.csc_matrix((x, i, p), (n, n))
matrix = (lower + sp.tril(lower, -1).T).tocsc()
for _ in sys.stdin:
    wall, cpu = time.perf_counter(), time.process_time()
    spl.splu(matrix, permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True}, diag_pivot_thresh=0.0).solve(b)
    print(1e3 * (time.perf_counter() - wall), 1e3 * (time.process_time() - cpu), flush=True)
