package haftline.drawing;

import haftline.curve.Outline;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.template.CopyingTemplate;
import haftline.template.ProfileEdge;
import haftline.template.Spot;
import haftline.template.Stroke;
import haftline.template.TemplateFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What copying really does, four times full size, to be looked at and never cut: the work as
 * designed (wide line), the template's edge (long dash and two dots), the surface that is left
 * (dashed), the losses hatched and numbered, nose and follower at the widest place.
 */
public final class CopyingDrawing {
    /** Losses are tenths of a millimetre: at full size a line would hide them. */
    private static final double SCALE = 4;

    private static final double TEXT_MM = 3.5;
    private static final double LINE_MM = 6;
    private static final double LEADER_MM = 7;
    private static final int LEADER_ROWS = 3;
    private static final double AXIS_OVER_MM = 3;
    private static final Hatching LOSS = new Hatching(45, 0.8);

    /** A loss is hatched by its outline on so many places. */
    private static final int LOSS_PLACES = 60;

    private CopyingDrawing() {}

    /**
     * The picture of a template.
     *
     * @param template the template
     * @param units unit of the figures in the findings
     * @return the scene
     */
    public static Drawing of(CopyingTemplate template, Units units) {
        ProfileEdge edge = template.edge();
        double seatX = template.work().seatX();
        List<Group> groups = new ArrayList<>();
        groups.add(
                new Group(
                        "axis",
                        List.of(
                                line(
                                        Layer.CENTRE,
                                        edge.startX() - AXIS_OVER_MM,
                                        0,
                                        edge.endX() + AXIS_OVER_MM,
                                        0),
                                line(Layer.DIMENSION, 0, 0, 0, template.section().yAfter(0)),
                                line(
                                        Layer.DIMENSION,
                                        seatX,
                                        0,
                                        seatX,
                                        template.section().yBefore(seatX)))));
        groups.add(group("the template's edge", Layer.PART, edge));
        groups.add(group("the work as designed", Layer.OUTLINE, template.section().part(0, seatX)));
        groups.add(group("the surface that is left", Layer.HIDDEN, template.left()));
        groups.add(tools(template));
        groups.addAll(losses(template, units));
        return new Drawing(
                template.work().name() + ", copying",
                "Four times full size. Not to be cut.",
                groups);
    }

    private static Vertex vertex(double x, double y) {
        return new Vertex(SCALE * x, SCALE * y);
    }

    private static Path line(Layer layer, double x0, double y0, double x1, double y1) {
        return Path.line(layer, vertex(x0, y0), vertex(x1, y1));
    }

    private static Group group(String name, Layer layer, ProfileEdge edge) {
        List<Stroke> strokes =
                edge.strokes().stream()
                        .map(s -> new Stroke(large(s.start()), large(s.end()), s.bulge()))
                        .toList();
        return new Group(name, List.of(CardDrawing.open(layer, strokes)));
    }

    private static Spot large(Spot spot) {
        return new Spot(SCALE * spot.x(), SCALE * spot.y());
    }

    /** Nose and follower touching work and template at the widest place. */
    private static Group tools(CopyingTemplate template) {
        Outline body = template.work().body();
        double x = body.greatest().x();
        double y = body.greatest().r();
        double nose = template.copier().noseMm();
        double follower = template.copier().followerMm();
        double onTemplate = Math.max(template.edge().yBefore(x), template.edge().yAfter(x));
        List<Element> elements = new ArrayList<>();
        if (nose > 0) {
            elements.add(new Circle(Layer.DIMENSION, vertex(x, y + nose), SCALE * nose));
        }
        if (follower > 0) {
            elements.add(
                    new Circle(
                            Layer.DIMENSION, vertex(x, onTemplate + follower), SCALE * follower));
        }
        Vertex top = vertex(x, Math.max(y + 2 * nose, onTemplate + 2 * follower));
        elements.add(
                Text.level(
                        Layer.DIMENSION,
                        top.xMm(),
                        top.yMm() + TEXT_MM,
                        TEXT_MM,
                        Anchor.MIDDLE,
                        "nose R"
                                + NumberText.upTo(nose, 2)
                                + ", follower R"
                                + NumberText.upTo(follower, 2)
                                + ", drawn 4:1"));
        return new Group("cutter and follower", elements);
    }

    private static List<Group> losses(CopyingTemplate template, Units units) {
        List<Group> groups = new ArrayList<>();
        Outline body = template.work().body();
        double y = -LINE_MM - TEXT_MM;
        int number = 0;
        for (TemplateFinding finding : template.findings()) {
            List<Element> elements = new ArrayList<>();
            elements.addAll(hatched(template, finding));
            double x = Math.max(body.startX(), Math.min(body.endX(), finding.atX()));
            Vertex at = vertex(x, Math.min(body.rBefore(x), body.rAfter(x)));
            // Neighbours take turns, so that their numbers stay apart.
            double length = LEADER_MM * (1 + number % LEADER_ROWS);
            Vertex foot = new Vertex(at.xMm(), at.yMm() - Math.min(length, at.yMm() / 2 + 1));
            number++;
            elements.add(Path.line(Layer.DIMENSION, foot, at));
            elements.add(
                    Text.level(
                            Layer.DIMENSION,
                            foot.xMm() + 1,
                            foot.yMm(),
                            TEXT_MM,
                            Anchor.START,
                            Integer.toString(number)));
            elements.add(
                    Text.level(
                            Layer.TEXT,
                            SCALE * template.edge().startX(),
                            y,
                            TEXT_MM,
                            Anchor.START,
                            number
                                    + "  "
                                    + finding.gravity().name().toLowerCase(Locale.ROOT)
                                    + ": "
                                    + finding.brief(units)));
            y -= LINE_MM;
            groups.add(new Group("finding " + number, elements));
        }
        return groups;
    }

    /** The area between design and surface left over a stretch. */
    private static List<Element> hatched(CopyingTemplate template, TemplateFinding finding) {
        Outline body = template.work().body();
        double from = Math.max(body.startX(), finding.fromX());
        double to = Math.min(body.endX(), finding.toX());
        if (!(to > from)) {
            return List.of();
        }
        PathBuilder path = null;
        for (int i = 0; i <= LOSS_PLACES; i++) {
            double x = from + (to - from) * i / LOSS_PLACES;
            Vertex before = vertex(x, body.rBefore(x));
            Vertex after = vertex(x, body.rAfter(x));
            path = path == null ? Path.from(before.xMm(), before.yMm()) : path;
            path.lineTo(before.xMm(), before.yMm()).lineTo(after.xMm(), after.yMm());
        }
        for (int i = LOSS_PLACES; i >= 0; i--) {
            double x = from + (to - from) * i / LOSS_PLACES;
            Vertex left = vertex(x, template.left().yAfter(x));
            path.lineTo(left.xMm(), left.yMm());
        }
        return LOSS.over(List.of(path.close(Layer.HATCH)));
    }
}
