package limberboard.sharing;

import static limberboard.sharing.SharedPair.PAGE;
import static limberboard.sharing.SharedPair.TEXT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.net.Authenticator;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import limberboard.history.HistoryTrouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a remote by https can do: a certificate that nobody knows, refusing, having nothing,
 * breaking off. Each is said with the way on; what was written here stays, and the pull works
 * later.
 */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SecureRemotesTest {
  @TempDir Path folder;
  private SharedPair pair;

  @BeforeEach
  void makePair() throws IOException {
    Authenticator.setDefault(null);
    pair = new SharedPair(folder);
    pair.yard.change(PAGE, "Tie", "Bind");
    pair.yard.push();
    pair.yard.git().run("--git-dir", pair.remote.toString(), "update-server-info").good();
    pair.owner.write("articles/topics/mine.md", "---\ntitle: Mine\n---\n");
  }

  @AfterEach
  void aPullFromTheFolderWorksAfterwards() throws IOException {
    assertThat(pair.owner.read(PAGE)).isEqualTo(TEXT);
    assertThat(pair.owner.read("articles/topics/mine.md")).contains("Mine");
    pair.owner.isSound();
    remote(pair.remote.toString());
    assertThat(pair.owner.pull()).isInstanceOf(PullOutcome.Pulled.class);
    assertThat(pair.owner.read(PAGE)).contains("Bind");
  }

  private void remote(String address) {
    pair.owner.git().run("remote", "set-url", "origin", address).good();
  }

  private HistoryTrouble trouble(Connection connection) {
    HistoryTrouble trouble =
        catchThrowableOfType(HistoryTrouble.class, () -> pair.owner.pull(connection, false));
    assertThat(trouble).isNotNull();
    assertThat(trouble.right()).isNotBlank();
    return trouble;
  }

  private HistoryTrouble trouble() {
    return trouble(SharedPair.connection(HowFar.silent()));
  }

  private HistoryTrouble by(HttpHandler handler) throws Exception {
    try (SecureServer server = new SecureServer(folder, handler)) {
      remote(server.address());
      pair.owner.git().run("config", "http.sslVerify", "false").good();
      return trouble();
    }
  }

  @Test
  void aCertificateThatNobodyKnowsIsRefusedAndNothingIsAsked() throws Exception {
    AtomicInteger asked = new AtomicInteger();
    AtomicInteger reached = new AtomicInteger();
    Connection connection =
        new Connection(
            (where, again) -> {
              asked.incrementAndGet();
              return Optional.empty();
            },
            List.of("ssh"),
            List.of(),
            HowFar.silent());
    try (SecureServer server = new SecureServer(folder, exchange -> reached(reached, exchange))) {
      remote(server.address());
      String settings = pair.owner.read(".git/config");
      HistoryTrouble trouble = trouble(connection);
      assertThat(trouble.wrong()).contains("certificate").contains(server.address());
      assertThat(trouble.right()).contains("whoever keeps it").contains("nothing was");
      assertThat(asked).hasValue(0);
      assertThat(reached).hasValue(0);
      assertThat(pair.owner.read(".git/config")).isEqualTo(settings);
    }
  }

  private static void reached(AtomicInteger count, HttpExchange exchange) throws IOException {
    count.incrementAndGet();
    SecureServer.answer(exchange, 404);
  }

  @Test
  void whoIsNotLetInIsToldSo() throws Exception {
    assertThat(by(exchange -> SecureServer.answer(exchange, 401)).wrong())
        .contains("does not let you in");
    assertThat(by(exchange -> SecureServer.answer(exchange, 403)).wrong())
        .contains("does not let you");
  }

  @Test
  void whereThereIsNothingThatIsSaid() throws Exception {
    assertThat(by(exchange -> SecureServer.answer(exchange, 404)).wrong())
        .contains("there is no repository at");
  }

  @Test
  void aServerThatIsInTroubleIsTriedAgainLater() throws Exception {
    HistoryTrouble trouble = by(exchange -> SecureServer.answer(exchange, 503));
    assertThat(trouble.wrong()).contains("in trouble itself");
    assertThat(trouble.right()).contains("try again");
  }

  @Test
  void whatBreaksOffInTheMiddleIsSaid() throws Exception {
    HistoryTrouble trouble = by(this::halfOf);
    assertThat(trouble.wrong()).contains("broke off");
    assertThat(trouble.right()).contains("try again");
  }

  /** Serves the remote's files, the larger ones half. */
  private void halfOf(HttpExchange exchange) throws IOException {
    Path file = folder.resolve(exchange.getRequestURI().getPath().substring(1));
    if (!Files.isRegularFile(file)) {
      SecureServer.answer(exchange, 404);
      return;
    }
    byte[] bytes = Files.readAllBytes(file);
    boolean object = file.startsWith(pair.remote.resolve("objects"));
    exchange.sendResponseHeaders(200, bytes.length == 0 ? -1 : bytes.length);
    exchange.getResponseBody().write(bytes, 0, object ? bytes.length / 2 : bytes.length);
    exchange.getResponseBody().flush();
    if (!object) {
      exchange.close();
      return;
    }
    throw new IOException("the line is cut");
  }

  @Test
  void aConnectionThatIsResetIsSaid() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      Thread cutting = new Thread(() -> reset(server), "a remote that hangs up");
      cutting.setDaemon(true);
      cutting.start();
      remote("https://127.0.0.1:" + server.getLocalPort() + "/remote.git");
      HistoryTrouble trouble = trouble();
      assertThat(trouble.wrong()).contains("broke off");
      assertThat(trouble.right()).contains("try again");
    }
  }

  private static void reset(ServerSocket server) {
    try {
      while (true) {
        try (Socket socket = server.accept()) {
          socket.setSoLinger(true, 0);
          socket.getInputStream().read();
        }
      }
    } catch (IOException e) {
      // the test is over
    }
  }

  @Test
  void aServerThatTalksOtherwiseIsNoTrap() throws Exception {
    HistoryTrouble trouble =
        by(
            exchange -> {
              byte[] page = "<html>Log in</html>".getBytes();
              exchange.getResponseHeaders().set("Content-Type", "text/html");
              exchange.sendResponseHeaders(200, page.length);
              exchange.getResponseBody().write(page);
              exchange.close();
            });
    assertThat(trouble.right()).contains("nothing was changed");
  }
}
