package limberboard.search;

import static limberboard.search.SmallSearchWorkspace.ids;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.FSDirectory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DamagedIndexTest {
  @TempDir Path folder;
  private SmallSearchWorkspace workspace;

  @BeforeEach
  void fill() {
    workspace = SmallSearchWorkspace.filled(folder);
  }

  /** Ways in which a file comes to harm. */
  enum Harm {
    CUT_SHORT {
      @Override
      byte[] done(byte[] file) {
        return Arrays.copyOf(file, file.length / 2);
      }
    },
    EMPTIED {
      @Override
      byte[] done(byte[] file) {
        return new byte[0];
      }
    },
    BEGINNING_GARBLED {
      @Override
      byte[] done(byte[] file) {
        return garbled(file, 0, Math.min(16, file.length));
      }
    },
    MIDDLE_GARBLED {
      @Override
      byte[] done(byte[] file) {
        return garbled(file, file.length / 2, Math.min(file.length, file.length / 2 + 4));
      }
    },
    END_GARBLED {
      @Override
      byte[] done(byte[] file) {
        return garbled(file, Math.max(0, file.length - 12), file.length);
      }
    },
    ALL_NOISE {
      @Override
      byte[] done(byte[] file) {
        byte[] noise = new byte[file.length];
        new Random(3).nextBytes(noise);
        return noise;
      }
    };

    abstract byte[] done(byte[] file);

    static byte[] garbled(byte[] file, int from, int to) {
      byte[] garbled = file.clone();
      for (int i = from; i < to; i++) {
        garbled[i] ^= 0x55;
      }
      return garbled;
    }
  }

  @ParameterizedTest
  @EnumSource(Harm.class)
  void harmToAnyFileIsNoticedAndTheIndexBuiltAnew(Harm harm) throws IOException {
    workspace.index().close();
    int files = workspace.indexFiles().size();
    assertThat(files).isGreaterThan(2);
    for (int i = 0; i < files; i++) {
      Path file = workspace.indexFiles().get(i);
      Files.write(file, harm.done(Files.readAllBytes(file)));
      try (SearchIndex index = SearchIndex.open(workspace.folders())) {
        UpdateReport report = index.update(workspace.library());
        assertThat(report.inMemory()).as("%s of %s", harm, file.getFileName()).isEmpty();
        assertThat(report.added()).as("%s of %s", harm, file.getFileName()).isEqualTo(7);
        assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
      }
      try (SearchIndex index = SearchIndex.open(workspace.folders())) {
        assertThat(index.update(workspace.library()).unchanged()).isTrue();
      }
    }
  }

  @Test
  void everyFileMayBeMissing() throws IOException {
    workspace.index().close();
    int files = workspace.indexFiles().size();
    for (int i = 0; i < files; i++) {
      Files.delete(workspace.indexFiles().get(i));
      try (SearchIndex index = workspace.index()) {
        assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
      }
    }
    for (Path file : workspace.indexFiles()) {
      Files.delete(file);
    }
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
    }
  }

  @Test
  void aStrangeFileWithAnIndexFilesNameDoesNotMatter() throws IOException {
    workspace.index().close();
    Files.writeString(folder.resolve("index/lucene/segments_zz"), "not an index");
    Files.writeString(folder.resolve("index/lucene/segments_!!"), "");
    Files.writeString(folder.resolve("index/lucene/_0.tmp"), "rest of a crash");
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
    }
    try (SearchIndex index = SearchIndex.open(workspace.folders())) {
      assertThat(index.update(workspace.library()).unchanged()).isTrue();
    }
  }

  @Test
  void anIndexThatIsDeletedWhileInUseIsBuiltAnewByTheNextUpdate() throws IOException {
    try (SearchIndex index = workspace.index()) {
      for (Path file : workspace.indexFiles()) {
        Files.delete(file);
      }
      assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
      assertThat(index.update(workspace.library()).added()).isEqualTo(7);
      assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
    }
    assertThat(workspace.indexFiles()).isNotEmpty();
  }

  @Test
  void harmThatShowsOnlyWhenAQueryReadsIsMended() throws IOException {
    try (SearchIndex index = workspace.index()) {
      for (Path file : workspace.indexFiles()) {
        try (RandomAccessFile inPlace = new RandomAccessFile(file.toFile(), "rw")) {
          byte[] noise = new byte[(int) inPlace.length()];
          Arrays.fill(noise, (byte) 0xFF);
          inPlace.write(noise);
        }
      }
      assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
      assertThat(index.update(workspace.library()).unchanged()).isTrue();
    }
  }

  @Test
  void anIndexMadeByAnotherVersionIsBuiltAnew() throws IOException {
    workspace.index().close();
    for (String entry : List.of("format", "lucene", "words", "stop-words")) {
      restamp(entry);
      try (SearchIndex index = SearchIndex.open(workspace.folders())) {
        assertThat(ids(index, "wet bunk cushions")).as("not read before").isEmpty();
        UpdateReport report = index.update(workspace.library());
        assertThat(report).as(entry).isEqualTo(new UpdateReport(7, 0, 0, Optional.empty()));
        assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
      }
    }
  }

  /** Commits the same index as if another version had made it. */
  private void restamp(String entry) throws IOException {
    try (FSDirectory directory = FSDirectory.open(workspace.folders().searchIndex());
        IndexWriter writer = new IndexWriter(directory, new IndexWriterConfig())) {
      Map<String, String> data = new HashMap<>();
      writer.getLiveCommitData().forEach(e -> data.put(e.getKey(), e.getValue()));
      assertThat(data).containsKey(entry);
      data.put(entry, "0.0.1");
      writer.setLiveCommitData(data.entrySet());
    }
  }

  @Test
  void anIndexThatIsNotOursIsReplaced() throws IOException {
    try (FSDirectory directory = FSDirectory.open(workspace.folders().searchIndex());
        IndexWriter writer = new IndexWriter(directory, new IndexWriterConfig())) {
      writer.addDocument(List.of());
    }
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "wet bunk cushions")).first().isEqualTo("wet-bunk");
      assertThat(index.update(workspace.library()).unchanged()).isTrue();
    }
  }

  @Test
  void junkInTheLockIsCleared() throws IOException {
    SmallSearchWorkspace workspace = SmallSearchWorkspace.filled(folder);
    Path lock = workspace.folders().searchIndex().resolve("write.lock");
    Files.createDirectories(lock.getParent());
    Files.write(lock, new byte[3_000]);
    try (SearchIndex index = SearchIndex.open(workspace.folders())) {
      assertThat(index.update(workspace.library()).inMemory()).isEmpty();
      assertThat(SmallSearchWorkspace.ids(index, "hatch")).contains("renew-hatch-gasket");
    }
    assertThat(lock).isEmptyFile();
  }

  @Test
  void aFolderInThePlaceOfTheLockLeavesTheSearchInMemory() throws IOException {
    SmallSearchWorkspace workspace = SmallSearchWorkspace.filled(folder);
    Files.createDirectories(workspace.folders().searchIndex().resolve("write.lock"));
    try (SearchIndex index = SearchIndex.open(workspace.folders())) {
      assertThat(index.update(workspace.library()).inMemory()).isPresent();
      assertThat(SmallSearchWorkspace.ids(index, "hatch")).contains("renew-hatch-gasket");
    }
  }

  @Test
  void onlyWhatLuceneFallsOverIsDamage() {
    assertThat(Damage.is(new IllegalStateException("ours"))).isFalse();
    IllegalArgumentException ofLucene = new IllegalArgumentException("theirs");
    ofLucene.setStackTrace(
        new StackTraceElement[] {
          new StackTraceElement("java.util.Objects", "checkIndex", "Objects.java", 1),
          new StackTraceElement("org.apache.lucene.util.fst.FST", "read", "FST.java", 1),
          new StackTraceElement("limberboard.search.Finder", "find", "Finder.java", 1)
        });
    assertThat(Damage.is(ofLucene)).isTrue();
  }
}
