package haftline.cli;

import haftline.curve.Outline;
import haftline.drawing.Drawing;
import haftline.drawing.ProfileDrawing;
import haftline.drawing.SectionDrawing;
import haftline.drawing.SheetFormat;
import haftline.drawing.TitleBlock;
import haftline.figures.Figures;
import haftline.measure.Units;
import haftline.write.PlannedFile;
import haftline.write.csv.FilledTables;
import haftline.write.png.HandlePictures;
import haftline.write.stl.MeshResult;
import haftline.write.stl.StlWriter;
import haftline.write.stl.TurnedMesh;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** The files of one piece: drawings, solid, table and picture. */
final class PieceFiles {
    /**
     * How far the solid's facets may stand off the wood, mm: less than turning and sanding leave.
     */
    private static final double SOLID_TOLERANCE_MM = 0.05;

    private static final int PICTURE_PX = 1200;

    private final FileGroup group = new FileGroup();
    private final Wanted wanted;
    private final DrawingFiles writers;
    private final String name;
    private final ExaminedPiece piece;
    private final Figures figures;

    private PieceFiles(
            Wanted wanted,
            DrawingFiles writers,
            String name,
            ExaminedPiece piece,
            Figures figures) {
        this.wanted = wanted;
        this.writers = writers;
        this.name = name;
        this.piece = piece;
        this.figures = figures;
    }

    static FileGroup of(
            ExaminedSet set,
            ExaminedPiece piece,
            Figures figures,
            String name,
            Wanted wanted,
            DrawingFiles writers,
            Units units) {
        PieceFiles files = new PieceFiles(wanted, writers, name, piece, figures);
        files.addDrawings(DrawingWords.of(set, piece, figures, units), writers.format(units));
        if (wanted.has(Part.TABLES, Format.CSV)) {
            files.group.add(
                    PlannedFile.of(
                            name + FilledTables.STATIONS,
                            () ->
                                    DrawingFiles.bytes(
                                            StationCsv.of(figures.handle(), piece.isStopped()))));
        }
        // Neither can bear the words "not to be made", so a stopped piece gets none.
        if (!piece.isStopped()) {
            files.addSolid();
            files.addPicture(units);
        }
        Sheets.addTo(files.group, name, set, piece, wanted, units, writers.field());
        return files.group;
    }

    private void addDrawings(TitleBlock title, SheetFormat format) {
        Supplier<Drawing> section =
                () -> SectionDrawing.of(figures, title, format, UnaryOperator.identity());
        Supplier<Drawing> flat =
                () -> SectionDrawing.of(figures, title, format, writers::dxfCurves);
        if (wanted.has(Part.DRAWINGS, Format.SVG)) {
            group.add(writers.framedSvg(name + "-section", section));
        }
        if (wanted.has(Part.DRAWINGS, Format.DXF)) {
            group.add(writers.dxf(name + "-section", flat));
        }
        if (wanted.has(Part.DRAWINGS, Format.PDF)) {
            group.add(writers.pdf(name + "-section", section));
        }
        if (wanted.has(Part.DRAWINGS, Format.SVG)) {
            group.add(writers.svg(name + "-profile", this::profile));
        }
        if (wanted.has(Part.DRAWINGS, Format.DXF)) {
            group.add(
                    writers.dxf(
                            name + "-profile",
                            () -> profile(writers.dxfCurves(figures.handle().outline()))));
        }
    }

    private Drawing profile() {
        return profile(figures.handle().outline());
    }

    private Drawing profile(Outline outline) {
        return ProfileDrawing.of(piece.name() + ", half-profile", outline, piece.isStopped());
    }

    private void addSolid() {
        if (wanted.has(Part.SOLIDS, Format.STL)) {
            Supplier<MeshResult> mesh =
                    new Once<>(() -> TurnedMesh.of(figures.handle(), SOLID_TOLERANCE_MM));
            group.add(
                    new PlannedFile(
                            name + ".stl", Optional.of(this::profile), () -> solid(mesh.get())),
                    () -> mesh.get() instanceof MeshResult.Refused refused ? refused.reason() : "");
        }
    }

    private static Optional<byte[]> solid(MeshResult result) {
        return result instanceof MeshResult.Made made
                ? Optional.of(StlWriter.binary(made.mesh()))
                : Optional.empty();
    }

    private void addPicture(Units units) {
        if (wanted.has(Part.PICTURES, Format.PNG)) {
            group.add(
                    PlannedFile.of(
                            name + ".png",
                            () ->
                                    HandlePictures.one(figures.handle(), PICTURE_PX, units)
                                            .content()));
        }
    }
}
