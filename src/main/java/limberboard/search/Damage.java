package limberboard.search;

import java.io.EOFException;
import java.io.FileNotFoundException;
import java.nio.file.NoSuchFileException;
import java.util.Arrays;
import org.apache.lucene.index.CorruptIndexException;
import org.apache.lucene.index.IndexFormatTooNewException;
import org.apache.lucene.index.IndexFormatTooOldException;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.store.AlreadyClosedException;

/**
 * Tells a damaged index from other trouble. Lucene says of most damage what it is; of some it falls
 * over a number that cannot be, in its own code. What falls over elsewhere is a mistake of the
 * program, which no new index would mend.
 */
final class Damage {
  private static final String LUCENE = "org.apache.lucene.";
  private static final String JAVA = "java.";

  private Damage() {}

  /** Whether an index is damaged. */
  static boolean is(Exception e) {
    return e instanceof CorruptIndexException
        || e instanceof IndexFormatTooOldException
        || e instanceof IndexFormatTooNewException
        || e instanceof EOFException
        || e instanceof NoSuchFileException
        || e instanceof FileNotFoundException
        || e instanceof RuntimeException && isOfLucene((RuntimeException) e);
  }

  private static boolean isOfLucene(RuntimeException e) {
    if (e instanceof AlreadyClosedException || e instanceof IndexSearcher.TooManyClauses) {
      return false;
    }
    return Arrays.stream(e.getStackTrace())
        .map(StackTraceElement::getClassName)
        .filter(name -> !name.startsWith(JAVA) && !name.startsWith("jdk."))
        .findFirst()
        .filter(name -> name.startsWith(LUCENE))
        .isPresent();
  }
}
