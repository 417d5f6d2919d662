package shaftwright.workbook.xlsx;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** New content of a part, compressed while it is put together from pieces of text. */
final class Deflated {
    private final CRC32 crc = new CRC32();
    private final Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
    private final ByteArrayOutputStream compressed;
    private final byte[] buffer = new byte[16 * 1024];
    private long size;

    /** An empty part; the expected compressed size only saves copying. */
    Deflated(int expectedSize) {
        compressed = new ByteArrayOutputStream(expectedSize);
    }

    void add(byte[] bytes) {
        crc.update(bytes, 0, bytes.length);
        size += bytes.length;
        deflater.setInput(bytes);
        while (!deflater.needsInput()) {
            drain();
        }
    }

    void add(String text, Charset charset) {
        add(text.getBytes(charset));
    }

    Deflated finish() {
        deflater.finish();
        while (!deflater.finished()) {
            drain();
        }
        deflater.end();
        return this;
    }

    private void drain() {
        int count = deflater.deflate(buffer);
        compressed.write(buffer, 0, count);
    }

    int crc() {
        return (int) crc.getValue();
    }

    long size() {
        return size;
    }

    ByteArrayOutputStream compressed() {
        return compressed;
    }
}
