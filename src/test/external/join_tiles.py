#!/usr/bin/env python3
"""Joins the rasters of tiled pages by their register marks alone; a part of check_pdf.sh.

usage: join_tiles.py COLUMNS ROWS JOINED.pgm PAGE.pgm PAGE.ppm [PAGE.pgm PAGE.ppm]...

Pages in the order of their numbers, row by row from the top left, each in grey and in colour: of all colours used only that of the marks
has more green than red. A mark is known by a stroke of 5.2 mm, level or upright: the seams themselves are dashed.
Neighbours must show the same marks, and the two marks of a seam must agree within 0.1 mm. Of each page only what lies within its seams is taken.

DPI is read from the paper: 297 mm are its long edge (A4). Exit 0, or 1 with what is wrong on the last line.
"""

import re
import sys

STROKE_MM = 5.2
ROUGH_MM = 0.35
TRUE_MM = 0.1
# Seams lie in the overlap, behind the margin; the marks stand at a quarter and three quarters of their length.
EDGE_MM = 30
LONG_EDGE_MM = 297
# Red and green of what is black, grey or blue are alike to the last bit.
MARKED = bytes(1 if value >= 16 else 0 for value in range(256))


def read(path, kind=5):
    """Rows of a raster; kind 5 is grey, 6 has red, green and blue for each dot."""
    with open(path, "rb") as file:
        data = file.read()
    header = re.match(rb"P%d\s+(?:#.*\s+)*(\d+)\s+(\d+)\s+(\d+)\s" % kind, data)
    width, height = int(header.group(1)) * (3 if kind == 6 else 1), int(header.group(2))
    body = data[header.end() :]
    return [body[y * width : (y + 1) * width] for y in range(height)]


def marked(path):
    """Rows of a colour raster with a byte of 1 for each dot of the marks' colour."""
    rows = []
    for row in read(path, 6):
        red, green = row[0::3], row[1::3]
        unlike = int.from_bytes(red, "big") ^ int.from_bytes(green, "big")
        rows.append(unlike.to_bytes(len(red), "big").translate(MARKED))
    return rows


def strokes(rows, dot):
    """Middles (along, across) of level strokes as long as a mark's; neighbouring rows are one stroke."""
    found = []
    for y, row in enumerate(rows):
        for match in re.finditer(rb"\x01+", row):
            start, end = match.span()
            if abs((end - start) * dot - STROKE_MM) < ROUGH_MM:
                middle = (start + end - 1) / 2
                for other in found:
                    if abs(other[0] - middle) * dot < 0.5 and abs(other[2] - y) <= 2:
                        other[2] = y
                        break
                else:
                    found.append([middle, y, y])
    return [(middle, (first + last) / 2) for middle, first, last in found]


def marks(path, dot):
    """Marks of the page's four seams, which lie near its edges; each (x, y), sorted along the seam."""
    rows = marked(path)
    width, height = len(rows[0]), len(rows)
    columns = [bytes(row[x] for row in rows) for x in range(width)]
    found = sorted(strokes(rows, dot))
    # A dash may lengthen one of a mark's two strokes, never the one across the seam.
    for y, x in strokes(columns, dot):
        if all(abs(x - other[0]) + abs(y - other[1]) > 1 / dot for other in found):
            found.append((x, y))
    edge = EDGE_MM / dot
    return {
        "left": sorted((m for m in found if m[0] < edge), key=lambda m: m[1]),
        "right": sorted((m for m in found if m[0] > width - edge), key=lambda m: m[1]),
        "top": sorted(m for m in found if m[1] < edge),
        "bottom": sorted(m for m in found if m[1] > height - edge),
    }


def shift(here, there, dot, what):
    if len(here) != 2 or len(there) != 2:
        sys.exit(f"{what}: {len(here)} and {len(there)} marks, expected two each")
    steps = [(a[0] - b[0], a[1] - b[1]) for a, b in zip(here, there)]
    off = max(abs(steps[0][0] - steps[1][0]), abs(steps[0][1] - steps[1][1])) * dot
    if off > TRUE_MM:
        sys.exit(f"{what}: marks disagree by {off:.3f} mm")
    return (steps[0][0] + steps[1][0]) / 2, (steps[0][1] + steps[1][1]) / 2, off


def mean(found, axis, otherwise):
    return round(sum(mark[axis] for mark in found) / len(found)) if found else otherwise


def main():
    columns, rows = int(sys.argv[1]), int(sys.argv[2])
    files = sys.argv[4:]
    pages = [read(path) for path in files[0::2]]
    if len(pages) != columns * rows:
        sys.exit(f"{len(pages)} pages, expected {columns * rows}")
    dot = LONG_EDGE_MM / max(len(pages[0]), len(pages[0][0]))
    seams = [marks(path, dot) for path in files[1::2]]
    at = {0: (0.0, 0.0)}
    worst = 0
    for number in range(1, columns * rows):
        column, row = number % columns, number // columns
        before = number - 1 if column else number - columns
        pair = ("right", "left") if column else ("bottom", "top")
        what = f"pages {before + 1} and {number + 1}"
        dx, dy, off = shift(seams[before][pair[0]], seams[number][pair[1]], dot, what)
        at[number] = (at[before][0] + dx, at[before][1] + dy)
        worst = max(worst, off)
        if column and row:
            above = number - columns
            dx, dy, off = shift(seams[above]["bottom"], seams[number]["top"], dot, what)
            gap = max(abs(at[above][0] + dx - at[number][0]), abs(at[above][1] + dy - at[number][1]))
            if gap * dot > TRUE_MM:
                sys.exit(f"page {number + 1} lies {gap * dot:.3f} mm off, by its two neighbours")
            worst = max(worst, off, gap * dot)
    width = max(round(at[n][0]) + len(pages[n][0]) for n in at)
    height = max(round(at[n][1]) + len(pages[n]) for n in at)
    joined = [bytearray(b"\xff" * width) for _ in range(height)]
    for number, page in enumerate(pages):
        seam = seams[number]
        left, right = mean(seam["left"], 0, 0), mean(seam["right"], 0, len(page[0]) - 1)
        top, bottom = mean(seam["top"], 1, 0), mean(seam["bottom"], 1, len(page) - 1)
        x0, y0 = round(at[number][0]), round(at[number][1])
        for y in range(top, bottom + 1):
            if 0 <= y + y0 < height and x0 + left >= 0:
                joined[y + y0][x0 + left : x0 + right + 1] = page[y][left : right + 1]
    with open(sys.argv[3], "wb") as file:
        file.write(b"P5\n%d %d\n255\n" % (width, height))
        for line in joined:
            file.write(line)
    print(f"{len(pages)} pages joined, marks within {worst:.3f} mm of each other")


main()
