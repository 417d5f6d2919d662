package shaftwright.xlsx;

/**
 * One entry of a zip archive, as its central directory describes it.
 *
 * @param name as stored, but with forward slashes
 * @param flags general purpose bits
 * @param method 0 stored, 8 deflated
 * @param crc CRC-32 of the inflated content
 * @param compressedSize bytes in the archive
 * @param size bytes inflated
 * @param local where its local header starts
 * @param central where its central header starts
 */
record ZipEntryRecord(
        String name,
        int flags,
        int method,
        int crc,
        int compressedSize,
        int size,
        int local,
        int central) {}
