package haftline.ui.app;

import haftline.cli.Making;
import haftline.stock.CatalogueException;
import haftline.store.LoadedSet;
import haftline.ui.model.ExportModel;
import haftline.write.OutputFile;
import java.util.List;
import java.util.Set;

/** The files that the main command makes. */
final class Maker implements ExportModel.Maker {
    @Override
    public List<String> formats() {
        return Making.formats();
    }

    @Override
    public List<OutputFile> files(LoadedSet set, Set<String> formats) throws CatalogueException {
        return Making.files(set, formats);
    }
}
