package limberboard.sharing;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/** An https server on this machine, with a certificate that it has made itself. */
final class SecureServer implements AutoCloseable {
  private static final char[] SECRET = "changeit".toCharArray();

  private final HttpsServer server;

  SecureServer(Path folder, HttpHandler handler) throws Exception {
    server = HttpsServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setHttpsConfigurator(new HttpsConfigurator(context(folder)));
    server.createContext("/", handler);
    server.setExecutor(
        run -> {
          Thread thread = new Thread(run, "the secure remote");
          thread.setDaemon(true);
          thread.start();
        });
    server.start();
  }

  private static SSLContext context(Path folder) throws Exception {
    Path store = folder.resolve("self-made.p12");
    Files.deleteIfExists(store);
    Process made =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-keystore",
                store.toString(),
                "-storetype",
                "PKCS12",
                "-storepass",
                new String(SECRET),
                "-alias",
                "yard",
                "-keyalg",
                "EC",
                "-dname",
                "CN=127.0.0.1",
                "-ext",
                "SAN=IP:127.0.0.1",
                "-validity",
                "2")
            .redirectErrorStream(true)
            .start();
    String said = new String(made.getInputStream().readAllBytes());
    if (made.waitFor() != 0) {
      throw new GeneralSecurityException(said);
    }
    KeyStore keys = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(store)) {
      keys.load(in, SECRET);
    }
    KeyManagerFactory managers =
        KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    managers.init(keys, SECRET);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(managers.getKeyManagers(), null, null);
    return context;
  }

  /** The address of a repository there. */
  String address() {
    return "https://127.0.0.1:" + server.getAddress().getPort() + "/remote.git";
  }

  /** Answers with a status and nothing else. */
  static void answer(HttpExchange exchange, int status) throws IOException {
    try (exchange) {
      if (status == 401) {
        exchange.getResponseHeaders().set("WWW-Authenticate", "Basic realm=\"yard\"");
      }
      exchange.sendResponseHeaders(status, -1);
    }
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
