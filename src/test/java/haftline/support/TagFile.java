package haftline.support;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A small strict reader of DXF, written from the published reference and from nothing in the
 * writer: whatever is not as it should be is an {@link IllegalStateException}.
 */
public final class TagFile {
    private static final List<String> SECTIONS =
            List.of("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS");
    private static final List<String> R12_SECTIONS =
            List.of("HEADER", "TABLES", "BLOCKS", "ENTITIES");

    /** What release 12 knows of what is drawn in a plane. */
    private static final Set<String> R12_ENTITIES =
            Set.of(
                    "LINE",
                    "ARC",
                    "CIRCLE",
                    "POINT",
                    "TEXT",
                    "SOLID",
                    "TRACE",
                    "POLYLINE",
                    "VERTEX",
                    "SEQEND");

    /**
     * Header variables of release 12 that the files use; $INSUNITS and $MEASUREMENT are younger.
     */
    private static final Set<String> R12_VARIABLES =
            Set.of(
                    "$ACADVER",
                    "$INSBASE",
                    "$EXTMIN",
                    "$EXTMAX",
                    "$LIMMIN",
                    "$LIMMAX",
                    "$LTSCALE",
                    "$TEXTSIZE",
                    "$TEXTSTYLE",
                    "$CLAYER",
                    "$LUNITS",
                    "$LUPREC",
                    "$AUNITS",
                    "$AUPREC");

    /** One group code and its value. */
    public record Tag(int code, String value) {
        double real() {
            return Double.parseDouble(value);
        }
    }

    /** A run of tags that begins with code 0. */
    public record Record(List<Tag> tags) {
        public String type() {
            return tags.get(0).value();
        }

        public List<String> all(int code) {
            return tags.stream().filter(t -> t.code() == code).map(Tag::value).toList();
        }

        public String one(int code) {
            List<String> values = all(code);
            require(!values.isEmpty(), type() + " has no code " + code);
            return values.get(0);
        }

        public double real(int code) {
            return Double.parseDouble(one(code));
        }
    }

    private final Map<String, List<Record>> sections = new LinkedHashMap<>();
    private final Map<String, List<Tag>> header = new LinkedHashMap<>();

    private TagFile() {}

    /** Reads and checks a file. */
    public static TagFile read(String text) {
        TagFile file = new TagFile();
        file.split(tags(text));
        if (file.isR12()) {
            file.checkR12();
        } else {
            file.checkHandles();
            file.checkSubclasses();
        }
        file.checkNames();
        file.checkPolylines();
        file.checkSplines();
        return file;
    }

    private boolean isR12() {
        return header("$ACADVER").equals("AC1009");
    }

    /** Nothing that came later, and names that release 12 takes. */
    private void checkR12() {
        require(R12_VARIABLES.containsAll(header.keySet()), "variables " + header.keySet());
        for (Record record : sections.values().stream().flatMap(List::stream).toList()) {
            for (int code : new int[] {5, 100, 102, 105, 290, 330, 340, 360, 370, 390, 420}) {
                require(record.all(code).isEmpty(), record.type() + " has code " + code);
            }
            List<String> names = record.all(2);
            require(
                    names.stream().allMatch(n -> n.matches("[A-Z0-9$_-]{1,31}")),
                    record.type() + " is called " + names);
        }
        boolean open = false;
        for (Record entity : entities()) {
            require(R12_ENTITIES.contains(entity.type()), "entity " + entity.type());
            require(open == Set.of("VERTEX", "SEQEND").contains(entity.type()), "polyline open");
            open = entity.type().equals("POLYLINE") || entity.type().equals("VERTEX");
            require(
                    !entity.type().equals("POLYLINE") || entity.one(66).equals("1"),
                    "no vertices follow");
        }
        require(!open, "the last polyline has no end");
    }

    /** The polylines of release 12 with their vertices, in the form of the later ones. */
    public List<Record> r12Polylines() {
        List<Record> polylines = new ArrayList<>();
        List<Tag> open = null;
        for (Record entity : entities()) {
            if (entity.type().equals("POLYLINE")) {
                open = new ArrayList<>();
                open.add(new Tag(0, "POLYLINE"));
                open.add(new Tag(8, entity.one(8)));
                open.add(new Tag(70, entity.one(70)));
            } else if (entity.type().equals("VERTEX")) {
                for (Tag tag : entity.tags()) {
                    if (tag.code() == 10 || tag.code() == 20 || tag.code() == 42) {
                        open.add(tag);
                    }
                }
            } else if (entity.type().equals("SEQEND")) {
                polylines.add(new Record(List.copyOf(open)));
            }
        }
        return polylines;
    }

    private void checkSplines() {
        for (Record spline : entities("SPLINE")) {
            int degree = Integer.parseInt(spline.one(71));
            List<Double> knots = spline.all(40).stream().map(Double::valueOf).toList();
            int controls = spline.all(10).size();
            require(spline.one(72).equals(Integer.toString(knots.size())), "knot count");
            require(spline.one(73).equals(Integer.toString(controls)), "control count");
            require(knots.size() == controls + degree + 1, "knots and control points");
            for (int i = 1; i < knots.size(); i++) {
                require(knots.get(i - 1) <= knots.get(i), "knots fall");
            }
        }
    }

    /** A place on a spline by de Boor's recursion. */
    public static double[] onSpline(Record spline, double u) {
        int degree = Integer.parseInt(spline.one(71));
        List<Double> knots = spline.all(40).stream().map(Double::valueOf).toList();
        List<Double> xs = spline.all(10).stream().map(Double::valueOf).toList();
        List<Double> ys = spline.all(20).stream().map(Double::valueOf).toList();
        int span = degree;
        while (span < xs.size() - 1 && knots.get(span + 1) <= u) {
            span++;
        }
        double[][] d = new double[degree + 1][2];
        for (int i = 0; i <= degree; i++) {
            d[i][0] = xs.get(span - degree + i);
            d[i][1] = ys.get(span - degree + i);
        }
        for (int level = 1; level <= degree; level++) {
            for (int i = degree; i >= level; i--) {
                double low = knots.get(span - degree + i);
                double high = knots.get(span + 1 + i - level);
                double share = (u - low) / (high - low);
                d[i][0] = (1 - share) * d[i - 1][0] + share * d[i][0];
                d[i][1] = (1 - share) * d[i - 1][1] + share * d[i][1];
            }
        }
        return d[degree];
    }

    public List<Record> entities() {
        return sections.get("ENTITIES");
    }

    public List<Record> entities(String type) {
        return entities().stream().filter(r -> r.type().equals(type)).toList();
    }

    /** The value of a header variable with one tag. */
    public String header(String name) {
        require(header.containsKey(name), "no " + name);
        return header.get(name).get(0).value();
    }

    /** x and y of a header variable. */
    public double[] headerPoint(String name) {
        return new double[] {header.get(name).get(0).real(), header.get(name).get(1).real()};
    }

    /** Names in a table. */
    public List<String> names(String table) {
        return sections.get("TABLES").stream()
                .filter(r -> r.type().equals(table))
                .map(r -> r.one(2))
                .toList();
    }

    private static List<Tag> tags(String text) {
        require(text.endsWith("\n"), "the last line is not ended");
        require(text.chars().allMatch(c -> c < 0x7F && (c >= ' ' || c == '\n')), "not plain ASCII");
        String[] lines = text.substring(0, text.length() - 1).split("\n", -1);
        require(lines.length % 2 == 0, "odd number of lines");
        List<Tag> tags = new ArrayList<>();
        for (int i = 0; i < lines.length; i += 2) {
            Tag tag = new Tag(Integer.parseInt(lines[i]), lines[i + 1]);
            checkValue(tag);
            tags.add(tag);
        }
        return tags;
    }

    /** Types of values by code, as in the reference. */
    private static void checkValue(Tag tag) {
        int code = tag.code();
        String value = tag.value();
        if (code >= 10 && code <= 59 || code >= 140 && code <= 149) {
            require(value.matches("-?[0-9]+\\.[0-9]+"), code + ": " + value + " is no real");
            require(!value.matches("-0\\.0*"), "negative zero");
        } else if (code >= 60 && code <= 99
                || code >= 170 && code <= 179
                || code >= 280 && code <= 299
                || code == 370) {
            require(value.matches("-?[0-9]+"), code + ": " + value + " is no integer");
        } else if (code == 5 || code == 105 || code >= 320 && code <= 369 || code == 390) {
            require(value.matches("[0-9A-F]+"), code + ": " + value + " is no handle");
        }
        require(value.length() <= 255, "a string of " + value.length());
    }

    private void split(List<Tag> tags) {
        require(tags.get(tags.size() - 1).equals(new Tag(0, "EOF")), "no EOF");
        int i = 0;
        while (i < tags.size() - 1) {
            require(tags.get(i).equals(new Tag(0, "SECTION")), "tag " + i + " starts no section");
            String name = tags.get(i + 1).value();
            int end = i + 2;
            while (!tags.get(end).equals(new Tag(0, "ENDSEC"))) {
                end++;
            }
            List<Tag> inside = tags.subList(i + 2, end);
            if (name.equals("HEADER")) {
                readHeader(inside);
                sections.put(name, List.of());
            } else {
                sections.put(name, records(inside));
            }
            i = end + 1;
        }
        require(
                List.copyOf(sections.keySet()).equals(isR12() ? R12_SECTIONS : SECTIONS),
                "sections " + sections.keySet());
        readTables();
    }

    private void readHeader(List<Tag> tags) {
        String name = null;
        for (Tag tag : tags) {
            if (tag.code() == 9) {
                name = tag.value();
                require(header.put(name, new ArrayList<>()) == null, name + " twice");
            } else {
                header.get(name).add(tag);
            }
        }
    }

    private static List<Record> records(List<Tag> tags) {
        List<List<Tag>> runs = new ArrayList<>();
        for (Tag tag : tags) {
            if (tag.code() == 0) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(tag);
        }
        return runs.stream().map(Record::new).toList();
    }

    /** Each table opens, says how many entries it has, has them, and closes. */
    private void readTables() {
        String open = null;
        int told = 0;
        int found = 0;
        for (Record record : sections.get("TABLES")) {
            if (record.type().equals("TABLE")) {
                require(open == null, "table in a table");
                open = record.one(2);
                told = Integer.parseInt(record.one(70));
                found = 0;
            } else if (record.type().equals("ENDTAB")) {
                require(told == found, open + " tells " + told + " entries and has " + found);
                open = null;
            } else {
                require(record.type().equals(open), record.type() + " in table " + open);
                found++;
            }
        }
        require(open == null, "table " + open + " is not closed");
    }

    private void checkHandles() {
        Set<String> handles = new HashSet<>();
        List<Record> all = sections.values().stream().flatMap(List::stream).toList();
        for (Record record : all) {
            List<String> own = record.all(record.type().equals("DIMSTYLE") ? 105 : 5);
            for (String handle : own) {
                require(handles.add(handle), "handle " + handle + " twice");
                require(
                        Long.parseLong(handle, 16) < Long.parseLong(header("$HANDSEED"), 16),
                        "handle " + handle + " beyond the seed");
            }
            boolean isMark = Set.of("ENDTAB").contains(record.type());
            require(isMark || own.size() == 1, record.type() + " has handles " + own);
        }
        handles.add("0");
        for (Record record : all) {
            for (int code : new int[] {330, 340, 350, 360, 390}) {
                for (String handle : record.all(code)) {
                    require(handles.contains(handle), record.type() + " points at " + handle);
                }
            }
        }
    }

    private void checkNames() {
        for (String table : List.of("LTYPE", "LAYER", "STYLE", "APPID")) {
            List<String> names = names(table);
            require(new HashSet<>(names).size() == names.size(), table + " has a name twice");
        }
        for (Record layer : sections.get("TABLES")) {
            if (layer.type().equals("LAYER")) {
                require(names("LTYPE").contains(layer.one(6)), "line type " + layer.one(6));
            }
        }
        for (Record entity : entities()) {
            require(names("LAYER").contains(entity.one(8)), "layer " + entity.one(8));
            for (String style : entity.all(7)) {
                require(names("STYLE").contains(style), "style " + style);
            }
        }
        require(names("LTYPE").contains("CONTINUOUS"), "no CONTINUOUS");
    }

    private void checkSubclasses() {
        for (Record entity : entities()) {
            require(entity.all(100).size() >= 2, entity.type() + " lacks a subclass marker");
        }
        require(
                names("BLOCK_RECORD").equals(List.of("*Model_Space", "*Paper_Space")),
                "block records " + names("BLOCK_RECORD"));
    }

    private void checkPolylines() {
        for (Record line : entities("LWPOLYLINE")) {
            int count = line.all(10).size();
            require(line.one(90).equals(Integer.toString(count)), "vertex count " + line.one(90));
            require(line.all(20).size() == count, "x without y");
            require(Set.of("0", "1").contains(line.one(70)), "flag " + line.one(70));
        }
    }

    /** Whether a polyline is flagged closed. */
    public static boolean isClosed(Record polyline) {
        return polyline.one(70).equals("1");
    }

    /** x, y and bulge of each vertex of a polyline. */
    public static List<double[]> vertices(Record polyline) {
        List<double[]> vertices = new ArrayList<>();
        for (Tag tag : polyline.tags()) {
            if (tag.code() == 10) {
                vertices.add(new double[] {tag.real(), 0, 0});
            } else if (tag.code() == 20) {
                vertices.get(vertices.size() - 1)[1] = tag.real();
            } else if (tag.code() == 42) {
                vertices.get(vertices.size() - 1)[2] = tag.real();
            }
        }
        return vertices;
    }

    /**
     * Area of a closed polyline: its chords by the shoelace rule, its arcs' caps by angle and
     * radius.
     */
    public static double area(Record polyline) {
        List<double[]> v = vertices(polyline);
        double area = 0;
        for (int i = 0; i < v.size(); i++) {
            double[] a = v.get(i);
            double[] b = v.get((i + 1) % v.size());
            area += (a[0] * b[1] - b[0] * a[1]) / 2;
            if (a[2] != 0) {
                double angle = 4 * Math.atan(a[2]);
                double radius =
                        Math.hypot(b[0] - a[0], b[1] - a[1]) / (2 * Math.sin(Math.abs(angle) / 2));
                area += radius * radius * (angle - Math.sin(angle)) / 2;
            }
        }
        return Math.abs(area);
    }

    /** Left, bottom, right, top of a polyline, its arcs walked in small steps of their angle. */
    public static double[] extents(Record polyline) {
        List<double[]> v = vertices(polyline);
        double[] box = {1e99, 1e99, -1e99, -1e99};
        int last = isClosed(polyline) ? v.size() : v.size() - 1;
        for (int i = 0; i < last; i++) {
            double[] a = v.get(i);
            double[] b = v.get((i + 1) % v.size());
            int steps = a[2] == 0 ? 1 : 20_000;
            double angle = 4 * Math.atan(a[2]);
            for (int step = 0; step <= steps; step++) {
                // The point of the arc at a share of its angle, from the chord: no centre needed.
                double t = (double) step / steps;
                double along = steps == 1 ? t : share(angle, t);
                double across = steps == 1 ? 0 : rise(angle, t);
                double x = a[0] + along * (b[0] - a[0]) + across * (b[1] - a[1]);
                double y = a[1] + along * (b[1] - a[1]) - across * (b[0] - a[0]);
                box[0] = Math.min(box[0], x);
                box[1] = Math.min(box[1], y);
                box[2] = Math.max(box[2], x);
                box[3] = Math.max(box[3], y);
            }
        }
        return box;
    }

    private static double share(double angle, double t) {
        double half = angle / 2;
        return Math.sin(half * t) * Math.cos(half * (1 - t)) / Math.sin(half);
    }

    private static double rise(double angle, double t) {
        double half = angle / 2;
        return Math.sin(half * t) * Math.sin(half * (1 - t)) / Math.sin(half);
    }

    /** How many records there are of each type. */
    public Map<String, Integer> counts() {
        Map<String, Integer> counts = new HashMap<>();
        entities().forEach(r -> counts.merge(r.type(), 1, Integer::sum));
        return counts;
    }

    private static void require(boolean condition, String message) {
        if (!condition) {
            throw new IllegalStateException(message);
        }
    }
}
