package haftline.handle;

import haftline.measure.Checks;

/**
 * The maker's rules: every allowance and limit that is a habit rather than a law. {@link
 * #COMMON_PRACTICE} is where a maker starts; all of it is common practice without a source unless a
 * field says otherwise, and all of it may be changed.
 *
 * @param lengths how long a handle is
 * @param fits how a tang is held
 * @param bores how holes are made
 * @param tenons how the ferrule is held
 * @param walls how thin wood may be
 * @param wander how far a bore may leave the axis
 * @param balance where the finished piece should balance
 * @param blanks what is cut to waste
 * @param climate where the piece is made and where it lives
 * @param copying what a copying attachment can follow
 * @param readings when readings disagree
 * @param spreads how far a made handle is from the drawn one
 */
public record Rules(
        Lengths lengths,
        Fits fits,
        Bores bores,
        Tenons tenons,
        Walls walls,
        Wander wander,
        Balance balance,
        Blanks blanks,
        Climate climate,
        Copying copying,
        Readings readings,
        Spreads spreads) {

    /** Where a maker starts; common practice, no source. */
    public static final Rules COMMON_PRACTICE =
            new Rules(
                    Lengths.COMMON_PRACTICE,
                    Fits.COMMON_PRACTICE,
                    Bores.COMMON_PRACTICE,
                    Tenons.COMMON_PRACTICE,
                    Walls.COMMON_PRACTICE,
                    // Centre drill first, on the lathe, remounted between cones.
                    new Wander(0.1, 0.005),
                    Balance.COMMON_PRACTICE,
                    Blanks.COMMON_PRACTICE,
                    Climate.COMMON_PRACTICE,
                    Copying.COMMON_PRACTICE,
                    Readings.COMMON_PRACTICE,
                    Spreads.COMMON_PRACTICE);

    /**
     * The same rules with another cutter or follower.
     *
     * @param other how work is copied
     * @return the changed copy
     */
    public Rules withCopying(Copying other) {
        return new Rules(
                lengths, fits, bores, tenons, walls, wander, balance, blanks, climate, other,
                readings, spreads);
    }

    /**
     * How long a handle is.
     *
     * @param ratio handle length, ferrule's front face to butt with cap, as a multiple of the
     *     blade's, 0.1 to 10
     * @param slideShare how far a node may slide either way, as a share of the visible wood, 0 to
     *     0.2
     */
    public record Lengths(double ratio, double slideShare) {
        static final Lengths COMMON_PRACTICE = new Lengths(1, 0.06);

        /** Checks the ranges. */
        public Lengths {
            Checks.within("length ratio", ratio, 0.1, 10);
            Checks.within("slide share", slideShare, 0, 0.2);
        }
    }

    /**
     * How a tang is held.
     *
     * @param pressedUnderMm how far a pressed bore lies under the tang, mm
     * @param pressedBarbUnderMm how far a pressed bore lies under the barbs, mm
     * @param pressedFlatLeast least thickness over width of a flat tang that is pressed in a round
     *     bore
     * @param bondedOverMm how far a bonded bore lies over the largest reading, at least, mm on the
     *     diameter
     * @param lineThinMm thinnest good glue line, mm a side
     * @param lineThickMm thickest good glue line, mm a side
     * @param looseMm clearance on the diameter above which adhesive alone is a warning, mm
     * @param sleeveMm clearance on the diameter above which the tang is packed or sleeved, mm
     * @param splitWarn split index above which a pressed tang is a warning
     */
    public record Fits(
            double pressedUnderMm,
            double pressedBarbUnderMm,
            double pressedFlatLeast,
            double bondedOverMm,
            double lineThinMm,
            double lineThickMm,
            double looseMm,
            double sleeveMm,
            double splitWarn) {
        static final Fits COMMON_PRACTICE =
                new Fits(0.5, 0.25, 0.6, 0.1, 0.05, 0.20, 0.6, 1.0, 1.5);

        /** Checks the ranges. */
        public Fits {
            Checks.withinMm("pressed under", pressedUnderMm, 0, 3);
            Checks.withinMm("pressed barb under", pressedBarbUnderMm, 0, 3);
            Checks.within("pressed flat least", pressedFlatLeast, 0, 1);
            Checks.withinMm("bonded over", bondedOverMm, 0, 3);
            Checks.withinMm("thinnest glue line", lineThinMm, 0, 2);
            Checks.withinMm("thickest glue line", lineThickMm, lineThinMm, 2);
            Checks.withinMm("loose", looseMm, 0, 5);
            Checks.withinMm("sleeve", sleeveMm, looseMm, 5);
            Checks.within("split warn", splitWarn, 0.1, 20);
        }
    }

    /**
     * How holes are made.
     *
     * @param depthAllowanceMm how much deeper than the tang's tip a bore goes at full diameter, mm
     * @param capOverMm how far the cap's bore lies over the spigot's largest reading, mm on the
     *     diameter
     * @param capAllowanceMm how much deeper than the spigot the cap's bore goes, mm
     * @param pointAngleDeg included angle of the drills' points where a drill does not say,
     *     degrees; 180 is flat
     * @param eccentricityMm how far a wobbling drill's axis runs out; the hole is the drill and
     *     twice that, mm
     * @param mostSteps most drills for a tapered tang, 1 to 6
     * @param webMm least wood between two bores, points included, mm; the larger bore where that is
     *     more
     */
    public record Bores(
            double depthAllowanceMm,
            double capOverMm,
            double capAllowanceMm,
            double pointAngleDeg,
            double eccentricityMm,
            int mostSteps,
            double webMm) {
        static final Bores COMMON_PRACTICE = new Bores(2, 0.1, 1, 118, 0, 3, 8);

        /** Checks the ranges. */
        public Bores {
            Checks.withinMm("depth allowance", depthAllowanceMm, 0, 20);
            Checks.withinMm("cap bore over", capOverMm, 0, 3);
            Checks.withinMm("cap allowance", capAllowanceMm, 0, 20);
            Checks.withinDegrees("point angle", pointAngleDeg, 30, 180);
            Checks.withinMm("drill eccentricity", eccentricityMm, 0, 2);
            Checks.within("most steps", mostSteps, 1, 6);
            Checks.withinMm("web", webMm, 0, 50);
        }
    }

    /**
     * How the ferrule is held.
     *
     * @param bondedUnderMm how far a bonded tenon in wood lies under the ferrule's smallest bore
     *     reading, mm on the diameter
     * @param drivenOverMm how far a tenon without adhesive lies over it, mm
     * @param plasticUnderMm how far a tenon in plastics lies under it, mm
     * @param shortMm how much shorter than the ferrule's inside the tenon is, so that the rim
     *     closes first, mm
     * @param driven whether the ferrule is driven on dry rather than bonded
     * @param looseGapMm winter gap on the diameter above which a ferrule held by friction is called
     *     loose, mm
     */
    public record Tenons(
            double bondedUnderMm,
            double drivenOverMm,
            double plasticUnderMm,
            double shortMm,
            boolean driven,
            double looseGapMm) {
        static final Tenons COMMON_PRACTICE = new Tenons(0.10, 0.05, 0.20, 0.5, false, 0.20);

        /** Checks the ranges. */
        public Tenons {
            Checks.withinMm("tenon under, bonded", bondedUnderMm, 0, 2);
            Checks.withinMm("tenon over, driven", drivenOverMm, 0, 2);
            Checks.withinMm("tenon under, plastics", plasticUnderMm, 0, 2);
            Checks.withinMm("tenon short", shortMm, -2, 10);
            Checks.withinMm("loose gap", looseGapMm, 0, 2);
        }
    }

    /**
     * How thin the material over a bore may be at the worst wander, mm.
     *
     * @param tenonWoodMm on the tenon, wood
     * @param tenonPlasticMm on the tenon, plastics
     * @param bodyWoodMm on the body over the tang's bore, wood
     * @param bodyPlasticMm on the body over the tang's bore, plastics
     * @param capMm over the cap's bore
     * @param stopMm under this nothing is made
     */
    public record Walls(
            double tenonWoodMm,
            double tenonPlasticMm,
            double bodyWoodMm,
            double bodyPlasticMm,
            double capMm,
            double stopMm) {
        static final Walls COMMON_PRACTICE = new Walls(2.5, 3.0, 3.0, 3.5, 2.5, 1.5);

        /** Checks the ranges. */
        public Walls {
            Checks.withinMm("tenon wall, wood", tenonWoodMm, 0, 30);
            Checks.withinMm("tenon wall, plastics", tenonPlasticMm, 0, 30);
            Checks.withinMm("body wall, wood", bodyWoodMm, 0, 30);
            Checks.withinMm("body wall, plastics", bodyPlasticMm, 0, 30);
            Checks.withinMm("cap wall", capMm, 0, 30);
            Checks.withinMm("stop wall", stopMm, 0, 30);
        }
    }

    /**
     * Where the finished piece should balance, behind the ferrule's front face.
     *
     * @param lowMm mm, negative in front of it
     * @param highMm mm
     */
    public record Balance(double lowMm, double highMm) {
        static final Balance COMMON_PRACTICE = new Balance(0, 15);

        /** Checks the ranges. */
        public Balance {
            Checks.withinMm("balance, from", lowMm, -500, 500);
            Checks.withinMm("balance, to", highMm, lowMm, 500);
        }
    }

    /**
     * What is cut to waste.
     *
     * @param centreErrorMm how far the blank's centre is missed, mm
     * @param mouthErrorMm how far a bore's mouth is off the centre, mm
     * @param cleanUpMm depth of the cut that cleans up a blank, mm
     * @param facingMm faced off a bored end, mm
     * @param partingMm waste at a butt that is parted off rather than bored and faced, mm
     * @param sandingMm left on the diameter for sanding, mm
     */
    public record Blanks(
            double centreErrorMm,
            double mouthErrorMm,
            double cleanUpMm,
            double facingMm,
            double partingMm,
            double sandingMm) {
        static final Blanks COMMON_PRACTICE = new Blanks(0.5, 0.5, 0.5, 1.5, 12, 0.3);

        /** Checks the ranges. */
        public Blanks {
            Checks.withinMm("centre error", centreErrorMm, 0, 20);
            Checks.withinMm("mouth error", mouthErrorMm, 0, 20);
            Checks.withinMm("clean-up", cleanUpMm, 0, 20);
            Checks.withinMm("facing", facingMm, 0, 50);
            Checks.withinMm("parting waste", partingMm, 0, 100);
            Checks.withinMm("sanding", sandingMm, 0, 5);
        }
    }

    /**
     * Where the piece is made and the driest and dampest air it will live in.
     *
     * @param shopC temperature in the workshop, °C
     * @param shopRh relative humidity in the workshop, %
     * @param dryC temperature in a heated room in winter, °C
     * @param dryRh relative humidity there, %
     * @param dampC temperature in a damp kitchen, °C
     * @param dampRh relative humidity there, %
     */
    public record Climate(
            double shopC, double shopRh, double dryC, double dryRh, double dampC, double dampRh) {
        static final Climate COMMON_PRACTICE = new Climate(18, 55, 21, 30, 20, 70);

        /** Checks the ranges. */
        public Climate {
            Checks.within("shop temperature", shopC, -1, 60);
            Checks.within("shop humidity", shopRh, 5, 95);
            Checks.within("dry room temperature", dryC, -1, 60);
            Checks.within("dry room humidity", dryRh, 5, 95);
            Checks.within("damp room temperature", dampC, -1, 60);
            Checks.within("damp room humidity", dampRh, 5, 95);
        }
    }

    /**
     * What a copying attachment can follow.
     *
     * @param noseMm radius of the cutter's nose, mm
     * @param followerMm radius of the follower, mm
     * @param steepestDeg steepest slope that is copied, degrees from the axis
     */
    public record Copying(double noseMm, double followerMm, double steepestDeg) {
        static final Copying COMMON_PRACTICE = new Copying(1.5, 1.5, 55);

        /** Greatest radius of nose and follower, mm. */
        public static final double GREATEST_RADIUS_MM = 30;

        /** Checks the ranges. */
        public Copying {
            Checks.withinMm("cutter nose", noseMm, 0, GREATEST_RADIUS_MM);
            Checks.withinMm("follower", followerMm, 0, GREATEST_RADIUS_MM);
            Checks.withinDegrees("steepest slope", steepestDeg, 5, 89);
        }
    }

    /**
     * When readings disagree.
     *
     * @param spreadMm spread above which a note asks to measure again, mm
     * @param ovalMm difference of a ferrule's axes above which it is called oval, mm
     */
    public record Readings(double spreadMm, double ovalMm) {
        static final Readings COMMON_PRACTICE = new Readings(0.15, 0.10);

        /** Checks the ranges. */
        public Readings {
            Checks.withinMm("spread", spreadMm, 0, 10);
            Checks.withinMm("oval", ovalMm, 0, 10);
        }
    }
}
