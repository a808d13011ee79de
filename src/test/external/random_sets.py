#!/usr/bin/python3
"""Writes random sets, each with its parts, shape and rules, for check_answer.py to judge.

usage: random_sets.py FOLDER COUNT [SEED]

Every kind of tang, cap, detail and butt, plastics and woods, presets of wander, racks in mm and in
inches, and choices over the rules come up. Most handles can be made, some cannot; all are honest
documents. The same seed gives the same files.
"""

import json
import os
import random
import sys

WOODS = ["black-cherry", "black-walnut", "sugar-maple", "live-oak", "ipe", "redwood", "lignum-vitae",
         "basswood", "jarrah", "eastern-redcedar"]
PLASTICS = ["acrylic", "stabilised-wood", "horn", "linen-phenolic", "epoxy-casting"]
METALS = ["stainless-304", "stainless-420", "carbon-steel", "brass", "copper", "aluminium", "zinc"]
RACKS = [["metric-0.1", "metric-0.5"], ["metric-0.5"], ["inch-1-64"], ["number", "letter"],
         ["metric-0.25", "17/64", "#7", "letter F"], ["6.2", "0.281 in"],
         [{"drill": "6.2", "flutes": 40, "point": 180}, {"drill": "8.0", "point": 135}, "metric-0.5"]]
WANDERS = ["lathe, centre drill first", "lathe", "pillar drill", "bad day",
           {"at_face": 0.15, "per_mm": 0.012}, {"entry": 0.1, "exit": 0.7, "depth": 60}]


class Maker:
    def __init__(self, seed):
        self.r = random.Random(seed)

    def size(self, low, high, digits=2):
        return round(self.r.uniform(low, high), digits)

    def maybe(self, share):
        return self.r.random() < share

    def measured(self, mm):
        """One number, a list of readings, or an inch size."""
        kind = self.r.random()
        if kind < 0.6:
            return mm
        if kind < 0.85:
            return [round(mm + self.r.choice([-0.1, -0.05, 0, 0.05, 0.1]), 2) for _ in range(3)]
        return "%.4f in" % (mm / 25.4)

    def tang(self):
        kind = self.r.choice(["round", "flat", "square", "tapered", "barbed", "threaded"])
        d = self.size(3.5, 8)
        tang = {"kind": kind, "length": self.measured(self.size(20, 60, 1))}
        if kind == "round":
            tang["diameter"] = self.measured(d)
        elif kind == "flat":
            tang["width"] = self.measured(d + 1)
            tang["thickness"] = self.measured(self.size(1.5, d - 0.5))
        elif kind == "square":
            tang["width"] = self.measured(d - 1)
        elif kind == "tapered":
            tang["root"] = self.measured(d + 0.5)
            tang["tip"] = self.measured(self.size(2, d - 0.5))
        elif kind == "barbed":
            tang["core"] = self.measured(d)
            tang["barb"] = self.measured(round(d + self.size(0.4, 1.2), 2))
        else:
            tang["crest"] = self.measured(d)
            tang["thread_bore"] = round(d - 0.5, 2)
            tang["clearance_bore"] = round(d + 0.3, 2)
            tang["plain_length"] = self.size(0, 18, 1)
        if self.maybe(0.2):
            tang["mass"] = self.size(4, 20, 1)
        if self.maybe(0.2):
            tang["flare"] = {"diameter": round(d + self.size(1, 3), 2),
                             "length": self.size(4, 22, 1)}
        return tang

    def kit(self):
        bore = self.size(11, 17)
        kit = {
            "blade": {"length": self.measured(self.size(70, 130, 1)), "width": self.size(10, 30, 1),
                      "thickness": self.size(1, 4, 1), "material": self.r.choice(METALS[:3])},
            "tang": self.tang(),
            "ferrule": {"bore": self.measured(bore), "outside": self.measured(bore + 2.2),
                        "length": self.measured(self.size(6, 16, 1)),
                        "material": self.r.choice(METALS)},
        }
        if self.maybe(0.6):
            kit["blade"]["mass"] = self.size(20, 90, 1)
            if self.maybe(0.6):
                kit["blade"]["includes_tang"] = self.maybe(0.5)
            if self.maybe(0.6):
                kit["blade"]["balance"] = self.size(5, 40, 1)
        if self.maybe(0.2):
            kit["blade"]["edge_below_axis"] = self.size(-2, 15, 1)
        if self.maybe(0.25):
            kit["ferrule"]["outside"] = {"least": round(bore + 1.8, 2),
                                         "greatest": round(bore + 2.3, 2)}
        if self.maybe(0.4):
            lip = self.size(0.5, 2, 1)
            kit["ferrule"]["lip"] = lip
            kit["ferrule"]["lip_hole"] = self.size(5, 9.5)
            if self.maybe(0.5):
                kit["seat"] = lip
        if self.maybe(0.2):
            kit["ferrule"]["chamfer"] = self.size(0, 0.5)
        if self.maybe(0.65):
            head = self.size(13, 20)
            cap = {"spigot": {"diameter": self.measured(self.size(4, 8)),
                              "length": self.measured(self.size(5, 14, 1))},
                   "head": {"diameter": self.measured(head), "thickness": self.size(2, 8, 1)},
                   "form": self.r.choice(["flat", "domed"]), "material": self.r.choice(METALS)}
            if self.maybe(0.4):
                cap["mass"] = self.size(3, 20, 1)
            if self.maybe(0.3):
                cap["balance"] = self.size(-4, 3, 1)
            kit["cap"] = cap
        return kit

    def details(self):
        details = []
        for _ in range(self.r.choice([0, 0, 1, 1, 2, 3])):
            at = self.r.choice([self.size(0.12, 0.88), {"from_shoulder": self.size(5, 20, 1)},
                                {"from_butt": self.size(9, 20, 1)}])
            width = self.size(1, 6, 1)
            details.append(self.r.choice([
                {"bead": {"at": at, "width": width, "height": round(width * self.size(0.1, 0.5), 2)}},
                {"cove": {"at": at, "width": width, "depth": round(width * self.size(0.1, 0.45), 2)}},
                {"vee": {"at": at, "width": width, "depth": self.size(0.2, 1.5)}},
                {"fillet": {"at": at, "width": width, "height": self.r.choice([-1, 1]) * self.size(0.1, 0.8)}},
                {"flat": {"at": at, "width": width}},
                {"burnt line": {"at": at, "width": self.size(0.5, 1.5, 1), "depth": 0.4}},
            ]))
        return details

    def shape(self):
        nodes, at = [], 0.0
        for name in ["neck", "waist", "swell", "tail", "heel"][: self.r.randint(0, 5)]:
            at += self.size(0.11, 0.19)
            node = {"name": name, "at": round(at, 3)}
            node["diameter"] = self.r.choice([
                self.size(13, 30, 1), {"times": self.size(0.6, 1), "of": "swell"},
                {"times": self.size(0.8, 1.4), "of": "ferrule"},
                {"times": self.size(0.8, 1.3), "of": "seat"}])
            if self.maybe(0.2):
                node["join"] = "crisp"
            elif self.maybe(0.4):
                node["slides"] = True
            nodes.append(node)
        shape = {"haftline": 1, "kind": "shape", "name": "random", "nodes": nodes,
                 "butt": self.r.choice(["square", {"chamfered": self.size(0.5, 3, 1)},
                                        {"rounded": self.size(0.5, 5, 1)},
                                        {"domed": self.size(1, 12, 1)}])}
        if not nodes:
            del shape["nodes"]
        details = self.details()
        if details:
            shape["details"] = details
        if self.maybe(0.2):
            shape["shadow_line"] = self.size(-0.3, 0.5)
        if self.maybe(0.2):
            shape["seat_slope"] = 0
        return shape

    def choices(self, piece):
        if self.maybe(0.25):
            piece["tang_drill"] = self.size(3, 9, 1)
        if self.maybe(0.15):
            piece["cap_drill"] = self.size(4, 9, 1)
        if self.maybe(0.1):
            piece["cap_depth"] = self.size(3, 30, 1)
        if self.maybe(0.15):
            piece["fit"] = self.r.choice(["pressed", "bonded"])
        if self.maybe(0.15):
            piece["tenon"] = {"diameter": self.size(10, 16), "length": self.size(4, 18, 1)}
        if self.maybe(0.2):
            piece["blank"] = {"side": self.size(18, 40, 1), "length": self.size(60, 160, 1)}
        if self.maybe(0.4):
            piece["use"] = self.r.choice(["power", "three fingers", "fingertips"])
        if self.maybe(0.3):
            piece["wander"] = self.r.choice(WANDERS)

    def rules(self):
        rules = {"haftline": 1, "kind": "rules", "name": "random"}
        if self.maybe(0.5):
            rules["bores"] = {"eccentricity": self.r.choice([0, 0.1, 0.2]),
                              "point_angle": self.r.choice([90, 118, 135, 180]),
                              "most_steps": self.r.randint(1, 6)}
        if self.maybe(0.3):
            rules["tenons"] = {"driven": True}
        if self.maybe(0.3):
            rules["balance"] = {"from": self.size(-40, 0, 1), "to": self.size(1, 30, 1)}
        return rules

    def write(self, folder, number):
        kits = {"kit %d" % i: self.kit() for i in range(4)}
        names = {}
        for what, document in (
                ("parts", {"haftline": 1, "kind": "parts", "name": "random", "batches": [
                    {"batch": "B1", "resolution": 0.05, "kits": kits}]}),
                ("shape", self.shape()), ("other", self.shape()), ("rules", self.rules())):
            names[what] = "%s-%03d.yaml" % (what, number)
            save(os.path.join(folder, names[what]), document)
        pieces = []
        for i in range(4):
            piece = {"name": "piece %d" % i, "kit": "kit %d" % i,
                     "length_ratio": self.size(0.9, 1.3)}
            if self.maybe(0.5):
                piece["stock"] = self.r.choice(WOODS + PLASTICS)
            if self.maybe(0.4):
                piece["shape"] = names["other"]
            self.choices(piece)
            pieces.append(piece)
        save(os.path.join(folder, "set-%03d.yaml" % number), {
            "haftline": 1, "kind": "set", "name": "random %d" % number, "shape": names["shape"],
            "parts": names["parts"], "rules": names["rules"],
            "stock": self.r.choice(WOODS + PLASTICS), "rack": self.r.choice(RACKS),
            "swell": self.size(20, 32, 1), "butt": self.size(12, 20, 1),
            "wander": self.r.choice(WANDERS), "pieces": pieces})


def save(path, document):
    # JSON is YAML too.
    with open(path, "w", encoding="utf-8") as file:
        json.dump(document, file, indent=1)
        file.write("\n")


def main(arguments):
    if len(arguments) not in (2, 3):
        print(__doc__, file=sys.stderr)
        return 2
    folder, count = arguments[0], int(arguments[1])
    seed = int(arguments[2]) if len(arguments) == 3 else 1
    os.makedirs(folder, exist_ok=True)
    for number in range(count):
        Maker(seed * 1000003 + number).write(folder, number)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
