package limberboard.sharing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * What Git's own credential helpers know, asked through the git command where it is installed. Only
 * asked, never told: nothing is kept that was not kept before.
 *
 * @param command how git is called, {@code git} as a rule
 * @param folder where it is called
 */
record HelperCredentials(List<String> command, Path folder) {
  private static final int SECONDS = 20;

  /** A name and password for a remote; empty when no helper knows any. */
  Optional<Asking.Answer> of(String protocol, String host) {
    if (host.isBlank() || host.chars().anyMatch(c -> c <= ' ')) {
      return Optional.empty();
    }
    try {
      List<String> words = new java.util.ArrayList<>(command);
      words.addAll(List.of("credential", "fill"));
      ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile());
      builder.redirectError(ProcessBuilder.Redirect.DISCARD);
      builder.environment().put("GIT_TERMINAL_PROMPT", "0");
      builder.environment().put("GIT_ASKPASS", "");
      builder.environment().put("SSH_ASKPASS", "");
      builder.environment().put("GCM_INTERACTIVE", "never");
      Process process = builder.start();
      try {
        process
            .getOutputStream()
            .write(
                ("protocol=" + protocol + "\nhost=" + host + "\n\n")
                    .getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().close();
        String said = said(process).get(SECONDS, TimeUnit.SECONDS);
        return process.waitFor(SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0
            ? answer(said)
            : Optional.empty();
      } finally {
        process.destroyForcibly();
      }
    } catch (IOException | ExecutionException | TimeoutException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** What a helper says, read aside: one that asks in a window of its own may never end. */
  private static CompletableFuture<String> said(Process process) {
    CompletableFuture<String> said = new CompletableFuture<>();
    Thread thread =
        new Thread(
            () -> {
              try {
                byte[] all = process.getInputStream().readAllBytes();
                said.complete(new String(all, StandardCharsets.UTF_8));
              } catch (IOException e) {
                said.completeExceptionally(e);
              }
            },
            "a credential helper");
    thread.setDaemon(true);
    thread.start();
    return said;
  }

  private static Optional<Asking.Answer> answer(String said) {
    Map<String, String> values = new HashMap<>();
    said.lines()
        .filter(line -> line.contains("="))
        .forEach(
            line ->
                values.put(
                    line.substring(0, line.indexOf('=')), line.substring(line.indexOf('=') + 1)));
    return values.containsKey("username") && values.containsKey("password")
        ? Optional.of(
            new Asking.Answer(values.get("username"), values.get("password").toCharArray()))
        : Optional.empty();
  }
}
