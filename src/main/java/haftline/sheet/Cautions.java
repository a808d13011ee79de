package haftline.sheet;

import haftline.figures.Speeds;
import haftline.handle.Brief;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.stock.Caution;
import haftline.stock.Plastic;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What can hurt at this piece, gravest first; makers' papers and local rules before all of it. */
final class Cautions {
    static final String LATHE =
            "Face shield, mask, extraction. No gloves, loose sleeves, rings, rags or hair. Rest close"
                    + " but clear: turn the work by hand before the switch. Stop to measure, to move"
                    + " the rest, to clear chips; rest off to sand.";

    static final String HOLDING =
            "Chuck, centres and rest tight; hold the drill chuck as it comes out. An eager tailstock"
                    + " splits small blanks.";

    static final String BLADE =
            "Cover edge and point until the handle is done; press with no hand in their way.";

    static final String SWARF =
            "Its swarf is hot and comes in ribbons: stop the lathe before you reach for it.";

    static final String DEFER =
            "Makers' manuals and data sheets, local codes and licensed practice come before this"
                    + " sheet.";

    private static final double HUNDRED = 100;

    private Cautions() {}

    static List<String> at(SheetPiece piece, LengthText lengths) {
        List<String> cautions = new ArrayList<>(List.of(LATHE, HOLDING));
        piece.speeds().ifPresent(speeds -> cautions.add(speed(speeds, lengths)));
        cautions.addAll(material(piece.brief(), true));
        cautions.add(BLADE);
        cautions.add(DEFER);
        return List.copyOf(cautions);
    }

    /** What stock and adhesive bring with them. */
    static List<String> material(Brief brief, boolean bonded) {
        List<String> cautions = new ArrayList<>();
        for (Caution caution : brief.stock().cautions()) {
            cautions.add(capital(brief.stock().name()) + ": " + caution.text());
        }
        if (brief.stock().cautions().isEmpty()) {
            cautions.add(
                    "The lists used name no harm of this stock; its dust still harms the lungs.");
        }
        if (brief.stock() instanceof Plastic) {
            cautions.add(SWARF);
        }
        if (bonded) {
            cautions.add(
                    capital(brief.adhesive().name()) + ": " + brief.adhesive().caution().text());
        }
        return cautions;
    }

    private static String speed(Speeds speeds, LengthText lengths) {
        return "Lathe: roughing no faster than "
                + hundreds(speeds.blank().leastRpm())
                + " rpm ("
                + lengths.contour(speeds.blankMm())
                + " "
                + lengths.unit()
                + " across corners), finishing "
                + hundreds(speeds.finished().leastRpm())
                + "; start slower. A rule of thumb, no safety limit: the makers' limits go first.";
    }

    /** Rounded down: the ceiling is never told too high. */
    static String hundreds(double rpm) {
        return NumberText.fixed(Math.floor(rpm / HUNDRED) * HUNDRED, 0);
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
