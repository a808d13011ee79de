package haftline.stock;

import haftline.measure.Checks;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A wood.
 *
 * @param key catalogue key
 * @param name common name
 * @param botanical botanical name; names in trade are loose, this one is not
 * @param group hardwood or softwood, in the botanist's sense
 * @param density density at a stated moisture
 * @param strength strength figures
 * @param stiffness stiffness figures
 * @param movement shrinkage figures
 * @param fibrous whether a pressed tang suits it
 * @param fibrousSource whose judgement that is
 * @param pores how readily end grain drinks
 * @param poresSource whose judgement that is
 * @param reactions entries in published lists of irritating or poisonous woods
 * @param colours colours for pictures
 * @param grain how to draw the grain
 */
public record Wood(
        String key,
        String name,
        String botanical,
        Group group,
        Density density,
        WoodStrength strength,
        WoodStiffness stiffness,
        WoodMovement movement,
        boolean fibrous,
        Source fibrousSource,
        Pores pores,
        Source poresSource,
        List<WoodReaction> reactions,
        Colours colours,
        Grain grain)
        implements Stock {
    /**
     * A pressed tang parts the fibres of a wood up to this side hardness; in a harder one it splits
     * them, so that the tang is bonded. Common practice, no source; it lies between sugar maple
     * (6400 N) and black locust (7600 N).
     */
    public static final double PRESS_HARDNESS_LIMIT_N = 7000;

    /** Hardwood (broad-leaved) or softwood (conifer). */
    public enum Group {
        /** Broad-leaved. */
        HARDWOOD,
        /** Conifer. */
        SOFTWOOD
    }

    /** How open the pores are to the eye and to water. */
    public enum Pores {
        /** Pores seen with the bare eye; end grain drinks unless it is sealed. */
        OPEN,
        /** Fine pores or none. */
        CLOSED
    }

    /** How the grain is drawn. */
    public enum Grain {
        /** Large pores in the early wood: bold rings. */
        RING_POROUS,
        /** Pores evenly spread: quiet rings. */
        DIFFUSE,
        /** Conifer: early and late wood in plain bands. */
        BANDED,
        /** Marked by streaks or figure rather than by rings. */
        FIGURED
    }

    public Wood {
        Checks.named("key", key);
        Checks.named("name", name);
        reactions = List.copyOf(reactions);
    }

    /**
     * The rule for a pressed tang.
     *
     * @param sideHardnessN side hardness, N
     * @return true up to {@link #PRESS_HARDNESS_LIMIT_N}
     */
    public static boolean pressable(double sideHardnessN) {
        return sideHardnessN <= PRESS_HARDNESS_LIMIT_N;
    }

    @Override
    public double densityKgM3(double moisturePercent) {
        return density.at(moisturePercent);
    }

    @Override
    public Figure statedDensity() {
        return density.kgM3();
    }

    @Override
    public boolean isFibrous() {
        return fibrous;
    }

    @Override
    public List<Caution> cautions() {
        // Two lists' entries for one wood may come to the same words.
        Set<Caution> cautions = new LinkedHashSet<>();
        for (WoodReaction reaction : reactions) {
            cautions.add(reaction.caution());
        }
        return List.copyOf(cautions);
    }

    @Override
    public boolean isCautioned() {
        return !reactions.isEmpty();
    }
}
