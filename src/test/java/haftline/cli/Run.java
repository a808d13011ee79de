package haftline.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One run of the program, as a shell would see it. */
record Run(int code, String out, String err) {
    static final String DEMO = "profiles/sets/tidewater.yaml";

    static Run of(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code =
                Main.run(
                        args,
                        new PrintStream(out, false, StandardCharsets.UTF_8),
                        new PrintStream(err, false, StandardCharsets.UTF_8));
        return new Run(
                code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
