package haftline.template;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Gauges for one handle on one card: the negative half-profile along the bottom edge, the story
 * rod's notches along the top edge, sizing slots in a block at the butt's end; each alone or
 * together. Every length is counted from the shoulder, never chained.
 */
public final class GaugeCard {
    /** What a card may carry. */
    public enum Gauge {
        /** The negative of the half-profile, held against the work. */
        PROFILE,
        /** Notches at the stations, for marking them with a pencil. */
        STORY_ROD,
        /** Open slots at the key diameters, and go and no-go for the tenon. */
        SLOTS
    }

    /** Card beyond the butt, mm. */
    static final double END_MM = 9;

    private static final double TICK_MM = 3;
    private static final double LABEL_MM = 2;

    /** Blank between a tick and its label, and round blocks of text, mm. */
    private static final double BLANK_MM = 1;

    private static final double NOTCH_DEPTH_MM = 2;

    /** Half the width of a notch at the edge: its sides stand at 60 degrees, as a file cuts it. */
    private static final double NOTCH_HALF_MM = NOTCH_DEPTH_MM * Math.tan(Math.toRadians(30));

    /** Card between the hanging hole and the edge, mm. */
    private static final double BESIDE_HOLE_MM = 4.5;

    private static final double CORNER_MM = 3;
    private static final double MARGIN_MM = 3;

    private final Workpiece work;
    private final Set<Gauge> gauges;
    private final GaugeRules rules;
    private final SlotRow slots;
    private final TitleBlock title;
    private final List<Mark> marks = new ArrayList<>();
    private final List<TemplateFinding> findings = new ArrayList<>();

    private GaugeCard(Workpiece work, Set<Gauge> gauges, GaugeRules rules) {
        this.work = work;
        this.gauges = gauges;
        this.rules = rules;
        this.slots = SlotRow.of(work, rules);
        this.title = new TitleBlock(work.name());
        addLines();
    }

    /**
     * A card.
     *
     * @param work the work
     * @param gauges what it carries, at least one
     * @param rules how gauges are made
     * @return the card to cut
     */
    public static Card of(Workpiece work, Collection<Gauge> gauges, GaugeRules rules) {
        if (gauges.isEmpty()) {
            throw new IllegalArgumentException("gauge card: expected at least one gauge");
        }
        GaugeCard card = new GaugeCard(work, EnumSet.copyOf(gauges), rules);
        boolean slotsAlone = !card.has(Gauge.PROFILE) && !card.has(Gauge.STORY_ROD);
        return slotsAlone ? card.slotsAlone() : card.whole();
    }

    private boolean has(Gauge gauge) {
        return gauges.contains(gauge);
    }

    private void addLines() {
        if (has(Gauge.PROFILE)) {
            title.line(
                    "PROFILE GAUGE, NEGATIVE \u00b7 bears on "
                            + (rules.register() == GaugeRules.Register.FERRULE_FACE
                                    ? "the ferrule's front face"
                                    : "the bare shoulder"));
        }
        if (has(Gauge.STORY_ROD)) {
            title.line(
                    has(Gauge.PROFILE)
                            ? "STORY ROD, counted from the shoulder"
                            : "STORY ROD \u00b7 \u2190 this end on the shoulder");
        }
        if (has(Gauge.SLOTS)) {
            title.line(
                    rules.allowanceMm() == 0
                            ? "SIZING SLOTS, finished diameters"
                            : "SIZING SLOTS, "
                                    + rules.fine(rules.allowanceMm())
                                    + " "
                                    + rules.units().symbol()
                                    + " over the finished diameters");
        }
        String batch = work.batch().isEmpty() ? "" : " \u00b7 batch " + work.batch();
        title.line(
                "wood "
                        + rules.length(work.buttX())
                        + " "
                        + rules.units().symbol()
                        + " \u00b7 "
                        + rules.diameter(work.greatestDiameterMm())
                        + " at most \u00b7 sheet "
                        + rules.thickness()
                        + batch);
    }

    private Card whole() {
        ProfileEdge bottom = null;
        if (has(Gauge.PROFILE)) {
            NegativeEdge negative = NegativeEdge.of(work, rules);
            bottom = negative.edge();
            findings.addAll(negative.findings());
            ticks(bottom);
        }
        double left = bottom == null ? 0 : bottom.startX();
        double bodyRight = work.buttX() + END_MM;
        boolean block = has(Gauge.SLOTS);
        double right = bodyRight + (block ? slots.widthMm() : 0) + 2 * holeInset();
        double foot = bottom == null ? 0 : bottom.greatestY();
        double titleFoot = foot + (bottom == null ? MARGIN_MM : tickRoom());
        double stacked = titleFoot + title.heightMm() + BLANK_MM + rodRoom();
        double top = Math.max(stacked, block ? foot + slots.depthMm() + MARGIN_MM : 0);
        CardEdge topEdge = topEdge(left, right, top, bodyRight, bottom == null);
        CardEdge edge =
                bottom == null
                        ? CardEdge.from(left, 0)
                        : CardEdge.from(left + CORNER_MM, bottom.yAfter(left));
        double baseY = 0;
        if (bottom != null) {
            edge.along(bottom.part(left + CORNER_MM, bottom.endX()).strokes());
            baseY = bottom.yBefore(bottom.endX());
        }
        edge.to(right - CORNER_MM, baseY).rounded(right, baseY + CORNER_MM, true);
        edge.along(topEdge.backwards());
        if (bottom != null) {
            double y = bottom.yAfter(left);
            edge.to(left, y + CORNER_MM).rounded(left + CORNER_MM, y, true);
        }
        double textLeft = left + MARGIN_MM;
        title.draw(marks, textLeft, titleFoot, bodyRight - textLeft);
        if (block) {
            TitleBlock.checkBar(marks, rules.units(), right - MARGIN_MM, baseY + MARGIN_MM);
        }
        return new Card(
                work.name() + ", " + name(),
                ShortStrokes.joined(edge.closed()),
                hangingHole(right, top),
                marks,
                findings,
                work.stopped());
    }

    /** From the card's sides to the middle of the hanging hole, or where it would be. */
    private double holeInset() {
        return BESIDE_HOLE_MM + rules.hangingHoleMm() / 2;
    }

    private List<Loop> hangingHole(double right, double top) {
        Spot centre = new Spot(right - holeInset(), top - holeInset());
        return rules.hangingHoleMm() == 0
                ? List.of()
                : List.of(Loop.circle(centre, rules.hangingHoleMm()));
    }

    private CardEdge topEdge(
            double left, double right, double top, double blockX, boolean squareEnd) {
        CardEdge edge;
        if (squareEnd) {
            // The rod's end is its zero: it stays square.
            edge = CardEdge.from(left, top);
        } else {
            edge = CardEdge.from(left, top - CORNER_MM).rounded(left + CORNER_MM, top, false);
        }
        if (has(Gauge.STORY_ROD)) {
            notches(edge, top, squareEnd);
        }
        if (has(Gauge.SLOTS)) {
            slots.draw(edge, marks, blockX, top);
        }
        return edge.to(right - CORNER_MM, top).rounded(right, top - CORNER_MM, false);
    }

    private Card slotsAlone() {
        double right = MARGIN_MM + slots.widthMm() + 2 * holeInset();
        double bar = 55;
        double top = slots.depthMm() + MARGIN_MM + title.heightMm();
        double c = CORNER_MM;
        CardEdge topEdge = CardEdge.from(0, top - c).rounded(c, top, false);
        slots.draw(topEdge, marks, MARGIN_MM, top);
        topEdge.to(right - c, top).rounded(right, top - c, false);
        CardEdge edge = CardEdge.from(c, 0).to(right - c, 0).rounded(right, c, true);
        edge.along(topEdge.backwards()).to(0, c).rounded(c, 0, true);
        title.draw(marks, MARGIN_MM, MARGIN_MM, right - 2 * MARGIN_MM - bar);
        TitleBlock.checkBar(marks, rules.units(), right - MARGIN_MM, MARGIN_MM + 1);
        return new Card(
                work.name() + ", " + name(),
                ShortStrokes.joined(edge.closed()),
                hangingHole(right, top),
                marks,
                findings,
                work.stopped());
    }

    /** Room for ticks and diameters over the highest place of the profile. */
    private double tickRoom() {
        double longest =
                work.stations().stream()
                        .mapToDouble(
                                s -> StrokeFont.widthMm(rules.diameter(s.diameterMm()), LABEL_MM))
                        .max()
                        .orElse(0);
        return TICK_MM + longest + 4 * BLANK_MM;
    }

    /** Room for notches and their labels under the top edge. */
    private double rodRoom() {
        if (!has(Gauge.STORY_ROD)) {
            return MARGIN_MM;
        }
        double longest =
                work.stations().stream()
                        .mapToDouble(s -> StrokeFont.widthMm(notchLabel(s), LABEL_MM))
                        .max()
                        .orElse(0);
        return NOTCH_DEPTH_MM + TICK_MM + longest + 2 * BLANK_MM;
    }

    private String name() {
        List<String> names = new ArrayList<>();
        if (has(Gauge.PROFILE)) {
            names.add("profile gauge");
        }
        if (has(Gauge.STORY_ROD)) {
            names.add("story rod");
        }
        if (has(Gauge.SLOTS)) {
            names.add("sizing slots");
        }
        return String.join(", ", names);
    }

    private void ticks(ProfileEdge edge) {
        for (GaugeStation station : work.stations()) {
            double x = station.x();
            double y = Math.max(edge.yBefore(x), edge.yAfter(x));
            marks.add(ScoreLine.between(x, y, x, y + TICK_MM));
            marks.add(
                    Lettering.upright(
                            x + LABEL_MM / 2,
                            y + TICK_MM + BLANK_MM,
                            LABEL_MM,
                            Lettering.Align.START,
                            rules.diameter(station.diameterMm())));
        }
    }

    private String notchLabel(GaugeStation station) {
        String place = rules.length(station.x());
        return has(Gauge.PROFILE) ? place : rules.diameter(station.diameterMm()) + " at " + place;
    }

    /** V notches along the top edge, drawn to the right, each with its place and diameter. */
    private void notches(CardEdge topEdge, double top, boolean squareEnd) {
        for (GaugeStation station : work.stations()) {
            double x = station.x();
            boolean isEnd = squareEnd && x == 0;
            if (!isEnd) {
                topEdge.to(x - NOTCH_HALF_MM, top)
                        .to(x, top - NOTCH_DEPTH_MM)
                        .to(x + NOTCH_HALF_MM, top);
                marks.add(
                        ScoreLine.between(
                                x,
                                top - NOTCH_DEPTH_MM - BLANK_MM / 2,
                                x,
                                top - NOTCH_DEPTH_MM - TICK_MM));
            }
            marks.add(
                    Lettering.upright(
                            x + (isEnd ? LABEL_MM + BLANK_MM : LABEL_MM / 2),
                            top - NOTCH_DEPTH_MM - TICK_MM - BLANK_MM,
                            LABEL_MM,
                            Lettering.Align.END,
                            notchLabel(station)));
        }
    }
}
