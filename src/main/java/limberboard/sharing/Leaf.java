package limberboard.sharing;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.revwalk.RevTree;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * A file as a version has it.
 *
 * @param mode whether it is an ordinary file, a link, another repository
 * @param id names its content
 */
record Leaf(FileMode mode, ObjectId id) {
  private static final int LARGEST_TEXT = 20_000_000;

  /** All files of a version, by path. */
  static Map<String, Leaf> of(ObjectReader reader, RevTree tree) throws IOException {
    Map<String, Leaf> files = new TreeMap<>();
    try (TreeWalk walk = new TreeWalk(reader)) {
      walk.setRecursive(true);
      walk.addTree(tree);
      while (walk.next()) {
        files.put(walk.getPathString(), new Leaf(walk.getFileMode(0), walk.getObjectId(0)));
      }
    }
    return files;
  }

  /** Whether it is an ordinary file. */
  boolean isFile() {
    return FileMode.REGULAR_FILE.equals(mode) || FileMode.EXECUTABLE_FILE.equals(mode);
  }

  /** Its bytes. */
  byte[] bytes(ObjectReader reader) throws IOException {
    return reader.open(id).getCachedBytes(Integer.MAX_VALUE);
  }

  /** Its text; empty when it is none, as a picture is. */
  Optional<String> text(ObjectReader reader) throws IOException {
    if (!isFile() || reader.getObjectSize(id, ObjectReader.OBJ_ANY) > LARGEST_TEXT) {
      return Optional.empty();
    }
    byte[] bytes = bytes(reader);
    for (byte each : bytes) {
      if (each == 0) {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }
}
