package shaftwright.xlsx;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** New content of a part, compressed while it is put together from pieces. */
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

    void add(byte[] bytes, int from, int length) {
        crc.update(bytes, from, length);
        size += length;
        deflater.setInput(bytes, from, length);
        while (!deflater.needsInput()) {
            drain();
        }
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

    int compressedSize() {
        return compressed.size();
    }

    InputStream compressed() {
        return new ByteArrayInputStream(compressed.toByteArray());
    }
}
