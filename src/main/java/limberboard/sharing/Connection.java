package limberboard.sharing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import limberboard.history.HistoryTrouble;
import limberboard.history.RepositoryLock;
import org.eclipse.jgit.api.FetchCommand;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.TransportCommand;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.api.errors.JGitInternalException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.SubmoduleConfig.FetchRecurseSubmodulesMode;
import org.eclipse.jgit.transport.PushResult;
import org.eclipse.jgit.transport.RefSpec;
import org.eclipse.jgit.transport.RemoteRefUpdate;
import org.eclipse.jgit.transport.SshTransport;
import org.eclipse.jgit.transport.TagOpt;
import org.eclipse.jgit.transport.TrackingRefUpdate;

/**
 * How remotes are reached.
 *
 * @param asking who is asked for names and passwords
 * @param ssh how ssh is called
 * @param git how git is called for what its helpers know; empty for not at all
 * @param stage is told how far it is
 */
public record Connection(Asking asking, List<String> ssh, List<String> git, HowFar stage) {
  private static final int SECONDS = 60;

  static {
    FolderProtocol.use();
  }

  /** By the machine's own ssh and git. */
  public static Connection ofMachine(Asking asking, HowFar stage) {
    return new Connection(asking, List.of("ssh"), List.of("git"), stage);
  }

  private <C extends TransportCommand<C, ?>> C set(C command, Path folder) {
    HelperCredentials helper =
        new HelperCredentials(git.isEmpty() ? List.of("false") : git, folder);
    return command
        .setTimeout(SECONDS)
        .setCredentialsProvider(new AskedCredentials(helper, asking))
        .setTransportConfigCallback(
            transport -> {
              if (transport instanceof SshTransport byShell) {
                byShell.setSshSessionFactory(new SshCommand(ssh));
              }
            });
  }

  /** Brings what the remote has into the repository; the workspace's files stay as they are. */
  void fetch(Repository repository, Remote remote, boolean whole) throws IOException {
    RepositoryLock lock = RepositoryLock.take(repository);
    try (lock;
        Git commands = new Git(repository)) {
      FetchCommand fetch =
          set(commands.fetch(), repository.getDirectory().toPath())
              .setRemote(remote.name())
              .setTagOpt(TagOpt.NO_TAGS)
              .setCheckFetchedObjects(true)
              .setRecurseSubmodules(FetchRecurseSubmodulesMode.NO)
              .setProgressMonitor(new HowFarMonitor(stage));
      if (whole) {
        fetch.setUnshallow(true);
      }
      for (TrackingRefUpdate update : fetch.call().getTrackingRefUpdates()) {
        RefTrouble.unlessDone(repository, update);
      }
    } catch (GitAPIException | JGitInternalException e) {
      throw trouble(remote.said(), e);
    }
    if (stage.isStopped()) {
      throw stopped();
    }
  }

  private HistoryTrouble trouble(String where, Exception failure) {
    return stage.isStopped() ? stopped() : RemoteTrouble.of(where, failure);
  }

  private static HistoryTrouble stopped() {
    return new HistoryTrouble("stopped", "nothing was changed; start it again when you like");
  }

  /** Sends the branch; what the remote made of it. */
  RemoteRefUpdate push(Repository repository, Remote remote) throws IOException {
    RepositoryLock lock = RepositoryLock.take(repository);
    try (lock) {
      RemoteFolder there = RemoteFolder.take(remote);
      try (there;
          Git commands = new Git(repository)) {
        Iterable<PushResult> results =
            set(commands.push(), repository.getDirectory().toPath())
                .setRemote(remote.name())
                .setRefSpecs(
                    new RefSpec(Constants.HEAD + ":" + Constants.R_HEADS + remote.branch()))
                .setAtomic(false)
                .setProgressMonitor(new HowFarMonitor(stage))
                .call();
        for (PushResult result : results) {
          for (RemoteRefUpdate update : result.getRemoteUpdates()) {
            return update;
          }
        }
        throw new HistoryTrouble(remote.said() + " gave no answer", "try again");
      }
    } catch (GitAPIException | JGitInternalException e) {
      throw trouble(remote.said(), e);
    }
  }

  /** Copies a repository into a new folder; nothing is left of it when that fails. */
  void copy(String address, Path folder) throws IOException {
    try (Git copied =
        set(Git.cloneRepository(), folder.getParent())
            .setURI(address)
            .setDirectory(folder.toFile())
            .setNoCheckout(true)
            .setProgressMonitor(new HowFarMonitor(stage))
            .call()) {
      copied.getRepository().getConfig().setBoolean("core", null, "symlinks", false);
      copied.getRepository().getConfig().save();
    } catch (GitAPIException | JGitInternalException e) {
      throw trouble(address, e);
    }
  }
}
