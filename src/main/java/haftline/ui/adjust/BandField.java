package haftline.ui.adjust;

import haftline.adjust.solve.Band;
import haftline.measure.Length;
import haftline.measure.Units;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;

/** Takes a band such as {@code 0 to 6 mm}; empty leaves it to the rules. */
final class BandField extends TextField {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final Supplier<Units> units;
    private final Consumer<Optional<Band>> taken;

    /**
     * @param id its id
     * @param name what the band is of
     * @param units the unit where none is typed
     * @param taken told each band that is good
     */
    BandField(String id, String name, Supplier<Units> units, Consumer<Optional<Band>> taken) {
        this.units = units;
        this.taken = taken;
        setId(id);
        setPromptText("as the rules say");
        setAccessibleText(name + ", from and to; empty for the rules' band");
        setTooltip(new Tooltip("Takes 0 to 6 mm, or 1/8\" to 1/2\"; empty for the rules' band"));
        textProperty().addListener((o, was, is) -> read());
    }

    private void read() {
        boolean isGood = getText().isBlank();
        if (isGood) {
            taken.accept(Optional.empty());
        } else {
            Optional<Band> band = band();
            band.ifPresent(b -> taken.accept(band));
            isGood = band.isPresent();
        }
        pseudoClassStateChanged(WRONG, !isGood);
        setAccessibleHelp(isGood ? "" : "expected two lengths, such as 0 to 6 mm");
    }

    private Optional<Band> band() {
        String[] ends = getText().split("\\s*(?:\\bto\\b|–|:)\\s*", 2);
        if (ends.length != 2) {
            return Optional.empty();
        }
        Units unit = ends[1].strip().endsWith("mm") ? Units.MM : units.get();
        OptionalDouble low = Length.parse(ends[0], unit);
        OptionalDouble high = Length.parse(ends[1], unit);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Band(low.getAsDouble(), high.getAsDouble()));
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }
}
