package haftline.set;

/**
 * What the maker's place has, as far as it shapes what is cut, printed and written. It says nothing
 * about the handles themselves: {@link haftline.handle.Rules} do.
 *
 * @param templates how gauges and copying templates are made
 * @param files how files are written for the maker's programs and printer
 */
public record Workshop(TemplateSettings templates, FileSettings files) {
    /** Where a maker starts: a saw, a file and a home printer. */
    public static final Workshop COMMON_PRACTICE =
            new Workshop(TemplateSettings.COMMON_PRACTICE, FileSettings.COMMON_PRACTICE);

    /**
     * The same workshop making templates otherwise.
     *
     * @param other how gauges and copying templates are made
     * @return the changed copy
     */
    public Workshop withTemplates(TemplateSettings other) {
        return new Workshop(other, files);
    }

    /**
     * The same workshop writing files otherwise.
     *
     * @param other how files are written
     * @return the changed copy
     */
    public Workshop withFiles(FileSettings other) {
        return new Workshop(templates, other);
    }
}
