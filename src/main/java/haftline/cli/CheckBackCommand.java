package haftline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.set.CheckBack;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code haftline checkback}: turned pieces measured at their stations, beside their designs. */
@Command(
        name = "checkback",
        sortOptions = false,
        description = {
            "Holds turned pieces, measured, against their designs.",
            "And against one another; writes no file."
        },
        footer = {
            "",
            "Exit: 0 all is as designed, 1 a station is off or a piece falls out of the",
            "      family, 2 bad usage, 3 bad document or table."
        })
final class CheckBackCommand extends SetCommand implements Callable<Integer> {
    /** Rises when a key changes its meaning or goes away; a new key does not raise it. */
    private static final int VERSION = 1;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "MEASURED.csv",
            converter = PathOption.class,
            description =
                    "Tables of stations, as make writes them, with the measured diameters filled in.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--reading",
            paramLabel = "PIECE,X,DIAMETER",
            description =
                    "A reading that is typed: the piece, the place from the shoulder and the"
                            + " diameter; may be given many times.")
    private List<String> typed = new ArrayList<>();

    @Option(
            names = "--piece",
            paramLabel = "NAME",
            description = "The piece of tables that name none; if not said, by the file's name.")
    private String piece;

    @Option(
            names = "--tolerance",
            paramLabel = "LENGTH",
            converter = CompareCommand.ToleranceOption.class,
            description =
                    "How far a diameter may be off: mm, or with its unit; 0.3 mm by default (common"
                            + " practice); a tenon always 0.05 mm.")
    private Double tolerance;

    @Option(
            names = "--json",
            description = "Answers in JSON for other programs, lengths in mm whatever the units.")
    private boolean json;

    CheckBackCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, ReadingsException {
        if (files.isEmpty() && typed.isEmpty()) {
            throw usage("nothing measured: name a table, or type a --reading");
        }
        LoadedSet loaded = load();
        List<Handle> handles = new ArrayList<>();
        loaded.briefs()
                .forEach(
                        brief -> {
                            if (Resolve.of(brief) instanceof Resolution.Resolved resolved) {
                                handles.add(resolved.handle());
                            }
                        });
        List<CheckBack.Reading> readings = readings(handles);
        double within = tolerance == null ? CheckBack.USUAL_TOLERANCE_MM : tolerance;
        CheckBack back = CheckBack.of(handles, readings, within);
        String set = loaded.set().name();
        console.print(
                json
                        ? JsonPaper.of(out -> write(out, set, back))
                        : CheckBackPage.of(set, back, units, console.ink()));
        return back.isGood() ? ExitCode.DONE : ExitCode.STOPPED;
    }

    private List<CheckBack.Reading> readings(List<Handle> handles) throws ReadingsException {
        try {
            return TurnedReadings.read(handles, files, typed, Optional.ofNullable(piece), units);
        } catch (TurnedReadings.UsageException e) {
            throw usage(e.getMessage());
        }
    }

    private static void write(JsonGenerator out, String set, CheckBack back) throws IOException {
        out.writeStartObject();
        out.writeNumberField("haftline", VERSION);
        out.writeStringField("set", set);
        number(out, "tolerance_mm", back.toleranceMm());
        out.writeArrayFieldStart("pieces");
        for (CheckBack.Measured measured : back.pieces()) {
            out.writeStartObject();
            out.writeStringField("name", measured.name());
            number(out, "mean_off_mm", measured.meanOffMm());
            number(out, "family_off_mm", measured.familyOffMm());
            out.writeBooleanField("falls_out", measured.fallsOut());
            worst(out, "wood", measured.worst(false));
            worst(out, "tenon", measured.worst(true));
            out.writeArrayFieldStart("stations");
            for (CheckBack.Station station : measured.stations()) {
                out.writeStartObject();
                number(out, "x_mm", station.x());
                number(out, "design_mm", station.designMm());
                number(out, "measured_mm", station.measuredMm());
                number(out, "off_mm", station.offMm());
                out.writeBooleanField("on_tenon", station.onTenon());
                number(out, "tolerance_mm", station.toleranceMm());
                out.writeBooleanField("good", station.isGood());
                out.writeEndObject();
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private static void worst(JsonGenerator out, String key, Optional<CheckBack.Station> worst)
            throws IOException {
        number(out, key + "_worst_off_mm", worst.map(CheckBack.Station::offMm).orElse(Double.NaN));
        number(out, key + "_worst_at_mm", worst.map(CheckBack.Station::x).orElse(Double.NaN));
    }

    private static void number(JsonGenerator out, String key, double value) throws IOException {
        out.writeFieldName(key);
        CheckJson.number(out, value);
    }
}
