package limberboard.moving;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs files so that the same files always give the same archive, whenever it is made. */
final class ArchiveWriter {
  /** The earliest day that the format knows. */
  private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 1, 1, 0, 0);

  private ArchiveWriter() {}

  static byte[] bytes(SortedMap<String, byte[]> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(ALWAYS);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
