package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Measured;
import haftline.set.Piece;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Place;
import haftline.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is done, undoing it all leads back, redoing it all leads there again. */
class RandomEditsTest {
    private static final int STEPS = 150;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void undoLeadsBackAndRedoThereAgain(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        OpenDocument document = DemoSet.open();
        Draft first = document.draft();
        List<Draft> states = new ArrayList<>(List.of(first));
        int done = 0;
        for (int i = 0; i < STEPS; i++) {
            Draft before = document.draft();
            done += step(document, random) ? 1 : 0;
            if (!document.draft().equals(before)) {
                states.add(document.draft());
            }
        }
        assertThat(done).as("seed %d: commands that were carried out", seed).isGreaterThan(60);
        assertThat(document.isModified()).isTrue();
        for (int i = states.size() - 1; i > 0; i--) {
            assertThat(document.draft())
                    .as("seed %d, undo to %d", seed, i)
                    .isEqualTo(states.get(i));
            assertThat(document.undo()).isTrue();
        }
        assertThat(document.draft()).as("seed %d", seed).isEqualTo(first);
        assertThat(document.undo()).isFalse();
        assertThat(document.isModified()).as("seed %d", seed).isFalse();
        for (int i = 1; i < states.size(); i++) {
            assertThat(document.redo()).isTrue();
            assertThat(document.draft())
                    .as("seed %d, redo to %d", seed, i)
                    .isEqualTo(states.get(i));
        }
        assertThat(document.redo()).isFalse();
        document.draft()
                .set()
                .pieces()
                .forEach(piece -> assertThat(document.worked(piece.name()).findings()).isNotNull());
    }

    /** One random command, in one go or as a gesture; whether it was carried out. */
    private static boolean step(OpenDocument document, SplittableRandom random) {
        List<Piece> pieces = document.draft().set().pieces();
        String piece = pieces.get(random.nextInt(pieces.size())).name();
        Optional<Handle> handle = document.worked(piece).figures().map(figures -> figures.handle());
        if (handle.isEmpty()) {
            return document.undo() && document.redo();
        }
        Command command = command(document, piece, handle.get(), random);
        if (random.nextInt(4) > 0) {
            return document.applyIfDrawable(command, piece).isDone();
        }
        document.begin(command.name());
        boolean done = document.carryOn(command, piece).isDone();
        if (random.nextBoolean()) {
            document.carryOn(Command.nothing(command.name()), piece);
            document.carryOn(command, piece);
        }
        document.end();
        return done;
    }

    private static Command command(
            OpenDocument document, String piece, Handle handle, SplittableRandom random) {
        Scope scope = random.nextBoolean() ? Scope.THIS_PIECE : Scope.ALL_PIECES;
        NodeEdits nodes = new NodeEdits(handle, scope);
        ChoiceEdits choices = new ChoiceEdits(piece, scope);
        ShapeEdits shapes = new ShapeEdits(piece, scope);
        List<PlacedNode> free = handle.nodes().stream().filter(PlacedNode::isFree).toList();
        String node =
                free.isEmpty() ? Shape.SHOULDER : free.get(random.nextInt(free.size())).name();
        double wood = handle.lengths().visibleWoodMm();
        return switch (random.nextInt(20)) {
            case 0, 1, 2 ->
                    nodes.move(
                            node,
                            random.nextBoolean()
                                    ? OptionalDouble.of(random.nextDouble() * wood)
                                    : OptionalDouble.empty(),
                            OptionalDouble.of(12 + 15 * random.nextDouble()));
            case 3 -> nodes.add(random.nextDouble() * wood, 12 + 15 * random.nextDouble());
            case 4 -> nodes.delete(node);
            case 5 -> nodes.join(node, random.nextBoolean() ? Join.CRISP : Join.SMOOTH);
            case 6 -> nodes.slope(node, OptionalDouble.of(random.nextDouble() * 20 - 10));
            case 7 -> nodes.rename(node, "node " + (char) ('a' + random.nextInt(26)));
            case 8 -> nodes.slide(node, random.nextBoolean());
            case 9 ->
                    shapes.add(
                            new Detail.Bead(
                                    new Place.Share(0.1 + 0.8 * random.nextDouble()), 4, 1));
            case 10 -> shapes.remove(random.nextInt(2), "bead");
            case 11 -> shapes.move(0, "bead", new Place.Share(random.nextDouble()));
            case 12 -> fit(choices, random.nextBoolean() ? Fit.BONDED : Fit.PRESSED);
            case 13 -> choices.byRule(Choice.values()[random.nextInt(Choice.values().length)]);
            case 14 -> swell(choices, 20 + random.nextInt(8));
            case 15 -> PieceEdits.copy(piece);
            case 16 -> PieceEdits.reorder(piece, random.nextInt(6));
            case 17 -> reading(document, piece, random);
            case 18 -> Differences.releaseAll(piece);
            default -> shapes.makeCommon();
        };
    }

    private static Command fit(ChoiceEdits choices, Fit fit) {
        return choices.choose(Choice.FIT, b -> b.fit(fit));
    }

    private static Command swell(ChoiceEdits choices, double mm) {
        return choices.choose(Choice.SWELL, b -> b.swellMm(mm));
    }

    private static Command reading(OpenDocument document, String piece, SplittableRandom random) {
        List<KitSize> sizes = KitSizes.of(document.brief(piece).kit());
        KitSize size = sizes.get(random.nextInt(sizes.size()));
        Optional<Measured> old = size.read().apply(document.brief(piece).kit());
        return PartsEdits.reading(
                document.brief(piece).kit().name(),
                size,
                old.map(measured -> measured.plus(0.1 * random.nextDouble())));
    }
}
