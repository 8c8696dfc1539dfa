#!/usr/bin/python3
"""Loops per second for the loss at 40 kHz of 100,000 varied loops, against the same computation in NumPy.

    tests/bench/loop.py BUILD/tests/bench.loop [ROUNDS]

Makes the arrays, hands the very same to the program and to NumPy (Debian's python3-numpy), checks that every
loss agrees, and prints the best time of each. Both start from kind, wire, length, inductance and temperature; what
follows from these is within the time. The NumPy side does what the program does: the closed form of the propagation
constant without leakage, a voltage and a current walked from the customer to the office, one place of all loops at a
time, in blocks that stay in the cache.
Times are of the processor as well as of the clock on the wall. On a machine with other work the latter says little:
two threads then share one processor, and the gain of the second is told by the processor time of the busier thread.
"""
import json
import os
import subprocess
import sys
import tempfile
import time

os.environ.setdefault('OMP_NUM_THREADS', '1')
import numpy as np

LOOPS, PLACES, FREQUENCY, OHMS = 100_000, 8, 40e3, 135.0
W = 2 * np.pi * FREQUENCY
LEAST_SECONDS = 3  # as the program has: a spell of other work must not cover all rounds

# U70 by gauge (19, 22, 24, 26) at 70 degF, then EPE by diameter (0.32 to 0.90 mm) at 68 degF.
R = np.array([16.465 / .3048, 33.006 / .3048, 52.498 / .3048, 83.475 / .3048, 409, 280, 179.2, 113, 55.1])
A = np.concatenate([1.7418e-6 * R[:4] ** 2, [.3822, .0969, .0561, .0257, .0094]])
L0 = 1e-6 * np.array([617.29539] * 4 + [607.5, 587.3, 674.6, 699.4, 750.9])
LINF = 1e-6 * np.array([478.97099] * 4 + [500, 426, 532.7, 477.2, 520.5])
B = np.array([1.1529766] * 4 + [5.269, 1.385, 1.195, 1.0956, .9604])
FM = np.concatenate([3172.3 * R[:4], [609e3, 745.9e3, 664.7e3, 265.8e3, 123.8e3]])
C = 1e-9 * np.array([51.57] * 4 + [40, 50, 50, 45, 40])
REFERENCE = np.array([1.0] * 4 + [1 + .0021818 * (68 - 70)] * 5)


def varied_loops(generator):
    """One to eight elements a loop; nine wires; taps; a few coils; 0 to 140 degF."""
    count = generator.integers(1, PLACES + 1, LOOPS)
    used = np.arange(PLACES) < count[:, None]
    draw = generator.random((LOOPS, PLACES))
    kind = np.where(draw < .70, 1, np.where(draw < .97, 2, 3)) * used
    wire = generator.integers(0, 9, (LOOPS, PLACES))
    km = np.where(kind == 2, generator.uniform(.03, .9, kind.shape), generator.uniform(.05, 2.5, kind.shape))
    mh = generator.choice([44.0, 66.0, 88.0], kind.shape)
    return kind.astype(np.int8), wire.astype(np.int32), km, mh, generator.uniform(0, 140, LOOPS)


def write(path, kind, wire, km, mh, fahrenheit):
    with open(path, 'wb') as file:
        np.array([LOOPS, PLACES], dtype=np.int32).tofile(file)
        for array in (kind, wire, km, mh, fahrenheit):
            array.tofile(file)


def propagation(wire, fahrenheit):
    """alpha and beta per km, and the parts of Z0 and Y0."""
    k = (1 + .0021818 * (fahrenheit - 70)) / REFERENCE[wire]
    r2 = (R[wire] * k) ** 2
    r = np.sqrt(np.sqrt(r2 * r2 + A[wire] * k * k * FREQUENCY ** 2))
    x = (FREQUENCY / (FM[wire] * k)) ** B[wire]
    wl = W * (L0[wire] + LINF[wire] * x) / (1 + x)
    wc = W * C[wire]
    m = np.sqrt(r * r + wl * wl)
    beta = np.sqrt(.5 * wc * (m + wl))
    alpha = .5 * wc * r / beta
    return alpha, beta, (beta - 1j * alpha) / wc, (beta + 1j * alpha) / m


def losses_db(kind, wire, km, mh, fahrenheit):
    voltage = np.full(len(kind), OHMS + 0j)
    current = np.ones(len(kind), dtype=complex)
    scale = np.zeros(len(kind))
    for place in range(PLACES - 1, -1, -1):
        at = kind[:, place]
        for which in (1, 2):
            rows = np.flatnonzero(at == which)
            if not rows.size:
                continue
            alpha, beta, z0, y0 = propagation(wire[rows, place], fahrenheit[rows])
            length = km[rows, place]
            angle = -2 * length * beta
            echo = np.empty(rows.size, dtype=complex)
            size = np.exp(-2 * length * alpha)
            echo.real = size * np.cos(angle)
            echo.imag = size * np.sin(angle)
            if which == 1:
                v, onward = voltage[rows], z0 * current[rows]
                going = .5 * (v + onward)
                coming = .5 * (v - onward) * echo
                voltage[rows] = going + coming
                current[rows] = y0 * (going - coming)
                scale[rows] += alpha * length
            else:
                current[rows] += y0 * ((1 - echo) / (1 + echo)) * voltage[rows]
        rows = np.flatnonzero(at == 3)
        if rows.size:
            henry = 1e-3 * mh[rows, place]
            voltage[rows] += (1 + mh[rows, place] / 11 + 1j * W * henry) * current[rows]
    sum_ = voltage + OHMS * current
    return 10 * np.log10((sum_.real ** 2 + sum_.imag ** 2) / (2 * OHMS) ** 2) + 20 / np.log(10) * scale


def in_blocks(block, arrays):
    return np.concatenate([losses_db(*(a[i:i + block] for a in arrays)) for i in range(0, LOOPS, block)])


def best_of(rounds, work, least_seconds=0.0):
    wall = processor = float('inf')
    begun, done = time.perf_counter(), 0
    while done < rounds or time.perf_counter() - begun < least_seconds:
        done += 1
        p, w = time.process_time(), time.perf_counter()
        result = work()
        wall, processor = min(wall, time.perf_counter() - w), min(processor, time.process_time() - p)
    return result, wall, processor


def main():
    program = sys.argv[1]
    rounds = int(sys.argv[2]) if len(sys.argv) > 2 else 20
    arrays = varied_loops(np.random.default_rng(821))
    with tempfile.TemporaryDirectory() as folder:
        data, out = os.path.join(folder, 'arrays'), os.path.join(folder, 'losses')
        write(data, *arrays)
        times = json.loads(subprocess.run([program, data, out, str(rounds)], check=True, capture_output=True).stdout)
        ours = np.fromfile(out)
    # The block that is quickest here is NumPy's best foot.
    tried = {block: best_of(2, lambda: in_blocks(block, arrays))[2] for block in (2000, 5000, 10000, 25000, LOOPS)}
    block = min(tried, key=tried.get)
    theirs, wall, processor = best_of(rounds, lambda: in_blocks(block, arrays), LEAST_SECONDS)
    worst = float(np.max(np.abs(ours - theirs)))
    print(f'{LOOPS} loops of {float(np.mean(np.sum(arrays[0] > 0, axis=1))):.2f} elements, best of {rounds} rounds; '
          f'NumPy {np.__version__} in blocks of {block}')
    print(f'                        wall s    processor s   loops per second (processor)')
    for name, w, p in (('NumPy', wall, processor), ('one thread', times['one_wall'], times['one_processor']),
                       ('two threads', times['two_wall'], times['two_processor'])):
        print(f'{name:20}{w:10.4f}{p:15.4f}{LOOPS / p:20.0f}')
    print(f'one thread against NumPy: {processor / times["one_processor"]:.1f} times (processor), '
          f'{wall / times["one_wall"]:.1f} (wall)')
    print(f'two threads against one: {times["one_wall"] / times["two_wall"]:.2f} times (wall), '
          f'{times["one_processor"] / times["two_busier"]:.2f} by the processor time of the busier thread')
    print(f'largest difference: {worst:.2e} dB')
    return 0 if worst < 1e-6 else 1


if __name__ == '__main__':
    sys.exit(main())
