package haftline.ui.board;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.text.FontSmoothingType;
import javafx.scene.text.Text;

/**
 * The words on the board, over its pixels: letters are the toolkit's. Each keeps its node from
 * frame to frame, so that one that stands still costs nothing.
 */
final class Lettering extends Group {
    /** Of words of which more than this is hidden, nothing is shown: they could not be read. */
    private static final double HIDDEN = 0.5;

    /** What is no taller than this hides no words, px. */
    private static final double LINE = 3;

    /** Whole rows of tiles, since what a changed row shows is put on the window anew. */
    private static final int ROW = Tiles.TALL;

    private final List<Row> rows = new ArrayList<>();

    Lettering() {
        setAutoSizeChildren(false);
    }

    /** Shows the words among the marks that no later one hides. */
    void show(List<Mark> marks, double tall) {
        while (rows.size() < Math.ceil(tall / ROW)) {
            rows.add(new Row());
            getChildren().add(rows.get(rows.size() - 1));
        }
        List<Mark> lids = new ArrayList<>();
        List<Mark> seen = new ArrayList<>();
        for (int i = marks.size() - 1; i >= 0; i--) {
            Mark mark = marks.get(i);
            if (mark.kind == Mark.Kind.WORDS) {
                if (lids.stream().noneMatch(lid -> lid.shareOf(mark) > HIDDEN)) {
                    seen.add(mark);
                }
            } else if (mark.isOpaque() && mark.bottom - mark.top > LINE) {
                lids.add(mark);
            }
        }
        rows.forEach(Row::begin);
        for (int i = seen.size() - 1; i >= 0; i--) {
            Mark mark = seen.get(i);
            int row = (int) Math.floor(mark.numbers[1] / ROW);
            if (row >= 0 && row < rows.size()) {
                rows.get(row).write(mark);
            }
        }
        rows.forEach(Row::end);
    }

    /** Words whose base line is in one row of tiles. */
    private static final class Row extends Group {
        private final List<Text> texts = new ArrayList<>();
        private int count;

        Row() {
            setAutoSizeChildren(false);
        }

        void begin() {
            count = 0;
        }

        void write(Mark mark) {
            if (count == texts.size()) {
                Text text = new Text();
                text.setTextOrigin(VPos.BASELINE);
                // Letters of one colour: what lies under them moves.
                text.setFontSmoothingType(FontSmoothingType.GRAY);
                texts.add(text);
                getChildren().add(text);
            }
            Text text = texts.get(count++);
            Mark.Lettered lettered = (Mark.Lettered) mark.what;
            text.setFont(lettered.font());
            text.setText(lettered.text());
            text.setFill(mark.colour);
            text.setX(mark.left + Mark.ASIDE);
            text.setY(mark.numbers[1]);
            text.setVisible(true);
        }

        void end() {
            for (int i = count; i < texts.size(); i++) {
                texts.get(i).setVisible(false);
            }
        }
    }
}
