package haftline.template;

import java.util.Map;
import java.util.TreeMap;

/** The drawings of the single-stroke alphabet; {@link StrokeFont} reads them. */
final class StrokeGlyphs {
    /** A box for what the alphabet lacks. */
    static final String UNKNOWN = "M0,0 L3.2,0 L3.2,6 L0,6 L0,0";

    /** Bowl of a, d, g and q, open where the stem closes it; no line is drawn twice. */
    private static final String BOWL_LEFT = "M3.4,2.3 A1.7,4 A0,2.3 L0,1.7 A1.7,0 A3.4,1.7";

    private static final String OVAL = BOWL_LEFT + " L3.4,2.3";

    /** Bowl of b and p. */
    private static final String BOWL_RIGHT = "M0,2.3 C1.7,4 C3.4,2.3 L3.4,1.7 C1.7,0 C0,1.7";

    private static final String RING = "M1.6,5.2 A0.8,6 A0,5.2 A0.8,4.4 A1.6,5.2";
    private static final String DIAMETER = "M4.2,3 A2.2,5 A0.2,3 A2.2,1 A4.2,3 M0.2,0.6 L4.2,5.4";
    private static final String MICRO = "M0,4 L0,-2 M0,1.7 A1.7,0 A3.4,1.7 M3.4,4 L3.4,0";

    private static final Map<Integer, String> DRAWN = new TreeMap<>();

    static {
        capitals();
        smallLetters();
        figures();
        signs();
        accents();
    }

    private StrokeGlyphs() {}

    /** The drawing of a character, or null where there is none. */
    static String of(int codePoint) {
        return DRAWN.get(codePoint);
    }

    private static void draw(String character, String drawing) {
        DRAWN.put(character.codePointAt(0), drawing);
    }

    private static void capitals() {
        draw("A", "M0,0 L2,6 L4,0 M0.667,2 L3.333,2");
        draw("B", "M0,0 L0,6 L2.4,6 D2.4,3.2 L0,3.2 M2.2,3.2 D2.2,0 L0,0");
        draw("C", "M3.732,5 B0,4,0.767 L0,2 B3.732,1,0.767");
        draw("D", "M0,0 L0,6 L1.5,6 C4,3.5 L4,2.5 C1.5,0 L0,0");
        draw("E", "M3.5,0 L0,0 L0,6 L3.5,6 M0,3.2 L2.8,3.2");
        draw("F", "M0,0 L0,6 L3.5,6 M0,3.2 L2.8,3.2");
        draw("G", "M3.732,5 B0,4,0.767 L0,2 A2,0 A4,2 L4,2.7 L2.4,2.7");
        draw("H", "M0,0 L0,6 M4,0 L4,6 M0,3.2 L4,3.2");
        draw("I", "M0,0 L1.6,0 M0.8,0 L0.8,6 M0,6 L1.6,6");
        draw("J", "M3,6 L3,1.5 C1.5,0 C0,1.5");
        draw("K", "M0,0 L0,6 M3.8,6 L0,2.3 M1.37,3.634 L4,0");
        draw("L", "M0,6 L0,0 L3.4,0");
        draw("M", "M0,0 L0,6 L2.5,2 L5,6 L5,0");
        draw("N", "M0,0 L0,6 L4,0 L4,6");
        draw("O", "M4,4 A2,6 A0,4 L0,2 A2,0 A4,2 L4,4");
        draw("P", "M0,0 L0,6 L2.2,6 D2.2,2.8 L0,2.8");
        draw("Q", "M4,4 A2,6 A0,4 L0,2 A2,0 A4,2 L4,4 M2.5,1.5 L4.2,-0.4");
        draw("R", "M0,0 L0,6 L2.2,6 D2.2,2.8 L0,2.8 M2,2.8 L3.9,0");
        draw("S", "M3.6,4.5 A2.1,6 L1.5,6 A0,4.5 A1.5,3 L2.1,3 C3.6,1.5 C2.1,0 L1.5,0 C0,1.5");
        draw("T", "M0,6 L4,6 M2,6 L2,0");
        draw("U", "M0,6 L0,2 A2,0 A4,2 L4,6");
        draw("V", "M0,6 L2,0 L4,6");
        draw("W", "M0,6 L1.5,0 L3,4.6 L4.5,0 L6,6");
        draw("X", "M0,0 L4,6 M0,6 L4,0");
        draw("Y", "M0,6 L2,3 L4,6 M2,3 L2,0");
        draw("Z", "M0,6 L4,6 L0,0 L4,0");
    }

    private static void smallLetters() {
        draw("a", BOWL_LEFT + " M3.4,4 L3.4,0");
        draw("b", "M0,6 L0,0 " + BOWL_RIGHT);
        draw("c", "M3.002,3.393 B0,2.3,0.7 L0,1.7 B3.002,0.607,0.7");
        draw("d", BOWL_LEFT + " M3.4,6 L3.4,0");
        draw("e", "M0,2 L3.4,2 L3.4,2.3 A1.7,4 A0,2.3 L0,1.7 B3.002,0.607,0.7");
        draw("f", "M2.4,6 A1,4.6 L1,0 M0,4 L2.2,4");
        draw("g", BOWL_LEFT + " M3.4,4 L3.4,-0.5 C1.9,-2 L0.6,-2");
        draw("h", "M0,0 L0,6 M0,2.3 C1.7,4 C3.4,2.3 L3.4,0");
        draw("i", "M0.1,0 L0.1,4 M0.1,5.4 L0.1,5.8");
        draw("j", "M1.2,4 L1.2,-0.8 C0,-2 M1.2,5.4 L1.2,5.8");
        draw("k", "M0,0 L0,6 M3,4 L0,1.5 M1.02,2.35 L3.2,0");
        draw("l", "M0.1,6 L0.1,1 A1.1,0");
        draw("m", "M0,0 L0,4 M0,2.6 C1.4,4 C2.8,2.6 L2.8,0 M2.8,2.6 C4.2,4 C5.6,2.6 L5.6,0");
        draw("n", "M0,0 L0,4 M0,2.3 C1.7,4 C3.4,2.3 L3.4,0");
        draw("o", OVAL);
        draw("p", "M0,4 L0,-2 " + BOWL_RIGHT);
        draw("q", BOWL_LEFT + " M3.4,4 L3.4,-2");
        draw("r", "M0,0 L0,4 M0,2.3 C1.7,4 L2.3,4");
        draw("s", "M2.8,3 A1.8,4 L1,4 A0,3 A1,2 L1.8,2 C2.8,1 C1.8,0 L1,0 C0,1");
        draw("t", "M1,5.6 L1,1 A2,0 L2.4,0 M0,4 L2.3,4");
        draw("u", "M0,4 L0,1.7 A1.7,0 A3.4,1.7 M3.4,4 L3.4,0");
        draw("v", "M0,4 L1.7,0 L3.4,4");
        draw("w", "M0,4 L1.2,0 L2.4,3.2 L3.6,0 L4.8,4");
        draw("x", "M0,0 L3.2,4 M0,4 L3.2,0");
        draw("y", "M0,4 L1.7,0 M3.4,4 L0.85,-2");
        draw("z", "M0,4 L3.2,4 L0,0 L3.2,0");
        draw("\u00df", "M0,0 L0,4.6 C1.4,6 C2.8,4.6 C1.4,3.2 M1.4,3.2 L1.8,3.2 D1.8,0 L1,0");
        draw("\u00f8", OVAL + " M0,-0.4 L3.4,4.4");
    }

    private static void figures() {
        draw("0", "M3.6,4.2 A1.8,6 A0,4.2 L0,1.8 A1.8,0 A3.6,1.8 L3.6,4.2");
        draw("1", "M0.4,4.6 L2,6 L2,0 M0.6,0 L3.4,0");
        draw("2", "M0,4.2 C1.8,6 C3.6,4.2 B3.073,2.927,-0.1989 L0,0 L3.6,0");
        draw("3", "M0.2,6 L3.3,6 L1.4,3.6 L1.8,3.6 C3.6,1.8 C1.8,0 B0.1085,1.184,-0.3153");
        draw("4", "M2.8,0 L2.8,6 L0,1.7 L3.7,1.7");
        draw("5", "M3.3,6 L0.5,6 L0.31,3.196 B3.6,1.9,-0.6809 C1.7,0 B0,1.1,-0.28");
        draw("6", "M2.9,6 B0,1.8,0.18 A1.8,0 A3.6,1.8 A1.8,3.6 A0,1.8");
        draw("7", "M0,6 L3.6,6 L1.2,0");
        draw("8", "M1.8,3.2 A3.2,4.6 A1.8,6 A0.4,4.6 A1.8,3.2 A0.2,1.6 A1.8,0 A3.4,1.6 A1.8,3.2");
        draw("9", "M0.7,0 B3.6,4.2,0.18 A1.8,6 A0,4.2 A1.8,2.4 A3.6,4.2");
    }

    private static void signs() {
        draw(".", "M0.2,0 L0.2,0.4");
        draw(",", "M0.5,0.4 L0.1,-0.9");
        draw(":", "M0.2,0.6 L0.2,1 M0.2,3 L0.2,3.4");
        draw(";", "M0.5,0.4 L0.1,-0.9 M0.4,3 L0.4,3.4");
        draw("-", "M0,2.4 L2.2,2.4");
        draw("\u2212", "M0,2.4 L3.2,2.4");
        draw("\u2013", "M0,2.4 L3.4,2.4");
        draw("\u2014", "M0,2.4 L5,2.4");
        draw("\u2026", "M0.2,0 L0.2,0.4 M1.8,0 L1.8,0.4 M3.4,0 L3.4,0.4");
        draw("+", "M0,2.4 L3.2,2.4 M1.6,0.8 L1.6,4");
        draw("\u00b1", "M0,3 L3.2,3 M1.6,1.4 L1.6,4.6 M0,0.4 L3.2,0.4");
        draw("=", "M0,1.7 L3.2,1.7 M0,3.1 L3.2,3.1");
        draw("/", "M0,-0.6 L2.6,6.6");
        draw("\\", "M0,6.6 L2.6,-0.6");
        draw("(", "M1.2,6.6 B1.2,-0.6,0.3");
        draw(")", "M0,6.6 B0,-0.6,-0.3");
        draw("[", "M1.2,6.6 L0,6.6 L0,-0.6 L1.2,-0.6");
        draw("]", "M0,6.6 L1.2,6.6 L1.2,-0.6 L0,-0.6");
        draw("'", "M0.2,6 L0.2,4.6");
        draw("\u2019", "M0.4,6 L0.1,4.7");
        draw("\u2018", "M0.1,6 L0.4,4.7");
        draw("\"", "M0.2,6 L0.2,4.6 M1.4,6 L1.4,4.6");
        draw("!", "M0.2,6 L0.2,1.8 M0.2,0.4 L0.2,0");
        draw("?", "M0,4.5 C1.5,6 C3,4.5 B1.5,2.6,-0.25 L1.5,1.7 M1.5,0.4 L1.5,0");
        draw("#", "M1,0 L1.6,6 M2.8,0 L3.4,6 M0,2 L4,2 M0.3,4 L4.3,4");
        draw("%", RING + " M0,0 L4,6 M4,0.8 A3.2,1.6 A2.4,0.8 A3.2,0 A4,0.8");
        draw("&", "M4,0 L0.8,4.2 B1.7,6,-0.55 B2.3,4.1,-0.6 L0.7,2.7 B1.6,0,0.6 B3.8,2.6,0.3");
        draw("*", "M1.4,3 L1.4,6 M0.1,3.75 L2.7,5.25 M0.1,5.25 L2.7,3.75");
        draw("_", "M0,-0.8 L3.6,-0.8");
        draw("<", "M3,4.2 L0,2.4 L3,0.6");
        draw(">", "M0,4.2 L3,2.4 L0,0.6");
        draw("|", "M0.1,6.6 L0.1,-0.8");
        draw("\u00d7", "M0,1 L2.8,3.8 M0,3.8 L2.8,1");
        draw("\u00b7", "M0.2,2.2 L0.2,2.6");
        draw("\u2190", "M4.4,2.4 L0,2.4 M1.3,3.7 L0,2.4 L1.3,1.1");
        draw("\u2192", "M0,2.4 L4.4,2.4 M3.1,3.7 L4.4,2.4 L3.1,1.1");
        draw("\u2300", DIAMETER);
        draw("\u00d8", DIAMETER);
        draw("\u00b5", MICRO);
        draw("\u03bc", MICRO);
        draw("\u00b0", RING);
    }

    /** Marks over a letter, drawn about its middle; lifted for capitals. */
    private static void accents() {
        draw("\u0300", "M-0.8,5.6 L0.4,4.8");
        draw("\u0301", "M0.8,5.6 L-0.4,4.8");
        draw("\u0302", "M-0.9,4.8 L0,5.6 L0.9,4.8");
        draw("\u0303", "M-1,4.9 B0,5.2,-0.5 B1,5.5,0.5");
        draw("\u0308", "M-0.8,5 L-0.8,5.4 M0.8,5 L0.8,5.4");
        draw("\u030a", "M0.6,5.3 A0,5.9 A-0.6,5.3 A0,4.7 A0.6,5.3");
        draw("\u030c", "M-0.9,5.6 L0,4.8 L0.9,5.6");
        draw("\u0327", "M0.2,0 B-0.2,-1.4,-0.7");
    }
}
