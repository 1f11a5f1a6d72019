package limberboard.moving;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The list of entries at the end of a zip file (PKWARE, <i>.ZIP File Format Specification</i>,
 * 4.3.12 and 4.3.16), read with suspicion: anything but plain files in plain folders is refused.
 */
final class ArchiveList {
  /** The most entries. */
  static final int MOST_ENTRIES = 50_000;

  /** The largest file, in bytes. */
  static final long LARGEST_FILE = 20_000_000;

  /** The most that all files may come to, in bytes. */
  static final long LARGEST_ALL = 200_000_000;

  /** How many times as large a file may become, once it is larger than {@link #SMALL}. */
  private static final long MOST_TIMES = 200;

  private static final long SMALL = 100_000;
  private static final int END_MARK = 0x06054b50;
  private static final int END_LENGTH = 22;
  private static final int ENTRY_MARK = 0x02014b50;
  private static final int ENTRY_LENGTH = 46;
  private static final int LONGEST_REMARK = 65_535;
  private static final int UNIX = 3;
  private static final int KIND = 0xF000;
  private static final int ORDINARY = 0x8000;
  private static final int FOLDER = 0x4000;
  private static final long IN_64_BITS = 0xFFFFFFFFL;

  private final ByteBuffer bytes;
  private final List<ArchiveEntry> entries = new ArrayList<>();
  private final Map<String, String> names = new HashMap<>();
  private long all;

  private ArchiveList(byte[] bytes) {
    this.bytes = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** The entries that are files, in the list's order. */
  static List<ArchiveEntry> of(byte[] bytes) throws ArchiveTrouble {
    ArchiveList list = new ArchiveList(bytes);
    try {
      list.read(list.end());
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      throw broken();
    }
    return list.entries;
  }

  /** That it is no zip file, or not a whole one. */
  static ArchiveTrouble broken() {
    return new ArchiveTrouble(
        "it is no zip file, or a broken one", "fetch it again, or have it made anew");
  }

  private int end() throws ArchiveTrouble {
    int last = bytes.capacity() - END_LENGTH;
    for (int at = last; at >= Math.max(0, last - LONGEST_REMARK); at--) {
      if (bytes.getInt(at) == END_MARK && (bytes.getShort(at + 20) & 0xFFFF) == last - at) {
        return at;
      }
    }
    throw broken();
  }

  private void read(int end) throws ArchiveTrouble {
    int count = bytes.getShort(end + 10) & 0xFFFF;
    long from = bytes.getInt(end + 16) & IN_64_BITS;
    boolean parts = bytes.getShort(end + 4) != 0 || bytes.getShort(end + 6) != 0;
    if (parts || count == 0xFFFF || from == IN_64_BITS || count > MOST_ENTRIES) {
      throw tooMuch("has too many entries, or several parts");
    }
    int at = Math.toIntExact(Math.min(from, Integer.MAX_VALUE));
    for (int i = 0; i < count; i++) {
      at = entry(at, end);
    }
    if (at != end) {
      throw broken();
    }
  }

  private static ArchiveTrouble tooMuch(String what) {
    return new ArchiveTrouble(
        "it " + what,
        "take at most "
            + MOST_ENTRIES
            + " files, of at most "
            + LARGEST_FILE
            + " bytes each and "
            + LARGEST_ALL
            + " in all");
  }

  private int entry(int at, int end) throws ArchiveTrouble {
    if (at + ENTRY_LENGTH > end || bytes.getInt(at) != ENTRY_MARK) {
      throw broken();
    }
    int flags = bytes.getShort(at + 8) & 0xFFFF;
    int method = bytes.getShort(at + 10) & 0xFFFF;
    byte[] raw = new byte[bytes.getShort(at + 28) & 0xFFFF];
    bytes.get(at + ENTRY_LENGTH, raw);
    String name = ArchiveName.read(raw, (flags & 0x800) != 0);
    long packed = bytes.getInt(at + 20) & IN_64_BITS;
    long size = bytes.getInt(at + 24) & IN_64_BITS;
    int system = bytes.get(at + 5) & 0xFF;
    int mode = system == UNIX ? bytes.getInt(at + 38) >>> 16 : 0;
    boolean folder = name.endsWith("/");
    mustBePlain(folder ? name.substring(0, name.length() - 1) + "/x" : name, mode, folder);
    if ((flags & 1) != 0 || method != 0 && method != 8) {
      throw new ArchiveTrouble(
          name + " is locked with a password, or packed in an unusual way",
          "make the archive anew without either");
    }
    if (!folder) {
      mustNotBeTooMuch(name, packed, size);
      unique(name);
      long offset = bytes.getInt(at + 42) & IN_64_BITS;
      entries.add(
          new ArchiveEntry(name, method, packed, size, bytes.getInt(at + 16) & IN_64_BITS, offset));
    }
    return at
        + ENTRY_LENGTH
        + raw.length
        + (bytes.getShort(at + 30) & 0xFFFF)
        + (bytes.getShort(at + 32) & 0xFFFF);
  }

  private static void mustBePlain(String name, int mode, boolean folder) throws ArchiveTrouble {
    Optional<String> wrong = ArchiveName.wrong(name);
    int kind = mode & KIND;
    if (kind != 0 && kind != (folder ? FOLDER : ORDINARY)) {
      throw new ArchiveTrouble(
          name + " is a link or a device", "take it out of the archive; nothing was written");
    }
    if (wrong.isPresent() && !(folder && wrong.get().startsWith("is nothing"))) {
      throw new ArchiveTrouble(
          name + " " + wrong.get(),
          "an archive holds articles/, index/words/, boats/, demo-boats/ and drills/; nothing was"
              + " written");
    }
  }

  private void mustNotBeTooMuch(String name, long packed, long size) throws ArchiveTrouble {
    all += size;
    if (size > LARGEST_FILE || all > LARGEST_ALL) {
      throw tooMuch("would be too large unpacked, at " + name);
    }
    if (size > SMALL && size > packed * MOST_TIMES) {
      throw tooMuch("would swell more than " + MOST_TIMES + " times, at " + name);
    }
  }

  private void unique(String name) throws ArchiveTrouble {
    String other = names.put(name.toLowerCase(Locale.ROOT), name);
    if (other != null) {
      throw new ArchiveTrouble(
          other.equals(name)
              ? name + " is in it twice"
              : name + " and " + other + " differ only by capital letters",
          "leave one of them out; nothing was written");
    }
  }
}
