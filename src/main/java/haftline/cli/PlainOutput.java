package haftline.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * The standard output, which keeps in mind why it failed. A reader that has seen enough and closes
 * its pipe is no failure: {@code haftline check set.yaml | head}.
 */
final class PlainOutput extends OutputStream {
    private static final int BUFFER = 1 << 16;

    private final OutputStream out;
    private IOException failure;

    PlainOutput(OutputStream out) {
        this.out = new BufferedOutputStream(out, BUFFER);
    }

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
        attempt(() -> out.write(bytes, from, length));
    }

    @Override
    public void flush() {
        attempt(out::flush);
    }

    /** Why something could not be written; empty where everything was, or nobody read it. */
    Optional<IOException> failure() {
        return Optional.ofNullable(failure).filter(e -> !isClosedPipe(e));
    }

    private static boolean isClosedPipe(IOException e) {
        String message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        return message.contains("pipe");
    }

    private void attempt(Writing writing) {
        if (failure != null) {
            return;
        }
        try {
            writing.run();
        } catch (IOException e) {
            failure = e;
        }
    }

    private interface Writing {
        void run() throws IOException;
    }
}
