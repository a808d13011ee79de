package haftline.ui.production;

import haftline.measure.Units;
import haftline.set.production.BatchTables;
import haftline.set.production.Production;
import haftline.ui.model.PlanRows;
import haftline.ui.model.PlanRows.Cells;
import haftline.ui.model.PlanRows.Heading;
import haftline.ui.model.PlanRows.Note;
import haftline.ui.model.PlanRows.Row;
import haftline.ui.model.PlanRows.Stick;
import haftline.ui.model.Watched;
import haftline.ui.theme.Palette;
import haftline.ui.theme.WideCell;
import haftline.ui.words.Shown;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;

/** What a batch takes, in the order of the work; only the rows in sight are made. */
final class PlanList extends ListView<Row> {
    /** Width of a letter of a table, px. */
    private static final double LETTER = 6.9;

    private static final double LETTER_AIR = 9;

    /** The same about a word alone, px. */
    private static final double WORD_AIR = 5;

    /** What stands to the right of the table's last column of texts wraps in no less, px. */
    private static final double LEAST_TEXT = 90;

    private static final double GAP = 12;
    private static final double LEAST_GAP = 5;

    /** A column whose words are broken is never narrower, px. */
    private static final double LEAST_BROKEN = 60;

    private final Watched<Palette> palette;
    private final Label none = new Label();
    private Units units = Units.MM;

    PlanList(Watched<Palette> palette) {
        this.palette = palette;
        setId("production-rows");
        setAccessibleText("What the batch takes");
        getStyleClass().add("lines");
        awaits(false);
        none.getStyleClass().add("small");
        setPlaceholder(none);
        setCellFactory(view -> new Cell());
        widthProperty().addListener(o -> refresh());
    }

    /** Says what there is to wait for, where nothing is shown yet. */
    void awaits(boolean isAny) {
        none.setText(isAny ? "Working it out…" : "Say how many are to be made.");
    }

    void show(Optional<Production> production, Units shownIn) {
        units = shownIn;
        getItems().setAll(production.map(p -> PlanRows.of(p, shownIn)).orElse(List.of()));
    }

    private final class Cell extends WideCell<Row> {
        Cell() {
            super(PlanList.this);
        }

        @Override
        protected void updateItem(Row row, boolean empty) {
            super.updateItem(row, empty);
            if (empty || row == null) {
                setText(null);
                setGraphic(null);
            } else if (row instanceof Heading heading) {
                show(sentence(heading.text(), "line-heading"));
                setAccessibleText(heading.text());
            } else if (row instanceof Note note) {
                show(sentence(Shown.unbroken(note.text()), "small"));
                setAccessibleText(note.text());
            } else if (row instanceof Stick stick) {
                StickPicture picture = new StickPicture();
                show(picture);
                picture.show(stick, picture.getPrefWidth(), units, palette.value());
                setAccessibleText(
                        stick.cut().times()
                                + " of "
                                + stick.stock()
                                + ", each into "
                                + BatchTables.takenWords(stick.cut()));
            } else {
                Cells cells = (Cells) row;
                show(cells(cells));
                setAccessibleText(String.join(", ", cells.cells()).replace("\n", " in "));
            }
        }

        private Region sentence(String words, String style) {
            Label label = new Label(words);
            label.setWrapText(true);
            label.getStyleClass().add(style);
            return label;
        }

        private HBox cells(Cells row) {
            PlanRows.Columns columns = row.columns();
            double[] widths = widths(columns);
            int last = widths.length - 1;
            HBox box = new HBox(gap(widths));
            box.setAlignment(Pos.TOP_LEFT);
            for (int i = 0; i <= last; i++) {
                Label cell = new Label(row.cells().get(i));
                cell.setWrapText(true);
                boolean isText = columns.isText().get(i);
                if (row.isHead()) {
                    cell.getStyleClass().add("small");
                    cell.setTextAlignment(isText ? TextAlignment.LEFT : TextAlignment.RIGHT);
                }
                cell.setMinWidth(widths[i]);
                cell.setPrefWidth(widths[i]);
                cell.setMaxWidth(widths[i]);
                if (i == last && isText) {
                    cell.setMaxWidth(Double.MAX_VALUE);
                    HBox.setHgrow(cell, Priority.ALWAYS);
                }
                cell.setAlignment(isText ? Pos.TOP_LEFT : Pos.TOP_RIGHT);
                box.getChildren().add(cell);
            }
            return box;
        }

        /**
         * The same for every row of a table. Where there is too little room, columns give way by
         * wrapping, but none becomes narrower than its longest word while there is any other way.
         */
        private double[] widths(PlanRows.Columns columns) {
            int count = columns.letters().size();
            double[] widths = new double[count];
            double[] least = new double[count];
            double over = GAP * (count - 1) - width();
            double slack = 0;
            for (int i = 0; i < count; i++) {
                boolean isLastText = columns.isText().get(i) && i == count - 1;
                least[i] = Math.ceil(columns.words().get(i) * LETTER + WORD_AIR);
                widths[i] =
                        Math.max(
                                least[i],
                                isLastText
                                        ? LEAST_TEXT
                                        : columns.letters().get(i) * LETTER + LETTER_AIR);
                over += widths[i];
                slack += widths[i] - least[i];
            }
            double share = slack > 0 ? Math.min(1, Math.max(0, over / slack)) : 0;
            double whole = 0;
            for (int i = 0; i < count; i++) {
                // Whole pixels: a box rounds each up.
                widths[i] = Math.floor(widths[i] - share * (widths[i] - least[i]));
                whole += widths[i];
            }
            // Words longer than the room are broken rather than the figures cut off.
            double most = width() - LEAST_GAP * (count - 1);
            if (whole > most) {
                squeeze(columns, widths, whole - most);
            }
            return widths;
        }

        /** Columns stand closer before a word is broken. */
        private double gap(double[] widths) {
            double whole = Arrays.stream(widths).sum();
            double room = (width() - whole) / Math.max(1, widths.length - 1);
            return Math.max(LEAST_GAP, Math.min(GAP, Math.floor(room)));
        }

        /** The widest texts give way first. */
        private static void squeeze(PlanRows.Columns columns, double[] widths, double over) {
            double left = over;
            while (left > 0) {
                int widest = -1;
                for (int i = 0; i < widths.length; i++) {
                    boolean isWider = widest < 0 || widths[i] > widths[widest];
                    if (columns.isText().get(i) && widths[i] > LEAST_BROKEN && isWider) {
                        widest = i;
                    }
                }
                if (widest < 0) {
                    return;
                }
                widths[widest]--;
                left--;
            }
        }
    }
}
