package haftline.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * Collects what is wrong with a document and with the files it names. Each map that is read has its
 * own room, so that it knows whether anything within it is wrong; all rooms fill one list.
 */
final class Problems {
    /** Beyond this many, one mistake is usually the cause of the rest. */
    private static final int MOST = 40;

    private final String file;
    private final Optional<Problems> around;

    /** A set: what is read twice is told once. */
    private final Set<Problem> found;

    private int count;

    Problems(String file) {
        this(file, Optional.empty(), new LinkedHashSet<>());
    }

    private Problems(String file, Optional<Problems> around, Set<Problem> found) {
        this.file = file;
        this.around = around;
        this.found = found;
    }

    /** A room within this one. */
    Problems room() {
        return in(file);
    }

    /** A room within this one for another file. */
    Problems in(String otherFile) {
        return new Problems(otherFile, Optional.of(this), found);
    }

    String file() {
        return file;
    }

    void add(Optional<Mark> mark, String field, String message) {
        // The engine counts lines and columns from 0, people from 1.
        int line = mark.map(m -> m.getLine() + 1).orElse(0);
        int column = mark.map(m -> m.getColumn() + 1).orElse(0);
        add(line, column, field, message);
    }

    void add(int line, int column, String field, String message) {
        found.add(new Problem(file, line, column, field, message));
        count();
    }

    private void count() {
        count++;
        around.ifPresent(Problems::count);
    }

    void addToFile(String message) {
        add(0, 0, "", message);
    }

    /** Whether nothing is wrong in this room. */
    boolean isEmpty() {
        return count == 0;
    }

    void refuseIfAny() throws DocumentException {
        if (found.isEmpty()) {
            return;
        }
        // As one goes through the files with them, not as the reader came upon them.
        List<String> files = found.stream().map(Problem::file).distinct().toList();
        List<Problem> told =
                new ArrayList<>(
                        found.stream()
                                .sorted(
                                        Comparator.comparing((Problem p) -> files.indexOf(p.file()))
                                                .thenComparing(Problem::line)
                                                .thenComparing(Problem::column))
                                .limit(MOST)
                                .toList());
        if (found.size() > MOST) {
            String more = "and " + (found.size() - MOST) + " more problems after these";
            told.add(new Problem(file, 0, 0, "", more));
        }
        throw new DocumentException(told);
    }
}
