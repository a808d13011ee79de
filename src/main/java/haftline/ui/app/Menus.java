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
                        MenuLine.of("_New", actions::begin, MenuLine.key(KeyCode.N)),
                        MenuLine.of("_Open…", actions::open, MenuLine.key(KeyCode.O)),
                        again,
                        new SeparatorMenuItem(),
                        MenuLine.of("_Save", actions::save, MenuLine.key(KeyCode.S)),
                        MenuLine.of("Save _as…", actions::saveAs, MenuLine.shiftKey(KeyCode.S)),
                        MenuLine.of(
                                "Na_me…",
                                actions::renameSet,
                                new KeyCodeCombination(KeyCode.F2, KeyCombination.SHIFT_DOWN)),
                        new SeparatorMenuItem(),
                        MenuLine.of("_Export…", actions::showExport, MenuLine.key(KeyCode.E)),
                        MenuLine.of("_Print…", actions::print, MenuLine.key(KeyCode.P)),
                        new SeparatorMenuItem(),
                        MenuLine.of("_Close", actions::close, MenuLine.key(KeyCode.Q)));
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
        alone.setAccelerator(MenuLine.shiftKey(KeyCode.T));
        all.setAccelerator(MenuLine.shiftKey(KeyCode.A));
        menu.getItems()
                .addAll(
                        undo,
                        redo,
                        new SeparatorMenuItem(),
                        MenuLine.of("Add a _node", actions::addNode, MenuLine.shiftKey(KeyCode.N)),
                        details(),
                        MenuLine.of(
                                "_Slope at the node…", actions::askSlope, MenuLine.key(KeyCode.L)),
                        MenuLine.of(
                                "_Crisp or smooth node",
                                actions::turnJoin,
                                MenuLine.key(KeyCode.K)),
                        MenuLine.of(
                                "_Remove what is chosen",
                                actions::removeChosen,
                                MenuLine.key(KeyCode.DELETE)),
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
        mm.setAccelerator(MenuLine.key(KeyCode.M));
        inch.setAccelerator(MenuLine.key(KeyCode.I));
        dark.setAccelerator(MenuLine.key(KeyCode.D));
        dark.setOnAction(e -> actions.dark(dark.isSelected()));
        menu.getItems()
                .addAll(
                        MenuLine.of("_Board", actions::showBoard, MenuLine.key(KeyCode.DIGIT1)),
                        MenuLine.of("_Line-up", actions::showLineUp, MenuLine.key(KeyCode.DIGIT2)),
                        MenuLine.of("Shee_t", actions::showSheet, MenuLine.key(KeyCode.DIGIT3)),
                        MenuLine.of(
                                "Te_mplates", actions::showTemplates, MenuLine.key(KeyCode.DIGIT4)),
                        MenuLine.of("_New batch", actions::showBatch, MenuLine.key(KeyCode.DIGIT5)),
                        MenuLine.of(
                                "_Production",
                                actions::showProduction,
                                MenuLine.key(KeyCode.DIGIT6)),
                        new SeparatorMenuItem(),
                        MenuLine.of(
                                "_Fit the piece or sheet",
                                actions::fit,
                                MenuLine.key(KeyCode.DIGIT0)),
                        MenuLine.of(
                                "Lar_ger", () -> actions.zoom(true), MenuLine.key(KeyCode.EQUALS)),
                        MenuLine.of(
                                "_Smaller", () -> actions.zoom(false), MenuLine.key(KeyCode.MINUS)),
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
                .add(
                        MenuLine.of(
                                "_First steps",
                                actions::showGuide,
                                new KeyCodeCombination(KeyCode.F1)));
        return menu;
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
