package haftline.edit;

import haftline.store.SetFile;
import haftline.store.Starter;
import java.nio.file.Path;

/** A process that opens the program's own set and saves it under another name, twice. */
final class SavingChild {
    private SavingChild() {}

    public static void main(String[] args) throws Exception {
        OpenDocument shown = OpenDocument.unsaved(SetFile.read(Starter.set()));
        System.out.println("opened " + Starter.set().toUri());
        tell("saved ", shown.saveAs(Path.of(args[0])));
        shown.apply(KitEdits.rename("fork", "oyster fork"));
        tell("saved again ", shown.save());
    }

    private static void tell(String what, SaveResult result) {
        if (result instanceof SaveResult.Saved saved) {
            saved.files().forEach(file -> System.out.println(what + file.getFileName()));
        } else {
            System.out.println("not " + what + result);
        }
    }
}
