package haftline.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystemAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The shapes and sets to start from, which travel inside the program. They are not for saving. */
public final class Starter {
    private static final String FOLDER = "/haftline/starter/";
    private static final String SHAPES = "profiles/shapes";
    private static final String SET = "profiles/sets/tidewater.yaml";

    private Starter() {}

    /**
     * The demonstration set.
     *
     * @return its file inside the program, to be read with {@link SetFile#read}
     */
    public static Path set() {
        return path(SET);
    }

    /**
     * Whether a file is the demonstration set's inside the program: what it names is not for
     * keeping either.
     *
     * @param file any file
     * @return true for {@link #set} alone
     */
    public static boolean isSet(Path file) {
        // The program is not opened for files that cannot be it.
        return file.endsWith(SET) && file.equals(set());
    }

    /**
     * The starter shapes, by name of their file.
     *
     * @return files inside the program, to be read with {@link ShapeFile#read}
     */
    public static List<Path> shapes() {
        try (Stream<Path> files = Files.list(path(SHAPES))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path path(String name) {
        URL url = Starter.class.getResource(FOLDER + name);
        if (url == null) {
            throw new IllegalStateException(name + " is missing from the program");
        }
        try {
            return path(url.toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The path of a resource, on the disk or in a jar, which is opened and stays open. */
    static Path path(URI resource) {
        if (!resource.getScheme().equals("jar")) {
            return Path.of(resource);
        }
        try {
            FileSystems.newFileSystem(resource, Map.of());
        } catch (FileSystemAlreadyExistsException e) {
            // Opened at an earlier call.
            return Path.of(resource);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Path.of(resource);
    }
}
