package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import limberboard.cli.TerminalRun.Ran;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code plan}, as a person and as a program use it. */
class PlanCommandTest {
  @TempDir private Path folder;

  private static Ran run(String... words) {
    List<String> line = new ArrayList<>(List.of("plan", "--boat", "whimbrel"));
    line.addAll(List.of(words));
    return TerminalRun.ofDemo(LocalDate.of(2026, 11, 28)).run(line.toArray(String[]::new));
  }

  private static List<CSVRecord> rows(Path file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(Files.readString(file))).getRecords();
  }

  @Test
  void saysWhatToDoOnWhichDayHowGoodItIsAndWhatStaysUndone() {
    Ran ran =
        run("--until", "2027-04-15", "--days", "2027-03-20=6,2027-03-21=4").ended(ExitCode.OK);
    String flat = ran.out().replaceAll("[\\s\u00a0]+", " ");
    assertThat(flat)
        .contains("Plan for Whimbrel until 15 Apr 2027")
        .contains("Saturday, 20 Mar 2027")
        .contains("Sunday, 21 Mar 2027")
        .contains("of the 10 h there are, for a practised person")
        .containsPattern("No choice takes more danger out|at most \\d+ % more")
        .contains("What stays undone");
    assertThat(ran.err()).isEmpty();
    int purpose = flat.indexOf("It takes out");
    assertThat(purpose).isPositive().isLessThan(flat.indexOf("Caution"));
  }

  @Test
  void jsonCsvCalendarAndShoppingAreOfTheSameWork() throws IOException, ParserException {
    Path csv = folder.resolve("plan.csv");
    Path ics = folder.resolve("plan.ics");
    Path shopping = folder.resolve("shopping.csv");
    Path pdf = folder.resolve("shopping.pdf");
    List<String> words = List.of("--hours", "16", "--until", "15.4.2027", "--json");
    List<String> all = new ArrayList<>(words);
    all.addAll(List.of("--csv", csv.toString(), "--ics", ics.toString()));
    all.addAll(List.of("--shopping", shopping.toString()));
    JsonNode json = run(all.toArray(String[]::new)).ended(ExitCode.OK).json();
    Set<String> lines = new TreeSet<>();
    Set<String> done = new TreeSet<>();
    int days = 0;
    for (JsonNode day : json.get("days")) {
      days += day.get("lines").isEmpty() ? 0 : 1;
      assertThat(day.get("minutes").asInt()).isLessThanOrEqualTo(day.get("freeMinutes").asInt());
      for (JsonNode line : day.get("lines")) {
        lines.add(line.get("work").get("page").asText());
        line.get("work").get("pages").forEach(page -> done.add(page.asText()));
      }
    }
    assertThat(done).isNotEmpty();
    assertThat(
            rows(csv).stream().filter(row -> !row.get("day").isEmpty()).map(row -> row.get("page")))
        .containsExactlyInAnyOrderElementsOf(lines);
    assertThat(rows(csv).stream().filter(row -> row.get("day").isEmpty()).count())
        .isEqualTo(json.get("undone").size());
    Calendar calendar = new CalendarBuilder().build(new StringReader(Files.readString(ics)));
    assertThat(calendar.validate().hasErrors()).isFalse();
    assertThat(calendar.getComponents(Component.VEVENT)).hasSize(days);
    Set<String> bought = new TreeSet<>();
    rows(shopping).stream()
        .filter(row -> row.get("row").equals("use"))
        .forEach(row -> bought.add(row.get("work")));
    assertThat(bought).isNotEmpty();
    assertThat(done).containsAll(bought);
    run("--hours", "16", "--until", "15.4.2027", "--shopping", pdf.toString()).ended(ExitCode.OK);
    assertThat(Files.readAllBytes(pdf)).startsWith("%PDF".getBytes());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--hours 0 --until 2027-04-15 | greater than 0",
        "--hours -4 --until 2027-04-15 | greater than 0",
        "--hours many --until 2027-04-15 | greater than 0",
        "--hours 4 --until 2026-11-01 | is past",
        "--hours 4 --until 2027-02-30 | no day 30",
        "--until 2027-04-15 | how many hours",
        "--hours 4 --until 2027-04-15 --days 2027-02-30 | no day 30",
        "--hours 4 --until 2027-04-15 --days 2027-05-01 | is after 15 Apr 2027",
        "--hours 4 | --until"
      })
  void saysWhatIsWrong(String words, String why) {
    Ran ran = run(words.strip().split(" ")).ended(ExitCode.USAGE);
    assertThat(ran.err().replace('\u00a0', ' ')).contains(why).doesNotContain("Exception");
  }

  @Test
  void daysThatCannotBeTakenAreSaidAndTheRestWorks() {
    Ran ran =
        run(
                "--until",
                "2027-04-15",
                "--days",
                "2027-02-30=5,2027-03-20=4,2027-03-20=6,2027-05-01=6,2027-03-21=0")
            .ended(ExitCode.OK);
    assertThat(ran.err()).contains("no day 30").contains("named twice").contains("is after");
    assertThat(ran.err()).contains("“0” are no hours");
    assertThat(ran.out().replaceAll("\\s+", " ")).contains("of the 4 h there are");
  }

  @Test
  void anUnknownBoatIsSaid() {
    Ran ran =
        TerminalRun.ofDemo(LocalDate.of(2026, 11, 28))
            .run("plan", "--boat", "godwit", "--hours", "4", "--until", "2027-04-15");
    assertThat(ran.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(ran.err()).contains("godwit");
  }
}
