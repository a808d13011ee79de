package haftline.ui.model;

import haftline.adjust.takeoff.Ends;
import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TakeOff;
import haftline.drawing.Drawing;
import haftline.drawing.TakeOffDrawing;
import haftline.edit.Outcome;
import haftline.edit.Scope;
import haftline.edit.ShapeEdits;
import haftline.handle.Brief;
import haftline.measure.Length;
import haftline.measure.OutOfRange;
import haftline.measure.Units;
import haftline.store.DocumentException;
import haftline.store.ReadingsFile;
import haftline.store.SaveException;
import haftline.store.ShapeFile;
import haftline.store.Tracing;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;

/**
 * Taking the shape off a handle that is there: which readings, how they are to be read, what comes
 * of them. Read and fitted by a background executor.
 */
public final class TakeOffModel {
    /** As on the command line, mm on the diameter. */
    public static final double USUAL_TOLERANCE_MM = 0.1;

    private static final double LEAST_TOLERANCE_MM = 0.01;
    private static final double GREATEST_TOLERANCE_MM = 5;

    /** A tolerance that is proposed is a whole number of these, mm. */
    private static final double TOLERANCE_STEP_MM = 0.05;

    /** How far it is. */
    public enum Stage {
        /** No file is chosen. */
        EMPTY,
        /** It is being read and fitted. */
        WORKING,
        /** A shape was found. */
        READY,
        /** None was; the text says why. */
        REFUSED
    }

    /**
     * How the readings are to be read.
     *
     * @param units unit of a table whose heading names none
     * @param toleranceMm how far the line may run beside the true one, mm on the diameter
     * @param scale mm a unit of a traced outline, or empty for what the file says
     * @param axis where a traced outline's axis lies, or empty for its middle
     * @param endsOfPiece whether ferrule and cap of the piece at hand tell the two end diameters
     */
    public record Settings(
            Units units,
            double toleranceMm,
            OptionalDouble scale,
            OptionalDouble axis,
            boolean endsOfPiece) {
        /** As the command line has them. */
        public static final Settings USUAL =
                new Settings(
                        Units.MM,
                        USUAL_TOLERANCE_MM,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        false);

        private Settings withTolerance(double mm) {
            return new Settings(units, mm, scale, axis, endsOfPiece);
        }
    }

    /**
     * What is shown.
     *
     * @param stage how far it is
     * @param taken what was taken off
     * @param drawing readings, line and residuals
     * @param text why nothing was, or what became of it; may be empty
     */
    public record State(
            Stage stage, Optional<TakeOff> taken, Optional<Drawing> drawing, String text) {
        private static State of(Stage stage, String text) {
            return new State(stage, Optional.empty(), Optional.empty(), text);
        }
    }

    /**
     * Where the readings come from.
     *
     * @param name name of the file or photograph
     * @param file the file that they are read from, or empty
     * @param traced those traced over a photograph; none where there is a file
     */
    public record Source(String name, Optional<Path> file, List<Reading> traced) {
        /** Copies the list. */
        public Source {
            traced = List.copyOf(traced);
        }

        /** As a shape is called that comes from it. */
        private String plain() {
            return name.replaceAll("\\.[^.]*$", "");
        }
    }

    private final EditorModel editor;
    private final Executor background;
    private final Executor drawing;
    private final Watched<Optional<Source>> source = new Watched<>(Optional.empty());
    private final Watched<Settings> settings = new Watched<>(Settings.USUAL);
    private final Watched<State> state = new Watched<>(State.of(Stage.EMPTY, ""));
    private int number;

    /** The tolerance of files, while readings from a photograph have their own. */
    private OptionalDouble ofFiles = OptionalDouble.empty();

    /**
     * Nothing taken off yet.
     *
     * @param editor the editor
     * @param background where files are read and fitted
     * @param drawing where what is watched changes
     */
    public TakeOffModel(EditorModel editor, Executor background, Executor drawing) {
        this.editor = editor;
        this.background = background;
        this.drawing = drawing;
        settings.watch(changed -> work());
        editor.units().watch(changed -> work());
    }

    /**
     * Where the readings come from.
     *
     * @return watched
     */
    public Watched<Optional<Source>> source() {
        return source;
    }

    /**
     * How it is read.
     *
     * @return watched; may be set, what is shown follows
     */
    public Watched<Settings> settings() {
        return settings;
    }

    /**
     * What came of it.
     *
     * @return watched
     */
    public Watched<State> state() {
        return state;
    }

    /**
     * Whether the file is a traced outline rather than a table.
     *
     * @return true for SVG and DXF
     */
    public boolean isTraced() {
        return source.value()
                .filter(from -> from.file().isPresent())
                .filter(from -> from.name().toLowerCase(Locale.ROOT).matches(".*\\.(svg|dxf)"))
                .isPresent();
    }

    /**
     * Whether the file is a table, which may need to be told its unit.
     *
     * @return false for a traced outline, for readings from a photograph and where there are none
     */
    public boolean isTable() {
        return source.value().flatMap(Source::file).isPresent() && !isTraced();
    }

    /**
     * Reads a file and takes its shape off.
     *
     * @param readings the file
     */
    public void open(Path readings) {
        double tolerance = ofFiles.orElse(settings.value().toleranceMm());
        ofFiles = OptionalDouble.empty();
        String name = readings.getFileName().toString();
        begin(new Source(name, Optional.of(readings), List.of()), tolerance);
    }

    /**
     * Takes the shape off readings that were traced over a photograph.
     *
     * @param readings the readings
     * @param name the photograph's name
     * @param toleranceMm what such a trace can tell, mm on the diameter; taken into the range of
     *     tolerances, and no finer than the usual one
     */
    public void take(List<Reading> readings, String name, double toleranceMm) {
        if (ofFiles.isEmpty()) {
            ofFiles = OptionalDouble.of(settings.value().toleranceMm());
        }
        double rounded = Math.ceil(toleranceMm / TOLERANCE_STEP_MM) * TOLERANCE_STEP_MM;
        begin(
                new Source(name, Optional.empty(), readings),
                Math.max(USUAL_TOLERANCE_MM, Math.min(GREATEST_TOLERANCE_MM, rounded)));
    }

    /** Set first what is not to be worked out yet. */
    private void begin(Source from, double toleranceMm) {
        source.set(Optional.empty());
        settings.set(settings.value().withTolerance(toleranceMm));
        source.set(Optional.of(from));
        work();
    }

    /**
     * Reads the tolerance that was typed.
     *
     * @param text a length
     * @return empty where it was taken, else what is expected
     */
    public Optional<String> tolerance(String text) {
        OptionalDouble mm = Length.parse(text, editor.units().value());
        boolean isGood =
                mm.isPresent()
                        && mm.getAsDouble() >= LEAST_TOLERANCE_MM
                        && mm.getAsDouble() <= GREATEST_TOLERANCE_MM;
        if (!isGood) {
            return Optional.of(
                    "expected a length "
                            + OutOfRange.range(
                                    LEAST_TOLERANCE_MM,
                                    GREATEST_TOLERANCE_MM,
                                    editor.units().value()));
        }
        settings.set(settings.value().withTolerance(mm.getAsDouble()));
        return Optional.empty();
    }

    /**
     * Reads the scale of a traced outline that was typed.
     *
     * @param text mm a unit, or nothing
     * @return empty where it was taken, else what is expected
     */
    public Optional<String> scale(String text) {
        OptionalDouble scale = Entry.number(text, "mm");
        if (!text.isBlank()
                && (scale.isEmpty() || scale.getAsDouble() < 1e-6 || scale.getAsDouble() > 1e6)) {
            return Optional.of("expected the mm that one unit of the drawing is");
        }
        Settings now = settings.value();
        settings.set(
                new Settings(now.units(), now.toleranceMm(), scale, now.axis(), now.endsOfPiece()));
        return Optional.empty();
    }

    /**
     * Reads the axis of a traced outline that was typed.
     *
     * @param text a number, or nothing
     * @return empty where it was taken, else what is expected
     */
    public Optional<String> axis(String text) {
        OptionalDouble axis = Entry.number(text, "");
        if (!text.isBlank() && axis.isEmpty()) {
            return Optional.of("expected the axis' place in the drawing, a number");
        }
        Settings now = settings.value();
        settings.set(
                new Settings(now.units(), now.toleranceMm(), now.scale(), axis, now.endsOfPiece()));
        return Optional.empty();
    }

    /**
     * Says in which unit a table is whose heading names none.
     *
     * @param units the unit
     */
    public void units(Units units) {
        Settings now = settings.value();
        settings.set(
                new Settings(units, now.toleranceMm(), now.scale(), now.axis(), now.endsOfPiece()));
    }

    /**
     * Says whether the piece's parts tell the end diameters.
     *
     * @param are true where the readings are of a handle for these parts
     */
    public void endsOfPiece(boolean are) {
        Settings now = settings.value();
        settings.set(new Settings(now.units(), now.toleranceMm(), now.scale(), now.axis(), are));
    }

    private Ends ends() {
        if (!settings.value().endsOfPiece()) {
            return Ends.UNKNOWN;
        }
        Brief brief = editor.worked().value().brief();
        OptionalDouble cap =
                brief.kit()
                        .cap()
                        .map(c -> OptionalDouble.of(c.headDiameter().mean()))
                        .orElse(OptionalDouble.empty());
        return new Ends(OptionalDouble.of(brief.kit().ferrule().outside().mean()), cap);
    }

    private void work() {
        if (source.value().isEmpty()) {
            return;
        }
        Source readings = source.value().get();
        Settings how = settings.value();
        Ends ends = ends();
        Units units = editor.units().value();
        int mine = ++number;
        state.set(State.of(Stage.WORKING, ""));
        background.execute(
                () -> {
                    State found = taken(readings, how, ends, units);
                    drawing.execute(
                            () -> {
                                if (mine == number) {
                                    state.set(found);
                                }
                            });
                });
    }

    private static State taken(Source from, Settings how, Ends ends, Units units) {
        try {
            List<Reading> readings =
                    from.file().isEmpty() ? from.traced() : read(from.file().get(), how);
            Optional<TakeOff> taken = TakeOff.of(readings, how.toleranceMm(), from.plain(), ends);
            if (taken.isEmpty()) {
                return State.of(
                        Stage.REFUSED, "No outline that can be turned passes these readings.");
            }
            Drawing plot = TakeOffDrawing.plot(taken.get(), how.toleranceMm(), units);
            return new State(Stage.READY, taken, Optional.of(plot), "");
        } catch (DocumentException | IllegalArgumentException refused) {
            return State.of(Stage.REFUSED, refused.getMessage());
        }
    }

    private static List<Reading> read(Path file, Settings how) throws DocumentException {
        return ReadingsFile.read(
                file,
                Optional.of(how.units()),
                new Tracing(how.scale(), how.axis(), Optional.empty()));
    }

    /**
     * Makes what was taken off the shape of the piece at hand, as one step.
     *
     * @return done, or why not
     */
    public Outcome accept() {
        TakeOff taken = state.value().taken().orElseThrow();
        return editor.runIfDrawable(
                new ShapeEdits(editor.piece().value(), Scope.THIS_PIECE).take(taken.shape(), ""));
    }

    /**
     * Saves what was taken off as a shape document.
     *
     * @param to the file; one of that name is kept as a backup
     */
    public void save(Path to) {
        State now = state.value();
        String text;
        try {
            ShapeFile.save(to, now.taken().orElseThrow().shape());
            text = "Saved as " + to.toAbsolutePath().normalize() + ".";
        } catch (SaveException failed) {
            text = failed.getMessage();
        }
        state.set(new State(now.stage(), now.taken(), now.drawing(), text));
    }
}
