package haftline.findings;

import haftline.measure.Units;

/** Sentences about fits that come in several kinds: tenon, shoulder, bores and their drills. */
final class FitWords {
    private final Finding finding;
    private final Units units;

    FitWords(Finding finding, Units units) {
        this.finding = finding;
        this.units = units;
    }

    String shoulderGap() {
        if (finding.subject().equals("open")) {
            return "The tenon, "
                    + figure()
                    + " long, stands out of the open ferrule's front by "
                    + length(finding.figure() - finding.limit(), 1)
                    + ": trim it flush";
        }
        return finding.subject().equals("tenon")
                ? "The tenon, "
                        + figure()
                        + " long, fills the ferrule's "
                        + against()
                        + " before the rim closes: a gap is left at the shoulder"
                : "The ferrule's chamfer of "
                        + length(finding.figure(), 2)
                        + " makes it look smaller than the wood at the joint: plan a shadow line";
    }

    String tenonFit() {
        if (finding.subject().equals("driven")) {
            return "The tenon is "
                    + length(finding.figure(), 2)
                    + " over the ferrule's smallest bore; a driven one wants 0 to "
                    + length(0.10, 2);
        }
        if (finding.figure() < 0) {
            return "The tenon is "
                    + length(-finding.figure(), 2)
                    + " wider than the ferrule's smallest bore; to bond it, it wants to be "
                    + length(finding.limit(), 2)
                    + " narrower";
        }
        return "The tenon leaves "
                + length(finding.figure(), 2)
                + " in the ferrule's smallest bore, "
                + (finding.figure() < finding.limit() ? "too little" : "too much")
                + " for adhesive: "
                + (finding.figure() < finding.limit() ? "at least " : "at most ")
                + length(finding.limit(), 2);
    }

    String drillNotOnRack() {
        return switch (finding.subject()) {
            case "near enough" ->
                    "The bore of "
                            + length(finding.figure(), 2)
                            + " misses the "
                            + length(finding.limit(), 2)
                            + " that the pressed tang wants";
            case "mouth" ->
                    "The rack holds no drill of "
                            + length(finding.figure(), 2)
                            + " to open the mouth of the tang's bore";
            case "cap" ->
                    "The rack holds no drill of "
                            + length(finding.figure(), 2)
                            + " for the cap's spigot";
            default ->
                    "The rack holds no drill of " + length(finding.figure(), 2) + " for the tang";
        };
    }

    String boreLoose() {
        String bore = finding.place() == Place.CAP ? "The cap's bore leaves " : "The bore leaves ";
        String inside = finding.place() == Place.CAP ? " round the spigot" : " round the tang";
        return switch (finding.subject()) {
            case "pressed" ->
                    "The smallest tang finds no grip: the bore is wider by "
                            + length(finding.figure(), 2);
            case "sleeve" ->
                    bore
                            + length(finding.figure(), 2)
                            + inside
                            + " on the diameter, over "
                            + length(finding.limit(), 2)
                            + ": pack or sleeve it";
            default ->
                    bore
                            + length(finding.figure(), 2)
                            + inside
                            + " on the diameter, over "
                            + length(finding.limit(), 2)
                            + ": a thick glue line";
        };
    }

    String boreTight() {
        return switch (finding.subject()) {
            case "core" ->
                    "The bore of "
                            + length(finding.figure(), 2)
                            + " is narrower than the barbed tang's core of "
                            + length(finding.limit(), 2);
            case "glue line" ->
                    "The bore leaves "
                            + length(finding.figure(), 2)
                            + " on the diameter; adhesive wants at least "
                            + length(finding.limit(), 2);
            case "spigot" ->
                    "The cap's spigot is " + length(-finding.figure(), 2) + " wider than its bore";
            default -> "The tang is " + length(-finding.figure(), 2) + " wider than its bore";
        };
    }

    private String figure() {
        return length(finding.figure(), Say.apart(finding, 1, units));
    }

    private String against() {
        return length(finding.limit(), Say.apart(finding, 1, units));
    }

    private String length(double mm, int decimals) {
        return Say.length(mm, decimals, units);
    }
}
