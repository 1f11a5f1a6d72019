package limberboard.sharing;

import java.io.IOException;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.history.HistoryTrouble;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.transport.URIish;

/**
 * The other copy that a workspace is shared with, as Git's settings name it.
 *
 * @param name its name in the settings
 * @param address where it is
 * @param branch the branch that is shared
 */
record Remote(String name, String address, String branch) {
  private static final String REMOTE = "remote";
  private static final String BRANCH = "branch";

  /**
   * The remote of the branch that is worked on.
   *
   * @param with an address to keep as the remote where there is none yet
   */
  static Remote of(Repository repository, Optional<String> with) throws IOException {
    String full = repository.getFullBranch();
    if (full == null || !full.startsWith(Constants.R_HEADS)) {
      throw new HistoryTrouble(
          "no branch is worked on here, but a single old version",
          "go back with git, as in: git switch main");
    }
    String branch = Repository.shortenRefName(full);
    StoredConfig config = repository.getConfig();
    String name = config.getString(BRANCH, branch, REMOTE);
    Set<String> known = config.getSubsections(REMOTE);
    if (name == null) {
      name = known.size() == 1 ? known.iterator().next() : Constants.DEFAULT_REMOTE_NAME;
    }
    if (with.isPresent()) {
      keep(repository, name, with.get());
    }
    String address = config.getString(REMOTE, name, "url");
    if (address == null) {
      throw new HistoryTrouble(
          "it is not known with what to share",
          "name it once: limberboard share pull --with ADDRESS, a folder, ssh or https address");
    }
    String merge = config.getString(BRANCH, branch, "merge");
    return new Remote(name, address, merge == null ? branch : Repository.shortenRefName(merge));
  }

  private static void keep(Repository repository, String name, String address) throws IOException {
    StoredConfig config = repository.getConfig();
    String known = config.getString(REMOTE, name, "url");
    if (known != null && !known.equals(address)) {
      throw new HistoryTrouble(
          "this workspace is shared with " + said(known) + " already",
          "leave --with out, or change that with git: git remote set-url " + name + " ADDRESS");
    }
    mustBeWithoutPassword(address);
    config.setString(REMOTE, name, "url", address);
    config.setStringList(
        REMOTE, name, "fetch", List.of("+refs/heads/*:refs/remotes/" + name + "/*"));
    config.save();
  }

  /** Refuses an address that would bring a password into a file. */
  static void mustBeWithoutPassword(String address) throws HistoryTrouble {
    try {
      if (new URIish(address).getPass() != null) {
        throw new HistoryTrouble(
            "the address holds a password, which would be kept in a file",
            "leave it out; you are asked for it each time");
      }
    } catch (URISyntaxException e) {
      throw new HistoryTrouble(
          "\"" + address + "\" is no address", "write a folder, or an ssh or https address");
    }
  }

  /** The address as it may be shown: without a password. */
  String said() {
    return said(address);
  }

  private static String said(String address) {
    try {
      return new URIish(address).setPass(null).toString();
    } catch (URISyntaxException e) {
      return "the remote";
    }
  }

  /** Where its branch was when it was last looked at. */
  String tracking() {
    return Constants.R_REMOTES + name + "/" + branch;
  }

  /** Where its branch was when this copy last had all of it. */
  String seen() {
    return "refs/limberboard/seen/" + name + "/" + branch;
  }
}
