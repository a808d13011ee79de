package haftline.write.dxf;

/**
 * A DXF file and what went into it.
 *
 * @param text the file, ASCII
 * @param report what went into it
 */
public record DxfFile(String text, DxfReport report) {}
