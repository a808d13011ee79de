package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Layer;
import haftline.sheet.Fact;
import java.util.List;
import java.util.Locale;

/** The plain blocks of a sheet. */
final class Blocks {
    /** Capitals of body text at size 1, mm: 11 points. */
    static final double BODY_MM = 2.67;

    private static final double HEADING_MM = 2.4;
    private static final double FIGURE_MM = 3.6;

    /** What is read once, before the lathe runs: findings, cautions, how a table is read. */
    static final double SMALL_MM = 2.05;

    private static final double NOTE_MM = 2.05;

    /** How far under a baseline letters reach, in heights of a capital. */
    static final double DESCENT = 0.32;

    /** Share of a column that the labels of facts take, and the figures. */
    private static final double LABEL_SHARE = 0.27;

    private static final double FIGURE_SHARE = 0.23;

    private Blocks() {}

    /** A heading in capitals over a wide rule. */
    static Block heading(String text) {
        return (ink, x, top, width, k) -> {
            double cap = HEADING_MM * k;
            double rule = top - 0.4 * k;
            ink.wideRule(x, x + width, rule);
            String shown = Type.cut(text.toUpperCase(Locale.ROOT), width, cap);
            ink.text(x, rule - 1.3 * k - cap, cap, Anchor.START, true, shown);
            return 0.4 * k + 1.3 * k + cap + 1.4 * k;
        };
    }

    static Block gap(double mm) {
        return (ink, x, top, width, k) -> mm * k;
    }

    /** A paragraph of body text. */
    static Block plain(String text) {
        return paragraph(text, BODY_MM);
    }

    /** A paragraph of small text, for what explains and does not instruct. */
    static Block note(String text) {
        return paragraph(text, SMALL_MM);
    }

    private static Block paragraph(String text, double size) {
        return (ink, x, top, width, k) -> {
            double cap = size * k;
            double used = lines(ink, x, top, width, cap, text);
            return used + 0.25 * cap;
        };
    }

    /** A paragraph that hangs behind a mark: a number, a bullet or the sign of a gravity. */
    static Block hanging(String mark, boolean wide, String text, double indentMm, double sizeMm) {
        return (ink, x, top, width, k) -> {
            double cap = sizeMm * k;
            double indent = indentMm * k;
            ink.text(x, top - cap, cap, Anchor.START, wide, mark);
            return lines(ink, x + indent, top, width - indent, cap, text) + 0.25 * cap;
        };
    }

    /** A figure between its label and its note, a narrow rule under each. */
    static Block fact(Fact fact) {
        return (ink, x, top, width, k) -> {
            double cap = FIGURE_MM * k;
            double small = NOTE_MM * k;
            double pad = 0.95 * k;
            double label = LABEL_SHARE * width;
            double figure = Math.max(FIGURE_SHARE * width, Type.widthMm(fact.figure(), cap));
            double baseline = top - pad - cap;
            List<String> names = Type.wrapped(fact.label(), label - k, small);
            double y = baseline;
            for (String name : names) {
                ink.text(x, y, small, Anchor.START, false, name);
                y -= Type.LEADING * small;
            }
            double low = y + Type.LEADING * small;
            ink.text(x + label + figure, baseline, cap, Anchor.END, true, fact.figure());
            double left = label + figure + 2.2 * k;
            y = baseline;
            for (String line : Type.wrapped(fact.note(), width - left, small)) {
                ink.text(x + left, y, small, Anchor.START, false, line);
                y -= Type.LEADING * small;
            }
            low = Math.min(low, Math.min(baseline, y + Type.LEADING * small));
            double foot = low - DESCENT * cap - 0.7 * k;
            ink.rule(x, x + width, foot);
            return top - foot;
        };
    }

    /** A framed block: what must not be overlooked. */
    static Block framed(List<Block> inside) {
        return (ink, x, top, width, k) -> {
            double pad = 2 * k;
            double y = top - pad;
            for (Block block : inside) {
                y -= block.set(ink, x + pad, y, width - 2 * pad, k);
            }
            double foot = y - pad + 0.8 * k;
            ink.box(Layer.OUTLINE, x, foot, x + width, top);
            return top - foot;
        };
    }

    private static double lines(
            Ink ink, double x, double top, double width, double cap, String text) {
        double y = top - cap;
        List<String> lines = Type.wrapped(text, width, cap);
        for (String line : lines) {
            ink.text(x, y, cap, Anchor.START, false, line);
            y -= Type.LEADING * cap;
        }
        return lines.isEmpty() ? 0 : Type.LEADING * cap * lines.size();
    }
}
