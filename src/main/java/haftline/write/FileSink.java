package haftline.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Where the bytes of a new file go; a test puts a full disk here. */
@FunctionalInterface
interface FileSink {
    /** Writes a file that must not exist yet, and returns when its bytes are on the disk. */
    void write(Path file, byte[] content) throws IOException;

    /**
     * The disk. Bytes are forced out, because some systems say only then that there was no room.
     */
    FileSink DISK =
            (file, content) -> {
                try (FileChannel channel =
                        FileChannel.open(
                                file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                    ByteBuffer bytes = ByteBuffer.wrap(content);
                    while (bytes.hasRemaining()) {
                        channel.write(bytes);
                    }
                    channel.force(true);
                }
            };
}
