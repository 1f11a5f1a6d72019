package limberboard.sharing;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.util.Optional;
import limberboard.history.RepositoryLock;
import org.eclipse.jgit.errors.RepositoryNotFoundException;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.RepositoryCache;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.transport.URIish;
import org.eclipse.jgit.util.FS;

/**
 * The right to change a remote that is a folder, held while something is sent there, so that what a
 * program that was killed meanwhile has left there is found and taken away by the next.
 */
final class RemoteFolder implements AutoCloseable {
  private final Optional<RepositoryLock> lock;

  private RemoteFolder(Optional<RepositoryLock> lock) {
    this.lock = lock;
  }

  /** Waits for it; at once there for what is no folder, and for one that somebody works in. */
  static RemoteFolder take(Remote remote) throws IOException {
    Optional<File> folder = folder(remote.address());
    if (folder.isEmpty()) {
      return new RemoteFolder(Optional.empty());
    }
    FileRepositoryBuilder builder = new FileRepositoryBuilder().setGitDir(folder.get());
    try (Repository there = builder.setMustExist(true).build()) {
      return new RemoteFolder(
          there.isBare() ? Optional.of(RepositoryLock.take(there)) : Optional.empty());
    } catch (RepositoryNotFoundException e) {
      return new RemoteFolder(Optional.empty());
    }
  }

  private static Optional<File> folder(String address) {
    try {
      URIish uri = new URIish(address);
      return uri.isRemote() || uri.getPath() == null
          ? Optional.empty()
          : Optional.ofNullable(
              RepositoryCache.FileKey.resolve(new File(uri.getPath()), FS.DETECTED));
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  @Override
  public void close() throws IOException {
    if (lock.isPresent()) {
      lock.get().close();
    }
  }
}
