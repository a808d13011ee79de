package haftline.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** Collects what is wrong with a document and with the files it names. */
final class Problems {
    /** Beyond this many, one mistake is usually the cause of the rest. */
    private static final int MOST = 40;

    private final String file;
    private final List<Problem> found;

    Problems(String file) {
        this(file, new ArrayList<>());
    }

    private Problems(String file, List<Problem> found) {
        this.file = file;
        this.found = found;
    }

    /** The same collection, for problems in another file. */
    Problems in(String otherFile) {
        return new Problems(otherFile, found);
    }

    String file() {
        return file;
    }

    void add(Optional<Mark> mark, String field, String message) {
        // The engine counts lines and columns from 0, people from 1.
        add(mark.map(m -> m.getLine() + 1).orElse(0), mark.map(Problems::column).orElse(0), field, message);
    }

    private static int column(Mark mark) {
        return mark.getColumn() + 1;
    }

    void add(int line, int column, String field, String message) {
        found.add(new Problem(file, line, column, field, message));
    }

    void addToFile(String message) {
        add(0, 0, "", message);
    }

    int count() {
        return found.size();
    }

    void refuseIfAny() throws DocumentException {
        if (found.isEmpty()) {
            return;
        }
        List<Problem> told = new ArrayList<>(found.subList(0, Math.min(MOST, found.size())));
        if (found.size() > MOST) {
            String more = "and " + (found.size() - MOST) + " more problems after these";
            told.add(new Problem(file, 0, 0, "", more));
        }
        throw new DocumentException(told);
    }
}
