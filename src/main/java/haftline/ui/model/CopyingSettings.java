package haftline.ui.model;

import haftline.edit.Outcome;
import haftline.handle.Rules;
import haftline.set.CopyingBuilder;
import haftline.set.TemplateSettings;
import haftline.set.TemplateSettings.Copying;
import haftline.set.TemplateSettings.Copying.Sides;
import haftline.set.TemplateSettings.Hole;
import haftline.ui.model.Setting.Picture;
import haftline.ui.model.WorkshopFields.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** Whether copying templates are made, and how. */
final class CopyingSettings {
    /** Screws that the panel shows; a set may have more in its file. */
    static final int HOLES_SHOWN = 6;

    private static final Limits RADIUS = new Limits(0, Rules.Copying.GREATEST_RADIUS_MM);
    private static final Limits ANGLE = new Limits(10, 150);

    private final WorkshopFields fields;

    CopyingSettings(WorkshopFields fields) {
        this.fields = fields;
    }

    private Copying now() {
        return fields.templates().copying();
    }

    private boolean isMade() {
        return now().made();
    }

    List<Setting> all() {
        List<Setting> all = new ArrayList<>();
        all.add(
                Setting.of(
                                fields.tick(
                                        "copying template",
                                        t -> t.copying().made(),
                                        (t, yes) -> t.withCopying(t.copying().withMade(yes))))
                        .drawnAs(Picture.COPYING));
        all.add(
                made(
                        fields.choice(
                                "sides",
                                "",
                                Sides.values(),
                                sides -> sides == Sides.ONE ? "one-sided" : "full, to be turned",
                                () -> now().sides(),
                                chosen ->
                                        fields.changed("sides", changing(c -> c.sides(chosen))))));
        all.add(
                length(
                                "back",
                                "depth of the card below the axis",
                                new Limits(2, 200),
                                Copying::backMm,
                                CopyingBuilder::backMm)
                        .where(() -> isMade() && now().sides() == Sides.ONE));
        all.add(
                length(
                        "run on",
                        "straight before the shoulder",
                        new Limits(0, 50),
                        Copying::runOnMm,
                        CopyingBuilder::runOnMm));
        all.add(
                length(
                        "run off",
                        "straight behind the seat",
                        new Limits(0, 50),
                        Copying::runOffMm,
                        CopyingBuilder::runOffMm));
        all.add(
                made(
                        rule(
                                "cutter's nose",
                                Rules.Copying::noseMm,
                                (c, mm) ->
                                        new Rules.Copying(mm, c.followerMm(), c.steepestDeg()))));
        all.add(
                made(
                        rule(
                                "follower",
                                Rules.Copying::followerMm,
                                (c, mm) -> new Rules.Copying(c.noseMm(), mm, c.steepestDeg()))));
        all.add(
                made(
                        fields.number(
                                "follower to cutter",
                                "the follower's way over the cutter's, across the axis",
                                " : 1",
                                new Limits(0.25, 4),
                                t -> t.copying().radialRatio(),
                                (t, x) -> changing(c -> c.radialRatio(x)).apply(t))));
        all.add(made(angle()));
        all.add(
                made(fields.number(
                                "flank's clearance",
                                "",
                                "°",
                                new Limits(0, 20),
                                t -> t.copying().cutterClearanceDeg(),
                                (t, deg) -> changing(c -> c.cutterClearanceDeg(deg)).apply(t)))
                        .where(() -> isMade() && now().cutterAngleDeg().isPresent()));
        all.add(made(holes()));
        for (int i = 0; i < HOLES_SHOWN; i++) {
            addHole(all, i);
        }
        return List.copyOf(all);
    }

    private Setting made(Row row) {
        return Setting.of(row).where(this::isMade);
    }

    private static UnaryOperator<TemplateSettings> changing(UnaryOperator<CopyingBuilder> change) {
        return t -> t.withCopying(change.apply(t.copying().toBuilder()).build());
    }

    private Setting length(
            String label,
            String because,
            Limits range,
            ToDoubleFunction<Copying> now,
            BiFunction<CopyingBuilder, Double, CopyingBuilder> set) {
        return made(
                fields.length(
                        label,
                        because,
                        range,
                        t -> now.applyAsDouble(t.copying()),
                        (t, mm) -> changing(c -> set.apply(c, mm)).apply(t)));
    }

    /** Nose and follower stand with the rules, for findings on the handle need them too. */
    private Row rule(
            String label,
            ToDoubleFunction<Rules.Copying> now,
            BiFunction<Rules.Copying, Double, Rules.Copying> set) {
        return fields.ruleLength(label, RADIUS, now, set);
    }

    /** Nothing typed: the cutter is not pointed, and the rules' steepest slope holds alone. */
    private Row angle() {
        return Row.field(
                "pointed cutter",
                Row.Kind.PLAIN,
                () ->
                        Row.State.of(
                                now().cutterAngleDeg().isPresent()
                                        ? Inspected.number(now().cutterAngleDeg().getAsDouble())
                                                + "°"
                                        : "",
                                "angle between its flanks, or empty",
                                Row.Source.SET),
                entry -> {
                    OptionalDouble deg = Entry.number(entry, "°");
                    boolean isGood = deg.isPresent() && ANGLE.holds(deg.getAsDouble());
                    return isGood || entry.isBlank()
                            ? fields.run(
                                    fields.changed(
                                            "pointed cutter", changing(c -> c.cutterAngleDeg(deg))))
                            : new Outcome.Refused("Expected an angle from 10 to 150°, or nothing");
                });
    }

    private Row holes() {
        return Row.choice(
                "mounting holes",
                () ->
                        IntStream.rangeClosed(0, HOLES_SHOWN)
                                .mapToObj(CopyingSettings::count)
                                .toList(),
                () ->
                        Row.State.of(
                                count(now().holes().size()),
                                now().holes().size() > HOLES_SHOWN
                                        ? "those beyond the sixth are changed in the file"
                                        : "",
                                Row.Source.SET),
                word ->
                        fields.run(
                                fields.changed(
                                        "mounting holes",
                                        changing(
                                                c ->
                                                        c.holes(
                                                                many(
                                                                        now().holes(),
                                                                        word.equals("none")
                                                                                ? 0
                                                                                : Integer.parseInt(
                                                                                        word)))))));
    }

    private static String count(int holes) {
        return holes == 0 ? "none" : Integer.toString(holes);
    }

    /** So many of them: the last go first, further ones begin as the usual two do. */
    private static List<Hole> many(List<Hole> holes, int count) {
        List<Hole> usual = Copying.COMMON_PRACTICE.holes();
        List<Hole> all = new ArrayList<>(holes.subList(0, Math.min(count, holes.size())));
        while (all.size() < count) {
            Hole like = usual.get(all.size() % usual.size());
            // Another pair stands further in, so that no two lie on each other.
            double beyondMm = like.beyondMm() - 15.0 * (all.size() / usual.size());
            all.add(new Hole(like.from(), beyondMm, like.heightMm(), like.diameterMm()));
        }
        return all;
    }

    private void addHole(List<Setting> all, int index) {
        String name = "hole " + (index + 1);
        all.add(
                hole(
                        index,
                        fields.choice(
                                name + " from",
                                "",
                                Hole.End.values(),
                                end ->
                                        end == Hole.End.SHOULDER
                                                ? "the shoulder"
                                                : "the seat of the butt",
                                () -> at(index).from(),
                                end -> fields.changed(name, with(index, h -> from(h, end))))));
        all.add(
                hole(
                        index,
                        fields.length(
                                name + " beyond it",
                                "away from the work; negative between the two",
                                new Limits(-500, 200),
                                t -> at(index).beyondMm(),
                                (t, mm) ->
                                        with(
                                                        index,
                                                        h ->
                                                                new Hole(
                                                                        h.from(),
                                                                        mm,
                                                                        h.heightMm(),
                                                                        h.diameterMm()))
                                                .apply(t))));
        all.add(
                hole(
                        index,
                        fields.length(
                                name + " over the axis",
                                "negative towards the back",
                                new Limits(-200, 200),
                                t -> at(index).heightMm(),
                                (t, mm) ->
                                        with(
                                                        index,
                                                        h ->
                                                                new Hole(
                                                                        h.from(),
                                                                        h.beyondMm(),
                                                                        mm,
                                                                        h.diameterMm()))
                                                .apply(t))));
        all.add(
                hole(
                        index,
                        fields.length(
                                name + "'s diameter",
                                "",
                                new Limits(0.5, 50),
                                t -> at(index).diameterMm(),
                                (t, mm) ->
                                        with(
                                                        index,
                                                        h ->
                                                                new Hole(
                                                                        h.from(),
                                                                        h.beyondMm(),
                                                                        h.heightMm(),
                                                                        mm))
                                                .apply(t))));
    }

    private static Hole from(Hole hole, Hole.End end) {
        return new Hole(end, hole.beyondMm(), hole.heightMm(), hole.diameterMm());
    }

    /** A hole that is not there shows what it would begin as. */
    private Hole at(int index) {
        return many(now().holes(), Math.max(now().holes().size(), index + 1)).get(index);
    }

    private Setting hole(int index, Row row) {
        return Setting.of(row).where(() -> isMade() && index < now().holes().size());
    }

    private static UnaryOperator<TemplateSettings> with(int index, UnaryOperator<Hole> change) {
        return t -> {
            List<Hole> holes = new ArrayList<>(t.copying().holes());
            holes.set(index, change.apply(holes.get(index)));
            return changing(c -> c.holes(holes)).apply(t);
        };
    }
}
