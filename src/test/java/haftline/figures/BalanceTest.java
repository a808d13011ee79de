package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Bore;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.RandomHandles;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.parts.Tang;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Mass and balance of random handles against one direct sum over thin slices of every part, from
 * the parts' cross sections alone.
 */
class BalanceTest {
    private static final int SLICES = 20_000;

    /** Mass, g, and first moment about the shoulder. */
    private double mass;

    private double moment;

    private void part(double grams, double x) {
        mass += grams;
        moment += grams * x;
    }

    /** Adds a part by slices of its section; returns its grams and centre. */
    private static double[] sliced(
            DoubleUnaryOperator sectionMm2, double from, double to, double kgM3) {
        double h = (to - from) / SLICES;
        double volume = 0;
        double first = 0;
        for (int i = 0; i < SLICES; i++) {
            double x = from + (i + 0.5) * h;
            double section = sectionMm2.applyAsDouble(x) * h;
            volume += section;
            first += section * x;
        }
        return new double[] {volume * kgM3 * 1e-6, volume == 0 ? 0 : first / volume};
    }

    private void sum(Handle handle) {
        Kit kit = handle.brief().kit();
        double blade = handle.brief().metals().blade().densityKgM3().value();
        bladeAndTang(handle, kit.blade(), kit.tang(), blade);
        Ferrule ferrule = kit.ferrule();
        double inside = ferrule.bore().mean();
        double ring = ferrule.outside().mean() * ferrule.outsideLeast().mean() - inside * inside;
        double hole = ferrule.lipHoleMm().orElse(0);
        double[] metal =
                sliced(
                        z ->
                                Math.PI
                                        / 4
                                        * (ring
                                                + (z < ferrule.lipMm()
                                                        ? inside * inside - hole * hole
                                                        : 0)),
                        0,
                        ferrule.length().mean(),
                        handle.brief().metals().ferrule().densityKgM3().value());
        part(ferrule.massG().orElse(metal[0]), metal[1] - ferrule.length().mean());
        Bore tangBore = handle.tangBore();
        double[] wood =
                sliced(
                        x -> {
                            double bore = tangBore.radiusAt(x);
                            double cap = handle.capBore().map(b -> b.radiusAt(x)).orElse(0.0);
                            double r = handle.outline().r(x);
                            double cut = Math.min(r, Math.max(bore, cap));
                            return Math.PI * (r * r - cut * cut);
                        },
                        handle.outline().startX(),
                        handle.outline().endX(),
                        handle.brief().stock().densityKgM3(12));
        part(wood[0], wood[1]);
        double glue = handle.brief().adhesive().densityKgM3().value();
        if (handle.fit().fit() == Fit.BONDED) {
            Tang tang = kit.tang();
            double seat = handle.fit().seatX();
            double dry = Math.max(0, tangBore.faceX() - seat);
            double[] all =
                    sliced(
                            z -> Math.PI * square(tangBore.radiusAt(tangBore.xAt(z))),
                            0,
                            tangBore.reachMm(),
                            glue);
            double[] filled =
                    sliced(
                            tang::sectionMm2,
                            Math.min(dry, tang.length().mean()),
                            tang.length().mean(),
                            glue);
            if (all[0] > filled[0]) {
                part(all[0], tangBore.faceX() + all[1]);
                part(-filled[0], seat + filled[1]);
            }
        }
        kit.cap().ifPresent(cap -> cap(handle, cap, glue));
    }

    private void bladeAndTang(Handle handle, Blade blade, Tang tang, double kgM3) {
        double seat = handle.fit().seatX();
        double[] metal = sliced(tang::sectionMm2, 0, tang.length().mean(), kgM3);
        double tangG = tang.massG().orElse(metal[0]);
        double estimated =
                0.6 * blade.length().mean() * blade.widthMm() * blade.thicknessMm() * kgM3 * 1e-6;
        double centre = 0.42 * blade.length().mean();
        if (blade.massG().isPresent() && blade.includesTang()) {
            double weighed = blade.massG().getAsDouble();
            if (blade.balanceMm().isPresent()) {
                part(weighed, seat - blade.balanceMm().getAsDouble());
            } else {
                double bladeG = Math.max(0, weighed - tangG);
                part(bladeG, seat - centre);
                part(weighed - bladeG, seat + metal[1]);
            }
            return;
        }
        part(
                blade.massG().orElse(estimated),
                seat - (blade.massG().isPresent() ? blade.balanceMm().orElse(centre) : centre));
        part(tangG, seat + metal[1]);
    }

    private void cap(Handle handle, EndCap cap, double glue) {
        double kgM3 = handle.brief().metals().cap().densityKgM3().value();
        double r = cap.headDiameter().mean() / 2;
        double t = cap.headThickness().mean();
        double[] head =
                sliced(
                        z ->
                                Math.PI
                                        * r
                                        * r
                                        * (cap.form() == EndCap.Form.FLAT ? 1 : 1 - z * z / t / t),
                        0,
                        t,
                        kgM3);
        double d = cap.spigotDiameter().mean();
        double spigot = Math.PI / 4 * d * d * cap.spigotLength().mean();
        double spigotG = spigot * kgM3 * 1e-6;
        double grams = cap.massG().orElse(head[0] + spigotG);
        double own =
                (head[0] * head[1] - spigotG * cap.spigotLength().mean() / 2) / (head[0] + spigotG);
        part(grams, handle.buttX() + cap.balanceMm().orElse(own));
        Bore bore = handle.capBore().orElseThrow();
        double[] hole =
                sliced(z -> Math.PI * square(bore.radiusAt(bore.xAt(z))), 0, bore.reachMm(), glue);
        double filled = spigot * glue * 1e-6;
        if (hole[0] > filled) {
            part(hole[0], handle.buttX() - hole[1]);
            part(-filled, handle.buttX() - cap.spigotLength().mean() / 2);
        }
    }

    private static double square(double r) {
        return r * r;
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52})
    void agreesWithOneSumOverSlices(long seed) {
        RandomHandles handles = RandomHandles.of(seed);
        for (int i = 0; i < 40; i++) {
            Handle handle = handles.next();
            mass = 0;
            moment = 0;
            sum(handle);
            Balance balance = Figures.of(handle).balance();
            String as = "seed " + seed + " handle " + i;
            // A slice of 0.005 mm misses a step of the outline by half of itself.
            assertThat(balance.totalG()).as(as).isCloseTo(mass, within(0.001));
            assertThat(balance.x()).as(as).isCloseTo(moment / mass, within(0.001));
            assertThat(balance.fromFerruleFaceMm())
                    .as(as)
                    .isCloseTo(balance.x() + handle.lengths().ferruleMm(), within(1e-12));
        }
    }
}
