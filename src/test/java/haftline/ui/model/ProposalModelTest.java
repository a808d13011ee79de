package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.adjust.solve.Adjustment;
import haftline.adjust.solve.Band;
import haftline.adjust.solve.Fairing;
import haftline.adjust.solve.Freedom;
import haftline.adjust.solve.Need;
import haftline.edit.Command;
import haftline.edit.DemoSet;
import haftline.edit.Draft;
import haftline.measure.Units;
import haftline.set.Piece;
import haftline.ui.model.ProposalModel.Stage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProposalModelTest {
    private static final String PIECE = "butter spreader";

    private final Deque<Runnable> background = new ArrayDeque<>();
    private EditorModel editor;
    private ProposalModel proposals;

    @BeforeEach
    void open() {
        editor = new EditorModel(DemoSet.open());
        editor.choose(PIECE);
        proposals = new ProposalModel(editor, background::add, Runnable::run);
    }

    private void work() {
        while (!background.isEmpty()) {
            background.remove().run();
        }
    }

    /** Asks for a grip that the piece does not have yet. */
    private void askForThicker() {
        double greatest = greatest();
        proposals
                .asked()
                .set(
                        proposals
                                .asked()
                                .value()
                                .withGrip(Optional.of(new Band(greatest + 1, greatest + 2))));
    }

    private double greatest() {
        return 2
                * editor.worked().value().figures().orElseThrow().handle().outline().greatest().r();
    }

    @Test
    void changesNothingBeforeItIsAcceptedAndIsThenOneStep() {
        Draft before = editor.draft().value();
        double was = greatest();
        askForThicker();
        proposals.adjust();
        assertThat(proposals.state().value().stage()).isEqualTo(Stage.WORKING);
        assertThat(proposals.ghost().value()).isEmpty();
        work();
        Adjustment found = (Adjustment) proposals.state().value().proposal().orElseThrow();
        assertThat(found.moves()).isNotEmpty();
        assertThat(2 * proposals.ghost().value().orElseThrow().outline().greatest().r())
                .isBetween(was + 1 - 1e-6, was + 2 + 1e-6);
        assertThat(editor.draft().value()).isEqualTo(before);
        assertThat(editor.status().value().isModified()).isFalse();
        assertThat(proposals.accept().isDone()).isTrue();
        assertThat(greatest()).isBetween(was + 1 - 1e-6, was + 2 + 1e-6);
        assertThat(proposals.ghost().value()).isEmpty();
        assertThat(proposals.state().value().stage()).isEqualTo(Stage.ASKING);
        editor.undo();
        assertThat(editor.draft().value()).isEqualTo(before);
        assertThat(editor.status().value().undoName()).isEmpty();
    }

    /** Work that was given up ends by itself, with nothing to show. */
    @Test
    void givenUpWorkEndsInTheMiddle() throws InterruptedException {
        var set = editor.draft().value().set();
        List<Piece> many = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            Piece piece = set.pieces().get(i % set.pieces().size());
            many.add(piece.withName(piece.name() + " " + i));
        }
        editor.run(new Command("many", draft -> draft.withSet(draft.set().withPieces(many))));
        editor.choose(many.get(0).name());
        // Minutes of work on a family of sixty pieces.
        proposals.asked().set(proposals.asked().value().withWhom(Asked.Whom.FAMILY));
        proposals.adjust();
        Thread worker = new Thread(this::work);
        worker.start();
        worker.join(300);
        assertThat(worker.isAlive()).as("still under way").isTrue();
        proposals.discard();
        worker.join(60_000);
        assertThat(worker.isAlive()).isFalse();
        assertThat(proposals.state().value().stage()).isEqualTo(Stage.ASKING);
        assertThat(proposals.ghost().value()).isEmpty();
    }

    @Test
    void onePieceByItselfLeavesTheOthersAlone() {
        askForThicker();
        proposals.adjust();
        work();
        Draft before = editor.draft().value();
        proposals.accept();
        for (var piece : before.set().pieces()) {
            if (!piece.name().equals(PIECE)) {
                assertThat(editor.draft().value().piece(piece.name())).isEqualTo(piece);
            }
        }
        assertThat(editor.draft().value().set().shape()).isEqualTo(before.set().shape());
    }

    @Test
    void theFamilyMovesTogetherAndShowsAGhostOnEachPiece() {
        askForThicker();
        proposals.asked().set(proposals.asked().value().withWhom(Asked.Whom.FAMILY));
        proposals.adjust();
        work();
        assertThat(proposals.ghost().value()).isPresent();
        editor.choose("shucker");
        assertThat(proposals.ghost().value().orElseThrow().brief().name()).isEqualTo("shucker");
        proposals.accept();
        assertThat(editor.draft().value().piece(PIECE).choices().nodeDiametersMm()).isEmpty();
    }

    @Test
    void fallsOnceThePieceChangesAndWhenItIsDiscarded() {
        askForThicker();
        proposals.adjust();
        BoardModel board = new BoardModel(editor);
        board.selected().set(Optional.of("waist"));
        board.nudge(0, 0.1);
        board.endNudge();
        work();
        assertThat(proposals.state().value().stage()).isEqualTo(Stage.ASKING);
        assertThat(proposals.state().value().note()).contains("changed meanwhile");
        proposals.adjust();
        work();
        assertThat(proposals.ghost().value()).isPresent();
        Draft before = editor.draft().value();
        proposals.discard();
        assertThat(proposals.ghost().value()).isEmpty();
        assertThat(editor.draft().value()).isEqualTo(before);
        proposals.adjust();
        proposals.discard();
        work();
        assertThat(proposals.state().value().stage()).isEqualTo(Stage.ASKING);
    }

    @Test
    void saysWhatMovesWhatIsMetAndWhatIsNot() {
        askForThicker();
        proposals.adjust();
        work();
        ProposalWords mm = new ProposalWords(Units.MM);
        var proposal = proposals.state().value().proposal().orElseThrow();
        assertThat(mm.verdict(proposal)).isEqualTo("All demands would be met.");
        List<ProposalWords.Part> parts = mm.parts(proposal);
        assertThat(parts.get(0).title()).isEqualTo("What would move");
        assertThat(parts.get(0).lines().get(0).text()).matches(".* → .* mm \\([+−].*\\)");
        assertThat(parts.get(1).title()).isEqualTo("Demands on " + PIECE);
        assertThat(parts.get(1).lines())
                .allMatch(line -> line.isMarked() && line.gravity().isEmpty())
                .anyMatch(
                        line -> line.text().startsWith("grip ") && line.aside().contains("; now"));
        assertThat(new ProposalWords(Units.INCH).parts(proposal).get(0).lines().get(0).text())
                .contains(" in (");
        // A balance that no handle of this blade has.
        proposals
                .asked()
                .set(proposals.asked().value().withBalance(Optional.of(new Band(200, 201))));
        proposals.adjust();
        work();
        proposal = proposals.state().value().proposal().orElseThrow();
        assertThat(mm.verdict(proposal)).contains("not met");
        assertThat(mm.parts(proposal))
                .anyMatch(part -> part.title().equals("Conflicts"))
                .anyMatch(
                        part ->
                                part.lines().stream()
                                        .anyMatch(
                                                line ->
                                                        line.gravity().isPresent()
                                                                && line.text()
                                                                        .contains("short by")));
    }

    @Test
    void fairsWithinItsBandAsOneStep() {
        Draft before = editor.draft().value();
        proposals.fair();
        work();
        Fairing fairing = (Fairing) proposals.state().value().proposal().orElseThrow();
        assertThat(fairing.bandMm()).isEqualTo(Asked.USUAL_FAIR_MM);
        assertThat(fairing.variationAfter()).isLessThan(fairing.variationBefore());
        ProposalWords words = new ProposalWords(Units.MM);
        assertThat(words.verdict(fairing)).contains("% less");
        assertThat(words.parts(fairing))
                .extracting(ProposalWords.Part::title)
                .containsExactly("What would move", "Variation of curvature");
        proposals.accept();
        assertThat(editor.status().value().undoName()).contains("fair the line");
        editor.undo();
        assertThat(editor.draft().value()).isEqualTo(before);
    }

    @Test
    void refusesToWorkForNoDemand() {
        for (Need.Group demand : Need.Group.values()) {
            proposals.asked().set(proposals.asked().value().with(demand, false));
        }
        proposals.adjust();
        assertThat(background).isEmpty();
        assertThat(proposals.state().value().note()).contains("at least one demand");
        assertThat(proposals.asked().value().with(Freedom.LENGTH, true).allowed())
                .containsExactly(Freedom.LENGTH);
    }
}
