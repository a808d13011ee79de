package haftline.set;

import haftline.measure.Checks;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How gauges and copying templates are made. All defaults are common practice without a source
 * unless a field says otherwise.
 *
 * @param cutting what cuts them
 * @param sheet what they are cut from
 * @param lettering how text is written on them
 * @param gauges which gauges are made, and how
 * @param copying whether copying templates are made, and how
 */
public record TemplateSettings(
        Cutting cutting, Sheet sheet, Lettering lettering, Gauges gauges, Copying copying) {
    /** Where a maker starts. */
    public static final TemplateSettings COMMON_PRACTICE =
            new TemplateSettings(
                    Cutting.COMMON_PRACTICE,
                    Sheet.COMMON_PRACTICE,
                    Lettering.STROKES,
                    Gauges.COMMON_PRACTICE,
                    Copying.COMMON_PRACTICE);

    /** What cuts cards out of a sheet. */
    public enum Tool {
        /** Saw on the waste side, file to the line. */
        HAND_SAW,
        /** A beam that burns away a kerf. */
        LASER,
        /** A turning bit that leaves inside corners round. */
        ROUTER
    }

    /** How text is written on cards. */
    public enum Lettering {
        /** Single strokes, each written once. */
        STROKES,
        /** Outlines, to be filled. */
        OUTLINES,
        /** Text in the font of whatever program reads the file. */
        FONT,
        /** No text. */
        NONE
    }

    /**
     * What cuts the cards. The figures of a tool not in use are kept for the day it is.
     *
     * @param tool the tool in use
     * @param kerfMm width of the laser's cut, mm, 0 to 2
     * @param bitMm diameter of the router's bit, mm, 0.2 to 30
     * @param cornersRelieved whether a router may open square inside corners
     */
    public record Cutting(Tool tool, double kerfMm, double bitMm, boolean cornersRelieved) {
        /**
         * By hand. A kerf of 0.15 mm in 3 mm fibreboard is one shop's table, 0.1 to 0.3 is met
         * elsewhere; a bit of 3.175 mm is the common eighth of an inch.
         */
        public static final Cutting COMMON_PRACTICE =
                new Cutting(Tool.HAND_SAW, 0.15, 3.175, false);

        /** Checks the ranges. */
        public Cutting {
            Checks.withinMm("kerf", kerfMm, 0, 2);
            Checks.withinMm("bit", bitMm, 0.2, 30);
        }
    }

    /**
     * What the cards are cut from.
     *
     * @param widthMm along the handles, mm, 20 to 5000
     * @param heightMm across them, mm, 20 to 5000
     * @param marginMm kept free along the edges, mm, 0 to 100
     * @param gapMm between two cards, mm, 0 to 50
     * @param thicknessMm mm, 0.2 to 25; noted on the cards
     */
    public record Sheet(
            double widthMm, double heightMm, double marginMm, double gapMm, double thicknessMm) {
        /** What check bars and edges take of the paper along its long side, mm. */
        private static final double LONG_EDGES_MM = 20;

        /** What note, check bars and edges take of it along its short side, mm. */
        private static final double SHORT_EDGES_MM = 42;

        /**
         * What a sheet of A4 on its side leaves beside note and check bars, to be glued to what is
         * sawn; hardboard of 3 mm (3 to 6 mm is usual).
         */
        public static final Sheet COMMON_PRACTICE = new Sheet(277, 168, 2, 3, 3);

        /** Least that the margins leave of either side, mm. */
        public static final double LEAST_ROOM_MM = 1;

        /**
         * The same as large as a sheet of paper on its side leaves.
         *
         * @param paper what is printed on
         * @return the changed copy, its sides in whole mm
         */
        public Sheet on(FileSettings.Paper paper) {
            return new Sheet(
                    Math.floor(paper.longEdgeMm() - LONG_EDGES_MM),
                    Math.floor(paper.shortEdgeMm() - SHORT_EDGES_MM),
                    marginMm,
                    gapMm,
                    thicknessMm);
        }

        /** Checks the ranges, and that the margins leave room. */
        public Sheet {
            Checks.withinMm("sheet width", widthMm, 20, 5000);
            Checks.withinMm("sheet height", heightMm, 20, 5000);
            Checks.withinMm("sheet margin", marginMm, 0, 100);
            Checks.withinMm("gap between cards", gapMm, 0, 50);
            Checks.withinMm("sheet thickness", thicknessMm, 0.2, 25);
            Checks.withinMm(
                    "room inside the margins",
                    Math.min(widthMm, heightMm) - 2 * marginMm,
                    LEAST_ROOM_MM,
                    5000);
        }
    }

    /**
     * Which gauges are made, and how.
     *
     * @param profile whether the negative half-profile is made
     * @param slots whether sizing slots are made
     * @param storyRod whether a story rod is made
     * @param cards which of them share a card
     * @param register the face that the profile gauge bears on
     * @param reliefMm width of the relief at sharp joints, mm, 0 for none, to 6
     * @param clearanceMm air between the gauge and the finished work, mm, 0 to 2: 0 to judge by the
     *     light gap, 0.3 for roughing
     * @param slotsOverMm how much wider than the finished diameter the slots are, mm, 0 to 3
     * @param tenonToleranceMm half the difference of the tenon's go and no-go slots, mm, 0.01 to
     *     0.5
     * @param hangingHoleMm diameter of the hole to hang a card by, mm, 0 for none, to 12
     */
    public record Gauges(
            boolean profile,
            boolean slots,
            boolean storyRod,
            Cards cards,
            Register register,
            double reliefMm,
            double clearanceMm,
            double slotsOverMm,
            double tenonToleranceMm,
            double hangingHoleMm) {
        /** All three; slots apart, for on one card they would be longer than a small sheet. */
        public static final Gauges COMMON_PRACTICE =
                new Gauges(
                        true,
                        true,
                        true,
                        Cards.SLOTS_APART,
                        Register.FERRULE_FACE,
                        2,
                        0,
                        0,
                        0.05,
                        5);

        /** Which gauges share a card. */
        public enum Cards {
            /** A card for each. */
            EACH_ALONE,
            /** Profile and story rod share one, the slots have their own. */
            SLOTS_APART,
            /** All on one. */
            ALL_ON_ONE
        }

        /** The face that a profile gauge bears on. */
        public enum Register {
            /** The front face of the mounted ferrule. */
            FERRULE_FACE,
            /** The bare shoulder, before the ferrule is on. */
            SHOULDER
        }

        /** Checks the ranges. */
        public Gauges {
            Checks.withinMm("relief", reliefMm, 0, 6);
            Checks.withinMm("clearance", clearanceMm, 0, 2);
            Checks.withinMm("slots over", slotsOverMm, 0, 3);
            Checks.withinMm("tenon tolerance", tenonToleranceMm, 0.01, 0.5);
            Checks.withinMm("hanging hole", hangingHoleMm, 0, 12);
        }

        /**
         * Changes some of them.
         *
         * @return a builder that begins with these
         */
        public GaugesBuilder toBuilder() {
            return new GaugesBuilder(this);
        }

        /**
         * Others of them made the same way.
         *
         * @param newProfile whether the negative half-profile is made
         * @param newSlots whether sizing slots are made
         * @param newStoryRod whether a story rod is made
         * @return the changed copy
         */
        public Gauges withMade(boolean newProfile, boolean newSlots, boolean newStoryRod) {
            return new Gauges(
                    newProfile,
                    newSlots,
                    newStoryRod,
                    cards,
                    register,
                    reliefMm,
                    clearanceMm,
                    slotsOverMm,
                    tenonToleranceMm,
                    hangingHoleMm);
        }
    }

    /**
     * Whether copying templates are made, and how. Nose and follower stand with the rules, for
     * findings on the handle need them too.
     *
     * @param made whether they are made
     * @param sides whether one side of the axis is cut or both
     * @param backMm depth of a one-sided card below the axis, mm, 2 to 200
     * @param runOnMm straight run before the shoulder, mm, 0 to 50
     * @param runOffMm straight run behind the seat, mm, 0 to 50
     * @param radialRatio how far the follower moves for each mm of the cutter across the axis, 0.25
     *     to 4; 1 on one slide, 2 where the cutter sits half-way to the follower on a pivot
     * @param cutterAngleDeg angle between the flanks of a pointed cutter, degrees, 10 to 150; where
     *     given, it may lower the steepest slope of the rules
     * @param cutterClearanceDeg air between its flank and the work, degrees, 0 to 20; at least 2, 7
     *     advised (metal-turning practice)
     * @param holes mounting holes, may be none
     */
    public record Copying(
            boolean made,
            Sides sides,
            double backMm,
            double runOnMm,
            double runOffMm,
            double radialRatio,
            OptionalDouble cutterAngleDeg,
            double cutterClearanceDeg,
            List<Hole> holes) {
        /** One-sided, runs of 12 mm (10 to 15 is usual), two screw holes along the back. */
        public static final Copying COMMON_PRACTICE =
                new Copying(
                        true,
                        Sides.ONE,
                        28,
                        12,
                        12,
                        1,
                        OptionalDouble.empty(),
                        7,
                        List.of(
                                new Hole(Hole.End.SHOULDER, 5, -20, 5),
                                new Hole(Hole.End.SEAT, 5, -20, 5)));

        /** Which sides of the axis are cut. */
        public enum Sides {
            /** One, with a straight back. */
            ONE,
            /** Both, so that it may be turned over. */
            BOTH
        }

        /** Checks the ranges and copies the list. */
        public Copying {
            Checks.withinMm("back", backMm, 2, 200);
            Checks.withinMm("run on", runOnMm, 0, 50);
            Checks.withinMm("run off", runOffMm, 0, 50);
            Checks.within("radial ratio", radialRatio, 0.25, 4);
            cutterAngleDeg.ifPresent(angle -> Checks.within("cutter angle", angle, 10, 150));
            Checks.withinDegrees("cutter clearance", cutterClearanceDeg, 0, 20);
            holes = List.copyOf(holes);
        }

        /**
         * Changes some of it.
         *
         * @return a builder that begins with this
         */
        public CopyingBuilder toBuilder() {
            return new CopyingBuilder(this);
        }

        /**
         * The same, made or not.
         *
         * @param nowMade whether they are made
         * @return the changed copy
         */
        public Copying withMade(boolean nowMade) {
            return new Copying(
                    nowMade,
                    sides,
                    backMm,
                    runOnMm,
                    runOffMm,
                    radialRatio,
                    cutterAngleDeg,
                    cutterClearanceDeg,
                    holes);
        }
    }

    /**
     * A hole by which a copying template is held.
     *
     * @param from the end line that it is measured from
     * @param beyondMm how far beyond that line, away from the work, mm, -500 to 200; negative is
     *     between the two lines
     * @param heightMm over the axis, mm, -200 to 200; negative towards the back
     * @param diameterMm mm, 0.5 to 50
     */
    public record Hole(End from, double beyondMm, double heightMm, double diameterMm) {
        /** One of the template's end lines. */
        public enum End {
            /** The shoulder. */
            SHOULDER,
            /** The seat. */
            SEAT
        }

        /** Checks the ranges. */
        public Hole {
            Checks.withinMm("mounting hole, beyond", beyondMm, -500, 200);
            Checks.withinMm("mounting hole, height", heightMm, -200, 200);
            Checks.withinMm("mounting hole, diameter", diameterMm, 0.5, 50);
        }
    }

    /**
     * The same with another tool or other figures of it.
     *
     * @param other what cuts the cards
     * @return the changed copy
     */
    public TemplateSettings withCutting(Cutting other) {
        return new TemplateSettings(other, sheet, lettering, gauges, copying);
    }

    /**
     * The same on another sheet.
     *
     * @param other what the cards are cut from
     * @return the changed copy
     */
    public TemplateSettings withSheet(Sheet other) {
        return new TemplateSettings(cutting, other, lettering, gauges, copying);
    }

    /**
     * The same with text written otherwise.
     *
     * @param other how text is written
     * @return the changed copy
     */
    public TemplateSettings withLettering(Lettering other) {
        return new TemplateSettings(cutting, sheet, other, gauges, copying);
    }

    /**
     * The same with other gauges.
     *
     * @param other which gauges are made, and how
     * @return the changed copy
     */
    public TemplateSettings withGauges(Gauges other) {
        return new TemplateSettings(cutting, sheet, lettering, other, copying);
    }

    /**
     * The same with other copying templates.
     *
     * @param other whether copying templates are made, and how
     * @return the changed copy
     */
    public TemplateSettings withCopying(Copying other) {
        return new TemplateSettings(cutting, sheet, lettering, gauges, other);
    }
}
