package limberboard.fuzz;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import limberboard.cli.CommandContext;
import limberboard.cli.Terminal;
import limberboard.cli.TerminalRun;

/** Runs commands of the terminal in a folder, each on a thread of its own that is looked at. */
final class Watched {
  private static final LocalDate TODAY = LocalDate.of(2026, 9, 15);
  private static final int MOST_OUTPUT = 3_000_000;
  private static final Pattern TRACE =
      Pattern.compile(
          "\\n\\s+at [a-z][\\w.$/]+\\(|(?:[a-z]\\w*\\.){2,}[A-Z]\\w*(?:Exception|Error)");

  private static final List<Integer> CODES = List.of(0, 1, 64, 65, 66, 74);
  private static final int SHOWN = 12;

  private static final int SLOW = Integer.getInteger("fuzz.slow", 0);

  private final Path folder;
  private final Duration longest;
  private long slowest;

  /**
   * Runs commands in a folder.
   *
   * @param longest how long a command may take before it counts as hanging
   */
  Watched(Path folder, Duration longest) {
    this.folder = folder;
    this.longest = longest;
  }

  /**
   * What came of a command.
   *
   * @param wrong what must not be, if anything
   */
  record Ran(int code, String out, String err, Optional<String> wrong) {}

  /** Runs a command. */
  Ran run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    AtomicReference<Throwable> thrown = new AtomicReference<>();
    AtomicReference<Integer> code = new AtomicReference<>(-1);
    CountDownLatch done = new CountDownLatch(1);
    ByteArrayOutputStream past = new ByteArrayOutputStream();
    PrintStream own = System.err;
    System.setErr(new PrintStream(past, true, StandardCharsets.UTF_8));
    Thread thread =
        new Thread(
            () -> {
              try {
                code.set(terminal(out, err).run(words));
              } catch (Throwable e) {
                thrown.set(e);
              } finally {
                done.countDown();
              }
            },
            "command");
    thread.setDaemon(true);
    thread.start();
    long began = System.nanoTime();
    boolean ended = waited(done);
    System.setErr(own);
    long seconds = Duration.ofNanos(System.nanoTime() - began).toSeconds();
    slowest = Math.max(slowest, seconds);
    if (SLOW > 0 && seconds >= SLOW) {
      System.out.println("slow: " + String.join(" ", words) + " " + seconds + " s");
    }
    String command = String.join(" ", words);
    if (!ended) {
      String where =
          Arrays.stream(thread.getStackTrace())
              .limit(SHOWN)
              .map(frame -> "\n    at " + frame)
              .collect(Collectors.joining());
      return new Ran(-1, "", "", Optional.of(command + ": hangs" + where));
    }
    if (thrown.get() != null) {
      StringWriter trace = new StringWriter();
      thrown.get().printStackTrace(new PrintWriter(trace, true));
      String start = trace.toString().lines().limit(SHOWN).collect(Collectors.joining("\n    "));
      return new Ran(-1, "", "", Optional.of(command + ": throws " + start));
    }
    return new Ran(
        code.get(),
        out.toString(),
        err.toString(),
        wrong(code.get(), out.toString(), err.toString())
            .or(() -> printed(past.toString(StandardCharsets.UTF_8)))
            .map(wrong -> command + ": " + wrong));
  }

  /** The seconds that the slowest command took. */
  long slowest() {
    return slowest;
  }

  private boolean waited(CountDownLatch done) {
    try {
      return done.await(longest.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private Terminal terminal(StringWriter out, StringWriter err) {
    return new Terminal(
        new CommandContext(
            new BufferedReader(new StringReader("")),
            new PrintWriter(out),
            new PrintWriter(err, true),
            folder,
            Optional.empty(),
            TODAY),
        new TerminalRun.NoWindow());
  }

  /** What went past the program's own error output: a library that prints by itself. */
  private static Optional<String> printed(String past) {
    return past.isBlank()
        ? Optional.empty()
        : Optional.of("prints past the program: " + past.lines().limit(SHOWN).toList());
  }

  private static Optional<String> wrong(int code, String out, String err) {
    String both = out + "\n" + err;
    if (TRACE.matcher(both).find()) {
      return Optional.of("shows a trace:\n    " + around(both));
    }
    if (both.contains("was not foreseen")) {
      return Optional.of("met what was not foreseen:\n    " + around(both));
    }
    if (!CODES.contains(code)) {
      return Optional.of("ends with " + code + ": " + err.lines().limit(3).toList());
    }
    return both.length() > MOST_OUTPUT
        ? Optional.of("prints " + both.length() + " characters")
        : Optional.empty();
  }

  private static String around(String text) {
    return text.lines()
        .filter(
            line ->
                line.contains("Exception")
                    || line.contains("Error")
                    || line.contains("foreseen")
                    || line.strip().startsWith("at "))
        .limit(SHOWN)
        .map(line -> line.length() > 300 ? line.substring(0, 300) : line)
        .collect(Collectors.joining("\n    "));
  }
}
