package haftline.edit;

import haftline.measure.Measured;
import haftline.parts.Batch;
import haftline.parts.EndCap;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.set.HandleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** Commands on the measured parts of the batch in use. All pieces with the kit follow. */
public final class PartsEdits {
    private PartsEdits() {}

    /**
     * Puts another reading, or list of readings, in the place of one.
     *
     * @param kit name of the kit
     * @param size which size
     * @param measured the readings, mm or g; empty where it is not measured any more
     * @return the command
     */
    public static Command reading(String kit, KitSize size, Optional<Measured> measured) {
        return new Command(
                "reading of " + size.words(),
                draft -> kit(draft, kit, old -> size.write().apply(old, measured)));
    }

    /**
     * Puts another place in the place of one.
     *
     * @param kit name of the kit
     * @param number which
     * @param mm where; empty to leave it open
     * @return the command
     */
    public static Command number(String kit, KitNumber number, OptionalDouble mm) {
        return new Command(
                "reading of " + number.words(),
                draft -> kit(draft, kit, old -> number.write().apply(old, mm)));
    }

    /**
     * Sets the metal of a part.
     *
     * @param kit name of the kit
     * @param part which part
     * @param metal key of the metal in the catalogue
     * @return the command
     */
    public static Command metal(String kit, KitPart part, String metal) {
        return new Command(
                "take " + metal,
                draft -> kit(draft, kit, old -> KitMakeUp.withMetal(old, part, metal)));
    }

    /**
     * Gives the tang a flare at its root, to be measured, or takes it away.
     *
     * @param kit name of the kit
     * @param hasFlare whether it has one
     * @return the command
     */
    public static Command flare(String kit, boolean hasFlare) {
        return new Command(
                hasFlare ? "add flare" : "remove flare",
                draft -> kit(draft, kit, old -> KitMakeUp.withFlare(old, hasFlare)));
    }

    /**
     * Sets the form of the cap's head.
     *
     * @param kit name of the kit
     * @param form its form
     * @return the command
     */
    public static Command head(String kit, EndCap.Form form) {
        return new Command(
                "change head of cap",
                draft -> kit(draft, kit, old -> KitMakeUp.withHead(old, form)));
    }

    /**
     * Takes a tang of another kind, of about the same size, to be measured anew.
     *
     * @param kit name of the kit
     * @param kind one of {@link KitSizes#TANG_KINDS}
     * @return the command
     */
    public static Command tangKind(String kit, String kind) {
        return new Command(
                kind + " tang",
                draft ->
                        kit(
                                draft,
                                kit,
                                old ->
                                        old.tang().kind().equals(kind)
                                                ? old
                                                : TangSizes.with(
                                                        old, TangSizes.ofKind(old.tang(), kind))));
    }

    /**
     * Gives a kit a cap, flush with a butt of the ferrule's size, to be measured; or takes it away.
     *
     * @param kit name of the kit
     * @param hasCap whether it has one
     * @return the command
     */
    public static Command cap(String kit, boolean hasCap) {
        return new Command(
                hasCap ? "add cap" : "remove cap",
                draft ->
                        kit(
                                draft,
                                kit,
                                old ->
                                        old.cap().isPresent() == hasCap
                                                ? old
                                                : new Kit(
                                                        old.name(),
                                                        old.blade(),
                                                        old.tang(),
                                                        old.seatMm(),
                                                        old.ferrule(),
                                                        hasCap
                                                                ? Optional.of(cap(old))
                                                                : Optional.empty())));
    }

    private static EndCap cap(Kit kit) {
        double head = kit.ferrule().outside().mean();
        // Proportions to begin with, invented; the maker measures his own.
        return new EndCap(
                Measured.exactly(head * 0.4),
                Measured.exactly(12),
                Measured.exactly(head),
                Measured.exactly(3),
                EndCap.Form.FLAT,
                kit.ferrule().material(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * Sets whether the tang was on the scale with the blade.
     *
     * @param kit name of the kit
     * @param includesTang whether it was
     * @return the command
     */
    public static Command weighedWithTang(String kit, boolean includesTang) {
        return new Command(
                includesTang ? "blade weighed with tang" : "blade weighed without tang",
                draft ->
                        kit(
                                draft,
                                kit,
                                old -> {
                                    var b = old.blade();
                                    return new Kit(
                                            old.name(),
                                            new haftline.parts.Blade(
                                                    b.length(),
                                                    b.widthMm(),
                                                    b.thicknessMm(),
                                                    b.edgeBelowAxisMm(),
                                                    b.material(),
                                                    b.massG(),
                                                    includesTang,
                                                    b.balanceMm()),
                                            old.tang(),
                                            old.seatMm(),
                                            old.ferrule(),
                                            old.cap());
                                }));
    }

    /**
     * Adds a batch with the kits of the one in use, to be measured anew, and works with it.
     *
     * @param id what the maker calls it, unique in the parts list
     * @return the command
     */
    public static Command addBatch(String id) {
        String wanted = id.strip();
        return new Command(
                "add batch " + wanted,
                draft -> withBatch(draft, new Batch(wanted, "", draft.set().batchInUse().kits())));
    }

    /**
     * Takes a batch of another parts list over and works with it.
     *
     * @param batch the batch, its id unique in the set's own parts list
     * @return the command
     */
    public static Command takeBatch(Batch batch) {
        return new Command("use batch " + batch.id(), draft -> withBatch(draft, batch));
    }

    private static Draft withBatch(Draft draft, Batch batch) {
        PartsList parts = draft.set().parts();
        List<Batch> batches = new ArrayList<>(parts.batches());
        batches.add(batch);
        return draft.withSet(
                draft.set()
                        .withBatch(new PartsList(parts.name(), parts.note(), batches), batch.id()));
    }

    /**
     * Works with another batch of the parts list.
     *
     * @param id the batch
     * @return the command
     */
    public static Command useBatch(String id) {
        return new Command(
                "use batch " + id,
                draft -> draft.withSet(draft.set().withBatch(draft.set().parts(), id)));
    }

    private static Draft kit(Draft draft, String name, UnaryOperator<Kit> change) {
        return batch(
                draft,
                kits -> {
                    List<Kit> changed = new ArrayList<>(kits);
                    Kit old = find(kits, name);
                    changed.set(changed.indexOf(old), change.apply(old));
                    return changed;
                });
    }

    static Kit find(List<Kit> kits, String name) {
        return kits.stream()
                .filter(kit -> kit.name().equals(name))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("no kit \"" + name + "\" in the batch"));
    }

    static Draft batch(Draft draft, UnaryOperator<List<Kit>> change) {
        HandleSet set = draft.set();
        PartsList parts = set.parts();
        List<Batch> batches = new ArrayList<>(parts.batches());
        Batch inUse = set.batchInUse();
        batches.set(
                batches.indexOf(inUse),
                new Batch(inUse.id(), inUse.note(), change.apply(inUse.kits())));
        return draft.withSet(
                set.withBatch(new PartsList(parts.name(), parts.note(), batches), set.batch()));
    }
}
