package haftline.cli;

import haftline.measure.Units;
import java.io.PrintStream;

/**
 * Where a command prints: data on one stream, everything else on the other.
 *
 * @param out data
 * @param err messages
 * @param ink emphasis on the page
 */
record Console(PrintStream out, PrintStream err, Ink ink) {
    void print(String text) {
        out.print(text);
    }

    void page(ExaminedSet set, Units units) {
        print(SetPage.of(set, units, ink));
    }

    /** A message of the program, one line. */
    void say(String message) {
        // Not println, whose line end differs between systems.
        err.print("haftline: " + Paper.harmless(message) + "\n");
    }
}
