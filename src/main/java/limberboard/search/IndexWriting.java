package limberboard.search;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.SerialMergeScheduler;
import org.apache.lucene.index.Term;

/**
 * One writing of the index: what differs is worked out under the lock, written and committed.
 *
 * @param wanted what the index should hold
 * @param stamp what it is made by
 * @param analysis how its text becomes words
 * @param names how its pages' names are kept
 */
record IndexWriting(PagesToIndex wanted, IndexMakeUp stamp, Analysis analysis, PageNames names) {
  private static final double BUFFER_MEGABYTES = 64;

  /** Makes the settings of a writer; a writer wants new ones each time. */
  interface Settings {
    IndexWriterConfig create();
  }

  /** Opens a writer, which takes the lock. */
  interface Opener {
    IndexWriter open(Settings settings) throws IOException;
  }

  /** Writes and commits; gives the lock back in any case. */
  PagesToIndex.Difference in(Opener opener) throws IOException {
    try (IndexWriter writer = opener.open(this::settings)) {
      PagesToIndex.Difference difference;
      if (isOurs(writer)) {
        difference = difference(writer);
        if (difference.isEmpty()) {
          return difference;
        }
      } else {
        writer.deleteAll();
        difference = wanted.all();
      }
      write(writer, difference);
      return difference;
    }
  }

  private IndexWriterConfig settings() {
    // Closing without a commit must leave the last committed state, whatever happened before.
    return new IndexWriterConfig(analysis.forIndex())
        .setCommitOnClose(false)
        .setRAMBufferSizeMB(BUFFER_MEGABYTES)
        .setMergeScheduler(new SerialMergeScheduler());
  }

  private boolean isOurs(IndexWriter writer) {
    Map<String, String> data = new TreeMap<>();
    Iterable<Map.Entry<String, String>> committed = writer.getLiveCommitData();
    if (committed != null) {
      committed.forEach(entry -> data.put(entry.getKey(), entry.getValue()));
    }
    return stamp.entries().equals(data);
  }

  private PagesToIndex.Difference difference(IndexWriter writer) throws IOException {
    try (DirectoryReader now = DirectoryReader.open(writer)) {
      return wanted.against(now);
    }
  }

  private void write(IndexWriter writer, PagesToIndex.Difference difference) throws IOException {
    for (String id : difference.removed()) {
      writer.deleteDocuments(new Term(PageDocuments.ID, id));
    }
    for (String id : difference.changed()) {
      writer.updateDocument(new Term(PageDocuments.ID, id), document(id));
    }
    for (String id : difference.added()) {
      writer.addDocument(document(id));
    }
    writer.setLiveCommitData(stamp.entries().entrySet());
    writer.commit();
    if (writer.hasUncommittedChanges()) {
      // Segments were merged after the commit.
      writer.commit();
    }
  }

  private Document document(String id) {
    return PageDocuments.of(wanted.text(id), wanted.digest(id), names);
  }
}
