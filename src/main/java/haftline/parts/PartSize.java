package haftline.parts;

import haftline.measure.Measured;

/**
 * One measured size of a kit, with the name that it goes by in sentences.
 *
 * @param part the part it is of
 * @param name such as {@code ferrule bore}, unique within a kit
 * @param measured its readings, mm
 */
public record PartSize(Part part, String name, Measured measured) {
    /** A metal part of a kit. */
    public enum Part {
        /** The blade in front of its seating face. */
        BLADE,
        /** The tang behind it. */
        TANG,
        /** The ferrule. */
        FERRULE,
        /** The end cap. */
        CAP
    }
}
