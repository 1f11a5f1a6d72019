package limberboard.moving;

/**
 * An entry as the archive's own list tells of it.
 *
 * @param name its path, with {@code /}
 * @param method how it is packed: 0 not at all, 8 deflated
 * @param packed its size in the archive, in bytes
 * @param size its size unpacked, in bytes
 * @param check its CRC-32
 * @param at where it begins in the archive
 */
record ArchiveEntry(String name, int method, long packed, long size, long check, long at) {}
