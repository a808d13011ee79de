package haftline.stock;

import java.util.List;

/** A catalogue file that cannot be used, with everything that is wrong with it. */
public final class CatalogueException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<CatalogueProblem> problems;

    CatalogueException(List<CatalogueProblem> problems) {
        super(message(problems));
        this.problems = List.copyOf(problems);
    }

    CatalogueException(CatalogueProblem problem) {
        this(List.of(problem));
    }

    /**
     * Everything that is wrong, in the order of the file.
     *
     * @return at least one problem
     */
    public List<CatalogueProblem> problems() {
        return problems;
    }

    private static String message(List<CatalogueProblem> problems) {
        String first = problems.get(0).toString();
        int more = problems.size() - 1;
        return more == 0 ? first : first + " (and " + more + " more)";
    }
}
