package limberboard.sharing;

import static limberboard.sharing.SharedPair.PAGE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.Authenticator;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.history.GitRun;
import limberboard.history.HistoryTrouble;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Remotes by ssh and http on this machine, and what they refuse. */
@Timeout(value = 90, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class RemotesTest {
  private static final String SECRET = "open sesame";

  @TempDir Path folder;
  private SharedPair pair;

  /** A library that other tests compare with sets one for all, which asks in a window. */
  @BeforeEach
  void askNobodyBesides() {
    Authenticator.setDefault(null);
  }

  @BeforeEach
  void makePair() throws IOException {
    pair = new SharedPair(folder);
    pair.yard.change(PAGE, "Tie", "Bind");
    pair.yard.push();
  }

  private void remote(String address) {
    pair.owner.git().run("remote", "set-url", "origin", address).good();
  }

  private Connection by(Path ssh) {
    return new Connection(Asking.nobody(), List.of(ssh.toString()), List.of(), HowFar.silent());
  }

  private Path script(String text) throws IOException {
    Path script = Files.writeString(folder.resolve("ssh.sh"), "#!/bin/sh\n" + text + "\n");
    return Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  @Test
  void sshIsCalledAsTheMachineHasItAndAsksNothing() throws IOException {
    new GitRun(folder);
    remote("ssh://ada@yard.example:2222" + pair.remote);
    Path said = folder.resolve("said");
    Path ssh = script("echo \"$*\" > " + said + "; for last; do :; done; exec sh -c \"$last\"");
    assertThat(pair.owner.pull(by(ssh), false)).isInstanceOf(PullOutcome.Pulled.class);
    assertThat(pair.owner.read(PAGE)).contains("Bind");
    assertThat(Files.readString(said))
        .startsWith(
            "-o BatchMode=yes -o ConnectTimeout=30 -p 2222 -l ada -- yard.example git-upload-pack");
  }

  @Test
  void aKeyThatSshDoesNotTakeIsSaid() throws IOException {
    remote("ssh://ada@yard.example/x.git");
    Path ssh = script("echo 'ada@yard.example: Permission denied (publickey).' >&2; exit 255");
    assertThatThrownBy(() -> pair.owner.pull(by(ssh), false))
        .isInstanceOf(HistoryTrouble.class)
        .hasMessageContaining("does not let you in");
    remote("ssh://-oProxyCommand=touch%20x/x.git");
    assertThatThrownBy(() -> pair.owner.pull(by(ssh), false)).isInstanceOf(HistoryTrouble.class);
    pair.owner.isSound();
  }

  @Test
  void aChildThatSshLeavesBehindIsNotWaitedFor() throws IOException {
    remote("ssh://ada@yard.example/x.git");
    Path ssh =
        script(
            "sleep 600 > /dev/null &\necho $! > "
                + folder.resolve("child")
                + "\necho 'ada@yard.example: Permission denied (publickey).' >&2; exit 255");
    try {
      assertThatThrownBy(() -> pair.owner.pull(by(ssh), false))
          .isInstanceOf(HistoryTrouble.class)
          .hasMessageContaining("does not let you in");
      assertThat(child().isAlive()).as("the child that keeps the errors open").isTrue();
    } finally {
      child().destroy();
    }
    pair.owner.isSound();
  }

  private ProcessHandle child() throws IOException {
    return ProcessHandle.of(Long.parseLong(Files.readString(folder.resolve("child")).strip()))
        .orElseThrow();
  }

  @Test
  void aNameAndPasswordAreAskedForAndKeptNowhere() throws IOException {
    pair.yard.git().run("--git-dir", pair.remote.toString(), "update-server-info").good();
    HttpServer server = server();
    try {
      remote("http://127.0.0.1:" + server.getAddress().getPort() + "/remote.git");
      assertThatThrownBy(() -> pair.owner.pull())
          .isInstanceOf(HistoryTrouble.class)
          .hasMessageContaining("does not let you in");
      List<Boolean> asked = new ArrayList<>();
      Asking asking =
          (where, again) -> {
            asked.add(again);
            return Optional.of(new Asking.Answer("ada", (again ? SECRET : "wrong").toCharArray()));
          };
      Connection connection = new Connection(asking, List.of("ssh"), List.of(), HowFar.silent());
      assertThat(pair.owner.pull(connection, false)).isInstanceOf(PullOutcome.Pulled.class);
      assertThat(asked).containsExactly(false, true);
      assertThat(pair.owner.read(PAGE)).contains("Bind");
      try (Stream<Path> files = Files.walk(pair.owner.folders().root())) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
          assertThat(text).as(file.toString()).doesNotContain(SECRET);
        }
      }
    } finally {
      server.stop(0);
    }
  }

  /** Serves the remote's files to whoever knows the name and the password. */
  private HttpServer server() throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/remote.git/", this::answer);
    server.setExecutor(
        run -> {
          Thread thread = new Thread(run, "the remote");
          thread.setDaemon(true);
          thread.start();
        });
    server.start();
    return server;
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      String known =
          "Basic "
              + Base64.getEncoder()
                  .encodeToString(("ada:" + SECRET).getBytes(StandardCharsets.UTF_8));
      if (!known.equals(exchange.getRequestHeaders().getFirst("Authorization"))) {
        exchange.getResponseHeaders().set("WWW-Authenticate", "Basic realm=\"yard\"");
        exchange.sendResponseHeaders(401, -1);
        return;
      }
      Path file = folder.resolve(exchange.getRequestURI().getPath().substring(1));
      if (!Files.isRegularFile(file)) {
        exchange.sendResponseHeaders(404, -1);
        return;
      }
      byte[] bytes = Files.readAllBytes(file);
      exchange.sendResponseHeaders(200, bytes.length == 0 ? -1 : bytes.length);
      exchange.getResponseBody().write(bytes);
    }
  }

  @Test
  void gitsHelpersAreAskedFirstAndToldNothing() throws IOException {
    Path said = folder.resolve("said");
    Path git =
        script(
            "cat > "
                + said
                + "; echo \"$*\" >> "
                + said
                + "; printf 'username=ada\\npassword=x y\\n'");
    Optional<Asking.Answer> answer =
        new HelperCredentials(List.of(git.toString()), folder).of("https", "yard.example");
    assertThat(answer.orElseThrow().name()).isEqualTo("ada");
    assertThat(answer.get().secret()).isEqualTo("x y".toCharArray());
    assertThat(Files.readAllLines(said))
        .containsExactly("protocol=https", "host=yard.example", "", "credential fill");
    assertThat(new HelperCredentials(List.of("/nowhere/git"), folder).of("https", "a")).isEmpty();
    assertThat(new HelperCredentials(List.of(git.toString()), folder).of("https", "a\nb"))
        .isEmpty();
  }

  @Test
  void aShallowCopyThatHasTooLittleSaysHowToFetchTheRest() throws IOException {
    pair.yard.change(PAGE, "Bind", "Knot");
    pair.yard.push();
    Path shallow = folder.resolve("shallow");
    new GitRun(folder)
        .run("clone", "-q", "--depth", "1", "file://" + pair.remote, shallow.toString())
        .good();
    SharedPair.Copy copy = new SharedPair.Copy(new WorkspaceFolders(shallow), SharedPair.BOB);
    copy.change(PAGE, "Look", "Stare");
    pair.yard.change(PAGE, "Pull", "Draw");
    pair.yard.push();
    PullOutcome outcome = copy.pull();
    assertThat(outcome).isInstanceOf(PullOutcome.Pulled.class);
    assertThat(copy.read(PAGE)).contains("Stare", "Draw");
    copy.push();
    pair.yard.pull();
    assertThat(pair.yard.read(PAGE)).contains("Stare", "Draw");
    pair.yard.isSound();
  }
}
