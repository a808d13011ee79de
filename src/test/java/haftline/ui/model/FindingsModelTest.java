package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.edit.Choice;
import haftline.edit.ChoiceEdits;
import haftline.edit.DemoSet;
import haftline.edit.Draft;
import haftline.edit.Scope;
import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.findings.Remedy;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FindingsModelTest {
    private EditorModel editor;
    private FindingsModel findings;

    @BeforeEach
    void open() {
        editor = new EditorModel(DemoSet.open());
        findings = new FindingsModel(editor);
    }

    /** Makes the waist of a piece thin, so that its wall is found too thin. */
    private Finding thinWall() {
        editor.choose("seafood fork");
        BoardModel board = new BoardModel(editor);
        PlacedNode first =
                board.handle().orElseThrow().nodes().stream()
                        .filter(PlacedNode::isFree)
                        .findFirst()
                        .orElseThrow();
        board.selected().set(Optional.of(first.name()));
        for (int i = 0; i < 40 && find(Code.WALL_TOO_THIN).isEmpty(); i++) {
            board.nudge(0, -0.5);
        }
        board.endNudge();
        return find(Code.WALL_TOO_THIN).orElseThrow();
    }

    private Optional<Finding> find(Code code) {
        return findings.findings().value().stream().filter(f -> f.code() == code).findFirst();
    }

    @Test
    void aThinWallIsFoundSaidAndMendedInOneStep() {
        Finding thin = thinWall();
        Draft before = editor.draft().value();
        assertThat(findings.message(thin)).startsWith("Wall ").contains("mm").contains("limit");
        assertThat(findings.rule(thin)).isEqualTo("common practice");
        Remedy remedy = findings.remedy(thin).orElseThrow();
        assertThat(findings.apply(thin).isDone()).isTrue();
        assertThat(find(Code.WALL_TOO_THIN)).isEmpty();
        assertThat(editor.status().value().undoName())
                .contains("apply \"" + remedy.change() + "\"");
        editor.undo();
        assertThat(editor.draft().value()).isEqualTo(before);
        assertThat(find(Code.WALL_TOO_THIN)).isPresent();
    }

    @Test
    void aRemedyIsThePiecesOwnAndCopiesNothingOfTheSets() {
        Finding thin = thinWall();
        var own = editor.draft().value().piece("seafood fork").choices();
        var common = editor.draft().value().set().common();
        findings.apply(thin);
        var after = editor.draft().value().piece("seafood fork").choices();
        assertThat(editor.draft().value().set().common()).isEqualTo(common);
        assertThat(after.swellMm()).isEqualTo(own.swellMm());
        assertThat(after.buttMm()).isEqualTo(own.buttMm());
    }

    @Test
    void aRemedyThatFreesWhatTheSetDecidedFreesItInTheSet() {
        editor.choose("shucker");
        editor.run(
                new ChoiceEdits("shucker", Scope.ALL_PIECES)
                        .choose(Choice.TANG_DRILL, b -> b.tangDrillMm(12.3)));
        List<Finding> all = findings.findings().value();
        Finding mended =
                all.stream()
                        .filter(
                                f ->
                                        findings.remedy(f)
                                                .flatMap(Remedy::choices)
                                                .filter(c -> c.tangDrillMm().isEmpty())
                                                .isPresent())
                        .findFirst()
                        .orElseThrow();
        assertThat(findings.apply(mended).isDone()).isTrue();
        assertThat(editor.draft().value().set().common().tangDrillMm()).isEmpty();
        assertThat(findings.findings().value()).noneMatch(mended::isAbout);
    }

    @Test
    void everyRemedyOfTheDemonstrationIsOneStepThatMendsAndIsUndone() {
        int applied = 0;
        for (var piece : editor.draft().value().set().pieces()) {
            editor.choose(piece.name());
            for (Finding finding : findings.findings().value()) {
                Optional<Remedy> remedy = findings.remedy(finding);
                Draft before = editor.draft().value();
                boolean isDone = findings.apply(finding).isDone();
                assertThat(isDone).isEqualTo(remedy.flatMap(Remedy::choices).isPresent());
                if (isDone) {
                    applied++;
                    assertThat(findings.findings().value())
                            .as(piece.name() + ", " + finding.code())
                            .noneMatch(finding::isAbout);
                    editor.undo();
                    assertThat(editor.draft().value()).isEqualTo(before);
                }
            }
        }
        assertThat(applied).isPositive();
        assertThat(editor.status().value().isModified()).isFalse();
    }

    @Test
    void theChosenFindingStaysWhileThePieceHasIt() {
        Finding thin = thinWall();
        findings.chosen().set(Optional.of(thin));
        BoardModel board = new BoardModel(editor);
        board.selectNext(1);
        board.selectNext(1);
        board.nudge(0, -0.2);
        assertThat(findings.chosen().value().orElseThrow().code()).isEqualTo(Code.WALL_TOO_THIN);
        assertThat(findings.remedy(findings.chosen().value().get()))
                .as("in the middle of a gesture")
                .isEmpty();
        board.endNudge();
        assertThat(findings.remedy(findings.chosen().value().get())).isPresent();
        editor.choose("shucker");
        assertThat(findings.chosen().value().filter(f -> f.code() == Code.WALL_TOO_THIN)).isEmpty();
    }

    @Test
    void wordsFollowTheUnits() {
        Finding thin = thinWall();
        editor.units().set(Units.INCH);
        assertThat(findings.message(thin)).contains(" in").doesNotContain(" mm");
        assertThat(findings.remedy(thin).orElseThrow().change()).doesNotContain(" mm");
    }

    @Test
    void countsByGravity() {
        long all =
                findings.count(Gravity.STOP)
                        + findings.count(Gravity.WARN)
                        + findings.count(Gravity.NOTE);
        assertThat(all).isEqualTo(findings.findings().value().size());
    }

    @Test
    void aWallsRuleIsShownWithItsValueFileAndLine() throws java.io.IOException {
        RuleSource source = findings.source(thinWall());
        assertThat(source.title()).isEqualTo("Your rule");
        assertThat(source.lines().get(0)).endsWith("walls: body_wood: 3");
        java.nio.file.Path file = source.file().orElseThrow();
        String where = source.lines().get(1);
        assertThat(where).startsWith(file.toString());
        int line = Integer.parseInt(where.substring(where.lastIndexOf(' ') + 1));
        assertThat(java.nio.file.Files.readAllLines(file).get(line - 1)).contains("body_wood: 3");
    }

    @Test
    void everyFindingOfTheSetTellsWhoseRuleItIs() {
        for (String piece :
                List.of("shucker", "butter spreader", "seafood fork", "citrus zester")) {
            editor.choose(piece);
            for (Finding finding : findings.findings().value()) {
                RuleSource source = findings.source(finding);
                assertThat(source.title()).as(finding.code().text()).isNotBlank();
                assertThat(source.lines()).as(finding.code().text()).isNotEmpty();
            }
        }
    }

    @Test
    void aPublishedSourceIsCitedInFull() {
        var irritant =
                editor.document().loaded().materials().stock().entries().stream()
                        .filter(stock -> !stock.cautions().isEmpty())
                        .findFirst()
                        .orElseThrow();
        editor.run(new ChoiceEdits(editor.piece().value(), Scope.ALL_PIECES).stock(irritant));
        RuleSource source = findings.source(find(Code.STOCK_IRRITATES).orElseThrow());
        assertThat(source.title()).isEqualTo("Published");
        assertThat(source.lines())
                .contains(
                        irritant.cautions().get(0).source().title()
                                + " ("
                                + irritant.cautions().get(0).source().basis().words()
                                + ")");
    }
}
