package haftline.sheet.page;

import haftline.write.lettering.Lettering;
import java.util.ArrayList;
import java.util.List;

/** Text as wide as the font of the papers makes it. */
final class Type {
    /** Between two baselines, in heights of a capital: 1.19 em. */
    static final double LEADING = 1.73;

    private static final String CUT_SHORT = "…";

    private Type() {}

    /** Width of a line, mm, with capitals of a height in mm. */
    static double widthMm(String line, double capMm) {
        Lettering font = Lettering.font();
        return font.widthEm(line) * capMm / font.capitalPerEm();
    }

    /**
     * A paragraph in lines no wider than the room; a line feed begins a new one, a no-break space
     * ends none, and a word that is wider than the room is broken.
     */
    static List<String> wrapped(String text, double roomMm, double capMm) {
        List<String> lines = new ArrayList<>();
        text.lines().forEach(line -> lines.addAll(line(line, roomMm, capMm)));
        return lines;
    }

    /** A dot that parts one thing from the next is not wanted where the line ends between them. */
    private static String withoutDot(String line) {
        return line.endsWith(" ·") ? line.substring(0, line.length() - 2) : line;
    }

    private static List<String> line(String text, double roomMm, double capMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        double width = 0;
        double blank = widthMm(" ", capMm);
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            double wide = widthMm(rest, capMm);
            if (line.length() > 0 && width + blank + wide > roomMm) {
                lines.add(withoutDot(line.toString()));
                line.setLength(0);
                width = 0;
            }
            while (wide > roomMm && rest.codePointCount(0, rest.length()) > 1) {
                String fits = start(rest, roomMm, capMm);
                lines.add(fits);
                rest = rest.substring(fits.length());
                wide = widthMm(rest, capMm);
            }
            width += (line.length() > 0 ? blank : 0) + wide;
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** As much of a line as the room holds, with an ellipsis where something is lost. */
    static String cut(String line, double roomMm, double capMm) {
        if (widthMm(line, capMm) <= roomMm) {
            return line;
        }
        return start(line, roomMm - widthMm(CUT_SHORT, capMm), capMm) + CUT_SHORT;
    }

    /** The longest start that the room holds, at least one character. */
    private static String start(String line, double roomMm, double capMm) {
        int end = line.offsetByCodePoints(0, 1);
        while (end < line.length()) {
            int next = line.offsetByCodePoints(end, 1);
            if (widthMm(line.substring(0, next), capMm) > roomMm) {
                break;
            }
            end = next;
        }
        return line.substring(0, end);
    }
}
