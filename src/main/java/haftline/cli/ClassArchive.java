package haftline.cli;

import java.io.DataInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The archive of classes that lets the editor start sooner, in the user's folder for what can be
 * made again. It belongs to one jar and one virtual machine; where either changes, another one is
 * made. Whatever goes wrong with it, the editor starts without.
 */
final class ClassArchive {
    private static final String ENDING = ".jsa";
    private static final String LIST = ".list";
    private static final String UNDER_WAY = ".part";
    private static final String FAILED = ".failed";

    /** Classes of before Java 6 are not taken, and what hangs on them upsets the making. */
    private static final int FIRST_TAKEN = 50;

    /** A month: two jars that are used in turn keep theirs. */
    private static final long KEPT_MS = 30L * 24 * 60 * 60 * 1000;

    private final File folder;
    private final String name;
    private final File jar;
    private final long starter;

    private ClassArchive(File folder, String name, File jar, long starter) {
        this.folder = folder;
        this.name = name;
        this.jar = jar;
        this.starter = starter;
    }

    /**
     * The archive of a jar, whether it is there or not.
     *
     * @param jar the jar with its full path
     */
    static ClassArchive of(File jar) {
        return of(jar, ProcessHandle.current().pid());
    }

    private static ClassArchive of(File jar, long starter) {
        String key =
                jar.getPath()
                        + '|'
                        + jar.length()
                        + '|'
                        + jar.lastModified()
                        + '|'
                        + System.getProperty("java.home")
                        + '|'
                        + System.getProperty("java.vm.version");
        String name = "classes-" + Integer.toHexString(key.hashCode());
        return new ClassArchive(usualFolder(), name, jar, starter);
    }

    private static File usualFolder() {
        String cache = System.getenv("XDG_CACHE_HOME");
        String home = System.getProperty("user.home");
        boolean isMac = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("mac");
        File base =
                cache != null && !cache.isBlank()
                        ? new File(cache)
                        : isMac ? new File(home, "Library/Caches") : new File(home, ".cache");
        return new File(base, "haftline");
    }

    String name() {
        return name;
    }

    private File file(String ending) {
        return new File(folder, name + ending);
    }

    /** What belongs to one start alone; two editors may be opened and closed at a time. */
    private File own(String ending) {
        return file("-" + starter + ending);
    }

    /** Options that use the archive, or note down what belongs into it while there is none. */
    List<String> options() {
        File made = file(ENDING);
        if (made.isFile()) {
            return List.of("-XX:SharedArchiveFile=" + made.getPath());
        }
        if (file(FAILED).exists() || !folder.isDirectory() && !folder.mkdirs()) {
            return List.of();
        }
        return folder.canWrite()
                ? List.of("-XX:DumpLoadedClassList=" + own(LIST).getPath())
                : List.of();
    }

    /** Does away with an archive that nothing starts with. */
    void forget() {
        if (file(ENDING).delete()) {
            note();
        }
    }

    /**
     * Begins to make the archive, if a list was noted down; does not wait for it.
     *
     * @param java the program that starts a virtual machine
     */
    void makeFromList(String java) {
        if (!own(LIST).isFile()) {
            return;
        }
        try {
            new ProcessBuilder(
                            java,
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-Duser.home=" + System.getProperty("user.home"),
                            "-cp",
                            jar.getPath(),
                            ClassArchive.class.getName(),
                            java,
                            jar.getPath(),
                            Long.toString(starter))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException notStarted) {
            own(LIST).delete();
        }
    }

    /**
     * Makes the archive; runs on its own, after the window was closed.
     *
     * @param args the program that starts a virtual machine, the jar, and the process that noted
     *     the list down
     */
    public static void main(String[] args) {
        ClassArchive archive = of(new File(args[1]), Long.parseLong(args[2]));
        try {
            archive.make(args[0]);
        } catch (IOException noRoom) {
            archive.note();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            archive.own(LIST).delete();
            archive.own(UNDER_WAY).delete();
        }
    }

    private void make(String java) throws IOException, InterruptedException {
        Path list = own(LIST).toPath();
        Files.write(list, taken(Files.readAllLines(list)));
        Process making =
                new ProcessBuilder(
                                java,
                                "-Xshare:dump",
                                "-XX:SharedClassListFile=" + list,
                                "-XX:SharedArchiveFile=" + own(UNDER_WAY),
                                "-XX:-CreateCoredumpOnCrash",
                                "-XX:ErrorFile=" + file(FAILED),
                                "-jar",
                                jar.getPath())
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        if (making.waitFor() != 0) {
            note();
            return;
        }
        Files.move(own(UNDER_WAY).toPath(), file(ENDING).toPath(), StandardCopyOption.ATOMIC_MOVE);
        removeOthers();
    }

    /** So that it is not tried at every start. */
    private void note() {
        try {
            Files.write(file(FAILED).toPath(), List.of("no archive of classes could be made"));
        } catch (IOException noRoom) {
            // It is tried again.
        }
    }

    /** Old archives of other jars and machines, and what starts left that were killed. */
    private void removeOthers() {
        File[] all = folder.listFiles();
        if (all == null) {
            return;
        }
        long longAgo = System.currentTimeMillis() - KEPT_MS;
        for (File other : all) {
            if (other.getName().startsWith("classes-") && other.lastModified() < longAgo) {
                other.delete();
            }
        }
    }

    /**
     * What of a list can be taken: all but the lambdas that have to do with a class that is too
     * old, which some virtual machines break down over.
     */
    List<String> taken(List<String> all) throws IOException {
        List<String> taken = new ArrayList<>();
        try (ZipFile classes = new ZipFile(jar)) {
            Map<String, Boolean> old = new HashMap<>();
            for (String line : all) {
                if (!line.startsWith("@lambda-proxy")) {
                    taken.add(line);
                    continue;
                }
                boolean isOld = false;
                for (String word : line.split("[ ;()\\[]+")) {
                    String type = word.startsWith("L") ? word.substring(1) : word;
                    isOld |= old.computeIfAbsent(type, t -> isOld(classes, t));
                }
                if (!isOld) {
                    taken.add(line);
                }
            }
        }
        return taken;
    }

    private static boolean isOld(ZipFile classes, String type) {
        ZipEntry entry = classes.getEntry(type + ".class");
        if (entry == null) {
            return false;
        }
        try (DataInputStream in = new DataInputStream(classes.getInputStream(entry))) {
            in.readInt();
            in.readUnsignedShort();
            return in.readUnsignedShort() < FIRST_TAKEN;
        } catch (IOException unreadable) {
            return true;
        }
    }
}
