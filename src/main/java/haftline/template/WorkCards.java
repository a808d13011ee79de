package haftline.template;

import haftline.curve.ArcFit;
import haftline.handle.Rules;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The cards that a maker wants of one piece of work, as the maker's tool must cut them. */
public final class WorkCards {
    private WorkCards() {}

    /**
     * Gauges first, then the copying template.
     *
     * @param work the work
     * @param copying nose, follower and slope of the maker's rules
     * @param settings which cards are wanted, and how they are made
     * @param units unit of the lettering
     * @return the cards, ready to be laid out; each with its findings
     */
    public static List<Card> of(
            Workpiece work, Rules.Copying copying, TemplateSettings settings, Units units) {
        List<Card> cards = new ArrayList<>();
        GaugeRules rules = GaugeRules.of(settings, units);
        for (Set<GaugeCard.Gauge> together : gauges(settings.gauges())) {
            cards.add(GaugeCard.of(work, together, rules));
        }
        if (settings.copying().made()) {
            CopyingTemplate template =
                    CopyingTemplate.of(
                            work,
                            Copier.of(copying, settings.copying()),
                            settings.copying().runOnMm(),
                            settings.copying().runOffMm(),
                            ArcFit.USUAL_TOLERANCE_MM);
            cards.add(CopyingCard.of(settings, units).card(template));
        }
        CuttingTool tool = CuttingTool.of(settings.cutting());
        return cards.stream().map(tool::prepare).toList();
    }

    /** What stands on each card. */
    private static List<Set<GaugeCard.Gauge>> gauges(TemplateSettings.Gauges wanted) {
        Set<GaugeCard.Gauge> all = EnumSet.noneOf(GaugeCard.Gauge.class);
        if (wanted.profile()) {
            all.add(GaugeCard.Gauge.PROFILE);
        }
        if (wanted.storyRod()) {
            all.add(GaugeCard.Gauge.STORY_ROD);
        }
        if (wanted.slots()) {
            all.add(GaugeCard.Gauge.SLOTS);
        }
        List<Set<GaugeCard.Gauge>> cards = new ArrayList<>();
        switch (wanted.cards()) {
            case EACH_ALONE -> all.forEach(gauge -> cards.add(EnumSet.of(gauge)));
            case ALL_ON_ONE -> cards.add(all);
            case SLOTS_APART -> {
                boolean slots = all.remove(GaugeCard.Gauge.SLOTS);
                cards.add(all);
                cards.add(
                        slots
                                ? EnumSet.of(GaugeCard.Gauge.SLOTS)
                                : EnumSet.noneOf(GaugeCard.Gauge.class));
            }
        }
        cards.removeIf(Set::isEmpty);
        return cards;
    }
}
