package limberboard.rooms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The words of {@code docs/glossary.md} are those of the code and of what people read. */
class GlossaryTest {
  private static final Path GLOSSARY = Path.of("docs/glossary.md");
  private static final Pattern TEXT = Pattern.compile("\"(?:[^\"\\\\\\n]++|\\\\.)*+\"");
  private static final Pattern NAME = Pattern.compile("`(\\w+)`");

  private static List<String[]> rows;
  private static String code;

  @BeforeAll
  static void read() throws IOException {
    rows =
        Files.readAllLines(GLOSSARY).stream()
            .filter(line -> line.startsWith("| ") && !line.startsWith("| ---"))
            .map(line -> line.substring(1, line.length() - 1).split("\\|"))
            .filter(cells -> !cells[0].strip().equals("word"))
            .toList();
    StringBuilder all = new StringBuilder();
    for (Path file : files(Path.of("src/main/java"), ".java")) {
      all.append(Files.readString(file));
    }
    code = all.toString();
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(ending)).toList();
    }
  }

  @Test
  void theClassesItNamesAreThere() {
    List<String> absent = new ArrayList<>();
    for (String[] cells : rows) {
      List<String> names = NAME.matcher(cells[2]).results().map(found -> found.group(1)).toList();
      assertThat(names).as("classes for %s", cells[0].strip()).isNotEmpty();
      for (String name : names) {
        if (!Pattern.compile("(class|record|interface|enum) " + name + "\\b")
            .matcher(code)
            .find()) {
          absent.add(name);
        }
      }
    }
    assertThat(rows).hasSizeGreaterThan(40);
    assertThat(absent).isEmpty();
  }

  @Test
  void whatItNeverSaysIsNeverSaid() throws IOException {
    List<String> never =
        rows.stream().flatMap(cells -> Stream.of(cells[3].split(","))).map(String::strip).toList();
    List<String> texts = new ArrayList<>(TEXT.matcher(code).results().map(r -> r.group()).toList());
    for (Path guide : files(Path.of("docs"), ".md")) {
      if (!guide.equals(GLOSSARY) && !guide.toString().contains("decisions")) {
        texts.addAll(Files.readAllLines(guide));
      }
    }
    List<String> said =
        never.stream()
            .filter(word -> !word.isEmpty())
            .flatMap(
                word ->
                    texts.stream()
                        .filter(text -> text.toLowerCase(Locale.ROOT).contains(word))
                        .map(text -> word + ": " + text))
            .toList();
    assertThat(never).contains("way there");
    assertThat(said).isEmpty();
  }
}
