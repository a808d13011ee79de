package haftline.stock;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One entry in a published list of woods that irritate, sensitise or poison, kept in the list's own
 * codes and turned into plain words here.
 *
 * @param key the name under which the list enters the wood, in kebab case
 * @param reactions I, S, C, P, DT, N; empty where the list gives none
 * @param sites S, E, R, N, C: what part of the body
 * @param potency from {@code +} to {@code ++++}, {@code ?} or blank
 * @param exposures D, LB, W: dust, leaves and bark, wood
 * @param incidence R, C, U or blank: rare, common, uncommon
 * @param source the list
 */
public record WoodReaction(
        String key,
        List<String> reactions,
        List<String> sites,
        String potency,
        List<String> exposures,
        String incidence,
        Source source) {
    static final Set<String> REACTIONS = Set.of("I", "S", "C", "P", "DT", "N");
    static final Set<String> SITES = Set.of("S", "E", "R", "N", "C");
    static final Set<String> POTENCIES = Set.of("", "?", "+", "++", "+++", "++++");
    static final Set<String> EXPOSURES = Set.of("D", "LB", "W");
    static final Set<String> INCIDENCES = Set.of("", "R", "C", "U");

    public WoodReaction {
        Checks.named("key", key);
        reactions = List.copyOf(reactions);
        sites = List.copyOf(sites);
        exposures = List.copyOf(exposures);
    }

    /**
     * The entry in plain words.
     *
     * @return a caution
     */
    public Caution caution() {
        List<String> parts = new ArrayList<>();
        if (reactions.isEmpty() && sites.isEmpty()) {
            return new Caution("Named among timbers reported to affect health.", source);
        }
        List<String> what = reactions.stream().map(WoodReaction::reactionWords).toList();
        List<String> where = sites.stream().map(WoodReaction::siteWords).toList();
        String head = what.isEmpty() ? "Reaction reported" : sentence(joined(what));
        parts.add(where.isEmpty() ? head : head + " (" + joined(where) + ")");
        String strength = potencyWords();
        if (!strength.isEmpty()) {
            parts.add(strength);
        }
        if (!exposures.isEmpty()) {
            parts.add(
                    "from " + joined(exposures.stream().map(WoodReaction::exposureWords).toList()));
        }
        if (!incidence.isEmpty()) {
            parts.add("reports are " + incidenceWords());
        }
        return new Caution(String.join("; ", parts) + ".", source);
    }

    private static String reactionWords(String code) {
        return switch (code) {
            case "I" -> "irritates";
            case "S" -> "can make you allergic to it";
            case "C" -> "linked with cancer of nose and throat";
            case "P" -> "can inflame the lungs";
            case "DT" -> "poisonous in itself";
            default -> "nausea and malaise";
        };
    }

    private static String siteWords(String code) {
        return switch (code) {
            case "S" -> "skin";
            case "E" -> "eyes";
            case "R" -> "breathing";
            case "N" -> "stomach";
            default -> "heart";
        };
    }

    private static String exposureWords(String code) {
        return switch (code) {
            case "D" -> "dust";
            case "LB" -> "leaves and bark";
            default -> "the wood itself";
        };
    }

    private String potencyWords() {
        return switch (potency) {
            case "+" -> "weak";
            case "++" -> "moderate";
            case "+++" -> "strong";
            case "++++" -> "very strong";
            case "?" -> "strength not known";
            default -> "";
        };
    }

    private String incidenceWords() {
        return switch (incidence) {
            case "R" -> "rare";
            case "C" -> "common";
            default -> "uncommon";
        };
    }

    private static String joined(List<String> words) {
        int last = words.size() - 1;
        return last == 0
                ? words.get(0)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
