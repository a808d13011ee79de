package haftline.ui.model;

import haftline.set.Workshop;
import java.util.List;

/** What the kits of the pieces cost, a row a kit; the rows follow the pieces. */
public final class KitPrices {
    private final EditorModel editor;
    private final CostSettings costs;
    private final Watched<List<Row>> rows = new Watched<>(List.of());
    private List<String> kits = List.of();
    private Workshop workshop;

    /**
     * The prices of an editor's set.
     *
     * @param editor the editor
     */
    public KitPrices(EditorModel editor) {
        this.editor = editor;
        costs = new CostSettings(new WorkshopFields(editor));
        workshop = editor.draft().value().set().workshop();
        editor.draft().watch(draft -> follow());
        fill();
    }

    private void follow() {
        Workshop now = editor.draft().value().set().workshop();
        boolean isOther = !now.equals(workshop);
        workshop = now;
        if (isOther) {
            rows.value().forEach(Row::refresh);
        }
        fill();
    }

    /** Nothing, until the workshop says what an hour costs: the rest goes by that. */
    private void fill() {
        List<String> wanted = costs.hasRates() ? costs.kits() : List.of();
        if (!wanted.equals(kits)) {
            kits = wanted;
            rows.set(wanted.stream().map(costs::kit).toList());
        }
    }

    /**
     * A row a kit, in the order of the pieces.
     *
     * @return watched; none where the workshop says nothing of rates
     */
    public Watched<List<Row>> rows() {
        return rows;
    }
}
