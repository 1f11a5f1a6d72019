package limberboard.sharing;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Set;
import org.eclipse.jgit.errors.NoRemoteRepositoryException;
import org.eclipse.jgit.errors.NotSupportedException;
import org.eclipse.jgit.errors.TransportException;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.RepositoryBuilder;
import org.eclipse.jgit.lib.RepositoryCache;
import org.eclipse.jgit.transport.ReceivePack;
import org.eclipse.jgit.transport.TestProtocol;
import org.eclipse.jgit.transport.Transport;
import org.eclipse.jgit.transport.TransportProtocol;
import org.eclipse.jgit.transport.URIish;
import org.eclipse.jgit.transport.UploadPack;
import org.eclipse.jgit.util.FS;

/**
 * Reaches a repository in a folder within this program, as JGit's own way does, but says nothing on
 * the error stream when the one who fetches has stopped.
 */
final class FolderProtocol extends TransportProtocol {
  private static final FolderProtocol ONLY = new FolderProtocol();

  private FolderProtocol() {}

  /** Has folders reached in this way; once and again is the same. */
  static void use() {
    Transport.unregister(ONLY);
    Transport.register(ONLY);
  }

  @Override
  public String getName() {
    return "a folder";
  }

  @Override
  public Set<String> getSchemes() {
    return Set.of("file");
  }

  @Override
  public boolean canHandle(URIish uri, Repository local, String remoteName) {
    boolean folder =
        uri.getPath() != null
            && uri.getPort() <= 0
            && uri.getUser() == null
            && uri.getPass() == null
            && uri.getHost() == null
            && (uri.getScheme() == null || getSchemes().contains(uri.getScheme()));
    return folder && !path(uri, local).isFile();
  }

  private static File path(URIish uri, Repository local) {
    if (local == null) {
      return new File(uri.getPath());
    }
    File from = local.isBare() ? local.getDirectory() : local.getWorkTree();
    return local.getFS().resolve(from, uri.getPath());
  }

  /**
   * A connection within this program. JGit keeps the class that makes one to itself, but for {@link
   * TestProtocol}, which makes the same between any two repositories.
   */
  @Override
  public Transport open(URIish uri, Repository local, String remoteName)
      throws NotSupportedException, TransportException {
    TestProtocol<URIish> within =
        new TestProtocol<>(
            (asked, there) -> new Quiet(there), (asked, there) -> new ReceivePack(there));
    return within.open(within.register(uri, repository(uri, path(uri, local))), local, remoteName);
  }

  private static Repository repository(URIish uri, File path) throws TransportException {
    File found = RepositoryCache.FileKey.resolve(path, FS.DETECTED);
    if (found == null) {
      throw new NoRemoteRepositoryException(uri, "no repository");
    }
    try {
      return new RepositoryBuilder().setFS(FS.DETECTED).setGitDir(found).build();
    } catch (IOException e) {
      throw new TransportException(uri, "the repository cannot be opened", e);
    }
  }

  /** Hands out what is fetched; whoever fetches says what went wrong, and why he stopped. */
  private static final class Quiet extends UploadPack {
    Quiet(Repository repository) {
      super(repository);
    }

    @Override
    public void upload(InputStream input, OutputStream output, OutputStream messages) {
      try {
        super.upload(input, output, messages);
      } catch (IOException e) {
        // the connection ends, and the other side of it sees that
      }
    }
  }
}
