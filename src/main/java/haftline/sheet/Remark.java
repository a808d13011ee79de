package haftline.sheet;

import haftline.findings.Gravity;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A finding in words.
 *
 * @param gravity how grave it is
 * @param message a sentence with its figures
 * @param atX where on the piece, mm from the shoulder, where it has a place along the axis
 * @param remedy what mends it, where something that was tried does
 */
public record Remark(Gravity gravity, String message, OptionalDouble atX, Optional<String> remedy) {
    /**
     * A sign for the gravity that is told apart without colour.
     *
     * @return one character
     */
    public String mark() {
        return switch (gravity) {
            case STOP -> "■";
            case WARN -> "▲";
            case NOTE -> "○";
        };
    }
}
