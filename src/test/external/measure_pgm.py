#!/usr/bin/env python3
"""Measures the raster of a printed page; a part of check_pdf.sh.

usage: measure_pgm.py bars PAGE.pgm DPI LEVEL-FACTOR UPRIGHT-FACTOR
       measure_pgm.py same LINES.pgm PAGE.pgm DPI

bars: level ones near the bottom edge (100 mm) and the top edge (4 in), upright ones near the left and the right edge, between the
middles of their end ticks, times the factors, to 0.1 mm.
same: every black dot of LINES is found on PAGE within 0.1 mm, wherever on the page the drawing lies.

The last line of output says what was measured or what is wrong. Exit 0 or 1.
"""

import re
import sys

TRUE_MM = 0.1
TICK_MM = 0.2
# Bars lie in a strip of 5 mm inside the margin, of 30 mm at most.
STRIP_MM = 35
# With the usual margin all marks beside the drawing end here; a framed drawing begins at 10 mm.
BESIDE_MM = 8.8
DARK = 128


def read(path):
    with open(path, "rb") as file:
        data = file.read()
    header = re.match(rb"P5\s+(?:#.*\s+)*(\d+)\s+(\d+)\s+(\d+)\s", data)
    width, height, most = map(int, header.groups())
    assert most == 255, "expected eight bits"
    body = data[header.end() :]
    return [body[y * width : (y + 1) * width] for y in range(height)], width, height


BLACK = bytes(1 if value < DARK else 0 for value in range(256))


GREY = bytes(1 if value < 215 else 0 for value in range(256))


def runs(row, table=BLACK):
    """Start and end of each unbroken run of dark dots."""
    return [match.span() for match in re.finditer(rb"\x01+", row.translate(table))]


def edge(row, at, step):
    """Ink that the grey dot beyond the end of a run holds."""
    beyond = at + step
    return (255 - row[beyond]) / 255 if 0 <= beyond < len(row) else 0


def long_runs(lines, dot, least_mm):
    """Longest runs of neighbouring lines, one a band: (line, length in mm with the grey ends)."""
    found = []
    for y, row in lines:
        for start, end in runs(row):
            if (end - start) * dot >= least_mm:
                length = (end - start) + edge(row, start, -1) + edge(row, end - 1, 1)
                if found and y - found[-1][0] <= 2:
                    found[-1] = (y, max(found[-1][1], length * dot))
                else:
                    found.append((y, length * dot))
    return [length for _, length in found]


def bars(path, dpi, level, upright):
    rows, width, height = read(path)
    dot = 25.4 / dpi
    strip = int(STRIP_MM / dot)
    edges = [*range(strip), *range(width - strip, width)]
    columns = [(x, bytes(row[x] for row in rows)) for x in edges]
    ends = [*range(strip), *range(height - strip, height)]
    told = []
    for lines, factor, way in (
        ([(y, rows[y]) for y in ends], level, "level"),
        (columns, upright, "upright"),
    ):
        lengths = [length - TICK_MM for length in long_runs(lines, dot, 90)]
        for wanted in (100 * factor, 101.6 * factor):
            near = min(lengths, key=lambda length: abs(length - wanted), default=0)
            if abs(near - wanted) > TRUE_MM:
                print(f"{way} bars {lengths}, expected {wanted:.3f} mm")
                return 1
            told.append(f"{way} {near:.2f}")
    print("bars " + ", ".join(told) + " mm")
    return 0



def grown(rows, reach):
    """Each row as one long number with a bit for every dot that ink lies within reach of."""
    wide = []
    for row in rows:
        bits = int(row.translate(BITS), 2)
        out = bits
        for i in range(1, reach + 1):
            out |= bits << i | bits >> i
        wide.append(out)
    tall = []
    for y in range(len(wide)):
        out = 0
        for other in wide[max(0, y - reach) : y + reach + 1]:
            out |= other
        tall.append(out)
    return tall


BITS = bytes(ord("1") if value < 230 else ord("0") for value in range(256))
FULL = bytes(ord("1") if value < 40 else ord("0") for value in range(256))


def anchor(rows):
    """The first place of the longest level run: both rasters of one drawing have it."""
    best = (0, 0, 0)
    for y, row in enumerate(rows):
        for start, end in runs(row, GREY):
            if end - start > best[0] + 1:
                best = (end - start, start, y)
    return best


def same(lines_path, page_path, dpi):
    dot = 25.4 / dpi
    lines, lines_width, _ = read(lines_path)
    page, page_width, _ = read(page_path)
    strip = int(BESIDE_MM / dot)
    white = b"\xff" * strip
    page = [white + row[strip:-strip] + white for row in page[strip:-strip]]
    length, x0, y0 = anchor(lines)
    page_length, x1, y1 = anchor(page)
    if abs(length - page_length) > 3:
        print(f"longest line {length * dot:.2f} mm, on the page {page_length * dot:.2f} mm")
        return 1
    reach = int(TRUE_MM / dot)
    near = grown(page, reach)
    full = [int(row.translate(FULL), 2) for row in lines]
    inked = sum(bin(bits).count("1") for bits in full)
    best = None
    for dy in range(-3, 4):
        for dx in range(-3, 4):
            wrong = 0
            # Bits count from the right, so a place moves by the difference of the widths too.
            shift = (page_width - lines_width) - (x1 - x0 + dx)
            for y, bits in enumerate(full):
                at = y + y1 - y0 + dy
                row = near[at] if 0 <= at < len(near) else 0
                moved = bits << shift if shift >= 0 else bits >> -shift
                wrong += bin(moved & ~row).count("1")
            if best is None or wrong < best:
                best = wrong
    if best or inked < 1000:
        print(f"{best} of {inked} dots are not where they should be")
        return 1
    print(f"all {inked} dots within {TRUE_MM} mm")
    return 0


def main():
    mode, *rest = sys.argv[1:]
    if mode == "bars":
        return bars(rest[0], int(rest[1]), float(rest[2]), float(rest[3]))
    return same(rest[0], rest[1], int(rest[2]))


if __name__ == "__main__":
    sys.exit(main())
