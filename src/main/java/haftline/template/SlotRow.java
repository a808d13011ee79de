package haftline.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Slots side by side along the top edge of a card, the widest first. */
final class SlotRow {
    /** Two diameters closer than this need one slot only, mm. */
    private static final double SAME_MM = 0.15;

    /** A narrower slot would gauge a wire: it is left out, mm. */
    private static final double NARROWEST_MM = 2;

    private static final double LABEL_MM = 2.2;
    private static final double NOTE_MM = 1.8;

    private final List<Slot> slots;

    private SlotRow(List<Slot> slots) {
        this.slots = slots;
    }

    /** Slots for the key diameters of a work piece, and go and no-go for its tenon. */
    static SlotRow of(Workpiece work, GaugeRules rules) {
        List<Slot> slots = new ArrayList<>();
        work.stations().stream()
                .filter(station -> station.isKey() && station.diameterMm() >= NARROWEST_MM)
                .sorted(Comparator.comparingDouble(GaugeStation::diameterMm).reversed())
                .forEach(
                        station -> {
                            double width = station.diameterMm() + rules.allowanceMm();
                            if (slots.stream()
                                    .noneMatch(s -> Math.abs(s.widthMm() - width) < SAME_MM)) {
                                slots.add(
                                        new Slot(
                                                width,
                                                rules.diameter(station.diameterMm()),
                                                place(station, work, rules)));
                            }
                        });
        double tenon = work.tenonDiameterMm();
        double half = rules.tenonToleranceMm();
        if (tenon - half < NARROWEST_MM) {
            return new SlotRow(slots);
        }
        slots.add(new Slot(tenon + half, "TENON GO", "\u2300" + rules.fine(tenon + half)));
        slots.add(new Slot(tenon - half, "NO-GO", "\u2300" + rules.fine(tenon - half)));
        return new SlotRow(slots);
    }

    private static String place(GaugeStation station, Workpiece work, GaugeRules rules) {
        if (station.x() == 0) {
            return "shoulder";
        }
        return station.x() == work.seatX() ? "seat" : "at " + rules.length(station.x());
    }

    /** The height of card the row takes from the edge down, labels included. */
    double depthMm() {
        double deepest = slots.stream().mapToDouble(Slot::depthMm).max().orElse(0);
        return deepest + 2 * LABEL_MM + NOTE_MM + 1.5;
    }

    double widthMm() {
        return slots.stream().mapToDouble(SlotRow::pitch).sum();
    }

    /** A slot with its wall, wide enough for its label. */
    private static double pitch(Slot slot) {
        double label =
                Math.max(
                        StrokeFont.widthMm(slot.label(), LABEL_MM),
                        StrokeFont.widthMm(slot.note(), NOTE_MM));
        return Math.max(slot.widthMm() + Slot.WALL_MM, label + 2);
    }

    /** Draws the slots into a top edge that runs to the right, and their labels. */
    void draw(CardEdge edge, List<Mark> marks, double leftX, double topY) {
        double x = leftX;
        for (Slot slot : slots) {
            double pitch = pitch(slot);
            double centre = x + pitch / 2;
            slot.draw(edge, centre, topY);
            double y = topY - slot.depthMm() - LABEL_MM - 1.2;
            marks.add(Lettering.level(centre, y, LABEL_MM, Lettering.Align.MIDDLE, slot.label()));
            marks.add(
                    Lettering.level(
                            centre, y - NOTE_MM - 1, NOTE_MM, Lettering.Align.MIDDLE, slot.note()));
            x += pitch;
        }
    }
}
