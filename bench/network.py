"""The same published method (gradient method, same start, same end) by scipy's sparse solver, on the grids of network.mjs.

Prints JSON: for each grid size the median processor seconds of one solution, its iterations and the sum of heads, to compare.
Run by network.mjs; alone: /usr/bin/python3 bench/network.py 10 30 100
"""
import json
import math
import resource
import sys
import time

import numpy as np
import scipy
import scipy.sparse as sp
from scipy.sparse.linalg import spsolve


def grid(k):
    """k x k junctions, runs along rows and columns; the tank feeds the first corner. The same numbers as in network.mjs."""
    seed = 12345

    def uniform():
        nonlocal seed
        seed = (seed * 1103515245 + 12345) % 2147483648
        return seed / 2147483648

    a, b = [], []
    for i in range(k):
        for j in range(k):
            if j + 1 < k:
                a.append(i * k + j)
                b.append(i * k + j + 1)
            if i + 1 < k:
                a.append(i * k + j)
                b.append((i + 1) * k + j)
    bore = [0.1 + 0.2 * uniform() for _ in a]
    length = [50 + 100 * uniform() for _ in a]
    demand = [(0.2 + 0.8 * uniform()) * 0.05 / (k * k) for _ in range(k * k)]
    return np.array(a), np.array(b), np.array(bore), np.array(length), np.array(demand)


HEAD = 100.0
C = 130.0
K = 1.318 * 0.3048 ** 0.37


def solve(a, b, bore, length, demand):
    n = len(demand)
    power = 1 / 0.54
    area = math.pi / 4 * bore**2
    r = length * (1 / (area * K * C * (bore / 4) ** 0.63)) ** power
    usual = r * area ** (power - 1)
    least = 1e-6 * usual
    m = len(a)
    rows = np.concatenate([np.arange(m), np.arange(m)])
    incidence = sp.csr_matrix((np.concatenate([np.ones(m), -np.ones(m)]), (rows, np.concatenate([a, b]))), shape=(m, n))
    free, fixed = incidence[:, 1:], incidence[:, :1]
    free_t = free.T.tocsr()
    q = np.zeros(m)
    loss = np.zeros(m)
    slope = usual
    head = np.zeros(n)
    head[0] = HEAD
    for iteration in range(1, 100):
        w = 1 / slope
        matrix = (free_t @ sp.diags(w) @ free).tocsc()
        right = -demand[1:] - free_t @ (q - w * loss + w * (fixed @ head[:1]))
        head[1:] = spsolve(matrix, right)
        fall = incidence @ head
        q = q + (fall - loss) / slope
        speed = np.abs(q) ** (power - 1)
        loss = r * q * speed
        slope = np.maximum(power * r * speed, least)
        if np.max(np.abs(fall - loss)) <= 1e-12 * HEAD:
            break
    return head, iteration


def main():
    results = []
    for k in [int(x) for x in sys.argv[1:]] or [10, 30, 100]:
        data = grid(k)
        solve(*data)
        times = []
        for _ in range(1 if k >= 300 else max(3, min(31, 2000 // k))):
            start = time.process_time()
            head, iterations = solve(*data)
            times.append(time.process_time() - start)
        megabytes = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        results.append({"size": k, "megabytes": megabytes, "seconds": sorted(times)[len(times) // 2], "iterations": iterations, "sumOfHeads": float(np.sum(head))})
    print(json.dumps({"python": sys.version.split()[0], "scipy": scipy.__version__, "results": results}))


main()
