package haftline.write.png;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import haftline.cli.RandomHandles;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.SampleStock;
import haftline.handle.Wander;
import haftline.measure.Units;
import haftline.support.InLocale;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class HandlePicturesTest {
    private static final Handle HANDLE = P1.handle(P1.brief());
    private static final int WIDTH = 500;

    @Test
    void file_hasItsChunksInOrderAndTellsColourAndScale() {
        Picture picture = HandlePictures.one(HANDLE, WIDTH, Units.MM);
        Map<String, byte[]> chunks = chunks(picture.content());
        assertThat(chunks.keySet()).containsExactly("IHDR", "sRGB", "pHYs", "IDAT", "IEND");
        ByteBuffer header = ByteBuffer.wrap(chunks.get("IHDR"));
        assertThat(header.getInt()).isEqualTo(WIDTH);
        assertThat(header.getInt()).isEqualTo(picture.heightPx());
        ByteBuffer scale = ByteBuffer.wrap(chunks.get("pHYs"));
        assertThat(scale.getInt() / 1000.0).isCloseTo(picture.dotsPerMm(), within(5e-4));
        assertThat(scale.getInt() / 1000.0).isCloseTo(picture.dotsPerMm(), within(5e-4));
        assertThat(scale.get()).isEqualTo((byte) 1);
    }

    /** Every chunk by name, its check sum tested (ISO/IEC 15948, 5.3). */
    private static Map<String, byte[]> chunks(byte[] file) {
        ByteBuffer in = ByteBuffer.wrap(file);
        assertThat(in.getLong()).isEqualTo(0x89504E470D0A1A0AL);
        Map<String, byte[]> chunks = new LinkedHashMap<>();
        while (in.hasRemaining()) {
            byte[] data = new byte[in.getInt()];
            byte[] name = new byte[4];
            in.get(name).get(data);
            CRC32 check = new CRC32();
            check.update(name);
            check.update(data);
            assertThat(in.getInt()).isEqualTo((int) check.getValue());
            chunks.put(new String(name, java.nio.charset.StandardCharsets.US_ASCII), data);
        }
        return chunks;
    }

    @Test
    void outline_isTrueToTheScale() throws Exception {
        Picture picture = HandlePictures.one(HANDLE, 1600, Units.MM);
        BufferedImage image = read(picture);
        double dots = picture.dotsPerMm();
        // Overall: the blade's tip is as far in front of the ferrule's face as the blade is long.
        int left = firstInkedColumn(image, 0, 1);
        int right = firstInkedColumn(image, image.getWidth() - 1, -1);
        double length = HANDLE.brief().kit().blade().length().mean() + 120;
        assertThat((right - left + 1) / dots).isCloseTo(length, within(2 / dots));
        double shoulder = right + 1 - (120 - 12) * dots;
        // Upper edges of swell and waist: 23 and 13 in diameter, at 65 and 20 mm.
        int swell = topOfInk(image, (int) Math.round(shoulder + 65 * dots));
        int waist = topOfInk(image, (int) Math.round(shoulder + 20 * dots));
        assertThat((waist - swell) / dots).isCloseTo(5, within(1.5 / dots));
    }

    private static int firstInkedColumn(BufferedImage image, int from, int step) {
        // Above the middle of the piece there is neither caption nor bar.
        for (int x = from; x >= 0 && x < image.getWidth(); x += step) {
            for (int y = 0; y < image.getHeight() / 2; y++) {
                if (isInk(image.getRGB(x, y))) {
                    return x;
                }
            }
        }
        throw new AssertionError("nothing is drawn");
    }

    private static int topOfInk(BufferedImage image, int x) {
        int y = 0;
        while (!isInk(image.getRGB(x, y))) {
            y++;
        }
        return y;
    }

    /** Darker than the paper at its corners, and than the soft edge of a shadow. */
    private static boolean isInk(int rgb) {
        return (rgb & 0xFF) < 195;
    }

    private static BufferedImage read(Picture picture) throws Exception {
        return ImageIO.read(new ByteArrayInputStream(picture.content()));
    }

    @Test
    void stock_givesTheColour() throws Exception {
        assertThat(meanOfWood(P1.handle(P1.brief(SampleStock.cherry(), new Wander(0, 0)))))
                .satisfies(rgb -> assertThat(rgb[0]).isGreaterThan(rgb[2] + 30));
    }

    private static double[] meanOfWood(Handle handle) throws Exception {
        Picture picture = HandlePictures.one(handle, 600, Units.MM);
        BufferedImage image = read(picture);
        int right = firstInkedColumn(image, image.getWidth() - 1, -1);
        int x = (int) Math.round(right - (120 - 12 - 65) * picture.dotsPerMm());
        int top = topOfInk(image, x);
        double[] sum = new double[3];
        int count = (int) (20 * picture.dotsPerMm());
        for (int y = top + 2; y < top + 2 + count; y++) {
            for (int i = 0; i < 3; i++) {
                sum[i] += (image.getRGB(x, y) >> 16 - 8 * i & 0xFF) / (double) count;
            }
        }
        return sum;
    }

    @Test
    void set_isAtOneScaleAndGrowsDownwards() {
        Picture one = HandlePictures.set("Title", List.of(HANDLE), WIDTH, Units.MM);
        Picture three =
                HandlePictures.set("Title", List.of(HANDLE, HANDLE, HANDLE), WIDTH, Units.MM);
        assertThat(three.dotsPerMm()).isEqualTo(one.dotsPerMm());
        assertThat(three.heightPx()).isGreaterThan(2 * one.heightPx());
    }

    @Test
    void largeSet_standsInColumns() {
        Picture many = HandlePictures.set("", RandomHandles.of(5, 24), 500, Units.MM);
        assertThat(many.heightPx()).isLessThan(3 * 500);
    }

    @Test
    void bytes_areTheSameFromRunToRunAndInEveryLocale() {
        byte[] once = HandlePictures.set("INDIGO", List.of(HANDLE), 400, Units.MM).content();
        for (String tag : InLocale.TAGS) {
            assertThat(
                            InLocale.get(
                                    tag,
                                    () ->
                                            HandlePictures.set(
                                                            "INDIGO",
                                                            List.of(HANDLE),
                                                            400,
                                                            Units.MM)
                                                    .content()))
                    .isEqualTo(once);
        }
    }

    @Test
    void wishesOutOfRange_areRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HandlePictures.one(HANDLE, 10, Units.MM))
                .withMessageContaining("picture width 10:");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HandlePictures.set("", List.of(), WIDTH, Units.MM))
                .withMessageContaining("at least one handle");
    }
}
