package limberboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** Holds that every library the program carries comes with the text of its licence. */
class LicencesTest {
  private static final Path PAGE = Path.of("docs", "third-party.md");
  private static final Path OUR_COPIES = Path.of("src", "main", "licences");
  private static final Pattern ROW =
      Pattern.compile("\\| \\[([^\\]]+)\\]\\([^)]*\\) \\| ([^ ]+) \\| (.+) \\|");
  private static final Pattern TEXT =
      Pattern.compile("(META-INF/)?(LICENSE|LICENCE|COPYING|LGPL|AL2)[^/]*");

  private record Library(String name, String version, String licence) {}

  @Test
  void eachLibraryCarriesItsLicence() throws IOException {
    List<Library> libraries = libraries();
    assertThat(libraries).hasSizeGreaterThan(20);
    for (Library library : libraries) {
      assertThat(library.licence()).as(library.name()).isNotBlank();
      assertThat(inJar(library) || Files.isRegularFile(ourCopy(library.name())))
          .as("a licence text of %s, in its jar or in %s", library.name(), OUR_COPIES)
          .isTrue();
    }
  }

  @Test
  void noTextIsKeptForALibraryThatIsGone() throws IOException {
    List<String> names = libraries().stream().map(Library::name).toList();
    try (Stream<Path> copies = Files.list(OUR_COPIES)) {
      assertThat(copies.map(copy -> copy.getFileName().toString())).isSubsetOf(names);
    }
  }

  private static List<Library> libraries() throws IOException {
    return Files.readAllLines(PAGE).stream()
        .map(ROW::matcher)
        .filter(Matcher::matches)
        .map(row -> new Library(row.group(1), row.group(2), row.group(3)))
        .toList();
  }

  private static Path ourCopy(String name) {
    return OUR_COPIES.resolve(name).resolve("LICENSE");
  }

  private static boolean inJar(Library library) throws IOException {
    String jar = library.name() + "-" + library.version() + ".jar";
    String found =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> entry.endsWith(File.separator + jar))
            .findFirst()
            .orElseThrow(() -> new AssertionError(jar + " is not on the class path"));
    try (ZipFile zip = new ZipFile(found)) {
      return zip.stream().anyMatch(entry -> TEXT.matcher(entry.getName()).matches());
    }
  }
}
