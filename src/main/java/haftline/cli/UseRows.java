package haftline.cli;

import haftline.figures.AdhesiveNeed;
import haftline.figures.Figures;
import haftline.figures.Grip;
import haftline.figures.PullOut;
import haftline.figures.Rest;
import haftline.figures.Seasons;
import haftline.figures.Share;
import haftline.figures.Speeds;
import haftline.figures.SplitIndex;
import haftline.handle.Rules;
import haftline.handle.Use;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.set.Rates;
import haftline.stock.HandSize;
import haftline.stock.Stock;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The rows of a piece's page that say how it behaves: in the hand, in a year, on the lathe. */
final class UseRows {
    /** mm³ in a millilitre. */
    private static final double ML = 1000;

    private final Paper paper;
    private final LengthText lengths;

    private UseRows(Paper paper, LengthText lengths) {
        this.paper = paper;
        this.lengths = lengths;
    }

    static void write(Paper paper, LengthText lengths, Figures figures, Guidance guidance) {
        UseRows rows = new UseRows(paper, lengths);
        rows.mass(figures);
        rows.adhesive(figures, guidance.mixedMorePercent());
        figures.splitIndex().ifPresent(rows::split);
        PullOut.of(figures).ifPresent(rows::pullOut);
        figures.seasons().ifPresent(rows::seasons);
        rows.grip(figures.grip());
        rows.hands(figures.grip(), guidance.breadths());
        rows.rest(figures.rest());
        guidance.speeds().ifPresent(rows::speeds);
    }

    private static String estimated(Share share) {
        if (share.massEstimated()) {
            return " (estimated)";
        }
        return share.placeEstimated() ? " (where it balances estimated)" : "";
    }

    private void mass(Figures figures) {
        // A tang with a share of its own, reckoned or weighed, is not in the blade's.
        boolean withTang =
                figures.balance().shares().stream()
                        .noneMatch(share -> share.part() == Share.Part.TANG);
        List<String> shares = new ArrayList<>();
        for (Share share : figures.balance().shares()) {
            shares.add(
                    part(share.part(), withTang, figures.handle().brief().stock())
                            + " "
                            + NumberText.fixed(share.massG(), 1)
                            + estimated(share));
        }
        paper.row(
                "Mass",
                "together",
                NumberText.fixed(figures.balance().totalG(), 1),
                "g",
                String.join(", ", shares));
        double x = figures.balance().fromFerruleFaceMm();
        Rules.Balance target = figures.handle().brief().rules().balance();
        figure(
                "Balance",
                x < 0 ? "in front of" : "behind",
                lengths.contour(Math.abs(x)),
                "",
                "the ferrule's front; target "
                        + lengths.contour(target.lowMm())
                        + " to "
                        + lengths.contour(target.highMm())
                        + " behind");
    }

    private static String part(Share.Part part, boolean withTang, Stock stock) {
        if (part == Share.Part.BLADE && withTang) {
            return "blade and tang";
        }
        return part == Share.Part.WOOD && !(stock instanceof Wood)
                ? "plastic"
                : part.name().toLowerCase(Locale.ROOT);
    }

    private void adhesive(Figures figures, double mixedMorePercent) {
        AdhesiveNeed need = figures.adhesive();
        String remark =
                figures.handle().brief().adhesive().name()
                        + "; mix "
                        + Rates.AdhesivePrice.inWords(mixedMorePercent);
        if (need.tangMm3() > 0) {
            millilitres("tang", need.tangMm3(), remark);
        }
        if (need.capMm3() > 0) {
            millilitres("cap", need.capMm3(), remark);
        }
    }

    private void millilitres(String label, double mm3, String remark) {
        // Rounded up: a drop too much is wiped off, a drop too little is a hollow.
        double ml = Math.ceil(mm3 / ML * 100 - 1e-9) / 100;
        paper.row("Adhesive", label, NumberText.fixed(ml, 2), "ml", remark);
    }

    private void split(SplitIndex split) {
        paper.row(
                "Split",
                "index",
                NumberText.fixed(split.index(), 1),
                "",
                "a screening figure"
                        + (split.estimated() ? " from estimated strengths" : "")
                        + "; cherry with a 6 mm tang and 3 mm of wall is 1.0");
    }

    private void pullOut(PullOut pullOut) {
        paper.row(
                "Pull-out",
                "force",
                NumberText.fixed(Math.floor(pullOut.forceN() / 100) / 10, 1),
                "kN",
                "a screening figure, no strength: " + pullOut.model());
    }

    private void seasons(Seasons seasons) {
        figure(
                "Seasons",
                "tenon shrinks",
                lengths.difference(seasons.tenonShrinkMm()),
                "",
                "in a dry winter, "
                        + percent(seasons.shopPercent())
                        + " moisture down to "
                        + percent(seasons.dryPercent())
                        + (seasons.reliable() ? "" : ", a rough figure so far out"));
        figure(
                "Seasons",
                "swell grows",
                lengths.difference(seasons.swellGrowthMm()),
                "",
                "in a damp kitchen, at " + percent(seasons.dampPercent()));
    }

    private static String percent(double value) {
        return NumberText.fixed(value, 0) + Paper.JOINED + "%";
    }

    private void grip(Grip grip) {
        figure(
                "Grip",
                "greatest",
                lengths.contour(grip.greatestMm()),
                "",
                usual(grip.diameterLowMm(), grip.diameterHighMm()) + " " + use(grip));
        figure(
                "Grip",
                "to hold",
                lengths.contour(grip.lengthMm()),
                "",
                usual(grip.lengthLowMm(), grip.lengthHighMm()));
    }

    /** Only a handle for the whole hand must be as long as that hand is broad. */
    private void hands(Grip grip, List<HandSize> breadths) {
        if (grip.use() == Use.POWER && !breadths.isEmpty()) {
            String shares =
                    breadths.stream()
                            .map(
                                    size ->
                                            NumberText.fixed(100 * grip.shareOfHands(size), 0)
                                                    + Paper.JOINED
                                                    + "% of "
                                                    + size.people())
                            .collect(Collectors.joining(", "));
            paper.row(
                    "Grip",
                    "palm",
                    "lies on it whole: " + shares + " (" + breadths.get(0).source().title() + ")");
        }
    }

    private String usual(double low, double high) {
        return lengths.contour(low) + " to " + lengths.contour(high) + " is usual";
    }

    private static String use(Grip grip) {
        return switch (grip.use()) {
            case POWER -> "in the whole hand";
            case THREE_FINGERS -> "by three fingers";
            case FINGERTIPS -> "by the finger tips";
        };
    }

    private void rest(Rest rest) {
        Set<String> touches = new LinkedHashSet<>();
        for (Rest.Touch touch : rest.touches()) {
            touches.add(
                    switch (touch.part()) {
                        case BLADE -> "the blade's edge";
                        case FERRULE -> "the ferrule";
                        case CAP -> "the cap";
                        case WOOD ->
                                "the wood " + lengths.contour(touch.x()) + " from the shoulder";
                    });
        }
        if (!touches.isEmpty()) {
            paper.row(
                    "Table",
                    rest.rolls() ? "it rolls" : "it lies",
                    "on " + String.join(" and ", touches) + (touches.size() == 1 ? " alone" : ""));
        }
    }

    private void speeds(Speeds speeds) {
        speed("roughing", speeds.blank().leastRpm(), speeds.blankMm());
        speed("finishing", speeds.finished().leastRpm(), speeds.finishedMm());
    }

    /**
     * The slower end of the rule of thumb is the ceiling that is named: a page at the lathe must
     * not tempt.
     */
    private void speed(String label, double most, double acrossMm) {
        paper.row(
                "Lathe",
                label,
                "no faster than "
                        + hundreds(most)
                        + " rpm, "
                        + lengths.contour(acrossMm)
                        + " "
                        + lengths.unit()
                        + " across; start slower");
    }

    private static String hundreds(double rpm) {
        return NumberText.fixed(Math.floor(rpm / 100) * 100, 0);
    }

    private void figure(
            String margin, String label, String number, String fraction, String remark) {
        String unit = lengths.unit() + (fraction.isEmpty() ? "" : " " + fraction);
        paper.row(margin, label, number, unit, remark);
    }
}
