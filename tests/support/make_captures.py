#!/usr/bin/env python3
"""Writes captures of a B channel with errors, slips and outages at known places, and truth.json.

Usage: make_captures.py FOLDER

Another program than Loopwright, for its tests: made from the recurrence a(t) = a(t-k) xor a(t-n) of
ITU-T O.150 alone. Each entry of truth.json names a file, how it is to be read, and what an analysis
has to find in it. Python 3, standard library only.
"""
import json
import random
import sys
from pathlib import Path

# key: stages, tap, inverted, zero suppression
PATTERNS = {
    "prbs9": (9, 5, False, False),
    "prbs11": (11, 9, False, False),
    "prbs15": (15, 14, True, False),
    "prbs20": (20, 3, False, False),
    "qrss20": (20, 17, False, True),
    "prbs23": (23, 18, True, False),
}


def pattern_bits(key, count, start):
    """`count` bits as they are sent; `start` is any number but 0 that n bits can hold."""
    n, k, inverted, suppressed = PATTERNS[key]
    a = bytearray((start >> i) & 1 for i in range(n))
    while len(a) < count + 15:
        a.append(a[-k] ^ a[-n])
    if suppressed:  # a zero is sent as a one if the next 14 bits are zero
        sent = bytearray(a)
        at = a.find(bytes(15))
        while at >= 0:
            sent[at] = 1
            at = a.find(bytes(15), at + 1)
        a = sent
    if inverted:
        a = a.translate(bytes([1, 0]) + bytes(254))
    return a[:count]


def octets(bits, lsb_first, seven):
    """Packs bits; with `seven`, seven to an octet and the eighth set to one."""
    if seven:
        spaced = bytearray()
        for at in range(0, len(bits) - 6, 7):
            spaced += bits[at:at + 7]
            spaced.append(1)
        bits = spaced
    bits = bits[:len(bits) // 8 * 8]
    text = bits.translate(bytes([48, 49]) + bytes(254)).decode()
    packed = int("1" + text, 2).to_bytes(len(bits) // 8 + 1, "big")[1:]
    if lsb_first:
        table = bytes(int(f"{octet:08b}"[::-1], 2) for octet in range(256))
        packed = packed.translate(table)
    return packed


class Capture:
    def __init__(self, name, key, seconds, inverted=False, lsb_first=False, rate=64000, told=True):
        self.name, self.key, self.rate = name, key, rate
        self.seconds, self.inverted, self.lsb_first = seconds, inverted, lsb_first
        self.told = told  # whether the pattern is named to the analysis
        self.random = random.Random(name)
        start = self.random.randrange(1, 1 << PATTERNS[key][0])
        self.source = pattern_bits(key, seconds * rate + 200_000, start)
        if inverted:
            self.source = self.source.translate(bytes([1, 0]) + bytes(254))
        self.taken = 0
        self.bits = bytearray()
        self.errors = [0] * seconds
        self.slips = []
        self.losses = 0

    def upto(self, at):
        """The pattern, up to bit `at` of the capture."""
        count = at - len(self.bits)
        assert count >= 0
        self.bits += self.source[self.taken:self.taken + count]
        self.taken += count

    def slip(self, at, bits):
        """At bit `at` so many bits are lost, or, below 0, come twice."""
        self.upto(at)
        self.taken += bits
        self.slips.append({"second": at // self.rate, "bits": bits})

    def outage(self, at, count, fill):
        """In place of the pattern: "noise", 0 or 1. The seconds that it touches are out of sync."""
        self.upto(at)
        if fill == "noise":
            self.bits += bytes(self.random.getrandbits(1) for _ in range(count))
        else:
            self.bits += bytes([fill]) * count
        self.taken += count
        for second in range(at // self.rate, (at + count - 1) // self.rate + 1):
            self.errors[second] = None
        self.losses += 1

    def finish(self):
        self.upto(self.seconds * self.rate)

    def error(self, at):
        self.bits[at] ^= 1
        self.errors[at // self.rate] += 1

    def scatter(self, count, keep_clear=()):
        """So many single errors, not near the start, the slips and what is out of sync."""
        for at in self.random.sample(range(2000, len(self.bits)), count):
            if self.errors[at // self.rate] is not None and \
                    all(abs(at - place) > 3000 for place in keep_clear):
                self.error(at)

    def write(self, folder):
        path = Path(folder, self.name + ".raw")
        path.write_bytes(octets(self.bits, self.lsb_first, self.rate == 56000))
        return {"file": path.name, "pattern": self.key, "told": self.told,
                "inverted": self.inverted, "lsb_first": self.lsb_first, "rate": self.rate,
                "per_second": self.errors, "slips": self.slips, "sync_losses": self.losses}


def captures():
    for key in PATTERNS:
        c = Capture(f"{key}-clean", key, 4, told=False)
        c.finish()
        yield c
        c = Capture(f"{key}-errors", key, 6, inverted=key in ("prbs11", "prbs15"),
                    lsb_first=key == "prbs20", told=key != "prbs9")
        c.finish()
        c.scatter(500)
        yield c
        c = Capture(f"{key}-slips", key, 6)
        places = (70_000, 150_123, 200_001, 333_333)
        for at, bits in zip(places, (8, -8, 1, -13)):
            c.slip(at, bits)
        c.finish()
        c.scatter(50, places)
        yield c
        c = Capture(f"{key}-56", key, 5, rate=56000, lsb_first=key == "prbs9")
        c.slip(100_001, 7)
        c.finish()
        c.scatter(60, (100_001,))
        yield c
        c = Capture(f"{key}-outage", key, 8)
        c.outage(2 * 64000 + 9_000, 2 * 64000, "noise" if key == "prbs11" else 1)
        c.outage(6 * 64000 + 10_000, 40_000, 0)
        c.finish()
        c.scatter(40)
        yield c
    c = Capture("one-minute", "prbs11", 60, told=False)
    c.outage(20 * 64000 + 100, 12 * 64000, "noise")
    c.slip(45 * 64000 + 32_000, 8)
    c.finish()
    c.scatter(300, (45 * 64000 + 32_000,))
    yield c


def main():
    folder = Path(sys.argv[1])
    truth = [capture.write(folder) for capture in captures()]
    (folder / "truth.json").write_text(json.dumps(truth))


if __name__ == '__main__':
    main()
