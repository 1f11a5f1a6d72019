package limberboard.library.file;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Set;

/** Goes through folders, passes over what is hidden or out of reach, and notes each folder. */
class VisibleFiles extends SimpleFileVisitor<Path> {
  private final Set<Path> folders = new HashSet<>();

  /** What cannot be gone through now is looked at next time; reading it reports the trouble. */
  final void in(Path root) {
    try {
      Files.walkFileTree(root, this);
    } catch (IOException e) {
      // the rest is passed over
    }
  }

  /** The folders gone through so far. */
  final Set<Path> folders() {
    return folders;
  }

  @Override
  public final FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
    if (WatchedFolders.isHidden(folder)) {
      return FileVisitResult.SKIP_SUBTREE;
    }
    folders.add(folder);
    return FileVisitResult.CONTINUE;
  }

  @Override
  public final FileVisitResult visitFileFailed(Path file, IOException e) {
    return FileVisitResult.CONTINUE;
  }

  @Override
  public final FileVisitResult postVisitDirectory(Path folder, IOException e) {
    return FileVisitResult.CONTINUE;
  }
}
