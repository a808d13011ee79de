package haftline.store;

import haftline.adjust.takeoff.Reading;
import haftline.measure.Quote;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An outline traced in a DXF file: LINE, ARC, LWPOLYLINE and POLYLINE with bulges (group codes
 * after the published DXF reference). Other entities are left alone.
 */
final class DxfTrace {
    private static final int TYPE = 0;
    private static final int NAME = 2;
    private static final int LAYER = 8;
    private static final int VARIABLE = 9;
    private static final int X = 10;
    private static final int Y = 20;
    private static final int X_END = 11;
    private static final int Y_END = 21;
    private static final int RADIUS = 40;
    private static final int BULGE = 42;
    private static final int FROM = 50;
    private static final int TO = 51;
    private static final int FLAGS = 70;
    private static final int CLOSED = 1;

    /** $INSUNITS: mm a unit. */
    private static final Map<Integer, Double> UNITS =
            Map.of(1, 25.4, 2, 304.8, 4, 1.0, 5, 10.0, 6, 1000.0);

    /** What a unit is taken for where the header names none. */
    private static final double UNSAID_MM = 1;

    private final Problems problems;
    private final TracedLines lines = new TracedLines();
    private OptionalDouble mmPerUnit = OptionalDouble.empty();
    private Optional<String> layer = Optional.empty();

    private String type = "";
    private Map<Integer, Double> numbers = new HashMap<>();
    private String onLayer = "";
    private List<double[]> vertices = new ArrayList<>();
    private boolean inPolyline;
    private boolean polylineClosed;

    DxfTrace(Problems problems) {
        this.problems = problems;
    }

    /** What the file says, once it was read. */
    Traced.Unit unit() {
        return new Traced.Unit(mmPerUnit.orElse(UNSAID_MM), mmPerUnit.isPresent());
    }

    List<Reading> read(String text, Tracing tracing) {
        layer = tracing.part();
        groups(text.split("\\R", -1));
        if (!problems.isEmpty()) {
            return List.of();
        }
        if (!(lines.width() > 0)) {
            problems.addToFile(
                    "has no line, arc or polyline to trace"
                            + layer.map(one -> " on the layer " + Quote.plain(one)).orElse(""));
            return List.of();
        }
        OptionalDouble axis = tracing.axis().isPresent() ? tracing.axis() : lines.axis();
        if (axis.isEmpty()) {
            problems.addToFile(
                    "the outline is open or its two sides differ, so its axis cannot be told: say"
                            + " --axis Y, the lathe axis as y in the drawing");
            return List.of();
        }
        return lines.readings(
                axis.getAsDouble(),
                tracing.mmPerUnit().orElse(mmPerUnit.orElse(UNSAID_MM)),
                problems);
    }

    private void groups(String[] rows) {
        String section = "";
        String variable = "";
        for (int i = 0; i + 1 < rows.length; i += 2) {
            int code;
            try {
                code = Integer.parseInt(rows[i].strip());
            } catch (NumberFormatException none) {
                problems.add(i + 1, 0, "group code", Quote.plain(rows[i]) + ": expected a number");
                return;
            }
            String value = rows[i + 1].strip();
            if (code == TYPE) {
                if (section.equals("ENTITIES")) {
                    entity();
                }
                type = value;
                section = type.equals("SECTION") ? "" : section;
                numbers = new HashMap<>();
                onLayer = "";
                if (!type.equals("VERTEX")) {
                    vertices = inPolyline ? vertices : new ArrayList<>();
                }
            } else if (code == NAME && type.equals("SECTION") && section.isEmpty()) {
                // Only the first: variables of the header have names of their own in this code.
                section = value;
            } else if (code == VARIABLE) {
                variable = value;
            } else if (code == LAYER) {
                onLayer = value;
            } else if (code == FLAGS && variable.equals("$INSUNITS") && section.equals("HEADER")) {
                Double unit = UNITS.get((int) number(value, i + 2));
                mmPerUnit = unit == null ? OptionalDouble.empty() : OptionalDouble.of(unit);
                variable = "";
            } else if (section.equals("ENTITIES") && isNumber(code)) {
                figure(code, number(value, i + 2));
            }
        }
    }

    private static boolean isNumber(int code) {
        return code >= X && code < 60 || code == FLAGS;
    }

    private double number(String value, int line) {
        try {
            double number = Double.parseDouble(value);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException none) {
            // Told below.
        }
        problems.add(line, 0, type, Quote.plain(value) + ": expected a number");
        return 0;
    }

    private void figure(int code, double value) {
        if (type.equals("LWPOLYLINE") && code == X) {
            vertices.add(new double[] {value, 0, 0});
        } else if (type.equals("LWPOLYLINE") && code == Y && !vertices.isEmpty()) {
            vertices.get(vertices.size() - 1)[1] = value;
        } else if (type.equals("LWPOLYLINE") && code == BULGE && !vertices.isEmpty()) {
            vertices.get(vertices.size() - 1)[2] = value;
        } else {
            numbers.put(code, value);
        }
    }

    private double get(int code) {
        return numbers.getOrDefault(code, 0.0);
    }

    private void entity() {
        boolean meant = layer.isEmpty() || layer.get().equals(onLayer);
        switch (type) {
            case "LINE" -> {
                if (meant) {
                    lines.line(get(X), get(Y), get(X_END), get(Y_END));
                    lines.leftOpen();
                }
            }
            case "ARC" -> {
                if (meant) {
                    double to = get(TO) < get(FROM) ? get(TO) + 360 : get(TO);
                    lines.arc(get(X), get(Y), get(RADIUS), get(FROM), to);
                    lines.leftOpen();
                }
            }
            case "LWPOLYLINE" -> {
                if (meant) {
                    polyline(((int) get(FLAGS) & CLOSED) != 0);
                }
                vertices = new ArrayList<>();
            }
            case "POLYLINE" -> {
                inPolyline = meant;
                polylineClosed = ((int) get(FLAGS) & CLOSED) != 0;
                vertices = new ArrayList<>();
            }
            case "VERTEX" -> {
                if (inPolyline) {
                    vertices.add(new double[] {get(X), get(Y), get(BULGE)});
                }
            }
            case "SEQEND" -> {
                if (inPolyline) {
                    polyline(polylineClosed);
                }
                inPolyline = false;
                vertices = new ArrayList<>();
            }
            default -> {
                // Nothing of an outline.
            }
        }
    }

    private void polyline(boolean closed) {
        for (int i = 0; i + 1 < vertices.size(); i++) {
            bulge(vertices.get(i), vertices.get(i + 1));
        }
        if (closed && vertices.size() > 1) {
            bulge(vertices.get(vertices.size() - 1), vertices.get(0));
        } else {
            lines.leftOpen();
        }
    }

    private void bulge(double[] from, double[] to) {
        lines.bulge(from[0], from[1], to[0], to[1], from[2]);
    }
}
