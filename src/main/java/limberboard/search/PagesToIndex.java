package limberboard.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.library.Library;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.util.Bits;

/** What the index should hold: the pages of a library with their digests. */
final class PagesToIndex {
  private final Library library;
  private final Titles titles;
  private final Map<String, byte[]> digests;

  PagesToIndex(Library library, PageDigests digests) {
    this.library = library;
    this.titles = new Titles(library);
    this.digests = digests.of(library, titles);
  }

  /**
   * What has to be written.
   *
   * @param added ids that the index does not have
   * @param changed ids whose text is another one in the index
   * @param removed ids that only the index has
   */
  record Difference(List<String> added, List<String> changed, List<String> removed) {
    boolean isEmpty() {
      return added.isEmpty() && changed.isEmpty() && removed.isEmpty();
    }
  }

  /** All pages, to be added to an empty index. */
  Difference all() {
    return new Difference(List.copyOf(digests.keySet()), List.of(), List.of());
  }

  /** What has to be written to make an index like the library. Reads no page of the index. */
  Difference against(IndexReader reader) throws IOException {
    List<String> changed = new ArrayList<>();
    List<String> removed = new ArrayList<>();
    Set<String> present = new HashSet<>();
    for (LeafReaderContext leaf : reader.leaves()) {
      BinaryDocValues ids = DocValues.getBinary(leaf.reader(), PageDocuments.ID);
      BinaryDocValues written = DocValues.getBinary(leaf.reader(), PageDocuments.DIGEST);
      Bits live = leaf.reader().getLiveDocs();
      for (int doc = 0; doc < leaf.reader().maxDoc(); doc++) {
        if (live != null && !live.get(doc)) {
          continue;
        }
        String id = ids.advanceExact(doc) ? ids.binaryValue().utf8ToString() : "";
        byte[] digest = digests.get(id);
        present.add(id);
        if (digest == null) {
          removed.add(id);
        } else if (!written.advanceExact(doc) || !isSame(written, digest)) {
          changed.add(id);
        }
      }
    }
    List<String> added = digests.keySet().stream().filter(id -> !present.contains(id)).toList();
    return new Difference(added, changed, removed);
  }

  private static boolean isSame(BinaryDocValues written, byte[] digest) throws IOException {
    var bytes = written.binaryValue();
    return Arrays.equals(
        bytes.bytes, bytes.offset, bytes.offset + bytes.length, digest, 0, digest.length);
  }

  /** The text of a page that is wanted. */
  SearchedText text(String id) {
    return SearchedText.of(library.page(id).orElseThrow(), titles);
  }

  /** Its digest. */
  byte[] digest(String id) {
    return digests.get(id);
  }
}
