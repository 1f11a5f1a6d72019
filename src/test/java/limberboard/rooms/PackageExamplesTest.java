package limberboard.rooms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;

import java.awt.EventQueue;
import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The example on each package page compiles and runs, and what it asserts holds. An example is Java
 * in {@code <pre>{@code ...}</pre>} as it would stand in a method of another package, imports
 * first; it holds at least one {@code assert}. It runs in the repository's folder, where the
 * library and the demo boats lie, and writes nothing there; that of a room of the window runs on
 * the event thread, and needs no display.
 */
class PackageExamplesTest {
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Path WINDOW = SOURCES.resolve("limberboard/desktop");
  private static final Pattern EXAMPLE =
      Pattern.compile("<pre>\\{@code\\n(.*?)\\n \\* ?}</pre>", Pattern.DOTALL);

  @TempDir Path folder;

  static List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.endsWith("package-info.java")).sorted().toList();
    }
  }

  private static Optional<String> example(Path page) throws IOException {
    Matcher matcher = EXAMPLE.matcher(Files.readString(page));
    return matcher.find()
        ? Optional.of(matcher.group(1).replaceAll("(?m)^ \\* ?", ""))
        : Optional.empty();
  }

  private static String inAClass(String example) {
    StringBuilder imports = new StringBuilder();
    StringBuilder lines = new StringBuilder();
    example
        .lines()
        .forEach(line -> (line.startsWith("import ") ? imports : lines).append(line).append('\n'));
    return imports
        + "public class Example {\n  public static void run() throws Exception {\n"
        + lines
        + "  }\n}\n";
  }

  @ParameterizedTest
  @MethodSource("pages")
  void theExampleRuns(Path page) throws Exception {
    String example = example(page).orElseGet(() -> fail(page + " has no example"));
    assertThat(example).as("%s asserts something", page).contains("assert ");
    Path source = Files.writeString(folder.resolve("Example.java"), inAClass(example));
    assertThat(compiled(source)).as("what the compiler says of the example in %s", page).isEmpty();
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {folder.toUri().toURL()}, getClass().getClassLoader())) {
      loader.setDefaultAssertionStatus(true);
      Method run = loader.loadClass("Example").getMethod("run");
      FutureTask<Optional<Throwable>> running = new FutureTask<>(() -> failure(run));
      if (page.startsWith(WINDOW)) {
        EventQueue.invokeAndWait(running);
      } else {
        running.run();
      }
      Optional<Throwable> failure = running.get();
      if (failure.isPresent()) {
        fail(page + ", at " + line(failure.get(), source) + ": " + failure.get(), failure.get());
      }
    }
  }

  /** What the compiler has to say; nothing when all is well. */
  private String compiled(Path source) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter said = new StringWriter();
    String classes = System.getProperty("java.class.path");
    List<String> options =
        List.of("-proc:none", "-Xlint:-path", "-cp", classes, "-d", folder.toString());
    try (var files = compiler.getStandardFileManager(null, null, null)) {
      var units = files.getJavaFileObjects(new File[] {source.toFile()});
      compiler.getTask(said, files, null, options, null, units).call();
    }
    return said.toString();
  }

  private static Optional<Throwable> failure(Method example) throws IllegalAccessException {
    try {
      example.invoke(null);
      return Optional.empty();
    } catch (InvocationTargetException e) {
      return Optional.of(e.getCause());
    }
  }

  /** The line of the example at which it failed. */
  private static String line(Throwable failure, Path source) throws IOException {
    List<String> lines = Files.readAllLines(source);
    return Arrays.stream(failure.getStackTrace())
        .filter(frame -> frame.getClassName().equals("Example"))
        .findFirst()
        .map(frame -> "“" + lines.get(frame.getLineNumber() - 1).strip() + "”")
        .orElse("no line of it");
  }
}
