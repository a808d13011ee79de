package haftline.store;

import java.util.List;
import java.util.stream.Collectors;

/** A document that was refused, with everything that is known to be wrong with it. */
public final class DocumentException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    DocumentException(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /**
     * What is wrong, file by file, in the order of the lines.
     *
     * @return at least one problem
     */
    public List<Problem> problems() {
        return problems;
    }
}
