package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.curve.Outline;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.shape.Butt;
import haftline.shape.Join;
import haftline.shape.Shape;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The starter shapes on the demonstration's kits, as a turner would judge them. */
class StarterShapesTest {
    /** Where the curvature is read beside a node, mm. */
    private static final double BESIDE = 1e-6;

    /** A change of bend at a swell by less than this does not show (common practice, no source). */
    private static final double SHOWS = 1.25;

    private static LoadedSet set;

    @BeforeAll
    static void read() throws DocumentException {
        set = SetFile.read(Path.of("profiles/sets/tidewater.yaml"));
    }

    /** The kits for which a shape is meant: a round or chamfered end wants no cap. */
    private static List<Handle> handles(Shape shape) {
        boolean capped = shape.butt() instanceof Butt.Square;
        List<Handle> handles = new ArrayList<>();
        for (Brief brief : set.briefs()) {
            if (brief.kit().cap().isPresent() == capped) {
                // The notes of the domed shapes ask for a stout butt.
                boolean domed = shape.butt() instanceof Butt.Domed;
                Choices choices = brief.choices().toBuilder().buttMm(domed ? 20 : 16).build();
                Resolution resolved =
                        Resolve.of(
                                new Brief(
                                        brief.name(),
                                        brief.kit(),
                                        brief.metals(),
                                        brief.stock(),
                                        brief.adhesive(),
                                        shape,
                                        brief.rules(),
                                        brief.rack(),
                                        choices));
                assertThat(resolved).as(shape.name()).isInstanceOf(Resolution.Resolved.class);
                handles.add(((Resolution.Resolved) resolved).handle());
            }
        }
        return handles;
    }

    static List<Path> shapes() throws Exception {
        return ShippedDocumentsTest.shapes();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void noSwellShowsAFlatSpot(Path file) throws Exception {
        Shape shape = ShapeFile.read(file);
        for (Handle handle : handles(shape)) {
            Outline outline = handle.outline();
            for (PlacedNode node : handle.nodes()) {
                if (isSwell(node, handle)) {
                    double before = outline.curvature(node.x() - BESIDE);
                    double behind = outline.curvature(node.x() + BESIDE);
                    assertThat(behind / before)
                            .as("%s on the %s: %s", shape.name(), handle.name(), node.name())
                            .isBetween(1 / SHOWS, SHOWS);
                }
            }
        }
    }

    private static boolean isSwell(PlacedNode node, Handle handle) {
        if (!node.isFree() || node.join() == Join.CRISP) {
            return false;
        }
        double r = node.radiusMm();
        Outline outline = handle.outline();
        return outline.r(node.x() - 1) < r && outline.r(node.x() + 1) < r;
    }

    @Test
    void thereAreAtLeastEightAndEachHasItsOwnName() throws Exception {
        Set<String> names = new HashSet<>();
        for (Path file : shapes()) {
            names.add(ShapeFile.read(file).name());
        }
        assertThat(names).hasSize(shapes().size()).hasSizeGreaterThanOrEqualTo(8);
    }
}
