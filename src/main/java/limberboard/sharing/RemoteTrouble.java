package limberboard.sharing;

import java.io.EOFException;
import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Optional;
import javax.net.ssl.SSLException;
import limberboard.history.HistoryTrouble;
import org.eclipse.jgit.errors.NoRemoteRepositoryException;

/** What goes wrong with a remote, in plain words with the way on. */
final class RemoteTrouble {
  private static final int DEEPEST = 20;

  private RemoteTrouble() {}

  /**
   * The trouble behind a failure.
   *
   * @param where the remote's address, without a password
   */
  static HistoryTrouble of(String where, Throwable failure) {
    StringBuilder all = new StringBuilder();
    Throwable at = failure;
    for (int i = 0; at != null && i < DEEPEST; i++, at = at.getCause()) {
      if (at instanceof HistoryTrouble known) {
        return known;
      }
      Optional<HistoryTrouble> known = byKind(where, at);
      if (known.isPresent()) {
        return known.get();
      }
      all.append(at.getMessage()).append('\n');
    }
    return bySaying(where, all.toString());
  }

  private static Optional<HistoryTrouble> byKind(String where, Throwable at) {
    if (at instanceof SSLException && !(at.getCause() instanceof EOFException)) {
      return Optional.of(
          new HistoryTrouble(
              where + " shows a certificate that this machine does not know",
              "look at the address, or ask whoever keeps it for its certificate and have that"
                  + " trusted on this machine; nothing was sent there and nothing was changed"));
    }
    if (at instanceof UnknownHostException
        || at instanceof ConnectException
        || at instanceof NoRouteToHostException
        || at instanceof SocketTimeoutException) {
      return Optional.of(
          new HistoryTrouble(
              where + " cannot be reached",
              "see whether you are online and the address is right, then try again; nothing was"
                  + " changed, and you can go on working"));
    }
    if (at instanceof SocketException || at instanceof EOFException) {
      return Optional.of(brokeOff(where));
    }
    boolean refused =
        String.valueOf(at.getMessage()).matches("(?is).*(permission denied \\(|host key).*");
    if (at instanceof NoRemoteRepositoryException && !refused) {
      return Optional.of(
          new HistoryTrouble(
              "there is no repository at " + where,
              "look at the address; for a folder, share push --with FOLDER --make makes one"));
    }
    return Optional.empty();
  }

  private static HistoryTrouble bySaying(String where, String said) {
    String small = said.toLowerCase(Locale.ROOT);
    if (small.contains("cancel") || small.contains("aborted")) {
      return new HistoryTrouble("stopped", "nothing was changed; start it again when you like");
    }
    if (small.contains("not authorized")
        || small.contains("authentication")
        || small.contains("auth fail")
        || small.contains("permission denied (")
        || small.contains("host key")) {
      return new HistoryTrouble(
          where + " does not let you in",
          "check the name and password or token, or for ssh your key and its agent (ssh HOST says"
              + " more); nothing was changed");
    }
    if (small.contains("not permitted") || small.contains("forbidden") || small.contains("403")) {
      return new HistoryTrouble(
          where + " does not let you do that",
          "ask whoever keeps it whether you may read and write there; what you recorded stays in"
              + " your copy");
    }
    if (small.contains("no space")
        || small.contains("disk quota")
        || small.contains("file too large")) {
      return new HistoryTrouble(
          "the disk is full, or takes no file so large",
          "make room and try again; nothing of yours was changed");
    }
    if (small.contains("remote hung up")
        || small.contains("unexpected end")
        || small.contains("cannot get ")
        || small.contains("short read")) {
      return brokeOff(where);
    }
    if (small.matches("(?s).*: 5[0-9][0-9] .*")) {
      return new HistoryTrouble(
          where + " is in trouble itself: " + first(said),
          "try again later, or ask whoever keeps it; nothing was changed");
    }
    if (small.contains("permission") || small.contains("read-only") || small.contains("access")) {
      return new HistoryTrouble(
          "a folder may not be written: " + first(said),
          "change its permissions, or ask whoever keeps it");
    }
    return new HistoryTrouble(
        where + " could not be shared with: " + first(said),
        "look at the address and try again; nothing was changed");
  }

  private static HistoryTrouble brokeOff(String where) {
    return new HistoryTrouble(
        "the connection to " + where + " broke off", "try again; nothing was changed");
  }

  private static String first(String said) {
    return said.lines()
        .filter(line -> !line.isBlank() && !line.equals("null"))
        .findFirst()
        .orElse("no reason was given");
  }
}
