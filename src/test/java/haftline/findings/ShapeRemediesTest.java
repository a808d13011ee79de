package haftline.findings;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.P1;
import haftline.handle.TestBrief;
import haftline.handle.Use;
import haftline.measure.Units;
import haftline.parts.EndCap;
import haftline.shape.Detail;
import haftline.shape.Place;
import haftline.shape.Shape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Shapes written in plain mm that are too slender, too thick, or turn where they must not. */
class ShapeRemediesTest {
    @Test
    void bringsEveryNodeThatIsTooThickDown() {
        Brief brief = new TestBrief().smooth(0.2, 20).smooth(0.5, 29).smooth(0.8, 28).brief();

        assertThat(mended(brief, Code.TOO_THICK))
                .isEqualTo("Make \"node 1\" and \"node 2\" 26.0 mm");
    }

    @Test
    void looksForTheDiameterUnderABead() {
        Brief brief =
                new TestBrief()
                        .smooth(0.4, 26.5)
                        .smooth(0.6, 26.5)
                        .detail(new Detail.Bead(new Place.Share(0.5), 4, 1))
                        .brief();

        // A bead 1 mm high wants 2 mm less under it, or a little more where the curve rises.
        assertThat(mended(brief, Code.TOO_THICK))
                .matches("Make \"node 0\" and \"node 1\" 2[34]\\.\\d mm");
    }

    @Test
    void namesTheMetalThatIsTooThickForItsUse() {
        Brief brief =
                new TestBrief()
                        .ferrule(15, 17, 10)
                        .cap(cap(17.5))
                        .smooth(0.5, 18)
                        .choose(Choices.builder().use(Use.FINGERTIPS))
                        .brief();

        Remedy remedy = remedy(brief, Code.TOO_THICK).orElseThrow();
        assertThat(remedy.choices()).isEmpty();
        assertThat(remedy.text())
                .isEqualTo(
                        "Take a ferrule of 16.0 mm or less outside and a cap of 16.0 mm or less"
                                + " and make \"node 0\" 16.0 mm");
    }

    @Test
    void growsAllNodesWhereOneAloneCannot() {
        Brief brief =
                run(
                        new TestBrief()
                                .ferrule(10, 12, 10)
                                .smooth(0.3, 10)
                                .smooth(0.5, 13)
                                .smooth(0.8, 13)
                                .choose(Choices.builder().buttMm(12)),
                        "node 0",
                        "node 2");

        // The first of the two widest would turn the run if it grew alone.
        assertThat(mended(brief, Code.TOO_SLENDER))
                .isEqualTo("Make \"node 0\" 10.8 mm, \"node 1\" 14.0 mm and \"node 2\" 14.0 mm");
    }

    @Test
    void makesTheButtWiderOfAPlainTaper() {
        Brief brief =
                new TestBrief().choose(Choices.builder().buttMm(12)).ferrule(10, 12, 10).brief();

        assertThat(mended(brief, Code.TOO_SLENDER)).isEqualTo("Make the butt 14.1 mm");
    }

    @Test
    void givesAPlainTaperBetweenFerruleAndCapASwell() {
        Brief brief = new TestBrief().ferrule(10, 12, 10).cap(cap(12)).brief();

        Remedy remedy = remedy(brief, Code.TOO_SLENDER).orElseThrow();
        assertThat(remedy.choices()).isEmpty();
        assertThat(remedy.text()).isEqualTo("Give the shape a swell of 14.1 mm, two thirds back");
    }

    @Test
    void movesTheOneNodeThatMakesARunTurn() {
        Brief brief =
                run(
                        new TestBrief().smooth(0.2, 14).smooth(0.4, 21).smooth(0.7, 20),
                        "node 0",
                        "node 2");

        assertThat(mended(brief, Code.NOT_MONOTONE)).isEqualTo("Make \"node 1\" 19.8 mm");
    }

    @Test
    void movesAFreeNodeAndNotTheFerrule() {
        Brief brief =
                run(
                        new TestBrief().ferrule(11, 13, 10).smooth(0.2, 12),
                        Shape.SHOULDER,
                        Shape.SEAT);

        assertThat(mended(brief, Code.NOT_MONOTONE)).isEqualTo("Make \"node 0\" 13.2 mm");
    }

    /** Three nodes out of order: 18, 16, 15 with even steps of 0.2 have their mean at 16.3. */
    @Test
    void evensOutARunThatOneNodeCannotMend() {
        Brief brief =
                run(
                        new TestBrief()
                                .smooth(0.1, 14)
                                .smooth(0.3, 18)
                                .smooth(0.45, 16)
                                .smooth(0.6, 15)
                                .smooth(0.75, 20),
                        "node 0",
                        "node 4");

        assertThat(mended(brief, Code.NOT_MONOTONE))
                .isEqualTo("Make \"node 1\" 16.1 mm, \"node 2\" 16.3 mm and \"node 3\" 16.5 mm");
    }

    /** Behind a slender ferrule a run that only thins is slender all along: said, not hidden. */
    @Test
    void mendsATurnAtTheCostOfASlenderHandleAndSaysSo() {
        Brief brief =
                run(
                        new TestBrief()
                                .ferrule(11, 13, 10)
                                .smooth(0.3, 16)
                                .choose(Choices.builder().buttMm(12)),
                        Shape.SHOULDER,
                        Shape.SEAT);

        assertThat(remedy(brief, Code.NOT_MONOTONE).orElseThrow().text())
                .startsWith("Make \"node 0\" 12.8 mm; but then greatest diameter 13.0 mm");
    }

    /** A blank is changed sooner than a hand. */
    @Test
    void thickensPastTheBlankAndSaysSo() {
        Brief brief =
                new TestBrief()
                        .ferrule(10, 12, 10)
                        .smooth(0.5, 13)
                        .choose(Choices.builder().buttMm(12).blankSideMm(16.5))
                        .brief();

        assertThat(remedy(brief, Code.TOO_SLENDER).orElseThrow().text())
                .startsWith("Make \"node 0\" 14.1 mm; but then the blank's side is 16.5 mm");
    }

    private static Brief run(TestBrief brief, String from, String to) {
        Brief built = brief.brief();
        return built.withShape(built.shape().withMonotone(List.of(new Shape.Run(from, to))));
    }

    private static EndCap cap(double head) {
        return new EndCap(
                P1.exactly(6),
                P1.exactly(9),
                P1.exactly(head),
                P1.exactly(4),
                EndCap.Form.FLAT,
                "brass",
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Optional<Remedy> remedy(Brief brief, Code code) {
        Figures figures = Figures.of(P1.handle(brief));
        Finding finding =
                Findings.of(figures).stream()
                        .filter(each -> each.code() == code)
                        .findFirst()
                        .orElseThrow();
        return Remedies.of(finding, figures, Units.MM);
    }

    /** The change of a remedy which, carried out, leaves no such finding. */
    private static String mended(Brief brief, Code code) {
        Remedy remedy = remedy(brief, code).orElseThrow();
        Brief changed = brief.withChoices(remedy.choices().orElseThrow());
        assertThat(Findings.of(Figures.of(P1.handle(changed))))
                .as(remedy.text())
                .noneMatch(finding -> finding.code() == code);
        return remedy.change();
    }
}
