package haftline.sheet;

import haftline.figures.Blank;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.stock.Plastic;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What comes with a kit for whoever makes its handle: measure your own parts, work out your own
 * sizes, and how it is made.
 *
 * @param piece the piece
 * @param units the unit of all lengths
 * @param intro what the sheet is for
 * @param measures what to measure, lettered
 * @param rules what follows from it, lettered
 * @param shape the calliper table of this design
 * @param tools what is needed
 * @param steps the work
 * @param cautions what can hurt
 */
public record InstructionSheet(
        SheetPiece piece,
        Units units,
        String intro,
        List<Measure> measures,
        List<Rule> rules,
        List<CalliperRow> shape,
        List<String> tools,
        List<String> steps,
        List<String> cautions) {
    /** Copies the lists. */
    public InstructionSheet {
        measures = List.copyOf(measures);
        rules = List.copyOf(rules);
        shape = List.copyOf(shape);
        tools = List.copyOf(tools);
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    /**
     * The instructions for a kit.
     *
     * @param piece the piece, of the batch that is sold
     * @param units the unit of all lengths
     * @return what they say
     */
    public static InstructionSheet of(SheetPiece piece, Units units) {
        LengthText lengths = new LengthText(units);
        KitRules kit = KitRules.of(piece.handle(), lengths);
        return new InstructionSheet(
                piece,
                units,
                "Parts differ from batch to batch, and yours are what counts. Measure each twice, a"
                        + " quarter turn apart, write it into its box, and work out your own sizes."
                        + " The figures beside the boxes are those of batch "
                        + piece.batch()
                        + ", in "
                        + units.words()
                        + ".",
                kit.measures(),
                kit.rules(),
                CalliperRow.of(piece.handle(), lengths),
                tools(piece.handle(), lengths),
                steps(piece.handle(), lengths),
                Cautions.at(piece, lengths));
    }

    private static List<String> tools(Handle handle, LengthText lengths) {
        List<String> tools = new ArrayList<>();
        tools.add("Lathe with a drill chuck and a cone centre; calliper; rule.");
        String drills =
                BoringPlan.of(handle, lengths).stream()
                        .flatMap(end -> end.steps().stream())
                        .map(step -> step.drill())
                        .distinct()
                        .collect(Collectors.joining(", "));
        tools.add(
                "Centre drill, and drills as your own sizes ask; in this batch "
                        + drills
                        + " "
                        + lengths.unit()
                        + ".");
        tools.add("Roughing gouge, spindle gouge or skew, parting tool.");
        tools.add(
                handle.brief().stock() instanceof Plastic
                        ? "Wet abrasive paper 320 to 2000, polish."
                        : "Abrasive paper 120 to 320, oil or varnish.");
        tools.add(
                capital(handle.brief().adhesive().name())
                        + (handle.fit().fit() == Fit.PRESSED
                                ? "; a vice with padded jaws to press the blade home."
                                : "; a soft clamp that holds the blade upright."));
        tools.add("Face shield, dust mask, extraction; a cover for the blade's edge.");
        return tools;
    }

    private static String capital(String text) {
        return Cautions.capital(text);
    }

    private static List<String> steps(Handle handle, LengthText lengths) {
        Rules.Blanks blanks = handle.brief().rules().blanks();
        Blank blank = Blank.of(handle);
        boolean capped = handle.capBore().isPresent();
        boolean wood = handle.brief().stock() instanceof Wood;
        boolean pressed = handle.fit().fit() == Fit.PRESSED;
        List<String> steps = new ArrayList<>();
        steps.add(
                "Blank: as square as your widest diameter and "
                        + with(lengths, blank.sideMm() - blank.finishedMm())
                        + " more; as long as wood and tenon and "
                        + with(lengths, blank.lengthMm() - handle.lengths().turnedWoodMm())
                        + " more to face"
                        + (capped ? "." : " and part off."));
        steps.add(
                "Bore before you turn: centre drill, a pilot of half the width, then the drills,"
                        + " narrowest first. From the unfaced end set the stop "
                        + with(lengths, blanks.facingMm())
                        + " deeper than the depth worked out. Clear the chips often.");
        steps.add(
                capped
                        ? "Mount between cones in the two bores, turn round, face both ends square."
                        : "Mount with a cone in the bore, turn round, face the ferrule end square.");
        steps.add(
                "Turn the tenon; try the ferrule on until it slides with a little push. Undercut the"
                        + " shoulder a hair, so that the rim closes.");
        steps.add(
                "Shape: between ferrule and butt the table is a proposal. Keep the wood over the bore"
                        + " as thick as here. Leave "
                        + with(lengths, blanks.sandingMm())
                        + " for sanding.");
        steps.add(
                "Fix the ferrule"
                        + (handle.brief().rules().tenons().driven()
                                ? ", driven dry"
                                : " with adhesive, let it cure")
                        + "; mask the metal, blend the joint, sand, finish.");
        if (!capped) {
            steps.add("Part off at the butt; sand and seal its end grain.");
        }
        steps.add("Try everything together dry. Degrease the metal, clean the bores.");
        if (capped) {
            steps.add("Bond the cap. Leave it to cure.");
        }
        steps.add(
                pressed
                        ? "Cover the edge. Press the tang home in one slow straight push, lathe off;"
                                + " ease off where the wood creaks. Never press into plastics."
                        : "File a fine flat along the tang for the air. Adhesive to the bottom of the"
                                + " bore first, then on the tang; push slowly, turning; wipe; leave"
                                + " it upright to cure.");
        if (!wood) {
            steps.add("Work cool throughout: heat and force show later as fine cracks.");
        }
        return List.copyOf(steps);
    }

    private static String with(LengthText lengths, double mm) {
        return lengths.contour(mm) + " " + lengths.unit();
    }
}
