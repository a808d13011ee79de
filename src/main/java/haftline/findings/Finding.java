package haftline.findings;

import java.util.OptionalDouble;

/**
 * One thing that is wrong with a handle, or worth knowing. It holds figures only; its words are
 * made on demand, since most are made in the middle of a drag and never read.
 *
 * @param code what it is
 * @param gravity how grave
 * @param zone where on the handle, in one of the words of {@link Place}
 * @param atX place, mm from the shoulder; empty where it has none
 * @param figure the figure found, in {@code unit}; empty where it has none
 * @param limit what it is held against, in {@code unit}; empty where it has none
 * @param unit unit of figure and limit: mm, g, deg, % or an empty text for a plain number
 * @param subject what it is about where the code alone does not say, such as a reading's or a
 *     detail's name; may be empty
 */
public record Finding(
        Code code,
        Gravity gravity,
        Place zone,
        OptionalDouble atX,
        OptionalDouble figure,
        OptionalDouble limit,
        String unit,
        String subject) {}
