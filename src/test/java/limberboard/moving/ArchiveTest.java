package limberboard.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArchiveTest {
  private static byte[] zip(String... names) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (String name : names) {
        zip.putNextEntry(new ZipEntry(name));
        if (!name.endsWith("/")) {
          zip.write(name.getBytes(StandardCharsets.UTF_8));
        }
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static void refused(byte[] bytes, String why) {
    assertThatThrownBy(() -> Archive.of(bytes))
        .isInstanceOfSatisfying(
            ArchiveTrouble.class, trouble -> assertThat(trouble.right()).isNotEmpty())
        .hasMessageContaining(why);
  }

  /** The archive with a name written over by another of the same length, in both its places. */
  private static byte[] renamed(byte[] bytes, String from, String to) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return text.replace(from, to).getBytes(StandardCharsets.ISO_8859_1);
  }

  /** Where the archive's list begins. */
  private static int list(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(bytes.length - 6);
  }

  @Test
  void whatWasPackedIsReadAgain() throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("articles/topics/a.md", "Größe\n".getBytes(StandardCharsets.UTF_8));
    files.put("articles/pictures/bücher.png", new byte[] {0, 1, 2});
    files.put("boats/knot/log.csv", new byte[0]);
    byte[] bytes = ArchiveWriter.bytes(files);
    assertThat(ArchiveWriter.bytes(files)).isEqualTo(bytes);
    Archive read = Archive.of(bytes);
    assertThat(read.files().keySet()).isEqualTo(files.keySet());
    read.files().forEach((name, content) -> assertThat(content).isEqualTo(files.get(name)));
  }

  @Test
  void foldersAndAnEmptyArchiveAreNoHarm() throws IOException {
    assertThat(Archive.of(zip("articles/", "articles/topics/", "articles/topics/a.md")).files())
        .containsOnlyKeys("articles/topics/a.md");
    assertThat(Archive.of(zip()).files()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../articles/a.md",
        "articles/../../a.md",
        "/articles/a.md",
        "articles//a.md",
        "articles/./a.md",
        "articles\\a.md",
        "C:/articles/a.md",
        "articles/.git/config",
        ".git/config",
        "articles/topics/.hidden.md",
        "articles/topics/con.md",
        "articles/topics/a.md.",
        "articles/topics/a\u0007.md",
        "bin/run.sh",
        "articles/../",
        "index/lucene/segments",
      })
  void namesThatLeadElsewhereAreRefused(String name) throws IOException {
    assertThatThrownBy(() -> Archive.of(zip(name)))
        .isInstanceOf(ArchiveTrouble.class)
        .hasMessageContaining(name.substring(0, 3));
  }

  @Test
  void namesTwiceOrInOtherLettersAreRefused() throws IOException {
    byte[] two = zip("articles/topics/a.md", "articles/topics/b.md");
    refused(renamed(two, "topics/b.md", "topics/a.md"), "is in it twice");
    refused(zip("articles/topics/a.md", "articles/topics/A.md"), "only by capital letters");
    refused(zip("articles/topics/a", "articles/topics/a/b.md"), "is a file and a folder");
  }

  @Test
  void namesThatAreNotUtf8AreRefused() throws IOException {
    byte[] marked = zip("articles/topics/ö.md");
    refused(renamed(marked, "\u00c3\u00b6", "\u00ff\u00fe"), "not UTF-8");
    byte[] unmarked = marked.clone();
    int list = list(unmarked);
    unmarked[list + 9] &= ~8;
    refused(unmarked, "not UTF-8");
  }

  @Test
  void linksAreRefused() throws IOException {
    byte[] bytes = zip("articles/topics/a.md");
    int list = list(bytes);
    bytes[list + 5] = 3;
    bytes[list + 40] = (byte) 0xFF;
    bytes[list + 41] = (byte) 0xA1;
    refused(bytes, "is a link or a device");
    bytes[list + 41] = (byte) 0x81;
    assertThat(Archive.of(bytes).files()).hasSize(1);
  }

  @Test
  void archivesThatSwellAreRefused() throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("articles/topics/a.md", new byte[1_000_000]);
    refused(ArchiveWriter.bytes(files), "would swell");
    files.put("articles/topics/a.md", new byte[(int) ArchiveList.LARGEST_FILE + 1]);
    refused(ArchiveWriter.bytes(files), "too large");
    byte[] honest = zip("articles/topics/a.md");
    int list = list(honest);
    byte[] less = honest.clone();
    less[list + 24] = 1;
    refused(less, "no zip file, or a broken one");
    byte[] more = honest.clone();
    more[list + 26] = 3;
    refused(more, "would swell");
  }

  @Test
  void entriesThatLieOverOneAnotherAreRefused() throws IOException {
    byte[] two = zip("articles/topics/a.md", "articles/topics/b.md");
    int list = list(two);
    int second = list + 46 + "articles/topics/a.md".length();
    Arrays.fill(two, second + 42, second + 46, (byte) 0);
    refused(two, "broken");
  }

  @Test
  void lockedAndUnusualPackingIsRefused() throws IOException {
    byte[] bytes = zip("articles/topics/a.md");
    int list = list(bytes);
    byte[] locked = bytes.clone();
    locked[list + 8] |= 1;
    refused(locked, "locked with a password");
    byte[] other = bytes.clone();
    other[list + 10] = 12;
    refused(other, "unusual");
  }

  @Test
  void spoiltArchivesAreRefusedOrTakenButNeverAnythingElse() throws IOException {
    byte[] bytes = zip("articles/topics/a.md", "articles/topics/b.md", "boats/knot/log.csv");
    Random random = new Random(3);
    int refused = 0;
    for (int i = 0; i < 5_000; i++) {
      byte[] spoilt = bytes.clone();
      for (int j = 0; j < 1 + random.nextInt(3); j++) {
        spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
      }
      byte[] cut =
          random.nextInt(4) == 0 ? Arrays.copyOf(spoilt, random.nextInt(spoilt.length)) : spoilt;
      try {
        assertThat(Archive.of(cut).files()).hasSizeLessThan(4);
      } catch (ArchiveTrouble e) {
        refused++;
      }
    }
    assertThat(refused).isGreaterThan(2_000);
  }
}
