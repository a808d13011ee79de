package haftline.handle;

/**
 * Why a number is what it is, so that a maker can be told why it may not be dragged.
 *
 * @param subject what the number is of, in the trade's words, such as {@code tenon diameter}
 * @param because a sentence without a full stop
 */
public record Reason(String subject, String because) {}
