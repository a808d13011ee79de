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
                        + ", mark the ferrule end.");
        steps.add(
                capped
                        ? "Bore the ferrule end, then the butt, as the table says."
                        : "Bore the ferrule end as the table says.");
        steps.add(
                (capped ? "Mount between cones in the bores" : "Mount with a cone in the bore")
                        + (wood ? "" : ", driven by friction, no spur")
                        + "; turn it round, slow at first.");
        steps.add(
                "Face "
                        + (capped ? "both ends" : "the ferrule end")
                        + " square to the bore: "
                        + lengths.inWords(handle.lengths().turnedWoodMm())
                        + " over all"
                        + (capped ? "." : ", the waste behind it."));
        steps.add(
                "Tenon to its gauge, shoulder undercut a hair so that the rim closes; try the"
                        + " ferrule.");
        steps.add("Sizing cuts to ROUGH; join them downhill to TURN TO, large diameters first.");
        steps.add(
                "Ferrule on"
                        + (brief.rules().tenons().driven() ? ", driven dry" : ", bonded and cured")
                        + "; mask it, blend the shoulder.");
        steps.add("Rest away: sand to FINISHED, then finish.");
        if (!capped) {
            steps.add("Part off slowly at the butt, waste held; sand and seal it.");
        }
        steps.add("Try all together dry; degrease metal, clean bores.");
        steps.add(assembly());
        return List.copyOf(steps);
    }

    private String assembly() {
        String cap = capped ? "Bond the cap, let it cure. " : "";
        return cap
                + (pressed
                        ? "Press the blade home, edge covered."
                        : "Bond the blade, cure it upright.");
    }
}
