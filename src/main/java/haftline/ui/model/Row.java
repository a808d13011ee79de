package haftline.ui.model;

import haftline.edit.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * One line of the inspector: a figure that follows, or a field that is typed into or chosen from. A
 * wrong entry leaves the last good value and says what is expected.
 */
public final class Row {
    private final String label;
    private final Kind kind;
    private final Supplier<State> read;
    private final Function<String, Outcome> enter;
    private final Supplier<List<String>> options;
    private final Optional<Supplier<Outcome>> release;
    private final Watched<State> state;

    /** How a row is worked. */
    public enum Kind {
        /** One or several readings are typed. */
        READINGS,
        /** A length or an angle is typed. */
        NUMBER,
        /** A number without a length's unit, or a sign such as a currency's, is typed. */
        PLAIN,
        /** A name is typed. */
        NAME,
        /** One of {@link Row#options()} is chosen. */
        CHOICE,
        /** Yes or no. */
        TICK,
        /** It follows from the others. */
        FIGURE
    }

    /** Where a value comes from. */
    public enum Source {
        /** It was measured. */
        MEASURED,
        /** This piece decides it. */
        PIECE,
        /** The set decides it. */
        SET,
        /** A rule decides it. */
        RULE,
        /** It follows. */
        FOLLOWS
    }

    /**
     * What a row shows.
     *
     * @param text the value, fit to be typed again
     * @param because why it is so, or the doubt of a measurement; may be empty
     * @param source where it comes from
     * @param wrong what was expected in the place of the last entry, or empty where that was good
     */
    public record State(String text, String because, Source source, Optional<String> wrong) {
        static State of(String text, String because, Source source) {
            return new State(text, because, source, Optional.empty());
        }

        static State figure(String text, String because) {
            return of(text, because, Source.FOLLOWS);
        }

        State withWrong(String expected) {
            return new State(text, because, source, Optional.of(expected));
        }
    }

    private Row(
            String label,
            Kind kind,
            Supplier<State> read,
            Function<String, Outcome> enter,
            Supplier<List<String>> options,
            Optional<Supplier<Outcome>> release) {
        this.label = label;
        this.kind = kind;
        this.read = read;
        this.enter = enter;
        this.options = options;
        this.release = release;
        state = new Watched<>(read.get());
    }

    static Row figure(String label, Supplier<State> read) {
        return new Row(
                label,
                Kind.FIGURE,
                read,
                text -> new Outcome.Refused(label + " follows from the others"),
                List::of,
                Optional.empty());
    }

    static Row field(
            String label, Kind kind, Supplier<State> read, Function<String, Outcome> enter) {
        return new Row(label, kind, read, enter, List::of, Optional.empty());
    }

    static Row choice(
            String label,
            Supplier<List<String>> options,
            Supplier<State> read,
            Function<String, Outcome> enter) {
        return new Row(label, Kind.CHOICE, read, enter, options, Optional.empty());
    }

    static Row tick(String label, Supplier<Boolean> read, Function<Boolean, Outcome> enter) {
        return new Row(
                label,
                Kind.TICK,
                () -> State.of(read.get() ? "yes" : "no", "", Source.MEASURED),
                text -> enter.apply(text.equals("yes")),
                () -> List.of("yes", "no"),
                Optional.empty());
    }

    /** The same row, with a way back to what set or rule say. */
    Row releasedBy(Supplier<Outcome> back) {
        return new Row(label, kind, read, enter, options, Optional.of(back));
    }

    /**
     * What it is, in the trade's words.
     *
     * @return the label
     */
    public String label() {
        return label;
    }

    /**
     * How it is worked.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * What may be chosen.
     *
     * @return the words, empty for other kinds
     */
    public List<String> options() {
        return options.get();
    }

    /**
     * What it shows.
     *
     * @return watched
     */
    public Watched<State> state() {
        return state;
    }

    /**
     * Takes what was typed or chosen. What stands there already changes nothing.
     *
     * @param text the text
     * @return done, or what was expected
     */
    public Outcome enter(String text) {
        if (text.strip().equals(state.value().text())) {
            refresh();
            return Outcome.DONE;
        }
        Outcome outcome = enter.apply(text.strip());
        // Told once: a good state between two refusals would have the field put its text back.
        State now = read.get();
        state.set(outcome.refusal().map(now::withWrong).orElse(now));
        return outcome;
    }

    /**
     * Whether it can be left to set or rule.
     *
     * @return true where the piece decides it
     */
    public boolean canRelease() {
        return release.isPresent() && state.value().source() == Source.PIECE;
    }

    /**
     * Leaves it to set or rule.
     *
     * @return done, or why not
     */
    public Outcome release() {
        Outcome outcome =
                release.map(Supplier::get)
                        .orElseGet(() -> new Outcome.Refused(label + " has no rule of its own"));
        refresh();
        return outcome;
    }

    /** Reads its value again; an old complaint goes. */
    void refresh() {
        state.set(read.get());
    }
}
