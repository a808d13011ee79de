package haftline.template;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/**
 * An alphabet of single strokes, lines and circular arcs, drawn for this program: capitals six
 * units high, small letters four, so that a laser or a pen writes each stroke once.
 */
final class StrokeFont {
    private static final double CAPITAL_UNITS = 6;
    private static final double GAP_UNITS = 1.3;
    private static final double SPACE_UNITS = 2.6;

    /** Bulge of a quarter turn. */
    private static final double QUARTER = Math.tan(Math.PI / 8);

    /** One pen move of a glyph: where to, how bent; the first of a chain is where it starts. */
    private record Move(double x, double y, double bulge) {}

    /** A character: its chains and how wide it is, in units. */
    private record Glyph(List<List<Move>> chains, double width) {}

    private StrokeFont() {}

    static double widthMm(String text, double heightMm) {
        double width = 0;
        for (Placed placed : placed(text)) {
            width = Math.max(width, placed.x + placed.glyph.width);
        }
        return width * heightMm / CAPITAL_UNITS;
    }

    static List<List<Stroke>> write(Lettering lettering) {
        List<List<Stroke>> written = new ArrayList<>();
        glyphs(lettering).forEach(written::addAll);
        return written;
    }

    /** The chains of each character in turn. */
    static List<List<List<Stroke>>> glyphs(Lettering lettering) {
        double unit = lettering.heightMm() / CAPITAL_UNITS;
        double share =
                switch (lettering.align()) {
                    case START -> 0;
                    case MIDDLE -> 0.5;
                    case END -> 1;
                };
        double back = share * widthMm(lettering.text(), lettering.heightMm());
        double turn = Math.toRadians(lettering.rotationDeg());
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        List<List<List<Stroke>>> glyphs = new ArrayList<>();
        for (Placed placed : placed(lettering.text())) {
            List<List<Stroke>> chains = new ArrayList<>();
            for (List<Move> chain : placed.glyph.chains) {
                List<Stroke> strokes = new ArrayList<>();
                Spot at = null;
                for (Move move : chain) {
                    double x = (placed.x + move.x) * unit - back;
                    double y = (placed.y + move.y) * unit;
                    Spot to = lettering.foot().moved(cos * x - sin * y, sin * x + cos * y);
                    if (at != null) {
                        strokes.add(new Stroke(at, to, move.bulge));
                    }
                    at = to;
                }
                chains.add(strokes);
            }
            if (!chains.isEmpty()) {
                glyphs.add(chains);
            }
        }
        return glyphs;
    }

    private record Placed(Glyph glyph, double x, double y) {}

    private static List<Placed> placed(String text) {
        List<Placed> placed = new ArrayList<>();
        double x = 0;
        int before = ' ';
        Glyph base = null;
        double baseX = 0;
        String taken = Normalizer.normalize(text.strip(), Normalizer.Form.NFD);
        for (int i = 0; i < taken.length(); i += Character.charCount(taken.codePointAt(i))) {
            int code = taken.codePointAt(i);
            if (Character.getType(code) == Character.NON_SPACING_MARK) {
                String mark = StrokeGlyphs.of(code);
                if (mark != null && base != null) {
                    double lift = Character.isUpperCase(before) ? 2 : 0;
                    placed.add(new Placed(parsed(mark), baseX + base.width / 2, lift));
                }
                continue;
            }
            if (Character.isWhitespace(code)) {
                x += SPACE_UNITS;
                continue;
            }
            String drawn = StrokeGlyphs.of(code);
            base = parsed(drawn == null ? StrokeGlyphs.UNKNOWN : drawn);
            baseX = x;
            before = code;
            placed.add(new Placed(base, x, 0));
            x += base.width + GAP_UNITS;
        }
        return placed;
    }

    /**
     * Reads a glyph: M starts a chain, L is a line, A and C are quarter turns anticlockwise and
     * clockwise, D a half turn clockwise, B an arc with its bulge behind its end.
     */
    private static Glyph parsed(String drawn) {
        List<List<Move>> chains = new ArrayList<>();
        double width = 0;
        for (String word : drawn.split(" ")) {
            String[] numbers = word.substring(1).split(",");
            double x = Double.parseDouble(numbers[0]);
            double y = Double.parseDouble(numbers[1]);
            double bulge =
                    switch (word.charAt(0)) {
                        case 'A' -> QUARTER;
                        case 'C' -> -QUARTER;
                        case 'D' -> -1;
                        case 'B' -> Double.parseDouble(numbers[2]);
                        default -> 0;
                    };
            if (word.charAt(0) == 'M') {
                chains.add(new ArrayList<>());
            }
            List<Move> chain = chains.get(chains.size() - 1);
            if (!chain.isEmpty()) {
                Move from = chain.get(chain.size() - 1);
                Stroke stroke = new Stroke(new Spot(from.x, from.y), new Spot(x, y), bulge);
                width = Math.max(width, stroke.box().maxX());
            }
            chain.add(new Move(x, y, bulge));
        }
        return new Glyph(chains, width);
    }
}
