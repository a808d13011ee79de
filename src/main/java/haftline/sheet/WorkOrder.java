package haftline.sheet;

import haftline.figures.Blank;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.measure.LengthText;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.List;

/** The order of work at the lathe, a sentence or two a step; common practice, no source. */
final class WorkOrder {
    private final Handle handle;
    private final Brief brief;
    private final LengthText lengths;
    private final boolean capped;
    private final boolean pressed;
    private final boolean wood;

    private WorkOrder(Handle handle, LengthText lengths) {
        this.handle = handle;
        this.brief = handle.brief();
        this.lengths = lengths;
        this.capped = handle.capBore().isPresent();
        this.pressed = handle.fit().fit() == Fit.PRESSED;
        this.wood = brief.stock() instanceof Wood;
    }

    static List<String> of(Handle handle, LengthText lengths) {
        return new WorkOrder(handle, lengths).steps();
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add(
                "Cut the blank to "
                        + lengths.inWords(Blank.of(handle).lengthMm())
                        + ". Mark the ferrule end, centre both ends.");
        steps.add(
                capped
                        ? "Bore the ferrule end, then the butt, drill by drill as the table says."
                        : "Bore the ferrule end, drill by drill as the table says.");
        steps.add(
                (capped ? "Mount between cones in the two bores" : "Mount with a cone in the bore")
                        + (wood ? "" : ", driven by friction, no spur")
                        + "; turn it round, slowly at first.");
        steps.add(
                "Face "
                        + (capped ? "both ends" : "the ferrule end")
                        + " square to the bore: "
                        + lengths.inWords(handle.lengths().turnedWoodMm())
                        + " from tenon to butt"
                        + (capped ? "." : ", the waste behind it."));
        steps.add(
                "Turn the tenon to its gauge. Undercut the shoulder a hair so that the rim closes"
                        + " first; try the ferrule on.");
        steps.add(
                "Sizing cuts at the stations, ROUGH. Then join them downhill to TURN TO, large"
                        + " diameters first.");
        steps.add(
                "Ferrule on"
                        + (brief.rules().tenons().driven() ? ", driven dry" : ", bonded and cured")
                        + ": blend the shoulder into it. Mask the metal.");
        steps.add("Sand to FINISHED, the rest away. Finish as said below.");
        if (!capped) {
            steps.add("Part off at the butt, waste held and lathe slow; sand and seal its end grain.");
        }
        steps.add("Try everything together dry. Degrease metal and bores; blow the bores clean.");
        steps.add(assembly());
        return List.copyOf(steps);
    }

    private String assembly() {
        String cap = capped ? "Bond the cap and let it cure. " : "";
        return cap
                + (pressed
                        ? "Press the blade home, straight and slowly, edge covered."
                        : "Bond the blade, point down, and leave it to cure upright.");
    }
}
