package haftline.store;

import haftline.measure.NearestWord;
import haftline.measure.Quote;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Gets a document's text off the disk, within limits. */
final class SourceText {
    /** A set of five hundred pieces has under half a megabyte. */
    static final int LARGEST_BYTES = 4 * 1024 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private SourceText() {}

    /**
     * Why a file cannot be read, or empty where it seems that it can.
     *
     * @param file the file
     * @return a message without the file's name
     */
    static Optional<String> fault(Path file) {
        if (Files.isDirectory(file)) {
            return Optional.of("is a folder, expected a file");
        }
        if (!Files.exists(file)) {
            return Optional.of(
                    Files.isSymbolicLink(file)
                            ? "is a link that leads to no file"
                            : "no such file" + nearest(file));
        }
        if (!Files.isRegularFile(file)) {
            return Optional.of("is not a plain file");
        }
        return Optional.empty();
    }

    /** The name in the same folder that was most likely meant. */
    private static String nearest(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return "; there is no folder "
                    + Quote.plain(folder == null ? "" : folder.normalize().toString());
        }
        try (Stream<Path> there = Files.list(folder)) {
            List<String> names =
                    there.map(path -> path.getFileName().toString())
                            .filter(name -> name.endsWith(".yaml") || name.endsWith(".csv"))
                            .sorted()
                            .toList();
            return NearestWord.to(names, file.getFileName().toString())
                    .map(near -> "; did you mean " + Quote.plain(near) + "?")
                    .orElse("");
        } catch (IOException e) {
            return "";
        }
    }

    /** The text of a file; where there is none, that is told as a problem of the file. */
    static Optional<String> read(Path file, Problems problems) {
        Optional<String> fault = fault(file);
        if (fault.isPresent()) {
            problems.addToFile(fault.get());
            return Optional.empty();
        }
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                problems.addToFile(tooLarge(Files.size(file)));
                return Optional.empty();
            }
            return decode(bytes(file), problems);
        } catch (AccessDeniedException e) {
            problems.addToFile("cannot be read: permission denied");
        } catch (IOException e) {
            problems.addToFile("cannot be read: " + e.getMessage());
        }
        return Optional.empty();
    }

    private static byte[] bytes(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            // One more than allowed, so that a file that grew meanwhile is noticed by decode.
            return in.readNBytes(LARGEST_BYTES + 1);
        }
    }

    private static String tooLarge(long bytes) {
        return "is "
                + bytes / 1024
                + " KiB large, expected at most "
                + LARGEST_BYTES / 1024
                + " KiB";
    }

    /** The text of bytes in UTF-8, without its byte order mark. */
    static Optional<String> decode(byte[] bytes, Problems problems) {
        if (bytes.length > LARGEST_BYTES) {
            problems.addToFile(tooLarge(bytes.length));
            return Optional.empty();
        }
        if (startsAsUtf16(bytes)) {
            problems.addToFile("is in UTF-16, expected UTF-8; save it as UTF-8");
            return Optional.empty();
        }
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            int column = text.codePointCount(text.lastIndexOf('\n') + 1, text.length()) + 1;
            int found = Byte.toUnsignedInt(bytes[in.position()]);
            problems.add(
                    line,
                    column,
                    "",
                    String.format(
                            java.util.Locale.ROOT,
                            "found the byte 0x%02X, which is not UTF-8; save the file as UTF-8",
                            found));
            return Optional.empty();
        }
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return Optional.of(marked ? text.substring(1) : text);
    }

    private static boolean startsAsUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int first = Byte.toUnsignedInt(bytes[0]) << 8 | Byte.toUnsignedInt(bytes[1]);
        return first == 0xFEFF || first == 0xFFFE;
    }
}
