package haftline.template;

import haftline.findings.Gravity;
import haftline.measure.Checks;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import java.util.ArrayList;
import java.util.List;

/**
 * How a copying template becomes a card.
 *
 * @param full whether both sides of the axis are cut, so that it may be turned over; else one side,
 *     with a straight back
 * @param backMm depth of a one-sided card below the axis, mm, 2 to 200
 * @param holes mounting holes, the user's own pattern; may be empty
 * @param sheetMm thickness of the sheet, mm, 0.2 to 25; noted on the card
 * @param units unit of the lettering
 */
public record CopyingCard(
        boolean full, double backMm, List<MountingHole> holes, double sheetMm, Units units) {
    /** One-sided, two screw holes along the back edge, 3 mm sheet (common practice, no source). */
    public static final CopyingCard COMMON_PRACTICE =
            of(TemplateSettings.COMMON_PRACTICE, Units.MM);

    /** Least card between the template's edge and its back, or its axis, mm. */
    private static final double LEAST_MM = 3;

    /** Least card beside a hole, mm. */
    private static final double BESIDE_HOLE_MM = 2;

    /** Card beyond a hole that lies past the run, mm. */
    private static final double BEYOND_HOLE_MM = 6;

    private static final double MARGIN_MM = 3;
    private static final double LABEL_MM = 2;

    /** Blank between the axis and text, mm. */
    private static final double AXIS_CLEAR_MM = 1.2;

    private static final double TICK_MM = 3;
    private static final double AXIS_END_MM = 4;

    /** Lettering of a full card is tried from full size down to this, in steps. */
    private static final double LEAST_SCALE = 0.5;

    private static final double SCALE_STEP = 0.05;

    /** Lettering this high is as good as any larger, mm. */
    private static final double READABLE_MM = 1.4;

    /** Checks the ranges and copies the list. */
    public CopyingCard {
        Checks.withinMm("back", backMm, 2, 200);
        holes = List.copyOf(holes);
        Checks.withinMm("sheet thickness", sheetMm, 0.2, 25);
    }

    /**
     * How a maker's copying templates become cards.
     *
     * @param settings the maker's
     * @param units unit of the lettering
     * @return what makes the cards
     */
    public static CopyingCard of(TemplateSettings settings, Units units) {
        TemplateSettings.Copying copying = settings.copying();
        return new CopyingCard(
                copying.sides() == TemplateSettings.Copying.Sides.BOTH,
                copying.backMm(),
                copying.holes().stream().map(MountingHole::of).toList(),
                settings.sheet().thicknessMm(),
                units);
    }

    /**
     * The card of a template.
     *
     * @param template the template
     * @return the card to cut, with the template's findings and its own
     */
    public Card card(CopyingTemplate template) {
        Workpiece work = template.work();
        List<TemplateFinding> findings = new ArrayList<>(template.findings());
        ProfileEdge edge = held(template, findings);
        double left = edge.startX() - tail(MountingHole.End.SHOULDER, template.runOnMm());
        double right = edge.endX() + tail(MountingHole.End.SEAT, template.runOffMm());
        List<Stroke> top = edge.strokes();
        CardEdge card;
        if (full) {
            card = CardEdge.from(left, -edge.yAfter(edge.startX()));
            card.along(top.stream().map(Stroke::mirrored).toList());
            card.to(right, -edge.yBefore(edge.endX()));
        } else {
            card = CardEdge.from(left, -backMm).to(right, -backMm);
        }
        card.to(right, edge.yBefore(edge.endX()));
        List<Stroke> back = new ArrayList<>();
        for (int i = top.size() - 1; i >= 0; i--) {
            back.add(top.get(i).reversed());
        }
        card.along(back).to(left, edge.yAfter(edge.startX()));
        Loop outline = ShortStrokes.joined(card.closed());
        List<Loop> openings = new ArrayList<>();
        for (MountingHole hole : holes) {
            openings.add(opening(work, outline, hole, findings));
        }
        return new Card(
                work.name() + ", copying template",
                outline,
                openings,
                marks(template, edge, left, right, findings),
                findings,
                work.stopped());
    }

    /** The edge, raised where it would meet the back, which is then said. */
    private ProfileEdge held(CopyingTemplate template, List<TemplateFinding> findings) {
        ProfileEdge edge = template.edge();
        double floor = full ? 0 : -backMm;
        double least = edge.leastY() - floor;
        if (least >= LEAST_MM) {
            return edge;
        }
        double x = edge.lowestX();
        findings.add(
                new TemplateFinding(
                        TemplateFinding.Kind.TEMPLATE_IN_PARTS,
                        Gravity.STOP,
                        template.work().name(),
                        x,
                        x,
                        x,
                        LEAST_MM - least,
                        Math.max(0, least),
                        LEAST_MM));
        return edge.notBelow(floor + LEAST_MM);
    }

    /** How far the card goes on past a run, so that holes out there have card round them. */
    private double tail(MountingHole.End end, double runMm) {
        double tail = 0;
        for (MountingHole hole : holes) {
            if (hole.end() == end) {
                double beyond = hole.beyondMm() + hole.diameterMm() / 2 + BEYOND_HOLE_MM;
                tail = Math.max(tail, beyond - runMm);
            }
        }
        return tail;
    }

    private static Loop opening(
            Workpiece work, Loop outline, MountingHole hole, List<TemplateFinding> findings) {
        Spot centre = hole.centre(work.seatX());
        double beside = outline.distance(centre) - hole.diameterMm() / 2;
        boolean inside = Flattened.covers(outline, centre);
        if (!inside || beside < BESIDE_HOLE_MM) {
            findings.add(
                    new TemplateFinding(
                            TemplateFinding.Kind.HOLE_OUTSIDE_CARD,
                            Gravity.WARN,
                            work.name(),
                            centre.x(),
                            centre.x(),
                            centre.x(),
                            0,
                            inside ? Math.max(0, beside) : 0,
                            BESIDE_HOLE_MM));
        }
        return Loop.circle(centre, hole.diameterMm());
    }

    private List<Mark> marks(
            CopyingTemplate template,
            ProfileEdge edge,
            double left,
            double right,
            List<TemplateFinding> findings) {
        Workpiece work = template.work();
        List<Mark> marks = new ArrayList<>();
        axis(marks, edge, work.seatX(), left, right);
        endLine(marks, edge, 0, "SHOULDER");
        endLine(marks, edge, work.seatX(), "SEAT");
        for (TemplateFinding finding : findings) {
            if (finding.kind() == TemplateFinding.Kind.TOO_STEEP_TO_COPY) {
                byHand(marks, edge, finding);
            }
        }
        titles(marks, template, edge);
        return marks;
    }

    /** Under the axis; on a full card, which is narrow at its waist, on either side of it. */
    private void titles(List<Mark> marks, CopyingTemplate template, ProfileEdge edge) {
        Workpiece work = template.work();
        String what = "COPYING TEMPLATE, POSITIVE \u00b7 " + tools(template.copier());
        String end = "\u2190 FERRULE END \u00b7 tenon and ticked places by hand";
        if (!full) {
            new TitleBlock(work.name())
                    .line(what)
                    .line(size(work))
                    .line(end)
                    .fitted(backMm - MARGIN_MM - AXIS_CLEAR_MM)
                    .draw(marks, MARGIN_MM, -backMm + MARGIN_MM, work.seatX() - 2 * MARGIN_MM);
            return;
        }
        ProfileEdge between = edge.part(0, work.seatX());
        Halves open =
                Halves.on(
                        between,
                        new TitleBlock(work.name()).line(what),
                        new TitleBlock("").line(size(work)).line(end));
        Halves close =
                Halves.on(
                        between,
                        new TitleBlock("").line(work.name() + " \u00b7 " + what),
                        new TitleBlock("").line(end + " \u00b7 " + size(work)));
        (open.lineMm >= Math.min(READABLE_MM, close.lineMm) ? open : close).draw(marks);
    }

    /**
     * Text on both sides of a full card's axis.
     *
     * @param upper text above the axis
     * @param lower text below it
     * @param scale share of its full size
     * @param fromX where it starts, mm
     * @param roomMm how long it may be, mm
     * @param lineMm height of the letters that comes of it, mm
     */
    private record Halves(
            TitleBlock upper,
            TitleBlock lower,
            double scale,
            double fromX,
            double roomMm,
            double lineMm) {
        /** The largest lettering for which some stretch of the card is high and long enough. */
        static Halves on(ProfileEdge edge, TitleBlock upper, TitleBlock lower) {
            double whole = Math.max(upper.heightMm(), lower.heightMm());
            double width = Math.max(upper.widthMm(), lower.widthMm());
            Halves best = new Halves(upper, lower, LEAST_SCALE, 0, edge.endX(), 0);
            for (double scale = 1; scale >= LEAST_SCALE; scale -= SCALE_STEP) {
                double[] high = highStretch(edge, whole * scale + 2 * AXIS_CLEAR_MM);
                double room = high[1] - high[0];
                double lineMm = TitleBlock.LINE_MM * Math.min(scale, room / width);
                if (lineMm > best.lineMm) {
                    best = new Halves(upper, lower, scale, high[0], room, lineMm);
                }
            }
            return best;
        }

        void draw(List<Mark> marks) {
            double whole = Math.max(upper.heightMm(), lower.heightMm());
            upper.fitted(whole * scale).draw(marks, fromX, AXIS_CLEAR_MM, roomMm);
            lower.fitted(whole * scale);
            lower.draw(marks, fromX, -AXIS_CLEAR_MM - lower.heightMm(), roomMm);
        }
    }

    /** The longest stretch where an edge is nowhere lower than a height; empty where none is. */
    private static double[] highStretch(ProfileEdge edge, double y) {
        double[] longest = {0, 0};
        double from = edge.startX() + MARGIN_MM;
        for (double x = from; x <= edge.endX() - MARGIN_MM; x += 1) {
            if (Math.min(edge.yBefore(x), edge.yAfter(x)) < y) {
                from = x + 1;
            } else if (x - from > longest[1] - longest[0]) {
                longest = new double[] {from, x};
            }
        }
        return longest;
    }

    /**
     * The axis, where the card holds it: a run may fall below it. On a full card it is broken where
     * the end lines are named, so that their names can be read.
     */
    private void axis(List<Mark> marks, ProfileEdge edge, double seatX, double left, double right) {
        if (edge.part(0, seatX).leastY() > AXIS_CLEAR_MM) {
            marks.add(ScoreLine.between(0, 0, seatX, 0));
        }
        if (edge.part(edge.startX(), 0).leastY() > AXIS_CLEAR_MM) {
            marks.add(ScoreLine.between(left, 0, full ? left + AXIS_END_MM : 0, 0));
        }
        if (edge.part(seatX, edge.endX()).leastY() > AXIS_CLEAR_MM) {
            marks.add(ScoreLine.between(full ? right - AXIS_END_MM : seatX, 0, right, 0));
        }
    }

    /** A line across the card where the work begins or ends; its run belongs to the waste. */
    private void endLine(List<Mark> marks, ProfileEdge edge, double x, String text) {
        double y = Math.min(edge.yBefore(x), edge.yAfter(x));
        marks.add(ScoreLine.between(x, full ? -y : -backMm, x, y));
        double foot = x + (x == 0 ? -1 : LABEL_MM + 1);
        // The side of the text away from the line, where a run may have fallen.
        double far = x == 0 ? foot - LABEL_MM : foot;
        marks.add(
                full
                        ? Lettering.upright(foot, 0, LABEL_MM, Lettering.Align.MIDDLE, text)
                                .within(2 * (Math.min(y, edge.yAfter(far)) - 1))
                        : Lettering.upright(
                                        foot, -AXIS_CLEAR_MM, LABEL_MM, Lettering.Align.END, text)
                                .within(backMm - 2 * AXIS_CLEAR_MM));
    }

    /** A tick at the steep end of a place that is left to the hand. */
    private static void byHand(List<Mark> marks, ProfileEdge edge, TemplateFinding finding) {
        double x = Math.max(edge.startX(), Math.min(edge.endX(), finding.atX()));
        double y = Math.min(edge.yBefore(x), edge.yAfter(x));
        marks.add(ScoreLine.between(x, y - TICK_MM, x, y));
    }

    private String tools(Copier copier) {
        String text =
                "nose R "
                        + length(copier.noseMm(), 2)
                        + " \u00b7 follower R "
                        + length(copier.followerMm(), 2);
        return copier.radialRatio() == 1
                ? text
                : text + " \u00b7 ratio " + NumberText.upTo(copier.radialRatio(), 2) + ":1";
    }

    private String size(Workpiece work) {
        String batch = work.batch().isEmpty() ? "" : " \u00b7 batch " + work.batch();
        return "shoulder to seat "
                + length(work.seatX(), 1)
                + " "
                + units.symbol()
                + " \u00b7 \u2300"
                + length(work.greatestDiameterMm(), 1)
                + " at most \u00b7 sheet "
                + length(sheetMm, 2)
                + " "
                + units.symbol()
                + batch;
    }

    private String length(double mm, int decimals) {
        return new LengthText(units).dimension(mm, decimals);
    }
}
