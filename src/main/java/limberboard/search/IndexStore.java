package limberboard.search;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.index.CodecReader;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexNotFoundException;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SegmentInfos;
import org.apache.lucene.index.StandardDirectoryReader;
import org.apache.lucene.store.AlreadyClosedException;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.FilterDirectory;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.Lock;
import org.apache.lucene.store.LockObtainFailedException;

/**
 * The index in one directory. Reading takes no lock and sees the last committed state; writing
 * takes the writer's lock, waits for it a while, and gives it back at once. A state that is damaged
 * or has another stamp counts as none, and the next writing builds it anew. Belongs to one thread
 * at a time.
 */
final class IndexStore implements Closeable {
  private static final long PAUSE_MILLIS = 20;

  private final Directory directory;
  private final Duration patience;
  private boolean damaged;

  /**
   * An index in this directory.
   *
   * @param patience how long to wait for the writer's lock
   */
  IndexStore(Directory directory, Duration patience) {
    this.directory = directory;
    this.patience = patience;
  }

  /** A copy in memory of a committed state. */
  static IndexStore copyOf(DirectoryReader committed) throws IOException {
    ByteBuffersDirectory memory = new ByteBuffersDirectory();
    for (String file : committed.getIndexCommit().getFileNames()) {
      memory.copyFrom(committed.directory(), file, file, IOContext.READONCE);
    }
    return new IndexStore(memory, Duration.ZERO);
  }

  /** An empty index in memory. */
  static IndexStore inMemory() {
    return new IndexStore(new ByteBuffersDirectory(), Duration.ZERO);
  }

  /**
   * The last committed state, if there is one that is whole and has this stamp.
   *
   * @param used the reader in use; returned itself when it is of this directory and nothing newer
   *     was committed
   * @throws IOException when the directory cannot be read, for another reason than damage
   */
  Optional<DirectoryReader> committed(IndexMakeUp stamp, Optional<DirectoryReader> used)
      throws IOException {
    Optional<DirectoryReader> known = used.filter(reader -> reader.directory() == directory);
    try {
      byte[] latest = SegmentInfos.readLatestCommit(directory).getId();
      if (known.isPresent() && Arrays.equals(latest, commitId(known.get()))) {
        return known.filter(reader -> hasStamp(reader, stamp));
      }
      return checked(newer(known), known, stamp);
    } catch (IndexNotFoundException e) {
      return Optional.empty();
    } catch (IOException | RuntimeException e) {
      if (!Damage.is(e)) {
        throw e;
      }
      damaged = true;
      return Optional.empty();
    }
  }

  private DirectoryReader newer(Optional<DirectoryReader> known) throws IOException {
    if (known.isPresent()) {
      try {
        DirectoryReader newer = DirectoryReader.openIfChanged(known.get());
        if (newer != null) {
          return newer;
        }
      } catch (IllegalStateException e) {
        // The index was built anew under the same names: nothing of the old reader can be shared.
        return DirectoryReader.open(directory);
      }
    }
    return DirectoryReader.open(directory);
  }

  /** Reads every new file once against its checksum, so that damage shows now. */
  private static Optional<DirectoryReader> checked(
      DirectoryReader reader, Optional<DirectoryReader> known, IndexMakeUp stamp)
      throws IOException {
    boolean good = false;
    try {
      if (hasStamp(reader, stamp)) {
        Set<Object> checked = new HashSet<>();
        known.ifPresent(old -> old.leaves().forEach(leaf -> checked.add(coreOf(leaf.reader()))));
        for (LeafReaderContext leaf : reader.leaves()) {
          if (!checked.contains(coreOf(leaf.reader()))) {
            ((CodecReader) leaf.reader()).checkIntegrity();
          }
        }
        good = true;
      }
    } finally {
      if (!good) {
        reader.close();
      }
    }
    return good ? Optional.of(reader) : Optional.empty();
  }

  private static Object coreOf(LeafReader reader) {
    return reader.getCoreCacheHelper().getKey();
  }

  private static boolean hasStamp(DirectoryReader reader, IndexMakeUp stamp) {
    return stamp.entries().equals(infos(reader).getUserData());
  }

  private static byte[] commitId(DirectoryReader reader) {
    return infos(reader).getId();
  }

  private static SegmentInfos infos(DirectoryReader reader) {
    return ((StandardDirectoryReader) reader).getSegmentInfos();
  }

  /**
   * Makes the index as it is wanted and commits it, all or nothing.
   *
   * @return what was written
   * @throws LockObtainFailedException when somebody else kept writing
   * @throws IOException when it cannot be written; the committed state is as it was
   */
  PagesToIndex.Difference write(IndexWriting writing) throws IOException {
    try {
      emptyLock();
      if (damaged) {
        clear();
      }
      return writeOrAnew(writing);
    } catch (AlreadyClosedException e) {
      throw new IOException("its lock is not valid", e);
    }
  }

  private PagesToIndex.Difference writeOrAnew(IndexWriting writing) throws IOException {
    try {
      return writing.in(this::writerWith);
    } catch (IOException | RuntimeException e) {
      if (!Damage.is(e)) {
        throw e;
      }
      clear();
      return writing.in(this::writerWith);
    }
  }

  /** Empties the lock's file, in which nothing belongs and with anything in which no lock holds. */
  private void emptyLock() throws IOException {
    if (FilterDirectory.unwrap(directory) instanceof FSDirectory folder) {
      Path lock = folder.getDirectory().resolve(IndexWriter.WRITE_LOCK_NAME);
      if (!Files.exists(lock)) {
        return;
      }
      if (!Files.isRegularFile(lock)) {
        throw new IOException("its lock is no ordinary file");
      }
      if (Files.size(lock) > 0) {
        Files.newByteChannel(lock, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)
            .close();
      }
    }
  }

  private IndexWriter writerWith(IndexWriting.Settings settings) throws IOException {
    return patiently(() -> new IndexWriter(directory, settings.create()));
  }

  /** Removes a damaged index. */
  private void clear() throws IOException {
    try (Lock lock = patiently(() -> directory.obtainLock(IndexWriter.WRITE_LOCK_NAME))) {
      lock.ensureValid();
      for (String file : directory.listAll()) {
        if (!file.equals(IndexWriter.WRITE_LOCK_NAME)) {
          directory.deleteFile(file);
        }
      }
    }
    damaged = false;
  }

  private interface Locked<T> {
    T get() throws IOException;
  }

  private <T> T patiently(Locked<T> locked) throws IOException {
    long end = System.nanoTime() + patience.toNanos();
    while (true) {
      try {
        return locked.get();
      } catch (LockObtainFailedException e) {
        if (System.nanoTime() >= end) {
          throw e;
        }
      }
      try {
        Thread.sleep(PAUSE_MILLIS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new InterruptedIOException("stopped while waiting for the search index");
      }
    }
  }

  @Override
  public void close() throws IOException {
    directory.close();
  }
}
