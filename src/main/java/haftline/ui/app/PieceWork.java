package haftline.ui.app;

import haftline.edit.PieceEdits;
import haftline.parts.Kit;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.ui.model.EditorModel;
import java.util.List;
import java.util.Optional;

/** What can be done to the pieces of the set. */
final class PieceWork {
    private final EditorModel editor;
    private final Dialogs dialogs;

    PieceWork(EditorModel editor, Dialogs dialogs) {
        this.editor = editor;
        this.dialogs = dialogs;
    }

    private HandleSet set() {
        return editor.draft().value().set();
    }

    private int at() {
        List<Piece> pieces = set().pieces();
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).name().equals(editor.piece().value())) {
                return i;
            }
        }
        return 0;
    }

    void choose(int by) {
        int to = at() + by;
        if (to >= 0 && to < set().pieces().size()) {
            editor.choose(set().pieces().get(to).name());
        }
    }

    List<String> kits() {
        return set().batchInUse().kits().stream().map(Kit::name).toList();
    }

    void add(String kit) {
        if (editor.run(PieceEdits.add(kit)).isDone()) {
            editor.choose(set().pieces().get(set().pieces().size() - 1).name());
        }
    }

    void copy() {
        List<String> before = set().pieces().stream().map(Piece::name).toList();
        if (editor.run(PieceEdits.copy(editor.piece().value())).isDone()) {
            set().pieces().stream()
                    .map(Piece::name)
                    .filter(name -> !before.contains(name))
                    .findFirst()
                    .ifPresent(editor::choose);
        }
    }

    void remove() {
        editor.run(PieceEdits.remove(editor.piece().value()));
    }

    void rename() {
        String name = editor.piece().value();
        Optional<String> wanted = dialogs.name("piece", name).filter(n -> !n.equals(name));
        wanted.ifPresent(
                n -> {
                    if (editor.run(PieceEdits.rename(name, n)).isDone()) {
                        editor.choose(n);
                    }
                });
    }

    void reorder(int by) {
        int to = at() + by;
        if (to >= 0 && to < set().pieces().size()) {
            editor.run(PieceEdits.reorder(editor.piece().value(), to));
        }
    }
}
