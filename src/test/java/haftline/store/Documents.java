package haftline.store;

import haftline.parts.PartsList;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Small sound documents to spoil, and how each kind is read. */
final class Documents {
    static final List<String> METALS = List.of("brass", "stainless-304", "stainless-420");

    static final String SHAPE =
            """
            haftline: 1
            kind: shape
            name: Waisted
            nodes:
              - {name: waist, at: 0.2, diameter: {times: 0.6, of: swell}, slides: true}
              - {name: swell, at: 0.6, diameter: 22, join: smooth, slope: 0}
            details:
              - bead: {at: 0.3, width: 4, height: 1.2}
            monotone:
              - {from: waist, to: swell}
            butt: {rounded: 3}
            """;

    static final String PARTS =
            """
            haftline: 1
            kind: parts
            name: Kits
            batches:
              - batch: B1
                resolution: 0.05
                kits:
                  knife:
                    blade: {length: 90, width: 20, thickness: 2, material: stainless-304}
                    tang: {kind: round, diameter: [6, 6.1], length: 45}
                    ferrule: {bore: 12, outside: 14, length: 12, material: brass}
                    cap:
                      spigot: {diameter: 6, length: 9}
                      head: {diameter: 14, thickness: 4}
                      form: domed
                      material: brass
            """;

    static final String RULES =
            """
            haftline: 1
            kind: rules
            fits: {loose: 0.6, sleeve: 1}
            bores: {most_steps: 3, point_angle: 118}
            wander: lathe
            balance: {from: 0, to: 15}
            climate:
              shop: {temperature: 18, humidity: 55}
            """;

    static final String WORKSHOP =
            """
            haftline: 1
            kind: workshop
            templates:
              tool: laser
              laser: {kerf: 0.2}
              router: {bit: 6, corners_relieved: true}
              sheet: {width: 600, height: 400, thickness: 3}
              lettering: outlines
              gauges: {cards: each alone, tenon_tolerance: 0.08}
              copying:
                cutter_angle: 55
                holes: [{from: seat, beyond: 5, height: -20, diameter: 5}]
            files: {dxf: drawing, paper: Letter, printer: {short_edge: 99.4}}
            stock_lengths:
              kerf: 1.5
              sticks:
                - {stock: black-cherry, across: 26, length: 900, count: 3, price_each: 8.5}
            rates:
              currency: CU
              hour: 24
              margin: 40
              adhesive: {per_ml: 0.1}
              kits: [{kit: knife, each: 9.5}]
              steps:
                - {step: bore, setup: 15, each: 4}
                - {step: join, each: 5, gluing: true, pieces: [{piece: one, each: 6}]}
              consumables: [{name: oil, unit: ml, each: 2, price: 0.1}]
            """;

    static final String PROGRESS =
            """
            haftline: 1
            kind: progress
            set: Two
            batch: B1
            steps: [saw, bore, turn]
            pieces:
              - name: one
                quantity: 6
                done:
                  - {step: saw, count: 6}
                  - {step: bore, count: 2}
              - name: two
                quantity: 4
            """;

    static final String SET =
            """
            haftline: 1
            kind: set
            name: Two
            shape: shape.yaml
            parts: parts.yaml
            batch: B1
            rules: rules.yaml
            stock: black-cherry
            adhesive: slow-epoxy
            rack: [metric-0.5, 6.2, 17/64]
            swell: 22
            pieces:
              - name: one
                kit: knife
              - name: two
                kit: knife
                fit: bonded
                nodes:
                  waist: {diameter: 12}
            workshop: workshop.yaml
            """;

    private Documents() {}

    /** Writes a sound document of each kind into a folder. */
    static void write(Path folder) throws IOException {
        Files.writeString(folder.resolve("shape.yaml"), SHAPE);
        Files.writeString(folder.resolve("parts.yaml"), PARTS);
        Files.writeString(folder.resolve("rules.yaml"), RULES);
        Files.writeString(folder.resolve("workshop.yaml"), WORKSHOP);
        Files.writeString(folder.resolve("progress.yaml"), PROGRESS);
        Files.writeString(folder.resolve("set.yaml"), SET);
    }

    static PartsList parts(Path file) throws DocumentException {
        return PartsFile.read(file, METALS);
    }

    /** Reads a file as the kind of document that it is called after. */
    static Object read(Path file) throws DocumentException {
        return switch (file.getFileName().toString()) {
            case "shape.yaml" -> ShapeFile.read(file);
            case "parts.yaml" -> parts(file);
            case "rules.yaml" -> RulesFile.read(file);
            case "workshop.yaml" -> WorkshopFile.read(file);
            case "progress.yaml" -> ProgressFile.read(file);
            default -> SetFile.read(file);
        };
    }
}
