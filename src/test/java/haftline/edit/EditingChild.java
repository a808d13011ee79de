package haftline.edit;

import java.nio.file.Path;
import java.util.OptionalDouble;

/** A process that edits until it is killed; prints the diameter of each step that is journalled. */
final class EditingChild {
    private EditingChild() {}

    public static void main(String[] args) throws Exception {
        OpenDocument document = OpenDocument.of(DemoSet.read(Path.of(args[0])));
        Journal journal = Journal.in(Path.of(args[1]));
        document.keepIn(journal);
        NodeEdits edits =
                new NodeEdits(
                        document.worked("butter spreader").figures().orElseThrow().handle(),
                        Scope.THIS_PIECE);
        for (int tenths = 150; ; tenths = tenths == 250 ? 150 : tenths + 1) {
            Command move =
                    edits.move("waist", OptionalDouble.empty(), OptionalDouble.of(tenths / 10.0));
            document.begin(move.name());
            document.carryOn(move, "butter spreader");
            document.end();
            journal.settle();
            System.out.println(tenths);
            // In the middle of a gesture when it is killed.
            document.begin(move.name());
            document.carryOn(
                    edits.move("waist", OptionalDouble.empty(), OptionalDouble.of(14)),
                    "butter spreader");
            document.cancel();
        }
    }
}
