package haftline.template;

import haftline.handle.Brief;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.shape.Shape;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import haftline.store.ShapeFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Work pieces from the demo set and from every shape to start from. */
public final class StarterWork {
    private StarterWork() {}

    /** The demo set as it is. */
    public static List<Workpiece> demo() throws Exception {
        List<Workpiece> work = new ArrayList<>();
        for (Brief brief : demoSet().briefs()) {
            work.add(work(brief));
        }
        return work;
    }

    /** The demo set's first piece that each shape can be drawn on. */
    static List<Workpiece> everyShape() throws Exception {
        List<Workpiece> work = new ArrayList<>();
        List<Path> files;
        try (Stream<Path> list = Files.list(Path.of("profiles/shapes"))) {
            files = list.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
        for (Path file : files) {
            Shape shape = ShapeFile.read(file);
            for (Brief brief : demoSet().briefs()) {
                Brief shaped =
                        new Brief(
                                shape.name(),
                                brief.kit(),
                                brief.metals(),
                                brief.stock(),
                                brief.adhesive(),
                                shape,
                                brief.rules(),
                                brief.rack(),
                                brief.choices());
                if (Resolve.of(shaped) instanceof Resolution.Resolved) {
                    work.add(work(shaped));
                    break;
                }
            }
        }
        return work;
    }

    private static LoadedSet demoSet() throws Exception {
        return SetFile.read(Path.of("profiles/sets/tidewater.yaml"));
    }

    private static Workpiece work(Brief brief) {
        return Workpiece.of(((Resolution.Resolved) Resolve.of(brief)).handle(), "B2", false);
    }
}
