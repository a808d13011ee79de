#!/usr/bin/python3
"""Recomputes what `haftline check SET --json` answers, from that answer alone.

usage: check_answer.py [--exit CODE] [--allowance MM] ANSWER.json ...

Everything is worked out anew by dense numerical means that share nothing with the program: volumes
and centroids by Simpson's rule and by midpoints, walls by brute force over the wandered bores,
masses by adding up. Prints a line for each disagreement, with numbers, and exits 1 if there is any.

CODE is the exit code with which the program ended: 1 if and only if a finding is a stop. MM is how
much deeper than the tang the bore must be; 2 where not said, `none` to leave it out.
"""

import bisect
import json
import math
import sys

PIECE = {
    "name", "length", "outline", "tenon", "ferrule_length_mm", "fit", "tang_engaged_mm", "wander",
    "bores", "volume", "centroid_mm", "mass", "balance", "walls", "split_index", "adhesive_mm3",
    "findings", "doubt",
}
FINDING = {
    "code", "gravity", "zone", "at_mm", "figure", "limit", "unit", "rule", "message", "remedy",
}
SEGMENT = {"kind", "points", "centre", "radius", "semi_axes", "from_deg", "to_deg"}
MAPS = {
    "length": {"overall_mm", "visible_wood_mm", "turned_wood_mm"},
    "tenon": {"diameter_mm", "length_mm"},
    "wander": {"e0_mm", "k"},
    "volume": {"solid_mm3", "removed_mm3", "finished_mm3", "centroid_mm"},
    "mass": {"blade_g", "tang_g", "ferrule_g", "wood_g", "adhesive_g", "cap_g", "total_g"},
    "balance": {"from_ferrule_face_mm", "target_mm"},
}
WALL = {"zone", "nominal_mm", "worst_mm", "at_mm", "shortest_worst_mm", "limit_mm"}
STEP = {"diameter_mm", "drill_mm", "depth_mm", "point_angle_deg"}
UNITS = {"mm", "deg", "1/mm", None}
GRAVITIES = ["stop", "warn", "note"]


class Segment:
    """One segment, from its coefficients."""

    def __init__(self, s):
        self.kind = s["kind"]
        if self.kind in ("line", "cubic"):
            self.points = s["points"]
            self.x0, self.x1 = self.points[0][0], self.points[-1][0]
        else:
            a, b = s["semi_axes"] if self.kind == "ellipse" else (s["radius"], s["radius"])
            self.a, self.b = a, b
            self.cx, self.cr = s["centre"]
            self.t0, self.t1 = math.radians(s["from_deg"]), math.radians(s["to_deg"])
            self.x0, self.x1 = self.at(0)[0], self.at(1)[0]
            self.sign = 1 if math.sin((self.t0 + self.t1) / 2) > 0 else -1

    def at(self, u):
        """The point at a share 0 to 1 of the parameter."""
        if self.kind in ("line", "cubic"):
            p = self.points
            while len(p) > 1:
                p = [
                    [(1 - u) * q[0] + u * s[0], (1 - u) * q[1] + u * s[1]]
                    for q, s in zip(p, p[1:])
                ]
            return p[0][0], p[0][1]
        t = self.t0 + (self.t1 - self.t0) * u
        return self.cx + self.a * math.cos(t), self.cr + self.b * math.sin(t)

    def r(self, x):
        if self.kind in ("line", "cubic"):
            u = (x - self.x0) / (self.x1 - self.x0)
            p = [q[1] for q in self.points]
            while len(p) > 1:
                p = [(1 - u) * q + u * s for q, s in zip(p, p[1:])]
            return p[0]
        inside = max(0.0, 1 - ((x - self.cx) / self.a) ** 2)
        return self.cr + self.sign * self.b * math.sqrt(inside)

    def moments(self, n=512):
        """Volume and first moment in x of what it sweeps, by Simpson's rule in the parameter."""
        volume = moment = 0.0
        h = 1.0 / n
        for i in range(n + 1):
            u = i * h
            x, r = self.at(u)
            if self.kind in ("line", "cubic"):
                dx = self.x1 - self.x0
            else:
                dx = -self.a * math.sin(self.t0 + (self.t1 - self.t0) * u) * (self.t1 - self.t0)
            w = (1 if i in (0, n) else 4 if i % 2 else 2) * h / 3
            volume += w * math.pi * r * r * dx
            moment += w * math.pi * r * r * x * dx
        return volume, moment


class Bore:
    def __init__(self, b, left, right):
        self.end = b["end"]
        self.face = left if self.end == "ferrule" else right
        self.way = 1 if self.end == "ferrule" else -1
        self.steps = []
        for s in b["steps"]:
            d, angle = s["diameter_mm"], s["point_angle_deg"]
            point = 0.0 if angle == 180 else d / (2 * math.tan(math.radians(angle / 2)))
            self.steps.append((d / 2, s["depth_mm"], point))
        self.reach = max(z + p for _, z, p in self.steps)

    def x(self, z):
        return self.face + self.way * z

    def radius(self, z):
        if z < 0:
            return 0.0
        best = 0.0
        for r, depth, point in self.steps:
            if z <= depth:
                best = max(best, r)
            elif z < depth + point:
                best = max(best, r * (1 - (z - depth) / point))
        return best

    def breaks(self):
        return [z for _, d, p in self.steps for z in (d, d + p)]


class Piece:
    def __init__(self, piece, allowance):
        self.p = piece
        self.allowance = allowance
        self.said = []

    def say(self, *words):
        self.said.append(" ".join(str(w) for w in words))

    def near(self, what, theirs, ours, tolerance):
        if theirs is None or not math.isfinite(theirs) or abs(theirs - ours) > tolerance:
            self.say(what, "says", theirs, "recomputed", ours, "tolerance", tolerance)

    def keys(self, what, found, wanted):
        if set(found) != wanted:
            self.say(what, "keys: missing", sorted(wanted - set(found)), "unknown",
                     sorted(set(found) - wanted))

    def check(self):
        p = self.p
        self.keys("piece", p, PIECE)
        self.findings()
        if p["length"] is None:
            for key in PIECE - {"name", "findings"}:
                if p[key] is not None:
                    self.say("a piece that cannot be drawn has", key)
            if not any(f["gravity"] == "stop" for f in p["findings"]):
                self.say("cannot be drawn, but no stop")
            return self.said
        for key, wanted in MAPS.items():
            self.keys(key, p[key], wanted)
        self.lengths()
        if self.outline():
            self.bores()
            self.volumes()
            self.walls()
        self.masses()
        return self.said

    def findings(self):
        order = []
        for f in self.p["findings"]:
            self.keys("finding", f, FINDING)
            if f["gravity"] not in GRAVITIES:
                self.say("gravity", f["gravity"])
                continue
            order.append(GRAVITIES.index(f["gravity"]))
            if f["unit"] not in UNITS:
                self.say("finding", f["code"], "unit", f["unit"])
            for key in ("code", "zone", "rule", "message"):
                if not isinstance(f[key], str) or not f[key].strip():
                    self.say("finding", f["code"], key, f[key])
            for key in ("at_mm", "figure", "limit"):
                v = f[key]
                if v is not None and (isinstance(v, bool) or not isinstance(v, (int, float))):
                    self.say("finding", f["code"], key, v)
            text = f["message"] + (f["remedy"] or "")
            for bad in ("NaN", "Infinity", "null", "-0.0 ", "  ", "E-", "∞"):
                if bad in text:
                    self.say("finding", f["code"], "text holds", repr(bad) + ":", text)
        if order != sorted(order):
            self.say("findings are not in the order of their gravity")

    def lengths(self):
        p, n = self.p, self.p["length"]
        cap = n["overall_mm"] - p["ferrule_length_mm"] - n["visible_wood_mm"]
        capped = any(b["end"] == "butt" for b in p["bores"])
        if cap < -1e-9 or (cap > 1e-9) != capped:
            self.say("overall - ferrule - visible wood =", cap, "and a cap's bore:", capped)
        self.near("turned wood", n["turned_wood_mm"],
                  n["visible_wood_mm"] + p["tenon"]["length_mm"], 1e-9)

    def outline(self):
        p = self.p
        for s in p["outline"]:
            self.keys("segment", s, SEGMENT)
        segments = self.segments = [Segment(s) for s in p["outline"]]
        self.left = -p["tenon"]["length_mm"]
        self.right = p["length"]["visible_wood_mm"]
        self.near("outline begins", segments[0].x0, self.left, 1e-9)
        self.near("outline ends", segments[-1].x1, self.right, 1e-9)
        self.near("shoulder", segments[0].x1, 0, 1e-9)
        for a, b in zip(segments, segments[1:]):
            self.near("segments abut", b.x0, a.x1, 1e-9)
        for s in segments:
            last = s.x0
            for i in range(65):
                x, r = s.at(i / 64)
                if r < -1e-9 or x < last - 1e-9:
                    self.say(s.kind, "at", x, "r", r, "goes under the axis or back in x")
                    return False
                last = x
            if s.kind == "cubic":
                for k in (1, 2):
                    self.near("control point stands at a third", s.points[k][0],
                              s.x0 + (s.x1 - s.x0) * k / 3, 1e-9)
        for u in (0, 0.5, 1):
            self.near("tenon's radius", segments[0].at(u)[1], p["tenon"]["diameter_mm"] / 2, 1e-9)
        return True

    def bores(self):
        p = self.p
        for b in p["bores"]:
            self.keys("bore", b, {"end", "steps"})
            for s in b["steps"]:
                self.keys("step", s, STEP)
                if not s["diameter_mm"] >= s["drill_mm"] > 0 or s["depth_mm"] < 0:
                    self.say("step", s)
                if not 30 <= s["point_angle_deg"] <= 180:
                    self.say("point angle", s)
        if [b["end"] for b in p["bores"]] not in (["ferrule"], ["ferrule", "butt"]):
            self.say("bores at", [b["end"] for b in p["bores"]])
        self.bore = [Bore(b, self.left, self.right) for b in p["bores"]]
        deepest = max(d for _, d, _ in self.bore[0].steps)
        if self.allowance is not None:
            need = max(0, p["tang_engaged_mm"]) + self.allowance
            if deepest < need - 1e-9 and "bore-too-shallow" not in self.codes():
                self.say("tang's bore is", deepest, "deep, wanted", need)
        if p["fit"] == "bonded" and p["split_index"] is not None:
            self.say("bonded, but a split index of", p["split_index"])
        if len(self.bore) == 2:
            web = self.bore[1].x(self.bore[1].reach) - self.bore[0].x(self.bore[0].reach)
            wide = max(2 * r for b in self.bore for r, _, _ in b.steps)
            if web < 0 and ("bores-meet", "stop") not in self.graves():
                self.say("bores meet by", -web, "but no stop says so")
            if web > max(30, wide) and "bores-meet" in self.codes():
                self.say("bores-meet with a web of", web)

    def codes(self):
        return {f["code"] for f in self.p["findings"]}

    def graves(self):
        return {(f["code"], f["gravity"]) for f in self.p["findings"]}

    def outside(self, x):
        """The outline's radius; at a step the lesser."""
        return min(s.r(x) for s in self.segments if s.x0 <= x <= s.x1)

    def volumes(self):
        solid = moment = 0.0
        for s in self.segments:
            v, m = s.moments()
            solid += v
            moment += m
        removed = gone = 0.0
        cuts = {s.x0 for s in self.segments} | {self.right}
        for b in self.bore:
            cuts |= {b.x(z) for z in b.breaks() if self.left < b.x(z) < self.right}
        cuts = sorted(cuts)
        for a, b in zip(cuts, cuts[1:]):
            if b - a < 1e-12:
                continue
            seg = next(s for s in self.segments if s.x0 <= (a + b) / 2 <= s.x1)
            n = max(16, int((b - a) / 0.01))
            h = (b - a) / n
            for i in range(n):
                x = a + (i + 0.5) * h
                hole = max(o.radius(o.way * (x - o.face)) for o in self.bore)
                if hole > 0:
                    r = min(hole, seg.r(x))
                    removed += math.pi * r * r * h
                    gone += math.pi * r * r * h * x
        v = self.p["volume"]
        self.near("solid", v["solid_mm3"], solid, 1e-8 * solid)
        self.near("removed", v["removed_mm3"], removed, 1e-5 * removed + 1e-3)
        self.near("finished", v["finished_mm3"], v["solid_mm3"] - v["removed_mm3"], 1e-9 * solid)
        centroid = (moment - gone) / (solid - removed)
        self.near("centroid", v["centroid_mm"], centroid, 1e-4)
        self.near("centroid", self.p["centroid_mm"], v["centroid_mm"], 0)
        glue = self.p["adhesive_mm3"]
        if not 0 <= glue <= v["removed_mm3"] * (1 + 1e-9) + 1e-6:
            holes = sum(1 for f in self.codes() if f in ("bores-meet", "wall-too-thin"))
            if not holes:
                self.say("adhesive", glue, "in bores of", v["removed_mm3"])

    def walls(self):
        zones = [w["zone"] for w in self.p["walls"]]
        if zones != [z for z in ("tenon", "body", "cap") if z in zones]:
            self.say("zones", zones)
        if ("cap" in zones) != (len(self.bore) == 2) or "tenon" not in zones:
            self.say("zones", zones, "bores", len(self.bore))
        reach = self.bore[0].x(self.bore[0].reach)
        if ("body" in zones) != (reach > 0):
            self.say("zones", zones, "tang's bore ends at", reach)
        for w in self.p["walls"]:
            self.keys("wall", w, WALL)
            self.wall(w)

    def wall(self, w):
        zone = w["zone"]
        bore = self.bore[1] if zone == "cap" else self.bore[0]
        low, high = (self.left, 0.0) if zone == "tenon" else (0.0, self.right)
        e0, k = self.p["wander"]["e0_mm"], self.p["wander"]["k"]
        z0, z1 = sorted((bore.way * (low - bore.face), bore.way * (high - bore.face)))
        z0, z1 = max(0.0, z0), min(bore.reach, z1)
        segments = [s for s in self.segments if (s.x1 <= 1e-9) == (zone == "tenon")]
        n = 6000
        nominal = worst = math.inf
        at = None
        steepest = 0.0
        places = [z0 + (z1 - z0) * i / n for i in range(n + 1)]
        # A step's face belongs to both sides; its breaks are where a least wall likes to be.
        places += [z for z in bore.breaks() if z0 <= z <= z1]
        places += [bore.way * (s.x0 - bore.face) for s in segments]
        places = sorted(z for z in places if z0 <= z <= z1)
        previous = None
        for z in places:
            x = bore.x(z)
            here = [s.r(x) for s in segments if s.x0 - 1e-9 <= x <= s.x1 + 1e-9]
            hole = bore.radius(z)
            r = min(here)
            if r - hole < nominal:
                nominal = r - hole
            value = r - hole - (e0 + k * z)
            if value < worst:
                worst, at = value, x
            if previous is not None and z > previous[0]:
                slope = abs(value - previous[1]) / (z - previous[0])
                if slope < 20:
                    steepest = max(steepest, slope)
            previous = (z, value)
        slack = 1e-6 + (steepest + 0.1) * (z1 - z0) / n
        for name, ours in (("nominal_mm", nominal), ("worst_mm", worst)):
            theirs = w[name]
            if theirs > ours + 1e-7:
                self.say(zone, name, "says", theirs, "but at", at, "there is", ours)
            elif theirs < ours - slack:
                self.say(zone, name, "says", theirs, "least found", ours, "slack", slack)
        x = w["at_mm"]
        if not low - 1e-9 <= x <= high + 1e-9:
            self.say(zone, "at_mm", x, "is outside of its zone")
        else:
            z = bore.way * (x - bore.face)
            here = [s.r(x) for s in segments if s.x0 - 1e-6 <= x <= s.x1 + 1e-6]
            gap = min(abs(r - h - e0 - k * z - w["worst_mm"]) for r in here
                      for h in (bore.radius(z), bore.radius(z - 1e-9), bore.radius(z + 1e-9), 0))
            if gap > 1e-5:
                self.say(zone, "at_mm", x, "misses worst_mm by", gap)
        self.shortest(zone, w, bore, segments, e0, k, worst)
        thin = [f for f in self.p["findings"]
                if f["zone"] == zone and f["code"] in
                ("wall-too-thin", "bore-through-detail", "bore-bottom-too-near")]
        if w["shortest_worst_mm"] < w["limit_mm"] and not thin:
            self.say(zone, "shortest", w["shortest_worst_mm"], "under", w["limit_mm"],
                     "but no finding")
        if w["worst_mm"] >= w["limit_mm"] and any(f["code"] == "wall-too-thin" for f in thin):
            if all(f["gravity"] != "stop" for f in thin):
                self.say(zone, "worst", w["worst_mm"], "limit", w["limit_mm"], "called too thin")

    def shortest(self, zone, w, bore, segments, e0, k, worst):
        theirs = w["shortest_worst_mm"]
        if worst <= 0 or bore.x(bore.reach) >= self.right and zone == "body":
            self.near(zone + " shortest where it breaks out", theirs, 0, 0)
            return
        z_breaks = sorted({0.0, *bore.breaks()})
        edge = list(z_breaks)
        for a, b in zip(z_breaks, z_breaks[1:]):
            n = max(4, int((b - a) / 0.2))
            edge += [(a + (b - a) * i / n) for i in range(n + 1)]
        points = []
        for z in sorted(set(edge)):
            points.append((bore.x(z), bore.radius(z) + e0 + k * z))
            under = bore.radius(z + 1e-9)
            if bore.radius(z) - under > 1e-3:
                for i in range(21):
                    r = under + (bore.radius(z) - under) * i / 20
                    points.append((bore.x(z), r + e0 + k * z))
        outer = []
        for s in segments:
            n = max(8, int((s.x1 - s.x0) / 0.2))
            outer += [s.at(i / n) for i in range(n + 1)]
        for s, t in zip(segments, segments[1:]):
            a, b = s.at(1)[1], t.at(0)[1]
            if abs(a - b) > 1e-9:
                outer += [(t.x0, a + (b - a) * i / 40) for i in range(41)]
        if zone == "body" and len(self.bore) == 1:
            last = segments[-1].at(1)[1]
            outer += [(self.right, last * i / 40) for i in range(41)]
        outer.sort()
        best = worst
        xs = [q[0] for q in outer]
        for x, r in points:
            i = bisect.bisect_left(xs, x - best)
            while i < len(outer) and xs[i] <= x + best:
                best = min(best, math.hypot(xs[i] - x, outer[i][1] - r))
                i += 1
        # Both are sampled every 0.2 mm or closer, so that the truth is at most this much less.
        slack = 0.3 if best < 0.3 else math.hypot(best, 0.2) - best + 0.02
        if theirs > best + 1e-7:
            self.say(zone, "shortest_worst_mm says", theirs, "but a way of", best, "was found")
        elif theirs < best - slack:
            self.say(zone, "shortest_worst_mm says", theirs, "least found", best)

    def masses(self):
        m = self.p["mass"]
        parts = [m[key] for key in m if key != "total_g" and m[key] is not None]
        self.near("total mass", m["total_g"], sum(parts), 1e-9 * sum(parts))
        for key in ("ferrule_g", "wood_g", "blade_g"):
            if m[key] is None or m[key] < 0:
                self.say("mass", key, m[key])
        if (m["cap_g"] is None) != (len(self.p["bores"]) == 1):
            self.say("cap's mass", m["cap_g"])
        if (m["adhesive_g"] is None) != (self.p["adhesive_mm3"] == 0):
            self.say("adhesive", m["adhesive_g"], "g in", self.p["adhesive_mm3"], "mm3")
        density = m["wood_g"] / self.p["volume"]["finished_mm3"] * 1e6
        if not 50 <= density <= 2500:
            self.say("wood of", density, "kg/m3")
        at = self.p["balance"]["from_ferrule_face_mm"]
        low, high = self.p["balance"]["target_mm"]
        off = at < low or at > high
        if off != ("balance-off-target" in self.codes()):
            self.say("balance", at, "target", low, high, "finding", not off)


def main(arguments):
    code, allowance, files = None, 2.0, []
    rest = iter(arguments)
    for argument in rest:
        if argument == "--exit":
            code = int(next(rest))
        elif argument == "--allowance":
            text = next(rest)
            allowance = None if text == "none" else float(text)
        else:
            files.append(argument)
    if not files:
        print(__doc__, file=sys.stderr)
        return 2
    wrong = 0
    for name in files:
        with open(name, encoding="utf-8") as file:
            answer = json.load(file, parse_constant=lambda word: float("nan"))
        said = []
        if set(answer) != {"haftline", "set", "pieces", "family"} or answer["haftline"] != 1:
            said.append("the answer's own keys: " + ", ".join(answer))
        stops = 0
        for piece in answer["pieces"]:
            stops += sum(1 for f in piece["findings"] if f["gravity"] == "stop")
            said += [piece["name"] + ": " + line for line in Piece(piece, allowance).check()]
        if code is not None and code != (1 if stops else 0):
            said.append("exit code %d with %d stops" % (code, stops))
        for line in said:
            print(name + ": " + line)
        wrong += len(said)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
