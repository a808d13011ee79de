package haftline.set;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Changes some of how copying templates are made; each method sets the component of its name and
 * returns this builder.
 */
public final class CopyingBuilder {
    private boolean made;
    private TemplateSettings.Copying.Sides sides;
    private double backMm;
    private double runOnMm;
    private double runOffMm;
    private double radialRatio;
    private OptionalDouble cutterAngleDeg;
    private double cutterClearanceDeg;
    private List<TemplateSettings.Hole> holes;

    CopyingBuilder(TemplateSettings.Copying from) {
        made = from.made();
        sides = from.sides();
        backMm = from.backMm();
        runOnMm = from.runOnMm();
        runOffMm = from.runOffMm();
        radialRatio = from.radialRatio();
        cutterAngleDeg = from.cutterAngleDeg();
        cutterClearanceDeg = from.cutterClearanceDeg();
        holes = from.holes();
    }

    public CopyingBuilder made(boolean other) {
        made = other;
        return this;
    }

    public CopyingBuilder sides(TemplateSettings.Copying.Sides other) {
        sides = other;
        return this;
    }

    public CopyingBuilder backMm(double other) {
        backMm = other;
        return this;
    }

    public CopyingBuilder runOnMm(double other) {
        runOnMm = other;
        return this;
    }

    public CopyingBuilder runOffMm(double other) {
        runOffMm = other;
        return this;
    }

    public CopyingBuilder radialRatio(double other) {
        radialRatio = other;
        return this;
    }

    public CopyingBuilder cutterAngleDeg(OptionalDouble other) {
        cutterAngleDeg = other;
        return this;
    }

    public CopyingBuilder cutterClearanceDeg(double other) {
        cutterClearanceDeg = other;
        return this;
    }

    public CopyingBuilder holes(List<TemplateSettings.Hole> other) {
        holes = other;
        return this;
    }

    /**
     * What was collected.
     *
     * @return the settings
     * @throws IllegalArgumentException where a value is out of range
     */
    public TemplateSettings.Copying build() {
        return new TemplateSettings.Copying(
                made,
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
