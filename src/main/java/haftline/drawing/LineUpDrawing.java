package haftline.drawing;

import haftline.figures.Figures;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.set.Family;
import haftline.set.FileSettings.Paper;
import haftline.set.LineUp;
import haftline.set.Trait;
import java.util.ArrayList;
import java.util.List;

/**
 * The pieces of a set one under another at one scale, shoulders in line, with lines from swell to
 * swell and from butt to butt and what differs beside each.
 *
 * <p>At full size where that fits on A3 or A4, else at the first standard reduction that does (ISO
 * 5455, from memory): the eye compares what lies on one sheet. More pieces than a sheet holds go on
 * further sheets at the same scale.
 */
public final class LineUpDrawing {
    /** ISO 5455: full size and the reductions. */
    private static final double[] REDUCTIONS = {1, 2, 5, 10, 20, 50};

    private static final double PAD_MM = LineUpFrame.PAD_MM;
    private static final double NAME_MM = 3.5;
    private static final double NAME_STEP_MM = 5.2;
    private static final double TEXT_MM = 2.5;
    private static final double LINE_MM = 4.4;

    /**
     * Width of what is written beside a piece, mm; where that brings the pieces to a larger scale
     * or a smaller paper, narrower and smaller alike.
     */
    private static final double[] WORDS_MM = {62, 50};

    /** A long name takes so many lines. */
    private static final int MOST_NAME_LINES = 2;

    /** Between two pieces, mm. */
    private static final double GAP_MM = 6;

    /** Over the pieces, for the names of the lines, mm. */
    private static final double HEAD_MM = 10;

    /** How far the lines run past the pieces, mm. */
    private static final double OVER_MM = 3;

    /** Names of lines that stand nearer than this would run into one another, mm. */
    private static final double NAMES_APART_MM = 12;

    private final String set;
    private final String batch;
    private final Family family;
    private final SheetFormat format;
    private final LengthText lengths;
    private final LineUp lineUp;
    private final List<PieceView> views;
    private double scale;
    private SheetFormat.Frame frame;
    private double wordsMm = WORDS_MM[0];

    private LineUpDrawing(String set, String batch, Family family, SheetFormat format) {
        this.set = set;
        this.batch = batch;
        this.family = family;
        this.format = format;
        this.lengths = format.lengths();
        this.lineUp = LineUp.of(family);
        this.views =
                family.members().stream()
                        .map(Family.Member::figures)
                        .map(Figures::handle)
                        .map(PieceView::new)
                        .toList();
        fit();
    }

    /**
     * Sheets of a line-up.
     *
     * @param drawings as many as the pieces want, all at one scale and of one size
     * @param paper what a sheet wants
     * @param reduction how many times the pieces are larger than they are drawn; 1 at full size
     */
    public record Sheets(List<Drawing> drawings, Paper paper, double reduction) {
        /** Copies the list. */
        public Sheets {
            drawings = List.copyOf(drawings);
        }
    }

    /**
     * The line-up of a set.
     *
     * @param set name of the set
     * @param batch the measured batch of its parts
     * @param family the pieces that can be drawn
     * @param stopped names of the pieces that cannot be made so, which is then written beside them
     * @param format paper, and unit of what is written beside the pieces
     * @return the sheets; none where no piece can be drawn
     */
    public static Sheets of(
            String set, String batch, Family family, List<String> stopped, SheetFormat format) {
        if (family.members().isEmpty()) {
            return new Sheets(List.of(), format.paper(), 1);
        }
        LineUpDrawing lineUp = new LineUpDrawing(set, batch, family, format);
        return new Sheets(lineUp.sheets(stopped), lineUp.frame.paper(), 1 / lineUp.scale);
    }

    private void fit() {
        for (double reduction : REDUCTIONS) {
            for (SheetFormat.Frame size : format.frames()) {
                for (double words : WORDS_MM) {
                    scale = 1 / reduction;
                    frame = size;
                    wordsMm = words;
                    if (widthMm() <= size.widthMm() && heightMm() <= size.heightMm()) {
                        return;
                    }
                }
            }
        }
        // Too many for one sheet: as large as the longest and the thickest allow.
        wordsMm = WORDS_MM[0];
        frame = format.frames().get(format.frames().size() - 1);
        for (double reduction : REDUCTIONS) {
            scale = 1 / reduction;
            double highest = views.stream().mapToDouble(this::rowMm).max().orElse(0);
            if (widthMm() <= frame.widthMm()
                    && HEAD_MM + highest + LineUpFrame.FOOT_MM <= frame.heightMm()) {
                return;
            }
        }
    }

    private double widthMm() {
        return scale * (endX() - frontX()) + wordsMm + 3 * PAD_MM;
    }

    private double frontX() {
        return views.stream().mapToDouble(PieceView::frontX).min().orElse(0);
    }

    private double endX() {
        return views.stream().mapToDouble(PieceView::endX).max().orElse(0);
    }

    private double heightMm() {
        return HEAD_MM + LineUpFrame.FOOT_MM + views.stream().mapToDouble(this::rowMm).sum();
    }

    private double rowMm(PieceView view) {
        double words = LINE_MM * (MOST_NAME_LINES + 5);
        return Math.max(words, 2 * scale * view.halfHeightMm()) + GAP_MM;
    }

    private List<Drawing> sheets(List<String> stopped) {
        List<List<Integer>> pages = pages();
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String sheet = pages.size() == 1 ? "" : ", sheet " + (i + 1) + " of " + pages.size();
            drawings.add(sheet(set + ", line-up" + sheet, pages.get(i), stopped));
        }
        return drawings;
    }

    private List<List<Integer>> pages() {
        List<List<Integer>> pages = new ArrayList<>();
        double room = 0;
        for (int i = 0; i < views.size(); i++) {
            double row = rowMm(views.get(i));
            if (pages.isEmpty() || row > room) {
                pages.add(new ArrayList<>());
                room = frame.heightMm() - HEAD_MM - LineUpFrame.FOOT_MM;
            }
            pages.get(pages.size() - 1).add(i);
            room -= row;
        }
        return pages;
    }

    /** The frame's lower left corner is the origin. */
    private Drawing sheet(String title, List<Integer> pieces, List<String> stopped) {
        double rows = pieces.stream().mapToDouble(i -> rowMm(views.get(i))).sum();
        double spare = frame.heightMm() - HEAD_MM - LineUpFrame.FOOT_MM - rows;
        double apart = spare / pieces.size();
        double left = (frame.widthMm() - widthMm()) / 2 + PAD_MM;
        double shoulder = left - scale * frontX();
        double words = left + scale * (endX() - frontX()) + PAD_MM;
        List<Group> groups = new ArrayList<>();
        List<Placement> places = new ArrayList<>();
        double y = frame.heightMm() - HEAD_MM;
        for (int i : pieces) {
            double row = rowMm(views.get(i)) + apart;
            Placement place = new Placement(shoulder, y - row / 2, scale);
            places.add(place);
            String name = family.members().get(i).piece().name();
            List<Element> elements = new ArrayList<>();
            views.get(i).paths().forEach(path -> elements.add(place.of(path)));
            elements.add(axis(place, views.get(i)));
            words(elements, family.members().get(i), words, place.yMm(), stopped.contains(name));
            groups.add(new Group(name, elements));
            y -= row;
        }
        groups.add(new Group("lines", lines(pieces, places)));
        groups.add(new Group("sheet", new LineUpFrame(format, frame, scale, batch).of(title)));
        return new Drawing(
                title,
                "Pieces of a set at one scale, shoulders in line, lengths in "
                        + format.units().words()
                        + ".",
                groups);
    }

    private Element axis(Placement place, PieceView view) {
        return Path.line(
                Layer.CENTRE,
                new Vertex(place.x(view.frontX()) - OVER_MM, place.yMm()),
                new Vertex(place.x(view.endX()) + OVER_MM, place.yMm()));
    }

    /** The line of the shoulders, straight, and those of swells and butts, piece by piece. */
    private List<Element> lines(List<Integer> pieces, List<Placement> places) {
        List<Element> out = new ArrayList<>();
        double top = frame.heightMm() - HEAD_MM + OVER_MM;
        double foot = LineUpFrame.FOOT_MM + OVER_MM;
        double shoulder = places.get(0).xMm();
        out.add(Path.line(Layer.CENTRE, new Vertex(shoulder, top), new Vertex(shoulder, foot)));
        double[] swells = new double[pieces.size()];
        double[] butts = new double[pieces.size()];
        for (int i = 0; i < swells.length; i++) {
            LineUp.Places piece = lineUp.places().get(pieces.get(i));
            swells[i] = places.get(i).x(piece.swellX());
            butts[i] = places.get(i).x(piece.buttX());
        }
        out.add(chain(swells, pieces, places, top, foot));
        out.add(chain(butts, pieces, places, top, foot));
        double y = top + 1.5;
        name(out, shoulder, y, "shoulder");
        if (swells[0] - shoulder >= NAMES_APART_MM) {
            name(out, swells[0], y, "swell");
        }
        if (butts[0] - swells[0] >= NAMES_APART_MM) {
            name(out, butts[0], y, "butt");
        }
        return out;
    }

    private static void name(List<Element> out, double x, double y, String name) {
        out.add(Text.level(Layer.TEXT, x, y, TEXT_MM, Anchor.MIDDLE, name));
    }

    private Path chain(
            double[] x, List<Integer> pieces, List<Placement> places, double top, double foot) {
        PathBuilder path = Path.from(x[0], top);
        for (int i = 0; i < x.length; i++) {
            double half = scale * views.get(pieces.get(i)).halfHeightMm();
            double y = places.get(i).yMm();
            path.lineTo(x[i], y + half).lineTo(x[i], y - half);
        }
        return path.lineTo(x[x.length - 1], foot).open(Layer.HIDDEN);
    }

    private void words(
            List<Element> out, Family.Member member, double x, double middle, boolean stopped) {
        String name = member.piece().name();
        List<String> lines = new ArrayList<>();
        if (stopped) {
            lines.add(TitleBlock.MARK);
        }
        LineUp.Places place = lineUp.places().get(family.members().indexOf(member));
        lines.add(
                "swell "
                        + Dimension.DIAMETER
                        + figure(place.swellMm())
                        + beside(Trait.SWELL_DIAMETER, name));
        lines.add(
                "at "
                        + NumberText.fixed(place.swellX() / place.buttX(), 2)
                        + " of the visible wood");
        lines.add(trait(member, "waist " + Dimension.DIAMETER, Trait.WAIST_DIAMETER));
        lines.add(trait(member, "butt " + Dimension.DIAMETER, Trait.BUTT_DIAMETER));
        lines.add(trait(member, "long ", Trait.LENGTH));
        List<String> head = nameLines(name, frame.widthMm() - x - PAD_MM);
        double y = middle + LINE_MM * (lines.size() + head.size() - 1) / 2 - LINE_MM / 2;
        for (String line : head) {
            out.add(Text.level(Layer.TEXT, x, y, NAME_MM, Anchor.START, line));
            y -= NAME_STEP_MM;
        }
        y += NAME_STEP_MM;
        double small = TEXT_MM * wordsMm / WORDS_MM[0];
        for (String line : lines) {
            y -= LINE_MM;
            String text = Text.shortened(line, wordsMm, small);
            out.add(Text.level(Layer.TEXT, x, y, small, Anchor.START, text));
        }
    }

    /** A name in as many lines as it may take, broken at a blank where there is one. */
    private static List<String> nameLines(String name, double roomMm) {
        if (Text.shortened(name, roomMm, NAME_MM).equals(name)) {
            return List.of(name);
        }
        String first = Text.shortened(name, roomMm, NAME_MM);
        int blank = first.lastIndexOf(' ');
        int end = blank > 0 ? blank : first.length() - 1;
        String rest = name.substring(end).strip();
        return List.of(name.substring(0, end), Text.shortened(rest, roomMm, NAME_MM));
    }

    private String trait(Family.Member member, String head, Trait trait) {
        double value = trait.of(member.figures());
        return Double.isNaN(value)
                ? head + "none"
                : head + figure(value) + beside(trait, member.piece().name());
    }

    /** What the eye sees beside the others: {@code (+6.0, +27 %)}. */
    private String beside(Trait trait, String piece) {
        return family.row(trait)
                .flatMap(row -> row.entry(piece))
                .filter(entry -> entry.likeness() != Family.Likeness.ALIKE)
                .map(
                        entry ->
                                "  ("
                                        + (entry.difference() < 0 ? "−" : "+")
                                        + figure(Math.abs(entry.difference()))
                                        + ", "
                                        + (entry.percent() < 0 ? "−" : "+")
                                        + NumberText.fixed(Math.abs(entry.percent()), 0)
                                        + " %)")
                .orElse("");
    }

    private String figure(double mm) {
        return lengths.contour(mm);
    }
}
