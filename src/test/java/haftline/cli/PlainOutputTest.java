package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PlainOutputTest {
    private static PlainOutput failing(String why) {
        PlainOutput output =
                new PlainOutput(
                        new OutputStream() {
                            @Override
                            public void write(int b) throws IOException {
                                throw new IOException(why);
                            }
                        });
        try (PrintStream out = new PrintStream(output, false, StandardCharsets.UTF_8)) {
            out.print("x".repeat(1_000_000));
        }
        return output;
    }

    @Test
    void readerThatClosedItsPipe_isNoFailure() {
        assertThat(failing("Broken pipe").failure()).isEmpty();
    }

    @Test
    void fullDisk_isAFailure() {
        assertThat(failing("No space left on device").failure())
                .get()
                .extracting(IOException::getMessage)
                .isEqualTo("No space left on device");
    }
}
