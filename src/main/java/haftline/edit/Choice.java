package haftline.edit;

import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** One thing that a maker may decide over the rules, for the set or for one piece. */
public enum Choice {
    /** Handle length as a multiple of the blade's. */
    LENGTH_RATIO("length ratio", number(Choices::lengthRatio, ChoicesBuilder::lengthRatio)),
    /** The greatest diameter. */
    SWELL("swell", number(Choices::swellMm, ChoicesBuilder::swellMm)),
    /** The butt's diameter. */
    BUTT("butt", number(Choices::buttMm, ChoicesBuilder::buttMm)),
    /** Pressed or bonded. */
    FIT("fit", word(Choices::fit, ChoicesBuilder::fit)),
    /** Drill for the tang. */
    TANG_DRILL("tang drill", number(Choices::tangDrillMm, ChoicesBuilder::tangDrillMm)),
    /** Depth of the tang's bore. */
    TANG_DEPTH("tang bore's depth", number(Choices::tangDepthMm, ChoicesBuilder::tangDepthMm)),
    /** Drill for the cap's spigot. */
    CAP_DRILL("cap drill", number(Choices::capDrillMm, ChoicesBuilder::capDrillMm)),
    /** Depth of the cap's bore. */
    CAP_DEPTH("cap bore's depth", number(Choices::capDepthMm, ChoicesBuilder::capDepthMm)),
    /** Diameter of the tenon. */
    TENON_DIAMETER(
            "tenon diameter", number(Choices::tenonDiameterMm, ChoicesBuilder::tenonDiameterMm)),
    /** Length of the tenon. */
    TENON_LENGTH("tenon length", number(Choices::tenonLengthMm, ChoicesBuilder::tenonLengthMm)),
    /** How far a bore may leave the axis. */
    WANDER("wander", word(Choices::wander, ChoicesBuilder::wander)),
    /** How the piece is held. */
    USE("use", word(Choices::use, ChoicesBuilder::use)),
    /** Side of the blank. */
    BLANK_SIDE("blank's side", number(Choices::blankSideMm, ChoicesBuilder::blankSideMm)),
    /** Length of the blank. */
    BLANK_LENGTH("blank's length", number(Choices::blankLengthMm, ChoicesBuilder::blankLengthMm));

    /** How a choice is looked up and carried over, whatever its type. */
    private record Access(
            Function<Choices, Optional<?>> value, BiConsumer<Choices, ChoicesBuilder> carry) {}

    private final String words;
    private final Access access;

    Choice(String words, Access access) {
        this.words = words;
        this.access = access;
    }

    private static Access number(
            Function<Choices, OptionalDouble> value, BiConsumer<ChoicesBuilder, Double> set) {
        return word(choices -> value.apply(choices).stream().boxed().findFirst(), set);
    }

    private static <T> Access word(
            Function<Choices, Optional<T>> value, BiConsumer<ChoicesBuilder, T> set) {
        return new Access(
                value::apply,
                (from, to) -> value.apply(from).ifPresent(chosen -> set.accept(to, chosen)));
    }

    /**
     * What is chosen, in the trade's words.
     *
     * @return such as {@code tang drill}
     */
    public String words() {
        return words;
    }

    /**
     * The value that is chosen.
     *
     * @param choices where to look
     * @return a number in mm or without unit, or a word's constant; empty where nothing is decided
     */
    public Optional<?> value(Choices choices) {
        return access.value().apply(choices);
    }

    /**
     * Choices without this one, so that the set or the rule decides.
     *
     * @param choices the choices
     * @return the changed copy
     */
    public Choices without(Choices choices) {
        ChoicesBuilder kept = Choices.builder();
        for (Choice each : values()) {
            if (each != this) {
                each.access.carry().accept(choices, kept);
            }
        }
        choices.nodeDiametersMm().forEach(kept::nodeDiameterMm);
        choices.nodePlaces().forEach(kept::nodePlace);
        return kept.build();
    }

    /**
     * Choices with this one taken from others.
     *
     * @param choices the choices
     * @param from where this one is decided; where it is not, it is not afterwards
     * @return the changed copy
     */
    public Choices taken(Choices choices, Choices from) {
        ChoicesBuilder changed = without(choices).toBuilder();
        access.carry().accept(from, changed);
        return changed.build();
    }
}
