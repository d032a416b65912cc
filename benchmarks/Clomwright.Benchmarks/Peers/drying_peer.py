"""SciPy's stiff integrators on the same nodes, tables and hours. drying_peer.py FILE: a line "METHOD RTOL ATOL" is answered with wall and processor time (ms), error and right-hand sides."""
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp
from scipy.sparse import diags

with open(sys.argv[1], "rb") as file:
    def read():
        return np.fromfile(file, np.float64, int(np.fromfile(file, np.int64, 1)[0]))
    shares, heights, thick, table, scalars, hours, exact = (read() for _ in range(7))
full, laid, apart, count, lifts = scalars
table, hours = table.reshape(-1, 6).T.copy(), hours.reshape(-1, 14)
n, step = len(shares), full / (table.shape[1] - 1)
half = np.diff(shares)
nodes = np.zeros(n)
nodes[:-1] += half / 2
nodes[1:] += half / 2


def system(rows):
    h, t = heights[:rows, None], thick[:rows, None]
    width = t * nodes
    volume, across = width * h, h / (t * half)
    upward = np.minimum(t[:-1], t[1:]) * nodes / ((h[:-1] + h[1:]) / 2)
    last = table.shape[1] - 1

    def rhs(time, y):
        rhs.calls += 1
        c = hours[min(int(time / 3600), len(hours) - 1)]
        u = y.reshape(rows, n)
        i = np.clip((u / step).astype(int), 0, last)
        d = u - i * step
        a0, a1, a2, b0, b1, b2 = table[:, i]
        low = d < 0
        a2, b2 = np.where(low, 0, a2), np.where(low, 0, b2)
        b = b0 + d * (b1 + d * b2 / 2)
        p = c[0] * (a0 + d * (a1 + d * a2 / 2)) + c[1] * b
        r = np.zeros_like(u)
        flow = across * (p[:, :-1] - p[:, 1:])
        r[:, :-1] -= flow
        r[:, 1:] += flow
        rise = upward * (p[:-1] - p[1:])
        r[:-1] -= rise
        r[1:] += rise

        def out(k, u, b):
            return (c[k] * b - c[k + 1]) / (1 + c[k + 2] * np.maximum(b, 0)) - c[k + 3] * (full - u)
        r[:, 0] -= out(2, u[:, 0], b[:, 0]) * h[:, 0]
        r[:, -1] -= out(6, u[:, -1], b[:, -1]) * h[:, 0]
        r[-1] -= out(10, u[-1], b[-1]) * width[-1]
        return (r / volume).ravel()
    rhs.calls = 0
    return rhs, volume


for line in sys.stdin:
    method, rtol, atol = line.split()
    wall, cpu, calls = time.perf_counter(), time.process_time(), 0
    y = np.zeros(0)
    for lift in range(int(lifts)):
        y = np.concatenate([y, np.full(3 * n, laid)])
        rows = 3 * (lift + 1)
        rhs, volume = system(rows)
        size = rows * n
        options = {"lband": n, "uband": n} if method == "LSODA" else {"jac_sparsity": diags([1] * 5, [-n, -1, 0, 1, n], (size, size))}
        end = count if lift == lifts - 1 else (lift + 1) * apart
        y = solve_ivp(rhs, (lift * apart * 86400, end * 86400), y, method=method, rtol=float(rtol), atol=float(atol), max_step=3600, t_eval=[end * 86400], **options).y[:, -1]
        calls += rhs.calls
    error = np.sqrt((volume.ravel() * (y - exact) ** 2).sum() / volume.sum())
    print(1e3 * (time.perf_counter() - wall), 1e3 * (time.process_time() - cpu), error, calls, flush=True)
