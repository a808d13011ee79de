#!/usr/bin/python3
"""Checks every DXF file of a folder with ezdxf (Debian: python3-ezdxf) and with plain arithmetic.

usage: check_dxf.py FOLDER [EXPECTED.json] [--match PATTERN]

Without EXPECTED each file must be sound by itself: no audit errors and no fixes either, millimetres, defined
layers and line types, honest vertex counts, closed loops where there is something to cut, nothing drawn twice on a
layer, no segment shorter than 0.05 mm, $EXTMIN and $EXTMAX as the entities really are.

With EXPECTED the half-profile of each piece is compared as well. EXPECTED is what `haftline check SET --json`
prints; PATTERN names the file of a piece, {name} standing for the piece's file name (default:
{name}-profile.dxf). Area to 1e-3 of itself and to the fit's tolerance times the outline's length; extents to 1e-6 mm.

Exit 0: all sound. 1: something is wrong, each thing on a line of its own. 2: nothing to check.
"""

import argparse
import json
import math
import pathlib
import re
import sys
import unicodedata

import ezdxf

SHORTEST_MM = 0.05
SAME_MM = 1e-6
EXTENT_MM = 1e-6
AREA_RELATIVE = 1e-3
FIT_TOLERANCE_MM = 0.01
# What a cutter follows, and what it would follow twice.
R12_ENTITIES = {"LINE", "ARC", "CIRCLE", "TEXT", "SOLID", "POLYLINE"}
PATH_LAYERS = {"CUT", "SCORE", "OUTLINE", "HIDDEN", "CENTRE", "PART", "DIMENSION", "HATCH", "TEXT"}


class Arc:
    """A line or an arc between two points, with its bulge."""

    def __init__(self, start, end, bulge):
        self.start, self.end, self.bulge = start, end, bulge
        self.chord = math.dist(start, end)
        self.sweep = 4 * math.atan(bulge)

    @property
    def is_line(self):
        return self.bulge == 0

    def length(self):
        if self.is_line:
            return self.chord
        return abs(self.radius() * self.sweep)

    def radius(self):
        return self.chord / (2 * math.sin(abs(self.sweep) / 2))

    def centre(self):
        (x0, y0), (x1, y1) = self.start, self.end
        height = (1 - self.bulge**2) / (4 * self.bulge)
        return (x0 + x1) / 2 - height * (y1 - y0), (y0 + y1) / 2 + height * (x1 - x0)

    def area(self):
        (x0, y0), (x1, y1) = self.start, self.end
        area = (x0 * y1 - x1 * y0) / 2
        if not self.is_line:
            area += self.radius() ** 2 * (self.sweep - math.sin(self.sweep)) / 2
        return area

    def points(self):
        """Ends and, on an arc, the places where it is level or upright."""
        points = [self.start, self.end]
        if not self.is_line:
            cx, cy = self.centre()
            r = self.radius()
            first = self.start if self.bulge > 0 else self.end
            start = math.atan2(first[1] - cy, first[0] - cx)
            for quarter in range(4):
                angle = quarter * math.pi / 2
                if (angle - start) % (2 * math.pi) < abs(self.sweep):
                    points.append((cx + r * math.cos(angle), cy + r * math.sin(angle)))
        return points


def polyline(entity):
    vertices = list(entity.get_points("xyb"))
    pairs = zip(vertices, vertices[1:] + (vertices[:1] if entity.closed else []))
    return [Arc(a[:2], b[:2], a[2]) for a, b in pairs]


def old_polyline(entity):
    """POLYLINE, VERTEX, SEQEND of R12."""
    vertices = [((v.dxf.location.x, v.dxf.location.y), v.dxf.get("bulge", 0)) for v in entity.vertices]
    pairs = zip(vertices, vertices[1:] + (vertices[:1] if entity.is_closed else []))
    return [Arc(a[0], b[0], a[1]) for a, b in pairs]


def is_loop(entity):
    kind = entity.dxftype()
    return kind == "LWPOLYLINE" and entity.closed or kind == "POLYLINE" and entity.is_closed


def spline_cubics(entity):
    """Control points of each cubic: a spline of degree 3 whose joints are knots of multiplicity 3."""
    controls = [tuple(point)[:2] for point in entity.control_points]
    return [controls[i : i + 4] for i in range(0, len(controls) - 1, 3)]


def curve_points(entity):
    """Ends of a spline or ellipse, and the places where it is level or upright."""
    if entity.dxftype() == "SPLINE":
        points = []
        for cubic in spline_cubics(entity):
            points += [cubic[0], cubic[3]]
            for axis in (0, 1):
                a, b, c, d = (point[axis] for point in cubic)
                points += [bezier(cubic, t) for t in quadratic(d - 3 * c + 3 * b - a, 2 * (c - 2 * b + a), b - a)]
        return points
    cx, cy = tuple(entity.dxf.center)[:2]
    mx, my = tuple(entity.dxf.major_axis)[:2]
    ratio = entity.dxf.ratio
    start, end = entity.dxf.start_param, entity.dxf.end_param
    sweep = (end - start) % (2 * math.pi) or 2 * math.pi
    angles = [start, end] + [q * math.pi / 2 for q in range(4) if (q * math.pi / 2 - start) % (2 * math.pi) < sweep]
    return [(cx + mx * math.cos(u) - my * ratio * math.sin(u), cy + my * math.cos(u) + mx * ratio * math.sin(u)) for u in angles]


def quadratic(a, b, c):
    """Roots within 0 and 1 of a t^2 + b t + c."""
    if abs(a) < 1e-12:
        roots = [-c / b] if b else []
    elif b * b < 4 * a * c:
        roots = []
    else:
        root = math.sqrt(b * b - 4 * a * c)
        roots = [(-b + root) / (2 * a), (-b - root) / (2 * a)]
    return [t for t in roots if 0 < t < 1]


def bezier(cubic, t):
    s = 1 - t
    weights = s**3, 3 * s * s * t, 3 * s * t * t, t**3
    return tuple(sum(w * point[i] for w, point in zip(weights, cubic)) for i in (0, 1))


def open_ends(entities):
    """Ends on a layer that meet no other end: none where entities form loops together."""
    ends = []
    for entity in entities:
        if is_loop(entity) or entity.dxftype() == "CIRCLE":
            continue
        if entity.dxftype() in ("SPLINE", "ELLIPSE"):
            points = curve_points(entity)
            both = (points[0], points[-1]) if entity.dxftype() == "SPLINE" else points[:2]
        else:
            parts = segments(entity)
            both = (parts[0].start, parts[-1].end) if parts else ()
        ends += both
    return [end for end in ends if sum(math.dist(end, other) < SAME_MM for other in ends) % 2]


def segments(entity):
    kind = entity.dxftype()
    if kind == "LWPOLYLINE":
        return polyline(entity)
    if kind == "POLYLINE":
        return old_polyline(entity)
    if kind == "LINE":
        return [Arc(tuple(entity.dxf.start)[:2], tuple(entity.dxf.end)[:2], 0)]
    if kind == "ARC":
        sweep = (entity.dxf.end_angle - entity.dxf.start_angle) % 360
        bulge = math.tan(math.radians(sweep) / 4)
        return [Arc(tuple(entity.start_point)[:2], tuple(entity.end_point)[:2], bulge)]
    return []


def points(entity):
    kind = entity.dxftype()
    if kind == "CIRCLE":
        (x, y), r = tuple(entity.dxf.center)[:2], entity.dxf.radius
        return [(x - r, y - r), (x + r, y + r)]
    if kind == "SOLID":
        return [tuple(v)[:2] for v in entity.vertices()]
    if kind in ("SPLINE", "ELLIPSE"):
        return curve_points(entity)
    return [point for segment in segments(entity) for point in segment.points()]


def box(all_points):
    xs, ys = zip(*all_points)
    return min(xs), min(ys), max(xs), max(ys)


def overlap_on_one_carrier(a, b):
    """Length that two segments have in common, if they lie on one line or one circle."""
    if a.is_line != b.is_line:
        return 0
    if a.is_line:
        ux = (a.end[0] - a.start[0]) / a.chord
        uy = (a.end[1] - a.start[1]) / a.chord
        along, across = [], []
        for x, y in (b.start, b.end):
            wx, wy = x - a.start[0], y - a.start[1]
            along.append(wx * ux + wy * uy)
            across.append(abs(wx * uy - wy * ux))
        if max(across) > SAME_MM:
            return 0
        return max(0, min(a.chord, max(along)) - max(0, min(along)))
    (ax, ay), (bx, by) = a.centre(), b.centre()
    if math.hypot(ax - bx, ay - by) > SAME_MM or abs(a.radius() - b.radius()) > SAME_MM:
        return 0
    shared = 0
    for first, second in ((a, b), (b, a)):
        lead = first.start if first.bulge > 0 else first.end
        start = math.atan2(lead[1] - ay, lead[0] - ax)
        for x, y in (second.start, second.end):
            turn = (math.atan2(y - ay, x - ax) - start) % (2 * math.pi)
            if SAME_MM < turn * a.radius() < abs(first.sweep) * a.radius() - SAME_MM:
                shared = max(shared, turn * a.radius())
    same_ends = {a.start, a.end} == {b.start, b.end}
    if same_ends and abs(abs(a.bulge) - abs(b.bulge)) < SAME_MM:
        same_way = (a.start == b.start) == (a.bulge * b.bulge > 0)
        shared = max(shared, a.length() if same_way else 0)
    return shared


def drawn_twice(by_layer):
    for layer, items in by_layer.items():
        # Sorted by their left ends, so that only neighbours are compared.
        boxed = sorted(((box(s.points()), s) for s in items), key=lambda pair: pair[0])
        for i, (bounds, one) in enumerate(boxed):
            for other_bounds, other in boxed[i + 1 :]:
                if other_bounds[0] > bounds[2] + SAME_MM:
                    break
                if other_bounds[1] > bounds[3] + SAME_MM or bounds[1] > other_bounds[3] + SAME_MM:
                    continue
                common = overlap_on_one_carrier(one, other)
                if common > SHORTEST_MM:
                    yield f"layer {layer}: {common:.3f} mm drawn twice near {one.start}"


def raw_counts(path):
    """Vertex counts as they stand in the file; ezdxf mends a wrong one in silence."""
    lines = path.read_text("ascii").split("\n")
    if lines[-1] == "":
        lines.pop()
    if len(lines) % 2:
        yield "odd number of lines"
        return
    kind, declared, found = None, 0, 0
    for code, value in zip(lines[::2], lines[1::2]):
        if code == "0":
            if kind == "LWPOLYLINE" and declared != found:
                yield f"polyline of {found} vertices says {declared}"
            kind, declared, found = value, 0, 0
        elif code == "90":
            declared = int(value)
        elif code == "10":
            found += 1


def check_file(path):
    """Problems of one file, and its closed loops."""
    problems = list(raw_counts(path))
    doc = ezdxf.readfile(path)
    auditor = doc.audit()
    problems += [f"audit error {e.code}: {e.message}" for e in auditor.errors]
    problems += [f"audit fix {e.code}: {e.message}" for e in auditor.fixes]
    if doc.dxfversion not in ("AC1009", "AC1015"):
        problems.append(f"version {doc.dxfversion}, expected AC1009 or AC1015")
    is_r12 = doc.dxfversion == "AC1009"
    for entity in doc.modelspace() if is_r12 else ():
        if entity.dxftype() not in R12_ENTITIES:
            problems.append(f"R12 knows no {entity.dxftype()}")
        if not entity.dxf.layer.endswith("-MM"):
            problems.append(f"layer {entity.dxf.layer} does not tell the unit")
    for variable, value in () if is_r12 else (("$INSUNITS", 4), ("$MEASUREMENT", 1)):
        if doc.header.get(variable) != value:
            problems.append(f"{variable} is {doc.header.get(variable)}, expected {value}")
    for layer in doc.layers:
        if layer.dxf.linetype not in doc.linetypes:
            problems.append(f"layer {layer.dxf.name}: no line type {layer.dxf.linetype}")
    by_layer, all_points, loops, shortest = {}, [], [], math.inf
    texts = []
    for entity in doc.modelspace():
        layer = entity.dxf.layer
        if layer not in doc.layers:
            problems.append(f"{entity.dxftype()}: no layer {layer}")
        layer = layer.removesuffix("-MM")
        if entity.dxftype() == "TEXT":
            texts.append(tuple(entity.dxf.insert)[:2])
        all_points += points(entity)
        parts = segments(entity)
        if layer in PATH_LAYERS:
            by_layer.setdefault(layer, []).extend(parts)
        shortest = min([shortest] + [part.length() for part in parts])
        if is_loop(entity):
            loops.append((layer, parts))
    if shortest < SHORTEST_MM:
        problems.append(f"a segment of {shortest:.4f} mm, expected {SHORTEST_MM} or more")
    problems += drawn_twice(by_layer)
    cut = [entity for entity in doc.modelspace() if entity.dxf.layer in ("CUT", "CUT-MM")]
    has_curves = any(entity.dxftype() in ("SPLINE", "ELLIPSE") for entity in cut)
    for entity in cut:
        # With curves a loop is a chain of entities; without it must be one closed polyline.
        if not has_curves and entity.dxftype() != "CIRCLE" and not is_loop(entity):
            problems.append(f"layer CUT: {entity.dxftype()} that is not closed")
    problems += [f"layer CUT: a chain of curves ends at {fmt(end)}" for end in open_ends(cut)]
    extents = box(all_points or texts)
    told = tuple(doc.header["$EXTMIN"])[:2] + tuple(doc.header["$EXTMAX"])[:2]
    if any(abs(a - b) > EXTENT_MM for a, b in zip(extents, told)):
        problems.append(f"$EXTMIN/$EXTMAX {told}, entities {extents}")
    counts = {}
    for entity in doc.modelspace():
        counts[entity.dxftype()] = counts.get(entity.dxftype(), 0) + 1
    print(f"{path.name}: {counts}, extents {fmt(extents)}, shortest segment {shortest:.3f} mm")
    for layer, parts in loops:
        print(f"  loop on {layer}: {len(parts)} segments, {abs(area(parts)):.4f} mm2")
    return problems, loops


def fmt(numbers):
    return " ".join(f"{number:.6f}" for number in numbers)


def area(parts):
    return sum(part.area() for part in parts)


# The outline of `check --json`, from its own coefficients.


def under(segment):
    """Area between a segment and the axis, length (by many chords) and points that hold its extremes."""
    kind = segment["kind"]
    if kind == "line":
        (x0, r0), (x1, r1) = segment["points"]
        return (x1 - x0) * (r0 + r1) / 2, math.hypot(x1 - x0, r1 - r0), segment["points"]
    if kind == "cubic":
        return under_cubic(*segment["points"])
    cx, cr = segment["centre"]
    a, b = segment["semi_axes"] if kind == "ellipse" else [segment["radius"]] * 2
    t0, t1 = math.radians(segment["from_deg"]), math.radians(segment["to_deg"])
    # Integral of r dx along (cx + a cos t, cr + b sin t), from the smaller x to the larger.
    primitive = lambda t: cr * a * math.cos(t) - a * b * (t - math.sin(t) * math.cos(t)) / 2
    at = lambda t: (cx + a * math.cos(t), cr + b * math.sin(t))
    inside = [q * math.pi / 2 for q in range(-8, 9) if min(t0, t1) < q * math.pi / 2 < max(t0, t1)]
    return primitive(t1) - primitive(t0), arc_length(at, t0, t1), [at(t) for t in [t0, t1] + inside]


def under_cubic(p0, p1, p2, p3):
    def at(t):
        s = 1 - t
        weights = s**3, 3 * s * s * t, 3 * s * t * t, t**3
        return tuple(sum(w * p[i] for w, p in zip(weights, (p0, p1, p2, p3))) for i in (0, 1))

    # Integral of r dx: three Gauss points are exact for this polynomial of degree 5.
    total = 0
    for offset, weight in ((-math.sqrt(0.6), 5 / 18), (0, 8 / 18), (math.sqrt(0.6), 5 / 18)):
        t = (1 + offset) / 2
        s = 1 - t
        dx = 3 * (s * s * (p1[0] - p0[0]) + 2 * s * t * (p2[0] - p1[0]) + t * t * (p3[0] - p2[0]))
        total += weight * at(t)[1] * dx
    a = p3[1] - 3 * p2[1] + 3 * p1[1] - p0[1]
    b = p2[1] - 2 * p1[1] + p0[1]
    c = p1[1] - p0[1]
    roots = []
    if b * b >= a * c:
        q = -(b + math.copysign(math.sqrt(b * b - a * c), b))
        roots = [n / d for n, d in ((q, a), (c, q)) if d != 0 and 0 < n / d < 1]
    return total, arc_length(at, 0, 1), [p0, p3] + [at(t) for t in roots]


def arc_length(at, t0, t1, count=400):
    places = [at(t0 + (t1 - t0) * i / count) for i in range(count + 1)]
    return sum(math.dist(a, b) for a, b in zip(places, places[1:]))


def compare(name, loops, outline):
    candidates = [parts for layer, parts in loops if layer in ("OUTLINE", "CUT")]
    if len(candidates) != 1:
        return [f"{len(candidates)} closed loops on OUTLINE or CUT, expected the half-profile alone"]
    parts = candidates[0]
    sums = [under(segment) for segment in outline]
    expected_area = sum(s[0] for s in sums)
    length = sum(s[1] for s in sums)
    ends = [outline[0], outline[-1]]
    axis = [(under(e)[2][i][0], 0.0) for e, i in ((ends[0], 0), (ends[1], 1))]
    expected_box = box([tuple(p) for s in sums for p in s[2]] + axis)
    found_area = abs(area(parts))
    found_box = box([p for part in parts for p in part.points()])
    print(
        f"  {name}: area {found_area:.6f}, expected {expected_area:.6f} mm2;"
        f" extents off by {max(abs(a - b) for a, b in zip(found_box, expected_box)):.2e} mm"
    )
    problems = []
    allowed = min(AREA_RELATIVE * expected_area, FIT_TOLERANCE_MM * length)
    if abs(found_area - expected_area) > allowed:
        problems.append(f"area {found_area}, expected {expected_area} within {allowed:.4f} mm2")
    if any(abs(a - b) > EXTENT_MM for a, b in zip(found_box, expected_box)):
        problems.append(f"extents {found_box}, expected {expected_box}")
    return problems


def file_name(name):
    """The file name Haftline makes of a piece's name (class FileName), but for device names of Windows."""
    composed = unicodedata.normalize("NFKC", unicodedata.normalize("NFKC", name).lower())
    kept = "".join(c if c.isalnum() or unicodedata.category(c)[0] == "M" else "-" for c in composed)
    return re.sub("-+", "-", kept).strip("-") or "piece"


def main():
    parser = argparse.ArgumentParser(usage=__doc__)
    parser.add_argument("folder", type=pathlib.Path)
    parser.add_argument("expected", nargs="?", type=pathlib.Path)
    parser.add_argument("--match", default="{name}-profile.dxf")
    arguments = parser.parse_args()
    files = sorted(arguments.folder.rglob("*.dxf"))
    if not files:
        print(f"no DXF file in {arguments.folder}", file=sys.stderr)
        return 2
    found, bad = {}, 0
    for path in files:
        try:
            problems, found[path.name] = check_file(path)
        except (ezdxf.DXFError, ValueError, IndexError, KeyError) as error:
            problems = [f"cannot be read: {type(error).__name__}: {error}"]
        bad += report(path.name, problems)
    if arguments.expected:
        for piece in json.loads(arguments.expected.read_text("utf-8"))["pieces"]:
            name = arguments.match.replace("{name}", file_name(piece["name"]))
            if name in found:
                problems = compare(name, found[name], piece["outline"])
            else:
                problems = ["no such file"]
            bad += report(name, problems)
    print(f"{len(files)} DXF files, {bad} problems")
    return 1 if bad else 0


def report(name, problems):
    for problem in problems:
        print(f"{name}: {problem}", file=sys.stderr)
    return len(problems)


if __name__ == "__main__":
    sys.exit(main())
