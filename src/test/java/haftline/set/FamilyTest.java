package haftline.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.figures.Figures;
import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Gravity;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.measure.Units;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class FamilyTest {
    private static LoadedSet demo() {
        try {
            return SetFile.read(Path.of("profiles/sets/tidewater.yaml"));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static Figures figures(Brief brief) {
        return Figures.of(((Resolution.Resolved) Resolve.of(brief)).handle());
    }

    /** Pieces by the kits of the demo set, each with choices of its own. */
    private static Family family(Map<String, Choices> pieces) {
        return family("spreader", pieces);
    }

    private static Family family(String kit, Map<String, Choices> pieces) {
        LoadedSet loaded = demo();
        List<Family.Member> members = new ArrayList<>();
        pieces.forEach(
                (name, choices) -> {
                    Piece piece =
                            new Piece(
                                    name, "spreader", Optional.empty(), Optional.empty(), choices);
                    members.add(
                            new Family.Member(
                                    piece, figures(loaded.set().brief(piece, loaded.materials()))));
                });
        members.sort((a, b) -> a.piece().name().compareTo(b.piece().name()));
        return Family.of(members);
    }

    private static Family.Entry entry(Family family, Trait trait, String piece) {
        return family.row(trait).orElseThrow().entry(piece).orElseThrow();
    }

    private static Choices swell(double mm) {
        return Choices.builder().swellMm(mm).build();
    }

    @Test
    void onePiece_hasNoFamily() {
        assertThat(family(Map.of("a", Choices.NONE)).rows()).isEmpty();
        assertThat(family(Map.of("a", Choices.NONE)).strays()).isEmpty();
    }

    @Test
    void equalPieces_areAlikeInAll() {
        Family family = family(Map.of("a", Choices.NONE, "b", Choices.NONE, "c", Choices.NONE));
        assertThat(family.rows()).hasSize(Trait.values().length);
        assertThat(family.rows())
                .allSatisfy(
                        row ->
                                assertThat(row.entries())
                                        .allMatch(e -> e.likeness() == Family.Likeness.ALIKE)
                                        .allMatch(e -> e.difference() == 0));
        assertThat(family.strays()).isEmpty();
    }

    /**
     * 22, 22 and 24.2: the middle is 22, a tenth more is 10 %, 2.2 mm over the 1.5 that one reads.
     */
    @Test
    void aFatterSwell_isTold_inMmAndPercent() {
        Family family = family(Map.of("a", Choices.NONE, "b", Choices.NONE, "c", swell(24.2)));
        Family.Entry fat = entry(family, Trait.SWELL_DIAMETER, "c");
        assertThat(fat.value()).isCloseTo(24.2, within(1e-9));
        assertThat(fat.difference()).isCloseTo(2.2, within(1e-9));
        assertThat(fat.percent()).isCloseTo(10, within(1e-9));
        assertThat(fat.likeness()).isEqualTo(Family.Likeness.APART);
        assertThat(fat.cause()).isEqualTo(Family.Cause.PIECE);
        assertThat(entry(family, Trait.SWELL_DIAMETER, "a").likeness())
                .isEqualTo(Family.Likeness.ALIKE);
    }

    @Test
    void limits_areThoseOfTheTrade() {
        // 22.3 looks alike, 22.4 is seen, 23.5 still one family, 23.6 another pattern.
        record Case(double swell, Family.Likeness likeness) {}
        for (Case one :
                List.of(
                        new Case(22.3, Family.Likeness.ALIKE),
                        new Case(22.4, Family.Likeness.SEEN),
                        new Case(23.5, Family.Likeness.SEEN),
                        new Case(23.6, Family.Likeness.APART))) {
            Family family =
                    family(Map.of("a", Choices.NONE, "b", Choices.NONE, "c", swell(one.swell)));
            assertThat(entry(family, Trait.SWELL_DIAMETER, "c").likeness())
                    .as("swell " + one.swell)
                    .isEqualTo(one.likeness);
        }
    }

    /** A longer piece may be thicker by the root of its visible wood. */
    @Test
    void aLargerPiece_mayHaveALargerSwell() {
        Choices large = Choices.builder().lengthRatio(1.3).swellMm(25.4).build();
        Family family = family(Map.of("a", Choices.NONE, "b", Choices.NONE, "c", large));
        Family.Entry entry = entry(family, Trait.SWELL_DIAMETER, "c");
        // Visible wood: blade 88 less ferrule 10 and cap 5 is 73; 1.3 x 88 - 15 is 99.4.
        assertThat(entry.high()).isCloseTo(22 * Math.sqrt(99.4 / 73), within(1e-9));
        assertThat(entry.likeness()).isEqualTo(Family.Likeness.SEEN);
    }

    /** The least change is tried: one step less leaves the piece outside. */
    @Test
    void remedy_bringsThePieceBack_andIsTheLeast() {
        Family family =
                family("fork", Map.of("a", Choices.NONE, "b", Choices.NONE, "c", swell(25)));
        Family.Stray stray =
                family.strays().stream()
                        .filter(each -> each.trait() == Trait.SWELL_DIAMETER)
                        .findFirst()
                        .orElseThrow();
        assertThat(stray.piece()).isEqualTo("c");
        assertThat(stray.finding().code()).isEqualTo(Code.OUT_OF_FAMILY);
        assertThat(stray.finding().gravity()).isEqualTo(Gravity.NOTE);
        assertThat(stray.finding().limit()).isCloseTo(23.5, within(1e-9));
        assertThat(family.remedy(stray, Units.MM)).hasValue("Choose a swell of 23.5 mm");
        Family mended =
                family("fork", Map.of("a", Choices.NONE, "b", Choices.NONE, "c", swell(23.5)));
        Family notYet =
                family("fork", Map.of("a", Choices.NONE, "b", Choices.NONE, "c", swell(23.6)));
        assertThat(entry(mended, Trait.SWELL_DIAMETER, "c").likeness())
                .isNotEqualTo(Family.Likeness.APART);
        assertThat(entry(notYet, Trait.SWELL_DIAMETER, "c").likeness())
                .isEqualTo(Family.Likeness.APART);
    }

    /** The demo set's shucker is larger on purpose: notes, no stop, and why not to mend it. */
    @Test
    void demoSet_readsSensibly() {
        LoadedSet loaded = demo();
        List<Family.Member> members = new ArrayList<>();
        for (Piece piece : loaded.set().pieces()) {
            members.add(new Family.Member(piece, figures(loaded.brief(piece))));
        }
        Family family = Family.of(members);
        assertThat(family.strays())
                .noneMatch(stray -> stray.finding().gravity() == Gravity.STOP)
                .anyMatch(
                        stray ->
                                stray.piece().equals("shucker")
                                        && stray.trait() == Trait.SWELL_DIAMETER
                                        && stray.finding().gravity() == Gravity.NOTE);
        Family.Entry butt = entry(family, Trait.BUTT_DIAMETER, "shucker");
        assertThat(butt.value()).isCloseTo(19, within(1e-9));
        assertThat(butt.difference()).isCloseTo(3, within(1e-9));
        assertThat(butt.cause()).isEqualTo(Family.Cause.KIT);
        for (Family.Stray stray : family.strays()) {
            Optional<String> remedy = family.remedy(stray, Units.MM);
            if (stray.piece().equals("shucker") && stray.trait() == Trait.SWELL_DIAMETER) {
                assertThat(remedy.orElseThrow())
                        .startsWith("Choose a swell of 24.8 mm; but then")
                        .contains("slender for its use");
            }
        }
        // A remedy that costs nothing leaves no warning that was not there.
        Family.Stray waist =
                family.strays().stream()
                        .filter(stray -> stray.trait() == Trait.WAIST_PLACE)
                        .findFirst()
                        .orElseThrow();
        assertThat(family.remedy(waist, Units.MM))
                .hasValue("Put \"waist\" at 0.16 of the visible wood");
        Brief brief = family.member(waist.piece()).figures().handle().brief();
        Figures mended =
                figures(
                        brief.withChoices(
                                brief.choices().toBuilder().nodePlace("waist", 0.16).build()));
        List<Code> before =
                Findings.of(family.member(waist.piece()).figures()).stream()
                        .filter(finding -> finding.gravity() != Gravity.NOTE)
                        .map(Finding::code)
                        .toList();
        assertThat(
                        Findings.of(mended).stream()
                                .filter(finding -> finding.gravity() != Gravity.NOTE)
                                .map(Finding::code))
                .isSubsetOf(before);
        assertThat(entry(with(family, waist.piece(), mended), Trait.WAIST_PLACE, waist.piece()))
                .matches(each -> each.likeness() != Family.Likeness.APART);
    }

    private static Family with(Family family, String piece, Figures figures) {
        List<Family.Member> changed = new ArrayList<>();
        for (Family.Member member : family.members()) {
            boolean isIt = member.piece().name().equals(piece);
            changed.add(isIt ? new Family.Member(member.piece(), figures) : member);
        }
        return Family.of(changed);
    }

    /** What one changed piece makes of the middles, against the family worked out anew. */
    @Test
    void pieceTriedOtherwise_standsAsInTheFamilyWorkedOutAnew() {
        SplittableRandom random = new SplittableRandom(20261130);
        for (int size = 2; size < 9; size++) {
            Map<String, Choices> pieces = new TreeMap<>();
            for (int i = 0; i < size; i++) {
                pieces.put("piece " + i, some(random));
            }
            Family family = family(pieces);
            for (int trial = 0; trial < 8; trial++) {
                Family.Member member = family.members().get(random.nextInt(size));
                Figures other =
                        figures(member.figures().handle().brief().withChoices(some(random)));
                String name = member.piece().name();
                Family anew = with(family, name, other);
                for (Trait trait : Trait.values()) {
                    assertThat(family.entryWith(name, other, trait))
                            .as("%s of %s among %d", trait, name, size)
                            .isEqualTo(anew.row(trait).flatMap(row -> row.entry(name)));
                }
            }
        }
    }

    /** Few enough sizes that some are alike; one of them leaves no waist. */
    private static Choices some(SplittableRandom random) {
        ChoicesBuilder choices = Choices.builder().buttMm(14).swellMm(20 + random.nextInt(4));
        return switch (random.nextInt(3)) {
            case 0 -> choices.nodeDiameterMm("waist", 18).build();
            case 1 -> choices.lengthRatio(1 + 0.1 * random.nextInt(3)).build();
            default -> choices.build();
        };
    }

    /** Wood that only widens from the shoulder has no waist, and no other is held against one. */
    @Test
    void pieceThatIsNarrowestAtItsShoulder_hasNoWaist() {
        Choices widening = Choices.builder().nodeDiameterMm("waist", 18).build();
        Family one = family(Map.of("a", widening, "b", widening, "c", widening, "d", Choices.NONE));
        assertThat(one.members())
                .extracting(member -> Double.isNaN(Trait.WAIST_PLACE.of(member.figures())))
                .containsExactly(true, true, true, false);
        assertThat(one.row(Trait.WAIST_DIAMETER)).isEmpty();
        assertThat(one.row(Trait.WAIST_PLACE)).isEmpty();
        assertThat(one.strays())
                .extracting(Family.Stray::trait)
                .doesNotContain(Trait.WAIST_DIAMETER, Trait.WAIST_PLACE);
        Family two =
                family(Map.of("a", widening, "b", widening, "c", Choices.NONE, "d", Choices.NONE));
        assertThat(two.row(Trait.WAIST_PLACE).orElseThrow().entries())
                .extracting(Family.Entry::piece)
                .containsExactly("c", "d");
        assertThat(two.row(Trait.WAIST_PLACE).orElseThrow().common()).isGreaterThan(5);
    }

    @Test
    void lineUp_tellsWhereSwellsAndButtsStand() {
        Family family = family(Map.of("a", Choices.NONE, "b", swell(24)));
        LineUp lineUp = LineUp.of(family);
        assertThat(lineUp.places()).extracting(LineUp.Places::piece).containsExactly("a", "b");
        LineUp.Places a = lineUp.places().get(0);
        assertThat(a.swellMm()).isCloseTo(22, within(1e-9));
        assertThat(a.buttX()).isCloseTo(73, within(1e-9));
        assertThat(a.endX()).isCloseTo(78, within(1e-9));
        assertThat(a.buttMm()).isCloseTo(16, within(1e-9));
        assertThat(a.swellX() / a.buttX()).isBetween(0.5799, 0.7001);
    }
}
