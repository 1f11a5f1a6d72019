package limberboard.moving;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import limberboard.library.file.FileBytes;

/**
 * A zip file with parts of a workspace, read whole and checked before anything is made of it.
 *
 * @param files path to bytes, in order
 */
public record Archive(SortedMap<String, byte[]> files) {
  private static final int LARGEST = 200_000_000;
  private static final int LOCAL_MARK = 0x04034b50;
  private static final int LOCAL_LENGTH = 30;

  /**
   * Reads an archive.
   *
   * @throws ArchiveTrouble when it is none, or holds what is not taken: paths out of the workspace,
   *     links, names twice or in another encoding, too much
   */
  public static Archive read(Path file) throws IOException {
    byte[] bytes;
    try {
      bytes = FileBytes.read(file, LARGEST);
    } catch (FileBytes.Refused e) {
      throw new ArchiveTrouble(file + " " + e.wrong(), e.right());
    }
    return of(bytes);
  }

  /** Reads an archive that is in memory. */
  static Archive of(byte[] bytes) throws ArchiveTrouble {
    List<ArchiveEntry> entries = new ArrayList<>(ArchiveList.of(bytes));
    entries.sort(Comparator.comparingLong(ArchiveEntry::at));
    SortedMap<String, byte[]> files = new TreeMap<>();
    ByteBuffer all = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    long free = 0;
    for (ArchiveEntry entry : entries) {
      if (entry.at() < free) {
        throw ArchiveList.broken();
      }
      int from = start(all, entry);
      free = from + entry.packed();
      files.put(entry.name(), unpacked(bytes, from, entry));
    }
    mustBeFoldersOrFiles(files);
    return new Archive(files);
  }

  private static int start(ByteBuffer all, ArchiveEntry entry) throws ArchiveTrouble {
    int at = (int) Math.min(entry.at(), Integer.MAX_VALUE - LOCAL_LENGTH);
    if (at + LOCAL_LENGTH > all.capacity() || all.getInt(at) != LOCAL_MARK) {
      throw ArchiveList.broken();
    }
    int names = all.getShort(at + 26) & 0xFFFF;
    int from = at + LOCAL_LENGTH + names + (all.getShort(at + 28) & 0xFFFF);
    if (from + entry.packed() > all.capacity()) {
      throw ArchiveList.broken();
    }
    return from;
  }

  private static byte[] unpacked(byte[] bytes, int from, ArchiveEntry entry) throws ArchiveTrouble {
    int packed = (int) entry.packed();
    byte[] out =
        entry.method() == 0
            ? Arrays.copyOfRange(bytes, from, from + packed)
            : inflated(bytes, from, packed, (int) entry.size());
    CRC32 check = new CRC32();
    check.update(out);
    if (out.length != entry.size() || check.getValue() != entry.check()) {
      throw ArchiveList.broken();
    }
    return out;
  }

  /** Never makes more than the list said there is. */
  private static byte[] inflated(byte[] bytes, int from, int packed, int size)
      throws ArchiveTrouble {
    Inflater inflater = new Inflater(true);
    try {
      inflater.setInput(bytes, from, packed);
      byte[] out = new byte[size + 1];
      int done = 0;
      while (!inflater.finished() && done < out.length) {
        int more = inflater.inflate(out, done, out.length - done);
        if (more == 0 && !inflater.finished()) {
          throw ArchiveList.broken();
        }
        done += more;
      }
      return Arrays.copyOf(out, done);
    } catch (DataFormatException e) {
      throw ArchiveList.broken();
    } finally {
      inflater.end();
    }
  }

  private static void mustBeFoldersOrFiles(Map<String, byte[]> files) throws ArchiveTrouble {
    for (String name : files.keySet()) {
      for (int slash = name.indexOf('/'); slash > 0; slash = name.indexOf('/', slash + 1)) {
        if (files.containsKey(name.substring(0, slash))) {
          throw new ArchiveTrouble(
              name.substring(0, slash) + " is a file and a folder", "have the archive made anew");
        }
      }
    }
  }
}
