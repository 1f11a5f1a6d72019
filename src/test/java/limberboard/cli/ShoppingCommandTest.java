package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.cli.TerminalRun.Ran;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code shopping}, as a person and as a program use it. */
class ShoppingCommandTest {
  @TempDir private Path folder;
  private String out = "";
  private String err = "";

  private int run(String... words) {
    Ran ran = TerminalRun.ofDemo(LocalDate.of(2026, 11, 25)).run(words);
    out = ran.out();
    err = ran.err();
    return ran.code();
  }

  private List<CSVRecord> csv(String... words) throws IOException {
    Path file = folder.resolve("list.csv");
    List<String> line = new java.util.ArrayList<>(List.of(words));
    line.addAll(List.of("--csv", file.toString()));
    assertThat(run(line.toArray(String[]::new))).as(err).isZero();
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(Files.readString(file))).getRecords();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"dunlin", "greenshank", "redshank", "sanderling", "turnstone", "whimbrel"})
  void totalsOfASeasonAreTheSumsOfTheirRows(String boat) throws IOException {
    List<CSVRecord> rows =
        csv("shopping", "--boat", boat, "--season", "2027", "--on", "2026-11-25");
    Map<String, BigDecimal> sums = new HashMap<>();
    int totals = 0;
    for (CSVRecord row : rows) {
      if (row.get("row").equals("use") && !row.get("amount").isEmpty()) {
        sums.merge(row.get("material"), new BigDecimal(row.get("amount")), BigDecimal::add);
      } else if (row.get("row").equals("total") && !row.get("amount").isEmpty()) {
        totals++;
        double total = Double.parseDouble(row.get("amount"));
        assertThat(total)
            .as(row.get("material"))
            .isCloseTo(sums.get(row.get("material")).doubleValue(), within(total * 1e-9));
        assertThat(
                Double.parseDouble(row.get("from-stock")) + Double.parseDouble(row.get("to-get")))
            .as(row.get("material"))
            .isCloseTo(total, within(total * 1e-9));
      }
    }
    assertThat(totals).isEqualTo(sums.size()).isGreaterThan(10);
  }

  @Test
  void jsonSaysTheSameAsTheTable() throws IOException {
    List<CSVRecord> rows = csv("shopping", "--boat", "dunlin", "--work", "renew-lashings");
    assertThat(run("shopping", "--boat", "dunlin", "--work", "renew-lashings", "--json")).isZero();
    JsonNode list = new ObjectMapper().readTree(out);
    JsonNode cord = list.path("lines").get(0);
    assertThat(cord.path("material").asText()).isEqualTo("hmpe-cord-1-5mm");
    assertThat(cord.path("needed").asDouble()).isEqualTo(4.4);
    assertThat(cord.path("uses").get(0).path("pieces").asInt()).isEqualTo(4);
    CSVRecord total =
        rows.stream().filter(row -> row.get("row").equals("total")).findFirst().orElseThrow();
    assertThat(total.get("amount")).isEqualTo("4.4");
    assertThat(total.get("note")).contains("remnant of 3.2 m: 2 × 1.1 m");
  }

  @Test
  void cautionsStandAtWhatIsBoughtAndAgainAtTheEndAndLicensedWorkIsNamed() {
    assertThat(run("shopping", "--boat", "dunlin", "--work", "replace-gas-hose,rebed-deck-fitting"))
        .isZero();
    String text = out;
    assertThat(text)
        .containsSubsequence(
            "Have ready",
            "Caution: Isocyanates",
            "The cautions of this work",
            "CAUTION: Isocyanates");
    assertThat(text).contains("for the licensed");
    assertThat(text).doesNotContain("Gas hose\n");
  }

  @Test
  void whatIsNotThereIsSaidSo() {
    assertThat(run("shopping", "--boat", "dunlin", "--work", "renew-lashing"))
        .isEqualTo(ExitCode.NOT_FOUND);
    assertThat(err).contains("did you mean \"renew-lashings\"?");
    assertThat(run("shopping", "--boat", "dunlin", "--work", "a", "--season", "2027"))
        .isEqualTo(ExitCode.USAGE);
    assertThat(run("shopping")).isEqualTo(ExitCode.USAGE);
    assertThat(run("shopping", "--boat", "dunlin", "--on", "2026-02-30")).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void ropesOfTheListAreShoppedForWithTheirCuts() throws IOException {
    List<CSVRecord> rows =
        csv("shopping", "--boat", "whimbrel", "--ropes", "main-halyard,jib-sheets,mooring-lines");
    assertThat(rows)
        .filteredOn(row -> row.get("row").equals("rope"))
        .hasSize(3)
        .extracting(row -> Double.parseDouble(row.get("amount")))
        .contains(23.0, 19.0, 48.0);
    assertThat(run("shopping", "--boat", "whimbrel", "--ropes", "jib-sheets", "--json")).isZero();
    assertThat(out)
        .contains("\"rope\":\"jib-sheets\"", "\"pieces\":2,\"pieceLength\":9.5")
        .contains("\"work\":[]");
  }

  @Test
  void aRopeThatIsOnNoListIsSaidWithTheNearest() {
    assertThat(run("shopping", "--boat", "whimbrel", "--ropes", "main-haliard"))
        .isEqualTo(ExitCode.NOT_FOUND);
    assertThat(err).contains("main-haliard", "did you mean \"main-halyard\"");
  }
}
