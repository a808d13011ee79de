package haftline.ui.app;

import haftline.ui.model.EditorModel;
import haftline.ui.model.PiecesModel;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;

/** What can be done with the piece at hand: in the menu of the window, and at its thumbnail. */
final class PieceMenu {
    private final EditorModel editor;
    private final PiecesModel pieces;
    private final Actions actions;

    PieceMenu(EditorModel editor, PiecesModel pieces, Actions actions) {
        this.editor = editor;
        this.pieces = pieces;
        this.actions = actions;
    }

    /** The window's menu, with the ways to the other pieces. */
    Menu menu() {
        Menu menu = new Menu("_Piece");
        menu.getItems()
                .addAll(
                        MenuLine.of(
                                "_Next",
                                () -> actions.nextPiece(1),
                                MenuLine.key(KeyCode.PAGE_DOWN)),
                        MenuLine.of(
                                "_Previous",
                                () -> actions.nextPiece(-1),
                                MenuLine.key(KeyCode.PAGE_UP)),
                        new SeparatorMenuItem(),
                        add());
        menu.getItems().addAll(order());
        menu.getItems().add(new SeparatorMenuItem());
        menu.getItems().addAll(standing());
        return menu;
    }

    /** For the menu at a thumbnail; what would do nothing there is greyed. */
    List<MenuItem> atThumbnail() {
        String name = editor.piece().value();
        List<String> names = pieces.names().value();
        List<MenuItem> order = order();
        order.get(2).setDisable(names.indexOf(name) == 0);
        order.get(3).setDisable(names.indexOf(name) == names.size() - 1);
        List<MenuItem> standing = standing();
        standing.get(0).setDisable(pieces.summary(name).differences().isEmpty());
        standing.get(2).setDisable(names.size() == 1);
        List<MenuItem> all = new ArrayList<>(order);
        all.add(new SeparatorMenuItem());
        all.addAll(standing);
        return all;
    }

    private Menu add() {
        Menu add = new Menu("_Add, with the kit of");
        add.getItems().add(new MenuItem());
        add.setOnShowing(
                e ->
                        add.getItems()
                                .setAll(
                                        pieces.kits().stream()
                                                .map(kit -> Menus.plain(kit, () -> pieces.add(kit)))
                                                .toList()));
        return add;
    }

    private List<MenuItem> order() {
        return List.of(
                MenuLine.of(
                        "_Copy",
                        () -> pieces.copy(editor.piece().value()),
                        MenuLine.shiftKey(KeyCode.C)),
                MenuLine.of("_Rename…", actions::rename, new KeyCodeCombination(KeyCode.F2)),
                MenuLine.of(
                        "Move _up",
                        () -> pieces.move(editor.piece().value(), -1),
                        MenuLine.shiftKey(KeyCode.PAGE_UP)),
                MenuLine.of(
                        "Move _down",
                        () -> pieces.move(editor.piece().value(), 1),
                        MenuLine.shiftKey(KeyCode.PAGE_DOWN)));
    }

    private List<MenuItem> standing() {
        return List.of(
                MenuLine.of(
                        "Back to the set's _ways",
                        () -> pieces.releaseAll(editor.piece().value()),
                        MenuLine.shiftKey(KeyCode.R)),
                MenuLine.of(
                        "_Give all pieces its shape",
                        () -> pieces.shareShape(editor.piece().value()),
                        MenuLine.shiftKey(KeyCode.U)),
                MenuLine.of(
                        "Re_move",
                        () -> pieces.remove(editor.piece().value()),
                        MenuLine.shiftKey(KeyCode.DELETE)));
    }
}
