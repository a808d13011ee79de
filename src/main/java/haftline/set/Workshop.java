package haftline.set;

import java.util.Optional;

/**
 * What the maker's place has, as far as it shapes what is cut, printed and written. It says nothing
 * about the handles themselves: {@link haftline.handle.Rules} do.
 *
 * @param templates how gauges and copying templates are made
 * @param files how files are written for the maker's programs and printer
 * @param stockLengths the sticks on the rack, where the maker lists them
 * @param rates what time and goods cost, where the maker says so
 */
public record Workshop(
        TemplateSettings templates,
        FileSettings files,
        Optional<StockLengths> stockLengths,
        Optional<Rates> rates) {
    /** Where a maker starts: a saw, a file and a home printer. */
    public static final Workshop COMMON_PRACTICE =
            new Workshop(TemplateSettings.COMMON_PRACTICE, FileSettings.COMMON_PRACTICE);

    /**
     * A workshop that says nothing of stock and rates.
     *
     * @param templates how gauges and copying templates are made
     * @param files how files are written for the maker's programs and printer
     */
    public Workshop(TemplateSettings templates, FileSettings files) {
        this(templates, files, Optional.empty(), Optional.empty());
    }

    /**
     * Where a maker with such a printer starts.
     *
     * @param paper what is printed on
     * @return common practice, the sheet for gauges as large as the paper leaves
     */
    public static Workshop commonPractice(FileSettings.Paper paper) {
        return COMMON_PRACTICE.withFiles(COMMON_PRACTICE.files().withPaper(paper));
    }

    /**
     * The same workshop making templates otherwise.
     *
     * @param other how gauges and copying templates are made
     * @return the changed copy
     */
    public Workshop withTemplates(TemplateSettings other) {
        return new Workshop(other, files, stockLengths, rates);
    }

    /**
     * The same workshop writing files otherwise. A sheet for gauges that is as large as the paper
     * leaves follows the paper.
     *
     * @param other how files are written
     * @return the changed copy
     */
    public Workshop withFiles(FileSettings other) {
        TemplateSettings.Sheet sheet = templates.sheet();
        boolean isThePapers = sheet.equals(sheet.on(files.paper()));
        return new Workshop(
                isThePapers ? templates.withSheet(sheet.on(other.paper())) : templates,
                other,
                stockLengths,
                rates);
    }

    /**
     * The same workshop with other sticks.
     *
     * @param other the sticks on the rack and how they are cut
     * @return the changed copy
     */
    public Workshop withStockLengths(StockLengths other) {
        return new Workshop(templates, files, Optional.of(other), rates);
    }

    /**
     * The same workshop with other rates.
     *
     * @param other what time and goods cost
     * @return the changed copy
     */
    public Workshop withRates(Rates other) {
        return new Workshop(templates, files, stockLengths, Optional.of(other));
    }
}
