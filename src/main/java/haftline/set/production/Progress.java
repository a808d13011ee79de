package haftline.set.production;

import haftline.measure.Checks;
import haftline.measure.NearestWord;
import haftline.set.Rates;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * How far a batch is: of every piece and step, how many are done. Immutable.
 *
 * @param set name of the set
 * @param batch the measured batch that its parts come from
 * @param steps the steps in their order, at least one, no two alike
 * @param pieces the pieces, at least one, no two alike
 */
public record Progress(String set, String batch, List<String> steps, List<PieceProgress> pieces) {
    /** The steps where the maker's rates name none: the order of the work at the lathe. */
    public static final List<String> USUAL_STEPS =
            List.of("saw", "bore", "turn", "sand", "finish", "join", "check");

    /**
     * How far one piece is.
     *
     * @param piece the piece's name
     * @param quantity how many are made, 1 or more
     * @param done for each step how many are done, from 0 to the quantity
     */
    public record PieceProgress(String piece, int quantity, List<Integer> done) {
        /** Checks the ranges and copies the list. */
        public PieceProgress {
            Checks.named("piece", piece);
            if (quantity < 1 || quantity > Quantities.MOST) {
                throw new IllegalArgumentException(
                        "quantity of "
                                + piece
                                + " "
                                + quantity
                                + ": expected a whole number from 1 to "
                                + Quantities.MOST);
            }
            done = List.copyOf(done);
            for (int count : done) {
                if (count < 0 || count > quantity) {
                    throw new IllegalArgumentException(
                            "done of "
                                    + piece
                                    + " "
                                    + count
                                    + ": expected a whole number from 0 to "
                                    + quantity);
                }
            }
        }

        private PieceProgress named(String name) {
            return new PieceProgress(name, quantity, done);
        }

        private PieceProgress with(int step, int count) {
            List<Integer> changed = new ArrayList<>(done);
            changed.set(step, count);
            return new PieceProgress(piece, quantity, changed);
        }

        /**
         * Steps done over all of this piece.
         *
         * @return the sum
         */
        public int ticks() {
            return done.stream().mapToInt(Integer::intValue).sum();
        }
    }

    /** Checks that steps and pieces fit each other, and copies. */
    public Progress {
        Checks.named("set", set);
        Checks.named("batch", batch);
        steps = List.copyOf(steps);
        pieces = List.copyOf(pieces);
        requireDifferent("step", steps);
        requireDifferent("piece", pieces.stream().map(PieceProgress::piece).toList());
        for (PieceProgress piece : pieces) {
            if (piece.done().size() != steps.size()) {
                throw new IllegalArgumentException(
                        "done of "
                                + piece.piece()
                                + ": "
                                + piece.done().size()
                                + " counts, expected one for each of "
                                + steps.size()
                                + " steps");
            }
        }
    }

    private static void requireDifferent(String what, List<String> names) {
        if (names.isEmpty()) {
            throw new IllegalArgumentException(what + "s: expected at least one");
        }
        names.forEach(name -> Checks.named(what, name));
        if (names.stream().distinct().count() != names.size()) {
            throw new IllegalArgumentException(what + "s: two have one name");
        }
    }

    /**
     * A batch that was not begun.
     *
     * @param production the batch
     * @return its progress, nothing done
     * @throws IllegalArgumentException where no piece is made
     */
    public static Progress of(Production production) {
        List<String> own =
                production
                        .costing()
                        .map(c -> c.rates().steps().stream().map(Rates.WorkStep::name).toList())
                        .orElse(List.of());
        List<String> steps = own.isEmpty() ? USUAL_STEPS : own;
        List<PieceProgress> pieces =
                production.orders().stream()
                        .map(
                                order ->
                                        new PieceProgress(
                                                order.piece(),
                                                order.quantity(),
                                                Collections.nCopies(steps.size(), 0)))
                        .toList();
        return new Progress(production.set(), production.batch(), steps, pieces);
    }

    /**
     * How many of a piece have gone through a step.
     *
     * @param piece the piece's name
     * @param step the step
     * @return the count
     * @throws IllegalArgumentException where there is no such piece or step
     */
    public int done(String piece, String step) {
        return pieces.get(pieceIndex(piece)).done().get(stepIndex(step));
    }

    /**
     * Steps before one through which fewer of a piece have gone than through it: the order of the
     * steps is the usual one, not a must.
     *
     * @param piece the piece's name
     * @param step the step
     * @return those steps, in their order
     * @throws IllegalArgumentException where there is no such piece or step
     */
    public List<String> behind(String piece, String step) {
        int count = done(piece, step);
        return steps.subList(0, stepIndex(step)).stream()
                .filter(before -> done(piece, before) < count)
                .toList();
    }

    /**
     * How many of a piece are made.
     *
     * @param piece the piece's name
     * @return the count
     * @throws IllegalArgumentException where there is no such piece
     */
    public int quantityOf(String piece) {
        return pieces.get(pieceIndex(piece)).quantity();
    }

    /**
     * The same with another count.
     *
     * @param piece the piece's name
     * @param step the step
     * @param count how many have gone through it, from 0 to the quantity
     * @return the changed copy
     * @throws IllegalArgumentException where there is no such piece or step, with the nearest name,
     *     or the count is out of range
     */
    public Progress withDone(String piece, String step, int count) {
        int at = stepIndex(step);
        return withPiece(piece, p -> p.with(at, count));
    }

    /**
     * The same with a step done for all of all pieces.
     *
     * @param step the step
     * @return the changed copy
     */
    public Progress withAllDone(String step) {
        int at = stepIndex(step);
        List<PieceProgress> changed = pieces.stream().map(p -> p.with(at, p.quantity())).toList();
        return new Progress(set, batch, steps, changed);
    }

    /**
     * The same by other names.
     *
     * @param name a piece's name now, from its name here
     * @return the changed copy
     * @throws IllegalArgumentException where two pieces would have one name
     */
    public Progress withNames(UnaryOperator<String> name) {
        return new Progress(
                set,
                batch,
                steps,
                pieces.stream().map(far -> far.named(name.apply(far.piece()))).toList());
    }

    private Progress withPiece(String piece, UnaryOperator<PieceProgress> change) {
        List<PieceProgress> changed = new ArrayList<>(pieces);
        int at = pieceIndex(piece);
        changed.set(at, change.apply(changed.get(at)));
        return new Progress(set, batch, steps, changed);
    }

    private int pieceIndex(String piece) {
        return index("piece", pieces.stream().map(PieceProgress::piece).toList(), piece);
    }

    private int stepIndex(String step) {
        return index("step", steps, step);
    }

    private static int index(String what, List<String> names, String name) {
        int at = names.indexOf(name);
        if (at < 0) {
            String near =
                    NearestWord.to(names, name)
                            .map(word -> "; did you mean \"" + word + "\"?")
                            .orElse("; there are " + String.join(", ", names));
            throw new IllegalArgumentException(
                    "no " + what + " \"" + name + "\" in the batch" + near);
        }
        return at;
    }

    /**
     * Steps that are done, over all pieces.
     *
     * @return the count
     */
    public int ticks() {
        return pieces.stream().mapToInt(PieceProgress::ticks).sum();
    }

    /**
     * Steps that there are, over all pieces.
     *
     * @return the count
     */
    public int ticksInAll() {
        return steps.size() * pieces.stream().mapToInt(PieceProgress::quantity).sum();
    }

    /**
     * Whether all is done.
     *
     * @return true where every step of every piece is
     */
    public boolean isFinished() {
        return ticks() == ticksInAll();
    }

    /**
     * The quantities of the batch.
     *
     * @return how many of each piece
     */
    public Quantities quantities() {
        var counts = new java.util.LinkedHashMap<String, Integer>();
        pieces.forEach(piece -> counts.put(piece.piece(), piece.quantity()));
        return new Quantities(counts);
    }
}
