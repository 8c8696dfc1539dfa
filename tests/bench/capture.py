#!/usr/bin/python3
"""The whole command `analyse capture` on a file of 256 MB against `cat FILE`, standard output to /dev/null.

    tests/bench/capture.py BUILD/bin/loopwright-cli [ROUNDS]

Makes captures of eight hours of 2047, of 2047 with one bit in a thousand in error, and of the 2^20-1 pattern
with its zeros limited. Prints milliseconds by the clock on the wall and of the processor, each the best of the
rounds, which of both programs take turns; and the memory that the command takes at most, for 2.56 MB too.
"""
import math
import os
import random
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / 'support'))
from make_captures import PATTERNS, octets, pattern_bits

OCTETS = 256_000_000


def period(key):
    """A whole number of octets that repeat: eight periods of the pattern."""
    ones = (1 << PATTERNS[key][0]) - 1  # as many bits as a period has, and where it begins
    return octets(pattern_bits(key, ones, ones) * 8, False, False)


def write(path, key, ratio=0.0):
    """In a process of its own: the system counts the memory of this one as the command's."""
    child = os.fork()
    if child:
        if os.waitpid(child, 0)[1]:
            sys.exit('the capture was not written')
        return
    once = period(key)
    data = bytearray(once * (OCTETS // len(once) + 1))[:OCTETS]
    source = random.Random(1)
    at = -1
    while ratio > 0:
        at += 1 + int(math.log(1 - source.random()) / math.log(1 - ratio))
        if at >= 8 * OCTETS:
            break
        data[at >> 3] ^= 0x80 >> (at & 7)
    path.write_bytes(data)
    os._exit(0)


def run(*command):
    """Seconds on the wall, seconds of the processor, kilobytes."""
    begin = time.perf_counter()
    quiet = [(os.POSIX_SPAWN_OPEN, 1, os.devnull, os.O_WRONLY, 0)]
    child = os.posix_spawnp(command[0], [str(word) for word in command], os.environ, file_actions=quiet)
    _, status, used = os.wait4(child, 0)
    if status:
        sys.exit(f'{command[0]} failed')
    return time.perf_counter() - begin, used.ru_utime + used.ru_stime, used.ru_maxrss


def main():
    cli = Path(sys.argv[1]).resolve()
    rounds = int(sys.argv[2]) if len(sys.argv) > 2 else 15
    with tempfile.TemporaryDirectory() as folder:
        print(f'{"":34}{"cat":>9}{"command":>9}  ratio    {"cat":>9}{"command":>9}  ratio')
        for name, key, ratio in (('2047', 'prbs11', 0),
                                 ('2047, error ratio 1e-3', 'prbs11', 1e-3),
                                 ('2^20-1, zeros limited', 'qrss20', 0)):
            file = Path(folder, 'capture.raw')
            write(file, key, ratio)
            command = (cli, 'analyse', 'capture', file, '--pattern', key)
            pairs = [(run('cat', file), run(*command)) for _ in range(rounds)]
            line = f'{name:34}'
            for what in (0, 1):
                cat, ours = (min(pair[side][what] for pair in pairs) for side in (0, 1))
                line += f'{cat * 1e3:6.1f} ms{ours * 1e3:6.1f} ms {ours / cat:6.2f}    '
            print(line)
        large = run(*command)[2]
        os.truncate(file, OCTETS // 100)
        print(f'memory: {large} kB for 256 MB, {run(*command)[2]} kB for 2.56 MB')


if __name__ == '__main__':
    main()
