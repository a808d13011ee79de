package haftline.ui.app;

import haftline.cli.Making;
import haftline.measure.Units;
import haftline.stock.CatalogueException;
import haftline.store.LoadedSet;
import haftline.ui.model.ExportModel;
import haftline.write.PlannedFile;
import java.util.List;
import java.util.Set;

/** The files that the main command makes. */
final class Maker implements ExportModel.Maker {
    @Override
    public List<String> formats() {
        return Making.formats();
    }

    @Override
    public List<String> templateFormats() {
        return Making.templateFormats();
    }

    @Override
    public ExportModel.Plan plan(LoadedSet set, Units units) throws CatalogueException {
        Making.Plan plan = Making.plan(set, units);
        return new ExportModel.Plan() {
            @Override
            public List<PlannedFile> ofPieces(Set<String> formats) {
                return plan.ofPieces(formats);
            }

            @Override
            public List<PlannedFile> ofTemplates(Set<String> formats) {
                return plan.ofTemplates(formats);
            }
        };
    }
}
