package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.Outcome;
import haftline.edit.WorkshopEdits;
import haftline.set.Piece;
import haftline.set.Rates;
import haftline.set.Rates.PieceMinutes;
import haftline.set.Rates.WorkStep;
import haftline.ui.model.WorkshopFields.Limits;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

/** The steps of the work and their minutes, each with the pieces that take another time below. */
public final class StepsModel extends TypedLines<StepsModel.Column, StepsModel.Line> {
    private static final String MINUTES = "min";
    private static final String YES = "yes";
    private static final String NO = "no";
    private static final Limits RANGE = new Limits(0, Rates.MOST_MINUTES);

    /** A column of the table. */
    public enum Column {
        /** What is done. */
        NAME,
        /** Minutes, once for the batch. */
        SETUP,
        /** Minutes for each piece. */
        EACH,
        /** Whether adhesive is mixed for it. */
        GLUING
    }

    /**
     * A step, or a piece that takes another time for it.
     *
     * @param step what is done
     * @param piece the piece that takes another time, or empty for the step itself
     * @param isOfSet whether the set has that piece; other sets may name the workshop's file too
     * @param setup minutes, once for the batch
     * @param each minutes for each piece
     * @param gluing yes or no
     */
    public record Line(
            String step,
            Optional<String> piece,
            boolean isOfSet,
            String setup,
            String each,
            String gluing)
            implements TypedLines.Line<Column> {
        @Override
        public String title() {
            return piece.map(own -> step + " for " + own).orElse(step);
        }

        @Override
        public boolean has(Column column) {
            return piece.isEmpty() || column == Column.EACH;
        }

        @Override
        public String text(Column column) {
            return switch (column) {
                case NAME -> piece.orElse(step);
                case SETUP -> setup;
                case EACH -> each;
                case GLUING -> gluing;
            };
        }
    }

    /**
     * Where a line stands in the workshop's lists.
     *
     * @param step place of its step
     * @param own place of its piece within the step, -1 for the step itself
     */
    private record Place(int step, int own) {}

    /**
     * The steps of an editor's set.
     *
     * @param editor the editor
     */
    public StepsModel(EditorModel editor) {
        super(editor);
        follow();
    }

    @Override
    public boolean isThere() {
        return fields().shop().rates().isPresent();
    }

    private List<WorkStep> steps() {
        return fields().shop().rates().map(Rates::steps).orElse(List.of());
    }

    @Override
    List<Line> read() {
        List<Line> lines = new ArrayList<>();
        List<String> pieces = fields().pieces().stream().map(Piece::name).toList();
        for (WorkStep step : steps()) {
            lines.add(
                    new Line(
                            step.name(),
                            Optional.empty(),
                            true,
                            WorkshopFields.plain(step.setupMinutes()),
                            WorkshopFields.plain(step.eachMinutes()),
                            step.isGluing() ? YES : NO));
            for (PieceMinutes own : step.pieces()) {
                lines.add(
                        new Line(
                                step.name(),
                                Optional.of(own.piece()),
                                pieces.contains(own.piece()),
                                "",
                                WorkshopFields.plain(own.eachMinutes()),
                                ""));
            }
        }
        return lines;
    }

    private Place place(int index) {
        int line = 0;
        for (int i = 0; i < steps().size(); i++) {
            int own = steps().get(i).pieces().size();
            if (index <= line + own) {
                return new Place(i, index - line - 1);
            }
            line += own + 1;
        }
        throw new IndexOutOfBoundsException("line " + index + " of " + line);
    }

    /**
     * Adds a step behind the others, of no minutes yet.
     *
     * @param name what is done
     * @return done, or what was expected
     */
    public Outcome add(String name) {
        Outcome outcome = step(name, -1);
        return outcome.refusal().isPresent()
                ? outcome
                : run(
                        "add step " + name.strip(),
                        steps -> steps.add(new WorkStep(name.strip(), 0, 0, false, List.of())));
    }

    private Outcome step(String name, int but) {
        List<String> others = new ArrayList<>(steps().stream().map(WorkStep::name).toList());
        if (but >= 0) {
            others.remove(but);
        }
        return named(name, "step", "turn", others.stream());
    }

    /**
     * The pieces of the set of which a step does not say that they take another time.
     *
     * @param step the step's name
     * @return their names; empty for an unknown step
     */
    public List<String> others(String step) {
        return steps().stream()
                .filter(each -> each.name().equals(step))
                .findFirst()
                .map(each -> each.pieces().stream().map(PieceMinutes::piece).toList())
                .map(
                        own ->
                                fields().pieces().stream()
                                        .map(Piece::name)
                                        .filter(name -> !own.contains(name))
                                        .toList())
                .orElse(List.of());
    }

    /**
     * Says that a piece takes another time for a step: that of the others, until it is changed.
     *
     * @param step the step's name
     * @param piece one of {@link #others}
     * @return done, or why not
     */
    public Outcome add(String step, String piece) {
        int at = steps().stream().map(WorkStep::name).toList().indexOf(step);
        if (at < 0) {
            return new Outcome.Refused("There is no step " + step);
        }
        return run(
                "add another time of " + step + " for " + piece,
                steps -> {
                    WorkStep was = steps.get(at);
                    List<PieceMinutes> own = new ArrayList<>(was.pieces());
                    own.add(new PieceMinutes(piece, was.eachMinutes()));
                    steps.set(at, was.withPieces(own));
                });
    }

    /**
     * Whether a line can be done earlier: it is a step with another before it.
     *
     * @param index its place in the list
     * @return false for the first
     */
    public boolean canBeEarlier(int index) {
        return index > 0 && lines().value().get(index).piece().isEmpty();
    }

    /**
     * Lets a step and the one before it change places.
     *
     * @param index its place in the list
     * @return done, or why not
     */
    public Outcome earlier(int index) {
        if (!canBeEarlier(index)) {
            return new Outcome.Refused("No step is before it");
        }
        Place place = place(index);
        return run(
                "do " + lines().value().get(index).step() + " earlier",
                steps -> Collections.swap(steps, place.step() - 1, place.step()));
    }

    @Override
    public Outcome remove(int index) {
        Place place = place(index);
        return run(
                place.own() < 0
                        ? "strike out step " + lines().value().get(index).step()
                        : "strike out another time of " + lines().value().get(index).title(),
                steps -> {
                    if (place.own() < 0) {
                        steps.remove(place.step());
                        return;
                    }
                    WorkStep was = steps.get(place.step());
                    List<PieceMinutes> own = new ArrayList<>(was.pieces());
                    own.remove(place.own());
                    steps.set(place.step(), was.withPieces(own));
                });
    }

    @Override
    Outcome take(int index, Column column, String entry) {
        Place place = place(index);
        String title = lines().value().get(index).title();
        WorkStep was = steps().get(place.step());
        return switch (column) {
            case NAME -> {
                Outcome outcome = step(entry, place.step());
                yield outcome.refusal().isPresent()
                        ? outcome
                        : run(
                                "rename step " + title,
                                steps -> steps.set(place.step(), was.withName(entry)));
            }
            case SETUP -> minutes(entry, "setting up of " + title, place, was::withSetup);
            case EACH ->
                    minutes(
                            entry,
                            "minutes of " + title,
                            place,
                            minutes -> timed(was, place.own(), minutes));
            case GLUING ->
                    run(
                            "change gluing of " + title,
                            steps -> steps.set(place.step(), was.withGluing(entry.equals(YES))));
        };
    }

    private static WorkStep timed(WorkStep was, int own, double minutes) {
        if (own < 0) {
            return was.withEach(minutes);
        }
        List<PieceMinutes> pieces = new ArrayList<>(was.pieces());
        pieces.set(own, new PieceMinutes(pieces.get(own).piece(), minutes));
        return was.withPieces(pieces);
    }

    private Outcome minutes(
            String entry, String what, Place place, DoubleFunction<WorkStep> changed) {
        return fields().taken(
                        entry,
                        Entry.number(entry, MINUTES),
                        RANGE,
                        false,
                        "Expected minutes from 0 to " + WorkshopFields.plain(RANGE.greatest()),
                        minutes ->
                                command(
                                        "change " + what,
                                        steps ->
                                                steps.set(
                                                        place.step(),
                                                        changed.apply(minutes.orElseThrow()))));
    }

    private Outcome run(String name, Consumer<List<WorkStep>> change) {
        return fields().run(command(name, change));
    }

    private static Command command(String name, Consumer<List<WorkStep>> change) {
        return WorkshopEdits.rates(
                name,
                rates -> {
                    List<WorkStep> steps = new ArrayList<>(rates.steps());
                    change.accept(steps);
                    return rates.toBuilder().steps(steps).build();
                });
    }
}
