package haftline.store;

import static haftline.store.PartsKeys.*;

import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Batch;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A parts list as a document. */
final class PartsWriter {
    /** Resolution of the batch being written, mm. */
    private final double resolution;

    private PartsWriter(double resolution) {
        this.resolution = resolution;
    }

    static Tree.Fields tree(PartsList parts) {
        return Document.head(KIND)
                .text(NAME, parts.name())
                .note(NOTE, parts.note())
                .put(
                        BATCHES,
                        Tree.Rows.tall(parts.batches().stream().map(PartsWriter::batch).toList()));
    }

    private static Tree.Fields batch(Batch batch) {
        double resolution = usualResolution(batch);
        PartsWriter writer = new PartsWriter(resolution);
        Tree.Fields kits = Tree.Fields.tall();
        batch.kits().forEach(kit -> kits.put(kit.name(), writer.kit(kit)));
        return Tree.Fields.tall()
                .text(ID, batch.id())
                .note(NOTE, batch.note())
                .number(MeasuredKeys.RESOLUTION, resolution, 0)
                .put(KITS, kits);
    }

    /** The resolution that most figures of a batch have; said once, it need not be said again. */
    private static double usualResolution(Batch batch) {
        Map<Double, Integer> counts = new LinkedHashMap<>();
        for (Kit kit : batch.kits()) {
            for (Measured figure : figures(kit)) {
                counts.merge(figure.resolution(), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0.0);
    }

    private static List<Measured> figures(Kit kit) {
        Ferrule ferrule = kit.ferrule();
        List<Measured> figures = new ArrayList<>();
        figures.add(kit.blade().length());
        figures.add(kit.tang().length());
        figures.add(ferrule.bore());
        figures.add(ferrule.outside());
        figures.add(ferrule.length());
        kit.cap().ifPresent(cap -> figures.add(cap.headDiameter()));
        return figures;
    }

    private Tree.Fields kit(Kit kit) {
        Tree.Fields tree =
                Tree.Fields.tall()
                        .number(SEAT, kit.seatMm(), 0)
                        .put(BLADE, blade(kit.blade()))
                        .put(TANG, tang(kit.tang()))
                        .put(FERRULE, ferrule(kit.ferrule()));
        kit.cap().ifPresent(cap -> tree.put(CAP, cap(cap)));
        return tree;
    }

    private Tree measured(Measured figure) {
        List<Tree> readings = new ArrayList<>();
        figure.readings().forEach(reading -> readings.add(new Tree.Number(reading)));
        Tree plain = readings.size() == 1 ? readings.get(0) : Tree.Rows.flat(readings);
        return figure.resolution() == resolution
                ? plain
                : Tree.Fields.flat()
                        .put(MeasuredKeys.READINGS, plain)
                        .number(MeasuredKeys.RESOLUTION, figure.resolution());
    }

    private Tree.Fields blade(Blade blade) {
        Tree.Fields tree =
                Tree.Fields.flat()
                        .put(BLADE_LENGTH, measured(blade.length()))
                        .number(BLADE_WIDTH, blade.widthMm())
                        .number(BLADE_THICKNESS, blade.thicknessMm());
        blade.edgeBelowAxisMm().ifPresent(mm -> tree.number(EDGE, mm));
        tree.text(MATERIAL, blade.material());
        blade.massG().ifPresent(g -> tree.number(MASS, g));
        tree.yesNo(INCLUDES_TANG, blade.includesTang(), true);
        blade.balanceMm().ifPresent(mm -> tree.number(BLADE_BALANCE, mm));
        return tree;
    }

    private Tree.Fields tang(Tang tang) {
        Tree.Fields tree = Tree.Fields.flat().put(TANG_KIND, new Tree.Word(tang.kind()));
        if (tang instanceof RoundTang round) {
            tree.put(DIAMETER, measured(round.diameter()));
        } else if (tang instanceof FlatTang flat) {
            tree.put(WIDTH, measured(flat.width())).put(THICKNESS, measured(flat.thickness()));
        } else if (tang instanceof SquareTang square) {
            tree.put(WIDTH, measured(square.width()));
        } else if (tang instanceof TaperedTang tapered) {
            tree.put(ROOT, measured(tapered.rootDiameter()))
                    .put(TIP, measured(tapered.tipDiameter()));
        } else if (tang instanceof BarbedTang barbed) {
            tree.put(CORE, measured(barbed.coreDiameter()))
                    .put(BARB, measured(barbed.barbDiameter()));
        } else if (tang instanceof ThreadedTang threaded) {
            tree.put(CREST, measured(threaded.crestDiameter()))
                    .number(THREAD_BORE, threaded.threadBoreMm())
                    .number(CLEARANCE_BORE, threaded.clearanceBoreMm())
                    .put(PLAIN_LENGTH, measured(threaded.plainLength()));
        }
        tree.put(TANG_LENGTH, measured(tang.length()));
        tang.massG().ifPresent(g -> tree.number(MASS, g));
        tang.flare().ifPresent(flare -> tree.put(FLARE, flare(flare)));
        return tree;
    }

    private Tree.Fields flare(Flare flare) {
        return Tree.Fields.flat()
                .put(FLARE_DIAMETER, measured(flare.diameter()))
                .put(FLARE_LENGTH, measured(flare.length()));
    }

    private Tree.Fields ferrule(Ferrule ferrule) {
        boolean round = ferrule.outside().equals(ferrule.outsideLeast());
        Tree outside =
                round
                        ? measured(ferrule.outside())
                        : Tree.Fields.flat()
                                .put(LEAST, measured(ferrule.outsideLeast()))
                                .put(GREATEST, measured(ferrule.outside()));
        Tree.Fields tree =
                Tree.Fields.flat()
                        .put(BORE, measured(ferrule.bore()))
                        .put(OUTSIDE, outside)
                        .put(FERRULE_LENGTH, measured(ferrule.length()))
                        .number(LIP, ferrule.lipMm(), 0);
        ferrule.lipHoleMm().ifPresent(mm -> tree.number(LIP_HOLE, mm));
        tree.number(CHAMFER, ferrule.chamferMm(), 0).text(MATERIAL, ferrule.material());
        ferrule.massG().ifPresent(g -> tree.number(MASS, g));
        return tree;
    }

    private Tree.Fields cap(EndCap cap) {
        Tree.Fields tree =
                Tree.Fields.flat()
                        .put(
                                SPIGOT,
                                Tree.Fields.flat()
                                        .put(SPIGOT_DIAMETER, measured(cap.spigotDiameter()))
                                        .put(SPIGOT_LENGTH, measured(cap.spigotLength())))
                        .put(
                                HEAD,
                                Tree.Fields.flat()
                                        .put(HEAD_DIAMETER, measured(cap.headDiameter()))
                                        .put(HEAD_THICKNESS, measured(cap.headThickness())))
                        .word(FORM, cap.form())
                        .text(MATERIAL, cap.material());
        cap.massG().ifPresent(g -> tree.number(MASS, g));
        cap.balanceMm().ifPresent(mm -> tree.number(CAP_BALANCE, mm));
        return tree;
    }
}
