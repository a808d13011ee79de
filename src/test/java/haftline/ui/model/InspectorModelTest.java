package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.edit.Scope;
import haftline.handle.Choices;
import haftline.measure.Measured;
import haftline.measure.Units;
import haftline.ui.model.InspectorModel.Section;
import haftline.ui.model.InspectorModel.Step;
import haftline.ui.model.NodeTableModel.Column;
import haftline.ui.model.Row.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InspectorModelTest {
    private final Locale usual = Locale.getDefault();
    private EditorModel editor;
    private InspectorModel inspector;

    @BeforeEach
    void open() {
        Locale.setDefault(Locale.GERMANY);
        editor = new EditorModel(DemoSet.open());
        editor.choose("butter spreader");
        inspector = new InspectorModel(editor);
    }

    @AfterEach
    void putLocaleBack() {
        Locale.setDefault(usual);
    }

    private Row row(Step step, String label) {
        return inspector.section(step).row(label).orElseThrow(() -> new AssertionError(label));
    }

    private Measured ferruleBore() {
        return editor.worked().value().brief().kit().ferrule().bore();
    }

    private Choices own() {
        return editor.draft().value().piece("butter spreader").choices();
    }

    @Test
    void followsTheOrderOfTheJob() {
        assertThat(inspector.sections().value().stream().map(Section::step))
                .containsExactly(Step.values());
        assertThat(inspector.section(Step.PARTS).rows().stream().map(Row::label))
                .containsSubsequence("blade length", "tang length", "ferrule bore", "end cap");
    }

    @Test
    void underTheirTitleRowsAreNamedByTheRest() {
        var groups = inspector.section(Step.PARTS).groups();
        assertThat(
                        groups.stream()
                                .filter(group -> group.title().equals("ferrule"))
                                .flatMap(group -> group.rows().stream().map(group::labelOf)))
                .contains("bore", "outside, lesser axis", "hole in the lip", "metal");
        assertThat(groups.get(0).rows().stream().map(groups.get(0)::labelOf))
                .containsExactly("batch in use", "kit", "kit's name");
        assertThat(
                        groups.stream()
                                .filter(group -> group.title().equals("tang"))
                                .flatMap(group -> group.rows().stream().map(group::labelOf)))
                .contains("kind of tang", "seat behind the ferrule's face");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    11.5         | 11.5
                    11,5         | 11.5
                    11.5 mm      | 11.5
                    1/2"         | 12.7
                    31/64 in     | 12.303125
                    0.5 in       | 12.7
                    0,5"         | 12.7
                    """)
    void readsALengthHoweverItIsTyped(String text, double mm) {
        assertThat(Entry.readings(text, Units.MM, 0).orElseThrow().mean())
                .isCloseTo(mm, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12.0 12.1 11.95",
                "12,0 12,1 11,95",
                "12.0; 12.1; 11.95",
                "12,0; 12,1;11,95 mm",
                "12.0, 12.1, 11.95",
                "12.0 mm 12.1 mm 11.95 mm",
                "12.0mm 12.1mm 11.95mm",
                "  12.0   12.1 11.95 mm "
            })
    void readsAListHoweverItIsTyped(String text) {
        assertThat(Entry.readings(text, Units.MM, 0.02).orElseThrow())
                .isEqualTo(Measured.of(List.of(12.0, 12.1, 11.95), 0.02));
    }

    @Test
    void aUnitBehindTheLastIsThatOfAll() {
        assertThat(Entry.readings("12.0 12.1 mm", Units.INCH, 0).orElseThrow().readings())
                .containsExactly(12.0, 12.1);
        assertThat(Entry.readings("1/2 31/64 in", Units.MM, 0).orElseThrow().readings())
                .containsExactly(12.7, 12.303125);
        assertThat(Entry.readings("1 3/8 in 1 1/4 in", Units.MM, 0).orElseThrow().readings())
                .containsExactly(34.925, 31.75);
        assertThat(Entry.readings("12 mm 1/2 in", Units.MM, 0).orElseThrow().readings())
                .containsExactly(12.0, 12.7);
    }

    @Test
    void whatASplitIndexIsHeldAgainstIsInTheUnitInUse() {
        editor.choose("shucker");
        assertThat(row(Step.STOCK_AND_FIT, "fit").enter("pressed").refusal()).isEmpty();
        editor.units().set(Units.INCH);
        assertThat(row(Step.STOCK_AND_FIT, "split index").state().value().because())
                .contains("0.236 in tang in 0.217 in, 0.118 in wall is 1");
    }

    @Test
    void aRefusedReadingTellsItsRangeInTheUnitInUse() {
        assertThat(row(Step.PARTS, "ferrule bore").enter("70 mm").refusal())
                .contains("ferrule bore 70 mm: expected a length from 1 to 60 mm");
        assertThat(row(Step.PARTS, "blade mass").enter("9000 g").refusal())
                .contains("blade mass 9000 g: expected a mass from 0.1 to 5000 g");

        editor.units().set(Units.INCH);

        assertThat(row(Step.PARTS, "ferrule bore").enter("4").refusal())
                .contains("ferrule bore 4 in: expected a length from 0.0394 to 2.3622 in");
        assertThat(row(Step.PARTS, "blade length").enter("1/16").refusal())
                .contains("blade length 0.0625 in: expected a length from 0.1969 to 39.37 in");
        assertThat(row(Step.SHAPE, "swell").enter("20").refusal())
                .contains("swell 20 in: expected a length from 0.1969 to 7.874 in");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "twelve", "12..5", "12 mm mm", "-3", "1/0 in", "NaN", "1e3", ";"})
    void whatIsNoLengthIsNotGuessed(String text) {
        assertThat(Entry.readings(text, Units.MM, 0)).isEmpty();
    }

    @Test
    void everyFieldTypedAgainAsItStandsChangesNothing() {
        for (Units units : Units.values()) {
            editor.units().set(units);
            for (String piece :
                    List.of("shucker", "butter spreader", "seafood fork", "citrus zester")) {
                editor.choose(piece);
                for (Section section : inspector.sections().value()) {
                    for (Row row : section.rows()) {
                        if (row.kind() != Row.Kind.FIGURE) {
                            assertThat(row.enter(row.state().value().text()).isDone())
                                    .as(piece + ", " + row.label())
                                    .isTrue();
                        }
                        assertThat(row.state().value().text()).doesNotContain("NaN");
                        assertThat(row.state().value().because()).doesNotContain("NaN");
                    }
                }
            }
        }
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void aReadingIsOneStepUnderItsName() {
        Row bore = row(Step.PARTS, "ferrule bore");
        Measured before = ferruleBore();
        assertThat(bore.enter("12,0 12,1 11,95").isDone()).isTrue();
        assertThat(ferruleBore().readings()).containsExactly(12.0, 12.1, 11.95);
        assertThat(bore.state().value().text()).isEqualTo("12; 12.1; 11.95 mm");
        assertThat(bore.state().value().because())
                .startsWith("mean 12.02 mm ± ")
                .contains("3 readings");
        assertThat(editor.status().value().undoName()).contains("reading of ferrule bore");
        editor.undo();
        assertThat(ferruleBore()).isEqualTo(before);
        assertThat(bore.state().value().text()).isEqualTo(Entry.text(before, Units.MM));
    }

    @Test
    void aSecondWrongEntryIsToldWithoutAGoodStateBetween() {
        Row bore = row(Step.PARTS, "ferrule bore");
        bore.enter("about 12");
        List<Row.State> told = new ArrayList<>();
        Runnable stop = bore.state().watch(told::add);
        bore.enter("0.2");
        bore.enter("12.5.3");
        stop.run();
        assertThat(told).hasSize(2).allMatch(state -> state.wrong().isPresent());
    }

    @Test
    void aWrongEntrySaysWhatIsExpectedAndKeepsTheLastGoodValue() {
        Row bore = row(Step.PARTS, "ferrule bore");
        String before = bore.state().value().text();
        assertThat(bore.enter("about 12").refusal().orElseThrow()).startsWith("Expected a length");
        assertThat(bore.state().value().text()).isEqualTo(before);
        assertThat(bore.state().value().wrong()).isPresent();
        assertThat(bore.enter("0.2").refusal().orElseThrow())
                .contains("ferrule bore")
                .contains("from 1 to 60");
        assertThat(bore.enter("").refusal().orElseThrow()).contains("cannot do without");
        assertThat(editor.status().value().isModified()).isFalse();
        bore.enter(before);
        assertThat(bore.state().value().wrong()).isEmpty();
        Row ratio = row(Step.LENGTH_AND_BALANCE, "length to blade");
        assertThat(ratio.enter("0.2").refusal().orElseThrow()).contains("make the handle longer");
        assertThat(editor.worked().value().figures()).isPresent();
    }

    @Test
    void aMassMayBeLeftOpen() {
        Row mass = row(Step.PARTS, "blade mass");
        assertThat(mass.enter("48,6 g").isDone()).isTrue();
        assertThat(editor.worked().value().brief().kit().blade().massG()).hasValue(48.6);
        assertThat(mass.enter("").isDone()).isTrue();
        assertThat(editor.worked().value().brief().kit().blade().massG()).isEmpty();
        assertThat(mass.state().value().because()).isEqualTo("not measured");
    }

    @Test
    void aDerivedValueSaysWhyAndIsDecidedAndReleased() {
        Row tenon = row(Step.STOCK_AND_FIT, "tenon diameter");
        String byRule = tenon.state().value().text();
        assertThat(tenon.state().value().source()).isEqualTo(Source.RULE);
        assertThat(tenon.state().value().because()).contains("smallest ferrule bore");
        assertThat(tenon.canRelease()).isFalse();
        assertThat(tenon.enter("11").isDone()).isTrue();
        assertThat(tenon.state().value())
                .isEqualTo(Row.State.of("11 mm", "your choice", Source.PIECE));
        assertThat(tenon.canRelease()).isTrue();
        assertThat(tenon.release().isDone()).isTrue();
        assertThat(tenon.state().value().text()).isEqualTo(byRule);
        assertThat(own().tenonDiameterMm()).isEmpty();
    }

    @Test
    void aChoiceForAllIsTheSets() {
        Row swell = row(Step.SHAPE, "swell");
        assertThat(swell.state().value().source()).isEqualTo(Source.SET);
        editor.scope().set(Scope.ALL_PIECES);
        swell.enter("23");
        assertThat(editor.draft().value().set().common().swellMm()).hasValue(23);
        assertThat(own().swellMm()).isEmpty();
        editor.scope().set(Scope.THIS_PIECE);
        swell.enter("24 mm");
        assertThat(editor.draft().value().set().common().swellMm()).hasValue(23);
        assertThat(swell.state().value().source()).isEqualTo(Source.PIECE);
    }

    @Test
    void fitAndStockAreChosenByTheirWords() {
        Row fit = row(Step.STOCK_AND_FIT, "fit");
        assertThat(fit.options()).containsExactly("by the rule", "pressed", "bonded");
        assertThat(fit.state().value().because()).startsWith("bonded: a thin flat tang");
        fit.enter("pressed");
        assertThat(fit.state().value().because()).isEqualTo("pressed: your choice");
        fit.enter("by the rule");
        assertThat(own().fit()).isEmpty();
        Row stock = row(Step.STOCK_AND_FIT, "stock");
        String other =
                stock.options().stream()
                        .filter(name -> !name.equals(stock.state().value().text()))
                        .findFirst()
                        .orElseThrow();
        stock.enter(other);
        assertThat(editor.worked().value().brief().stock().name()).isEqualTo(other);
        assertThat(stock.canRelease()).isTrue();
        stock.release();
        assertThat(editor.draft().value().piece("butter spreader").stock()).isEmpty();
        assertThat(stock.enter("unobtainium").isDone()).isFalse();
    }

    @Test
    void anotherKitIsMadeAndNamed() {
        String before = row(Step.PARTS, "kit").state().value().text();
        row(Step.PARTS, "kit").enter("another, to be measured");
        assertThat(row(Step.PARTS, "kit").state().value().text()).isEqualTo(before + " 2");
        assertThat(row(Step.PARTS, "kit").options()).contains(before, before + " 2");
        row(Step.PARTS, "kit's name").enter("long " + before);
        assertThat(row(Step.PARTS, "kit").state().value().text()).isEqualTo("long " + before);
        row(Step.PARTS, "kit's name").enter(before);
        assertThat(row(Step.PARTS, "kit's name").state().value().wrong().orElseThrow())
                .contains("another kit is called \"" + before + "\"");
        assertThat(row(Step.PARTS, "kit").state().value().text()).isEqualTo("long " + before);
    }

    @Test
    void anOverallLengthBecomesARatioToTheBlade() {
        row(Step.LENGTH_AND_BALANCE, "overall length").enter("110");
        assertThat(editor.worked().value().figures().orElseThrow().handle().lengths().overallMm())
                .isCloseTo(110, within(1e-9));
    }

    @Test
    void rowsStayWhileThePieceHasTheSameMakeUp() {
        List<Section> before = inspector.sections().value();
        row(Step.SHAPE, "swell").enter("23");
        editor.undo();
        assertThat(inspector.sections().value()).isSameAs(before);
        boolean hadCap = editor.worked().value().brief().kit().cap().isPresent();
        row(Step.PARTS, "end cap").enter(hadCap ? "no" : "yes");
        assertThat(editor.worked().value().brief().kit().cap().isPresent()).isEqualTo(!hadCap);
        assertThat(inspector.sections().value()).isNotSameAs(before);
    }

    @Test
    void everyKindOfTangCanBeTakenAndMeasured() {
        for (String kind : haftline.edit.KitSizes.TANG_KINDS) {
            row(Step.PARTS, "kind of tang").enter(kind);
            assertThat(editor.worked().value().brief().kit().tang().kind()).isEqualTo(kind);
            for (Row each : inspector.section(Step.PARTS).rows()) {
                if (each.kind() == Row.Kind.READINGS && each.label().contains("length")) {
                    String longer =
                            Entry.text(
                                    Entry.readings(each.state().value().text(), Units.MM, 0)
                                            .orElseThrow()
                                            .plus(0.01),
                                    Units.MM);
                    assertThat(each.enter(longer).isDone()).as(kind + ", " + each.label()).isTrue();
                    assertThat(each.state().value().text()).isEqualTo(longer);
                }
            }
        }
    }

    @Test
    void theNodeTableIsTypedInto() {
        NodeTableModel nodes = inspector.nodes();
        assertThat(nodes.lines().value()).first().extracting("name").isEqualTo("shoulder");
        assertThat(nodes.enter("waist", Column.DIAMETER, "16,5").isDone()).isTrue();
        assertThat(line("waist").diameter()).isEqualTo("16.5 mm");
        assertThat(line("waist").isDiameterOwn()).isTrue();
        assertThat(line("waist").isPlaceOwn()).isFalse();
        assertThat(nodes.enter("waist", Column.PLACE, "1 1/4 in").isDone()).isTrue();
        assertThat(line("waist").place()).isEqualTo("31.75 mm");
        assertThat(nodes.enter("waist", Column.DIAMETER, "thin").refusal().orElseThrow())
                .startsWith("Expected a length");
        assertThat(nodes.enter("waist", Column.PLACE, "500").isDone()).isFalse();
        assertThat(nodes.enter("shoulder", Column.DIAMETER, "20").refusal().orElseThrow())
                .contains("the ferrule's outside diameter fixes it");
        assertThat(nodes.enter("shoulder", Column.SLOPE, "1,5").isDone()).isTrue();
        assertThat(line("shoulder").slope()).isEqualTo("1.5°");
        assertThat(nodes.enter("waist", Column.JOIN, "Crisp").isDone()).isTrue();
        assertThat(nodes.enter("waist", Column.JOIN, "loose").isDone()).isFalse();
        assertThat(nodes.enter("waist", Column.NAME, "neck").isDone()).isTrue();
        assertThat(line("neck").isDiameterOwn()).isTrue();
        assertThat(nodes.release("neck").isDone()).isTrue();
        assertThat(line("neck").isDiameterOwn()).isFalse();
        assertThat(line("neck").isPlaceOwn()).isFalse();
    }

    private NodeTableModel.Line line(String name) {
        return inspector.nodes().lines().value().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
