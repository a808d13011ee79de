package haftline.set;

/**
 * Changes some of the {@link TemplateSettings.Gauges}; each method sets the component of its name
 * and returns this builder.
 */
public final class GaugesBuilder {
    private boolean profile;
    private boolean slots;
    private boolean storyRod;
    private TemplateSettings.Gauges.Cards cards;
    private TemplateSettings.Gauges.Register register;
    private double reliefMm;
    private double clearanceMm;
    private double slotsOverMm;
    private double tenonToleranceMm;
    private double hangingHoleMm;

    GaugesBuilder(TemplateSettings.Gauges from) {
        profile = from.profile();
        slots = from.slots();
        storyRod = from.storyRod();
        cards = from.cards();
        register = from.register();
        reliefMm = from.reliefMm();
        clearanceMm = from.clearanceMm();
        slotsOverMm = from.slotsOverMm();
        tenonToleranceMm = from.tenonToleranceMm();
        hangingHoleMm = from.hangingHoleMm();
    }

    public GaugesBuilder profile(boolean other) {
        profile = other;
        return this;
    }

    public GaugesBuilder slots(boolean other) {
        slots = other;
        return this;
    }

    public GaugesBuilder storyRod(boolean other) {
        storyRod = other;
        return this;
    }

    public GaugesBuilder cards(TemplateSettings.Gauges.Cards other) {
        cards = other;
        return this;
    }

    public GaugesBuilder register(TemplateSettings.Gauges.Register other) {
        register = other;
        return this;
    }

    public GaugesBuilder reliefMm(double other) {
        reliefMm = other;
        return this;
    }

    public GaugesBuilder clearanceMm(double other) {
        clearanceMm = other;
        return this;
    }

    public GaugesBuilder slotsOverMm(double other) {
        slotsOverMm = other;
        return this;
    }

    public GaugesBuilder tenonToleranceMm(double other) {
        tenonToleranceMm = other;
        return this;
    }

    public GaugesBuilder hangingHoleMm(double other) {
        hangingHoleMm = other;
        return this;
    }

    /**
     * What was collected.
     *
     * @return the settings
     * @throws IllegalArgumentException where a value is out of range
     */
    public TemplateSettings.Gauges build() {
        return new TemplateSettings.Gauges(
                profile,
                slots,
                storyRod,
                cards,
                register,
                reliefMm,
                clearanceMm,
                slotsOverMm,
                tenonToleranceMm,
                hangingHoleMm);
    }
}
