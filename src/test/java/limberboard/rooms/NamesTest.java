package limberboard.rooms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever looks for a class by its name finds one, in a package that has a page. */
class NamesTest {
  private static final String PAGE = "package-info";

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }

  @Test
  void noSimpleNameStandsForTwoClasses() throws IOException {
    Map<String, Path> known = new TreeMap<>();
    for (Path file : sources()) {
      if (!name(file).equals(PAGE)) {
        assertThat(known.put(name(file), file)).as("another %s", file).isNull();
      }
    }
    assertThat(known).hasSizeGreaterThan(500);
  }

  @Test
  void everyPackageHasAPage() throws IOException {
    for (Path file : sources()) {
      if (file.startsWith("src/main/java")) {
        assertThat(file.resolveSibling(PAGE + ".java")).exists();
      }
    }
  }
}
