package limberboard.sharing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.history.Author;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.transport.RemoteRefUpdate;

/** Sends what this copy has to the other; never over what the other has and this one has not. */
public final class Sending {
  private final Repository repository;
  private final Connection connection;
  private final Sharing sharing;

  /** Sending of this workspace. */
  public Sending(HistoryFolder place, Connection connection) {
    this.repository = place.repository();
    this.connection = connection;
    this.sharing = new Sharing(place, connection);
  }

  /**
   * What came of it.
   *
   * @param recordedFirst how many files were recorded before
   * @param versions how many versions were sent; 0 when the other copy had all
   */
  public record Sent(int recordedFirst, int versions) {}

  /**
   * Records what is not recorded, and sends all versions.
   *
   * @param with an address to keep as the remote where there is none yet
   * @param make whether to make an empty repository where there is none, in a folder
   * @throws HistoryTrouble when the other copy has versions that this one has not, or cannot be
   *     reached or written
   */
  public Sent push(Author author, Optional<String> with, boolean make) throws IOException {
    try {
      return pushed(author, with, make);
    } catch (IOException e) {
      throw HistoryTrouble.of(e);
    }
  }

  private Sent pushed(Author author, Optional<String> with, boolean make) throws IOException {
    int first = sharing.prepare(author);
    Remote remote = Remote.of(repository, with);
    if (make) {
      make(remote);
    }
    ObjectId head = repository.resolve(Constants.HEAD);
    if (head == null) {
      throw new HistoryTrouble(
          "nothing is recorded here yet", "limberboard history --record \"Begin\" records it");
    }
    Ref before = repository.exactRef(remote.tracking());
    RemoteRefUpdate update = connection.push(repository, remote);
    judge(remote, update);
    sharing.seen(remote, head);
    return new Sent(first, sent(head, before, update));
  }

  private int sent(ObjectId head, Ref before, RemoteRefUpdate update) throws IOException {
    if (update.getStatus() == RemoteRefUpdate.Status.UP_TO_DATE) {
      return 0;
    }
    return sharing.count(head, Optional.ofNullable(before).map(Ref::getObjectId));
  }

  private static void make(Remote remote) throws IOException {
    Path folder = Path.of(remote.address());
    if (Files.exists(folder)) {
      return;
    }
    try (Git made =
        Git.init()
            .setBare(true)
            .setDirectory(folder.toFile())
            .setInitialBranch(remote.branch())
            .call()) {
      made.getRepository();
    } catch (GitAPIException e) {
      throw RemoteTrouble.of(remote.said(), e);
    }
  }

  private static void judge(Remote remote, RemoteRefUpdate update) throws HistoryTrouble {
    switch (update.getStatus()) {
      case OK, UP_TO_DATE -> {}
      case REJECTED_NONFASTFORWARD, REJECTED_REMOTE_CHANGED ->
          throw new HistoryTrouble(
              remote.said() + " has versions that you have not pulled",
              "limberboard share pull first, then push again; nothing was sent");
      default -> throw refused(remote, update);
    }
  }

  private static HistoryTrouble refused(Remote remote, RemoteRefUpdate update) {
    if ("failed to lock".equals(update.getMessage())) {
      return new HistoryTrouble(
          "another program is sending to " + remote.said() + ", or was stopped while it did",
          "try again; if it stays so, have "
              + update.getRemoteName()
              + ".lock taken out of that folder. What you recorded stays in your copy");
    }
    return new HistoryTrouble(
        remote.said()
            + " did not take it: "
            + Optional.ofNullable(update.getMessage()).orElse("no reason was given"),
        "ask whoever keeps it; a folder that somebody works in takes none, a bare"
            + " repository does");
  }
}
