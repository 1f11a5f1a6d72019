package limberboard.sharing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.errors.TransportException;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.RemoteSession;
import org.eclipse.jgit.transport.SshSessionFactory;
import org.eclipse.jgit.transport.URIish;
import org.eclipse.jgit.util.FS;

/**
 * Reaches remotes by the machine's own {@code ssh}, so that its agent, keys and known hosts hold.
 * It never asks: what it does not know it refuses.
 */
final class SshCommand extends SshSessionFactory {
  private final List<String> command;

  /**
   * Sessions by a command.
   *
   * @param command how ssh is called, {@code ssh} as a rule
   */
  SshCommand(List<String> command) {
    this.command = List.copyOf(command);
  }

  @Override
  public String getType() {
    return "ssh";
  }

  @Override
  public RemoteSession getSession(URIish uri, CredentialsProvider provider, FS files, int timeout)
      throws TransportException {
    List<String> words = new ArrayList<>(command);
    words.addAll(List.of("-o", "BatchMode=yes", "-o", "ConnectTimeout=30"));
    if (uri.getPort() > 0) {
      words.addAll(List.of("-p", Integer.toString(uri.getPort())));
    }
    if (uri.getUser() != null) {
      words.addAll(List.of("-l", uri.getUser()));
    }
    if (uri.getHost() == null || uri.getHost().startsWith("-")) {
      throw new TransportException(uri, "is no host");
    }
    words.add("--");
    words.add(uri.getHost());
    return new Session(words);
  }

  @Override
  public void releaseSession(RemoteSession session) {
    session.disconnect();
  }

  private record Session(List<String> words) implements RemoteSession {
    @Override
    public Process exec(String asked, int timeout) throws IOException {
      List<String> all = new ArrayList<>(words);
      all.add(asked);
      return new EndedProcess(new ProcessBuilder(all).start());
    }

    @Override
    public void disconnect() {
      // each command has a session of its own, which ends with it
    }
  }
}
