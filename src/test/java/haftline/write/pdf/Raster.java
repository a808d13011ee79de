package haftline.write.pdf;

import haftline.drawing.Vertex;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page as a printer would see it, measured in millimetres from its lower left corner. */
final class Raster {
    static final float DPI = 300;
    static final double DOT_MM = 25.4 / DPI;

    private final BufferedImage image;

    private Raster(BufferedImage image) {
        this.image = image;
    }

    static List<Raster> pages(PdfFile file) {
        try (PDDocument document = Loader.loadPDF(file.content())) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<Raster> pages = new ArrayList<>();
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                pages.add(new Raster(renderer.renderImageWithDPI(i, DPI, ImageType.RGB)));
            }
            return pages;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double widthMm() {
        return image.getWidth() * DOT_MM;
    }

    double heightMm() {
        return image.getHeight() * DOT_MM;
    }

    private int rgb(double xMm, double yMm) {
        int x = (int) Math.floor(xMm / DOT_MM);
        int y = image.getHeight() - 1 - (int) Math.floor(yMm / DOT_MM);
        return x < 0 || y < 0 || x >= image.getWidth() || y >= image.getHeight()
                ? 0xFFFFFF
                : image.getRGB(x, y);
    }

    /** How black, 0 to 1; what is coloured is not. */
    double ink(double xMm, double yMm) {
        int rgb = rgb(xMm, yMm);
        int red = rgb >> 16 & 0xFF;
        int blue = rgb & 0xFF;
        return blue - red > 40 ? 0 : 1 - red / 255.0;
    }

    private boolean isRegister(double xMm, double yMm) {
        int rgb = rgb(xMm, yMm);
        return (rgb & 0xFF) - (rgb >> 16 & 0xFF) > 40;
    }

    /** Where ink begins and ends on a level line, by how much of the outermost dots it covers. */
    double[] levelExtent(double yMm, double fromMm, double toMm) {
        return extent(x -> ink(x, yMm), fromMm, toMm);
    }

    /** The same on an upright line. */
    double[] uprightExtent(double xMm, double fromMm, double toMm) {
        return extent(y -> ink(xMm, y), fromMm, toMm);
    }

    private static double[] extent(DoubleUnaryOperator ink, double fromMm, double toMm) {
        double[] ends = {Double.NaN, Double.NaN};
        for (long dot = Math.round(fromMm / DOT_MM); dot * DOT_MM < toMm; dot++) {
            double share = ink.applyAsDouble((dot + 0.5) * DOT_MM);
            if (share > 0.05) {
                ends[0] = Double.isNaN(ends[0]) ? (dot + 1 - share) * DOT_MM : ends[0];
                ends[1] = (dot + share) * DOT_MM;
            }
        }
        return ends;
    }

    /** Middles of the register marks: a coloured dot in the middle of a coloured ring. */
    List<Vertex> registerMarks(double ringMm) {
        List<List<Vertex>> clusters = new ArrayList<>();
        for (int row = 0; row < image.getHeight(); row++) {
            for (int column = 0; column < image.getWidth(); column++) {
                Vertex at =
                        new Vertex(
                                (column + 0.5) * DOT_MM, (image.getHeight() - row - 0.5) * DOT_MM);
                if (isRegister(at.xMm(), at.yMm()) && isRinged(at, ringMm)) {
                    cluster(clusters, at);
                }
            }
        }
        return clusters.stream().map(Raster::middle).toList();
    }

    private boolean isRinged(Vertex at, double ringMm) {
        int missing = 0;
        for (int i = 0; i < 48; i++) {
            Vertex place = at.towards(7.5 * i, ringMm);
            missing += isRegister(place.xMm(), place.yMm()) ? 0 : 1;
            if (missing > 7) {
                return false;
            }
        }
        return true;
    }

    private static void cluster(List<List<Vertex>> clusters, Vertex at) {
        for (List<Vertex> cluster : clusters) {
            if (cluster.get(0).distanceMm(at) < 1) {
                cluster.add(at);
                return;
            }
        }
        clusters.add(new ArrayList<>(List.of(at)));
    }

    private static Vertex middle(List<Vertex> cluster) {
        return new Vertex(
                cluster.stream().mapToDouble(Vertex::xMm).average().orElseThrow(),
                cluster.stream().mapToDouble(Vertex::yMm).average().orElseThrow());
    }
}
