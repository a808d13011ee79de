package haftline.cli;

import haftline.findings.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;

/** What the findings of a piece come to: a mark, a word and a count, never a colour alone. */
record Verdict(ExaminedPiece piece) {
    static String mark(Gravity gravity) {
        return switch (gravity) {
            case STOP -> "■";
            case WARN -> "▲";
            case NOTE -> "○";
        };
    }

    static String word(Gravity gravity) {
        return gravity.name().toLowerCase(Locale.ROOT);
    }

    /** Such as {@code ▲ 2 warnings, 1 note}. */
    String text() {
        return (piece.isStopped() ? "■ NOT TO BE MADE: " : sign()) + counts();
    }

    /** The gravest alone, for a table: {@code ▲ 2 warnings}. */
    String shortInInk(Ink ink) {
        return piece.findings().isEmpty()
                ? ""
                : ink.grave(
                        gravest(),
                        mark(gravest()) + " " + counted(piece.count(gravest()), gravest()));
    }

    String inInk(Ink ink) {
        return ink.grave(gravest(), text());
    }

    String counts() {
        return counts(piece::count);
    }

    /** Such as {@code 2 warnings, 1 note}. */
    static String counts(ToIntFunction<Gravity> count) {
        List<String> counts = new ArrayList<>();
        for (Gravity gravity : Gravity.values()) {
            if (count.applyAsInt(gravity) > 0) {
                counts.add(counted(count.applyAsInt(gravity), gravity));
            }
        }
        return counts.isEmpty() ? "nothing found" : String.join(", ", counts);
    }

    private static String counted(int count, Gravity gravity) {
        String noun = gravity == Gravity.WARN ? "warning" : word(gravity);
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    private String sign() {
        return piece.findings().isEmpty() ? "" : mark(gravest()) + " ";
    }

    private Gravity gravest() {
        return piece.findings().isEmpty()
                ? Gravity.NOTE
                : piece.findings().get(0).finding().gravity();
    }
}
