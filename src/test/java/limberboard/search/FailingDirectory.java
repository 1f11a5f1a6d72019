package limberboard.search;

import java.io.IOException;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FilterDirectory;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.IndexOutput;

/** A directory on a disk that is full after some files were begun, renamed or made permanent. */
final class FailingDirectory extends FilterDirectory {
  private int room;

  FailingDirectory(Directory directory, int room) {
    super(directory);
    this.room = room;
  }

  private void use() throws IOException {
    if (room-- <= 0) {
      throw new IOException("No space left on device");
    }
  }

  @Override
  public IndexOutput createOutput(String name, IOContext context) throws IOException {
    use();
    return super.createOutput(name, context);
  }

  @Override
  public IndexOutput createTempOutput(String prefix, String suffix, IOContext context)
      throws IOException {
    use();
    return super.createTempOutput(prefix, suffix, context);
  }

  @Override
  public void rename(String source, String target) throws IOException {
    use();
    super.rename(source, target);
  }

  @Override
  public void sync(java.util.Collection<String> names) throws IOException {
    use();
    super.sync(names);
  }
}
