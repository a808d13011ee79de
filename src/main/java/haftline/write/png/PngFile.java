package haftline.write.png;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * A PNG of eight bits a channel (ISO/IEC 15948): signature, IHDR, sRGB, pHYs, IDAT, IEND. Written
 * here rather than by a library, so that no date or program name gets in.
 */
final class PngFile {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte TRUE_COLOUR = 2;
    private static final byte PERCEPTUAL = 0;
    private static final byte PER_METRE = 1;
    private static final byte FILTER_UP = 2;
    private static final double MM_PER_METRE = 1000;
    private static final int CHANNELS = 3;

    private PngFile() {}

    /**
     * The file.
     *
     * @param rgb {@code 0xRRGGBB}, row by row from the top
     * @param width dots across
     * @param height dots down
     * @param dotsPerMm scale, for pHYs
     */
    static byte[] of(int[] rgb, int width, int height, double dotsPerMm) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(rgb.length);
        out.writeBytes(SIGNATURE);
        chunk(
                out,
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(width)
                        .putInt(height)
                        .put((byte) 8)
                        .put(TRUE_COLOUR)
                        .array());
        chunk(out, "sRGB", new byte[] {PERCEPTUAL});
        int perMetre = (int) Math.round(dotsPerMm * MM_PER_METRE);
        chunk(
                out,
                "pHYs",
                ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre).put(PER_METRE).array());
        chunk(out, "IDAT", deflated(rows(rgb, width, height)));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    /** Each row as its difference from the one above, which packs shaded surfaces well. */
    private static byte[] rows(int[] rgb, int width, int height) {
        byte[] rows = new byte[height * (1 + CHANNELS * width)];
        int at = 0;
        for (int y = 0; y < height; y++) {
            rows[at++] = FILTER_UP;
            for (int x = 0; x < width; x++) {
                int dot = rgb[y * width + x];
                int above = y == 0 ? 0 : rgb[(y - 1) * width + x];
                for (int shift = 16; shift >= 0; shift -= 8) {
                    rows[at++] = (byte) ((dot >> shift) - (above >> shift));
                }
            }
        }
        return rows;
    }

    private static byte[] deflated(byte[] rows) {
        Deflater deflater = new Deflater();
        try {
            deflater.setInput(rows);
            deflater.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream(rows.length / 2);
            byte[] buffer = new byte[1 << 16];
            while (!deflater.finished()) {
                out.write(buffer, 0, deflater.deflate(buffer));
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(name);
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }
}
