package limberboard.sharing;

import java.util.Arrays;
import java.util.Optional;
import org.eclipse.jgit.transport.CredentialItem;
import org.eclipse.jgit.transport.CredentialsProvider;
import org.eclipse.jgit.transport.URIish;

/** Names and passwords for remotes: from Git's helpers first, then from the person. */
final class AskedCredentials extends CredentialsProvider {
  private final HelperCredentials helper;
  private final Asking asking;
  private int times;

  AskedCredentials(HelperCredentials helper, Asking asking) {
    this.helper = helper;
    this.asking = asking;
  }

  @Override
  public boolean isInteractive() {
    return true;
  }

  @Override
  public boolean supports(CredentialItem... items) {
    return Arrays.stream(items).allMatch(AskedCredentials::isKnown);
  }

  private static boolean isKnown(CredentialItem item) {
    return item instanceof CredentialItem.Username
        || item instanceof CredentialItem.Password
        || item instanceof CredentialItem.InformationalMessage;
  }

  @Override
  public boolean get(URIish uri, CredentialItem... items) {
    if (!supports(items)) {
      return false;
    }
    String host = uri.getHost() + (uri.getPort() > 0 ? ":" + uri.getPort() : "");
    Optional<Asking.Answer> answer =
        times == 0 ? helper.of(uri.getScheme(), host) : Optional.empty();
    boolean again = times > (answer.isPresent() ? 1 : 0);
    times++;
    Optional<Asking.Answer> found = answer.or(() -> asking.ask(host, again));
    found.ifPresent(given -> Arrays.stream(items).forEach(item -> fill(item, given)));
    return found.isPresent();
  }

  private static void fill(CredentialItem item, Asking.Answer given) {
    if (item instanceof CredentialItem.Username name) {
      name.setValue(given.name());
    } else if (item instanceof CredentialItem.Password password) {
      password.setValueNoCopy(given.secret().clone());
    }
  }
}
