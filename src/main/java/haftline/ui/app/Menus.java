package haftline.ui.app;

import haftline.edit.Scope;
import haftline.measure.Units;
import haftline.shape.Detail;
import haftline.ui.board.UsualDetails;
import haftline.ui.model.EditorModel;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** Every action with its shortcut. */
final class Menus extends MenuBar {
    private final EditorModel editor;
    private final Actions actions;
    private final MenuItem undo = new MenuItem("Undo");
    private final MenuItem redo = new MenuItem("Redo");
    private final RadioMenuItem mm = new RadioMenuItem("Millimetres");
    private final RadioMenuItem inch = new RadioMenuItem("Inches");
    private final RadioMenuItem alone = new RadioMenuItem("Shape this piece alone");
    private final RadioMenuItem all = new RadioMenuItem("Shape all pieces that share the shape");
    private final CheckMenuItem dark = new CheckMenuItem("Chalk on slate");

    Menus(EditorModel editor, PieceMenu piece, Actions actions, Supplier<List<Path>> recent) {
        this.editor = editor;
        this.actions = actions;
        getMenus().addAll(set(recent), change(), piece.menu(), show(), help());
        editor.status().watch(status -> refresh());
        editor.units().watch(units -> refresh());
        editor.scope().watch(scope -> refresh());
        refresh();
    }

    private Menu set(Supplier<List<Path>> recent) {
        Menu menu = new Menu("_Set");
        Menu again = new Menu("Open _again");
        again.setOnShowing(e -> fill(again, recent.get()));
        again.getItems().add(new MenuItem("none yet"));
        menu.getItems()
                .addAll(
                        item("_New", actions::begin, key(KeyCode.N)),
                        item("_Open…", actions::open, key(KeyCode.O)),
                        again,
                        new SeparatorMenuItem(),
                        item("_Save", actions::save, key(KeyCode.S)),
                        item("Save _as…", actions::saveAs, shiftKey(KeyCode.S)),
                        item(
                                "Na_me…",
                                actions::renameSet,
                                new KeyCodeCombination(KeyCode.F2, KeyCombination.SHIFT_DOWN)),
                        new SeparatorMenuItem(),
                        item("_Export…", actions::showExport, key(KeyCode.E)),
                        item("_Print…", actions::print, key(KeyCode.P)),
                        new SeparatorMenuItem(),
                        item("_Close", actions::close, key(KeyCode.Q)));
        return menu;
    }

    private void fill(Menu menu, List<Path> files) {
        menu.getItems().clear();
        for (Path file : files) {
            MenuItem item = new MenuItem(file.getFileName() + "  in  " + file.getParent());
            item.setMnemonicParsing(false);
            item.setOnAction(e -> actions.open(file));
            menu.getItems().add(item);
        }
        if (files.isEmpty()) {
            MenuItem none = new MenuItem("none yet");
            none.setDisable(true);
            menu.getItems().add(none);
        }
    }

    private Menu change() {
        Menu menu = new Menu("_Change");
        ToggleGroup scope = new ToggleGroup();
        alone.setToggleGroup(scope);
        all.setToggleGroup(scope);
        alone.setOnAction(e -> editor.scope().set(Scope.THIS_PIECE));
        all.setOnAction(e -> editor.scope().set(Scope.ALL_PIECES));
        undo.setAccelerator(StepKeys.UNDO);
        undo.setOnAction(e -> editor.undo());
        redo.setAccelerator(StepKeys.REDO);
        redo.setOnAction(e -> editor.redo());
        alone.setAccelerator(shiftKey(KeyCode.T));
        all.setAccelerator(shiftKey(KeyCode.A));
        menu.getItems()
                .addAll(
                        undo,
                        redo,
                        new SeparatorMenuItem(),
                        item("Add a _node", actions::addNode, shiftKey(KeyCode.N)),
                        details(),
                        item("_Slope at the node…", actions::askSlope, key(KeyCode.L)),
                        item("_Crisp or smooth node", actions::turnJoin, key(KeyCode.K)),
                        item("_Remove what is chosen", actions::removeChosen, key(KeyCode.DELETE)),
                        new SeparatorMenuItem(),
                        alone,
                        all);
        return menu;
    }

    /** The words stay, the place is looked up when one is chosen. */
    private Menu details() {
        Menu add = new Menu("Add a _detail");
        KeyCode[] keys = {KeyCode.B, KeyCode.O, KeyCode.V, KeyCode.L, KeyCode.F, KeyCode.U};
        List<Detail> usual = UsualDetails.at(0);
        for (int i = 0; i < usual.size(); i++) {
            int which = i;
            MenuItem item =
                    plain(
                            UsualDetails.word(usual.get(i)),
                            () ->
                                    actions.addDetail(
                                            UsualDetails.at(actions.freePlace()).get(which)));
            item.setAccelerator(
                    new KeyCodeCombination(
                            keys[i], KeyCombination.SHORTCUT_DOWN, KeyCombination.ALT_DOWN));
            add.getItems().add(item);
        }
        return add;
    }

    static MenuItem plain(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(e -> action.run());
        return item;
    }

    private Menu show() {
        Menu menu = new Menu("S_how");
        ToggleGroup units = new ToggleGroup();
        mm.setToggleGroup(units);
        inch.setToggleGroup(units);
        mm.setOnAction(e -> actions.units(Units.MM));
        inch.setOnAction(e -> actions.units(Units.INCH));
        mm.setAccelerator(key(KeyCode.M));
        inch.setAccelerator(key(KeyCode.I));
        dark.setAccelerator(key(KeyCode.D));
        dark.setOnAction(e -> actions.dark(dark.isSelected()));
        menu.getItems()
                .addAll(
                        item("_Board", actions::showBoard, key(KeyCode.DIGIT1)),
                        item("_Line-up", actions::showLineUp, key(KeyCode.DIGIT2)),
                        item("Shee_t", actions::showSheet, key(KeyCode.DIGIT3)),
                        item("Te_mplates", actions::showTemplates, key(KeyCode.DIGIT4)),
                        item("_New batch", actions::showBatch, key(KeyCode.DIGIT5)),
                        item("_Production", actions::showProduction, key(KeyCode.DIGIT6)),
                        new SeparatorMenuItem(),
                        item("_Fit the piece or sheet", actions::fit, key(KeyCode.DIGIT0)),
                        item("Lar_ger", () -> actions.zoom(true), key(KeyCode.EQUALS)),
                        item("_Smaller", () -> actions.zoom(false), key(KeyCode.MINUS)),
                        new SeparatorMenuItem(),
                        mm,
                        inch,
                        new SeparatorMenuItem(),
                        dark);
        return menu;
    }

    private Menu help() {
        Menu menu = new Menu("_Help");
        menu.getItems()
                .add(item("_First steps", actions::showGuide, new KeyCodeCombination(KeyCode.F1)));
        return menu;
    }

    static KeyCombination shiftKey(KeyCode code) {
        return new KeyCodeCombination(
                code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    }

    static KeyCombination key(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    static MenuItem item(String text, Runnable action, KeyCombination key) {
        MenuItem item = new MenuItem(text);
        item.setAccelerator(key);
        item.setOnAction(e -> action.run());
        return item;
    }

    void refresh() {
        undo.setText(
                editor.status().value().undoName().map(label -> "Undo: " + label).orElse("Undo"));
        undo.setDisable(editor.status().value().undoName().isEmpty());
        redo.setText(
                editor.status().value().redoName().map(label -> "Redo: " + label).orElse("Redo"));
        redo.setDisable(editor.status().value().redoName().isEmpty());
        (editor.units().value() == Units.MM ? mm : inch).setSelected(true);
        (editor.scope().value() == Scope.THIS_PIECE ? alone : all).setSelected(true);
        dark.setSelected(actions.isDark());
    }
}
