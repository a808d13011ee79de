package haftline.handle;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Collects {@link Choices} one by one; each method sets the choice of its name and returns this
 * builder.
 */
public final class ChoicesBuilder {
    private OptionalDouble lengthRatio = OptionalDouble.empty();
    private OptionalDouble swellMm = OptionalDouble.empty();
    private OptionalDouble buttMm = OptionalDouble.empty();
    private Optional<Fit> fit = Optional.empty();
    private OptionalDouble tangDrillMm = OptionalDouble.empty();
    private OptionalDouble tangDepthMm = OptionalDouble.empty();
    private OptionalDouble capDrillMm = OptionalDouble.empty();
    private OptionalDouble capDepthMm = OptionalDouble.empty();
    private OptionalDouble tenonDiameterMm = OptionalDouble.empty();
    private OptionalDouble tenonLengthMm = OptionalDouble.empty();
    private Optional<Wander> wander = Optional.empty();
    private Optional<Use> use = Optional.empty();
    private OptionalDouble blankSideMm = OptionalDouble.empty();
    private OptionalDouble blankLengthMm = OptionalDouble.empty();
    private final Map<String, Double> nodeDiametersMm = new HashMap<>();
    private final Map<String, Double> nodePlaces = new HashMap<>();

    ChoicesBuilder() {}

    ChoicesBuilder(Choices from) {
        lengthRatio = from.lengthRatio();
        swellMm = from.swellMm();
        buttMm = from.buttMm();
        fit = from.fit();
        tangDrillMm = from.tangDrillMm();
        tangDepthMm = from.tangDepthMm();
        capDrillMm = from.capDrillMm();
        capDepthMm = from.capDepthMm();
        tenonDiameterMm = from.tenonDiameterMm();
        tenonLengthMm = from.tenonLengthMm();
        wander = from.wander();
        use = from.use();
        blankSideMm = from.blankSideMm();
        blankLengthMm = from.blankLengthMm();
        nodeDiametersMm.putAll(from.nodeDiametersMm());
        nodePlaces.putAll(from.nodePlaces());
    }

    public ChoicesBuilder lengthRatio(double ratio) {
        lengthRatio = OptionalDouble.of(ratio);
        return this;
    }

    public ChoicesBuilder swellMm(double mm) {
        swellMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder buttMm(double mm) {
        buttMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder fit(Fit chosen) {
        fit = Optional.of(chosen);
        return this;
    }

    public ChoicesBuilder tangDrillMm(double mm) {
        tangDrillMm = OptionalDouble.of(mm);
        return this;
    }

    /**
     * Leaves the tang's drill to the rule.
     *
     * @return this builder
     */
    public ChoicesBuilder tangDrillByRule() {
        tangDrillMm = OptionalDouble.empty();
        return this;
    }

    /**
     * Leaves the cap's drill to the rule.
     *
     * @return this builder
     */
    public ChoicesBuilder capDrillByRule() {
        capDrillMm = OptionalDouble.empty();
        return this;
    }

    public ChoicesBuilder tangDepthMm(double mm) {
        tangDepthMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder capDrillMm(double mm) {
        capDrillMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder capDepthMm(double mm) {
        capDepthMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder tenonDiameterMm(double mm) {
        tenonDiameterMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder tenonLengthMm(double mm) {
        tenonLengthMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder wander(Wander chosen) {
        wander = Optional.of(chosen);
        return this;
    }

    public ChoicesBuilder use(Use chosen) {
        use = Optional.of(chosen);
        return this;
    }

    public ChoicesBuilder blankSideMm(double mm) {
        blankSideMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder blankLengthMm(double mm) {
        blankLengthMm = OptionalDouble.of(mm);
        return this;
    }

    public ChoicesBuilder nodeDiameterMm(String node, double mm) {
        nodeDiametersMm.put(node, mm);
        return this;
    }

    public ChoicesBuilder nodePlace(String node, double share) {
        nodePlaces.put(node, share);
        return this;
    }

    /**
     * Leaves a node's diameter to the shape.
     *
     * @param node its name
     * @return this builder
     */
    public ChoicesBuilder nodeDiameterByShape(String node) {
        nodeDiametersMm.remove(node);
        return this;
    }

    /**
     * Leaves a node's place to the shape.
     *
     * @param node its name
     * @return this builder
     */
    public ChoicesBuilder nodePlaceByShape(String node) {
        nodePlaces.remove(node);
        return this;
    }

    /**
     * The choices collected so far.
     *
     * @return the choices
     * @throws IllegalArgumentException where one is out of range
     */
    public Choices build() {
        return new Choices(
                lengthRatio,
                swellMm,
                buttMm,
                fit,
                tangDrillMm,
                tangDepthMm,
                capDrillMm,
                capDepthMm,
                tenonDiameterMm,
                tenonLengthMm,
                wander,
                use,
                blankSideMm,
                blankLengthMm,
                nodeDiametersMm,
                nodePlaces);
    }
}
