package gloam.view;

import gloam.proof.Picture;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * The picture of a proof as PNG (ISO/IEC 15948): grey or RGB of eight bits, sRGB, as large as the
 * sheet, with its statement and settings as text inside.
 */
final class PngRenderer implements FileRenderer {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int BIT_DEPTH = 8;
    private static final int GREY = 0;
    private static final int RGB = 2;
    private static final int FILTER_UP = 2;
    private static final int PERCEPTUAL = 0;
    private static final int PER_METRE = 1;

    private final Origin origin;

    /** Names what the picture comes from. */
    PngRenderer(Origin origin) {
        this.origin = origin;
    }

    @Override
    public boolean suits(Report report) {
        return report instanceof ProofReport;
    }

    @Override
    public void write(Report report, OutputStream out) throws IOException {
        ProofReport proof = (ProofReport) report;
        TrailReport.FrameRow frame = proof.figures().trail().frame();
        write(proof.picture(), OptionalDouble.of(frame.widthMm()), Map.of("Description",
                TrailDrawing.settings(proof), "Source", origin.made(proof.generatedAt()), "Creation Time",
                proof.generatedAt().toString()), out);
    }

    /** Writes a picture without its size and settings. */
    static void write(Picture picture, OutputStream out) throws IOException {
        write(picture, OptionalDouble.empty(), Map.of(), out);
    }

    private static void write(Picture picture, OptionalDouble widthMm, Map<String, String> said,
            OutputStream out) throws IOException {
        DataOutputStream png = new DataOutputStream(out);
        png.write(SIGNATURE);
        chunk(png, "IHDR", header(picture));
        chunk(png, "sRGB", new byte[] {PERCEPTUAL});
        if (widthMm.isPresent()) {
            chunk(png, "pHYs", size(picture.widthPx() / widthMm.getAsDouble()));
        }
        chunk(png, "tEXt", text("Title", ProofReport.STATEMENT));
        chunk(png, "tEXt", text("Software", "gloam"));
        for (Map.Entry<String, String> word : new TreeMap<>(said).entrySet()) {
            chunk(png, "iTXt", international(word.getKey(), word.getValue()));
        }
        chunk(png, "IDAT", pixels(picture));
        chunk(png, "IEND", new byte[0]);
        png.flush();
    }

    private static byte[] header(Picture picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream header = new DataOutputStream(bytes);
        header.writeInt(picture.widthPx());
        header.writeInt(picture.heightPx());
        header.write(new byte[] {BIT_DEPTH, (byte) (picture.channels() == 1 ? GREY : RGB), 0, 0, 0});
        return bytes.toByteArray();
    }

    /** Pixels a metre, both ways. */
    private static byte[] size(double pixelsPerMm) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream size = new DataOutputStream(bytes);
        size.writeInt((int) Math.round(1000 * pixelsPerMm));
        size.writeInt((int) Math.round(1000 * pixelsPerMm));
        size.write(PER_METRE);
        return bytes.toByteArray();
    }

    /** Words of any script, as they are, in no language that is named. */
    private static byte[] international(String keyword, String words) {
        return (keyword + "\0\0\0\0\0" + words).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] text(String keyword, String words) {
        return (keyword + "\0" + words).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Rows as differences from the row above, deflated. */
    private static byte[] pixels(Picture picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION);
        try (DeflaterOutputStream packed = new DeflaterOutputStream(bytes, deflater)) {
            byte[] above = new byte[picture.widthPx() * picture.channels()];
            for (int row = 0; row < picture.heightPx(); row++) {
                byte[] levels = picture.row(row);
                byte[] filtered = new byte[levels.length + 1];
                filtered[0] = FILTER_UP;
                for (int i = 0; i < levels.length; i++) {
                    filtered[i + 1] = (byte) (levels[i] - above[i]);
                }
                packed.write(filtered);
                above = levels;
            }
        } finally {
            deflater.end();
        }
        return bytes.toByteArray();
    }

    private static void chunk(DataOutputStream png, String type, byte[] data) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        png.writeInt(data.length);
        png.write(name);
        png.write(data);
        png.writeInt((int) check.getValue());
    }
}
