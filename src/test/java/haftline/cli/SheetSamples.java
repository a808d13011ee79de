package haftline.cli;

import haftline.measure.Units;
import haftline.store.SetFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Sets whose sheets are hard to set. */
final class SheetSamples {
    /** Forty characters, of the widest. */
    static final String LONG_NAME = "WIDE MIXING WHISK WITH MAMMOTH OAK KNOBS";

    private SheetSamples() {}

    /**
     * One piece with all that a sheet can hold: a name of forty capitals everywhere, twelve nodes,
     * details, six drills for its tang, a cap, readings that disagree, a stock with cautions.
     */
    static Path crowded(Path folder) throws IOException {
        DemoCopy copy = DemoCopy.in(folder);
        copy.change("shared/rules.yaml", "most_steps: 3", "most_steps: 6");
        StringBuilder shape = new StringBuilder();
        shape.append("haftline: 1\nkind: shape\nname: ").append(LONG_NAME).append("\nnodes:\n");
        for (int i = 1; i <= 12; i++) {
            shape.append("  - {name: \"node ")
                    .append(i)
                    .append(" of a shape that goes up and down\", at: ")
                    .append(i / 13.0)
                    .append(", diameter: ")
                    .append(i % 2 == 0 ? 38 : 33)
                    .append("}\n");
        }
        shape.append("details:\n  - vee: {at: {from_shoulder: 30}, width: 2, depth: 0.5}\n");
        Files.writeString(folder.resolve("profiles/shapes/crowded.yaml"), shape);
        Files.writeString(
                folder.resolve("shared/parts/crowded.yaml"),
                """
                haftline: 1
                kind: parts
                name: crowded
                batches:
                  - batch: %1$s
                    resolution: 0.05
                    kits:
                      %1$s:
                        blade: {length: 150, width: 40, thickness: 3, material: stainless-420}
                        tang: {kind: tapered, root: [12.3, 12.6], tip: [4.4, 4.8], length: 90}
                        ferrule: {bore: [22.0, 21.7], outside: {least: 24, greatest: 24.4}, length: 16, material: brass}
                        cap: {spigot: {diameter: 8, length: 12}, head: {diameter: 28, thickness: 7}, form: domed, material: brass}
                """
                        .formatted(LONG_NAME));
        Path set = folder.resolve("profiles/sets/crowded.yaml");
        Files.writeString(
                set,
                """
                haftline: 1
                kind: set
                name: %1$s
                shape: ../shapes/crowded.yaml
                parts: ../../shared/parts/crowded.yaml
                batch: %1$s
                rules: ../../shared/rules.yaml
                stock: cocobolo
                adhesive: filled-epoxy
                rack: [metric-0.1, metric-0.5]
                swell: 38
                pieces:
                  - name: %1$s
                    kit: %1$s
                    fit: bonded
                    use: power
                """
                        .formatted(LONG_NAME));
        return set;
    }

    /** The demonstration set with a tang so long that its bore leaves the butt. */
    static Path stopped(Path folder) throws IOException {
        return Path.of(
                DemoCopy.in(folder)
                        .change("shared/parts/tidewater.yaml", "length: 44}", "length: 94}")
                        .set());
    }

    static ExaminedSet examined(Path set, Units units) {
        try {
            return Examination.of(SetFile.read(set), units);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
