package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.TestWorkspace;
import limberboard.library.file.Controls;
import limberboard.library.file.FailureLog;
import limberboard.library.file.LastNet;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What every command prints is safe for a terminal, plain in every locale, and never lost unsaid.
 */
class SafeOutputTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final List<List<String>> COMMANDS =
      List.of(
          List.of("boats"),
          List.of("due"),
          List.of("due", "--boat", "knot", "--coming"),
          List.of("list", "fitting-out", "--everything"),
          List.of("rigging", "--boat", "knot"),
          List.of("shopping", "--boat", "knot"),
          List.of("trace", "wet-cabin", "--boat", "knot", "--answer", "taste=salt"),
          List.of("tree", "wet-cabin", "--boat", "knot"),
          List.of("find", "wet"),
          List.of("read", "job", "--boat", "knot"),
          List.of("validate"),
          List.of("workings"),
          List.of("workings", "hole-inflow"));

  @TempDir Path folder;
  private final Locale usual = Locale.getDefault();
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    boat("Knot");
    workspace.write(
        "boats/knot/log.csv", "date,work,engine-hours,note\n2024-04-01,job,,\n2025-04-01,job,,\n");
    job("The job");
    workspace.write(
        "articles/symptoms/wet-cabin.md",
        """
        ---
        title: "Wet cabin\\e[31m"
        zones: [cabin]
        causes:
          - {id: seal, title: "The seal\\a leaks", weight: 3, mend: job}
          - {id: rain, title: Rain comes in, weight: 3, mend: job}
        checks:
          - id: taste
            ask: "Does it taste\\e]0;x of salt?"
            how: Taste it.
            minutes: 1
            answers: [salt, fresh-water]
            finds: {salt: {seal: always, rain: never}}
        ---
        """);
  }

  private void boat(String name) {
    workspace.write(
        "boats/knot/boat.yaml",
        "name: \"" + name + "\"\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
  }

  private void job(String title) {
    workspace.write(
        "articles/procedures/job.md",
        "---\ntitle: \""
            + title
            + "\"\nsystem: deck\nwork: service\nskill: owner\nminutes: 10\n"
            + "look-for: {good: \"=1+1\", bad: \"@SUM(A1)\"}\n"
            + "interval: {every: P1Y, phase: ashore-mast-up}\n---\n1. Do it.\n");
  }

  @AfterEach
  void usualLocale() {
    Locale.setDefault(usual);
  }

  private Ran run(List<String> words) {
    StringWriter out = new StringWriter();
    return run(new PrintWriter(out), out, (folders) -> false, words);
  }

  private interface Opening {
    boolean open(WorkspaceFolders folders);
  }

  private Ran run(PrintWriter to, StringWriter out, Opening opening, List<String> words) {
    StringWriter err = new StringWriter();
    CommandContext session =
        new CommandContext(
            new BufferedReader(new StringReader("wet\n")),
            to,
            new PrintWriter(err),
            folder,
            Optional.empty(),
            TODAY);
    Terminal.Window window =
        new TerminalRun.NoWindow() {
          @Override
          public boolean open(WorkspaceFolders folders) {
            return opening.open(folders);
          }
        };
    LastNet net = new LastNet(FailureLog.in(folder.resolve("state"), Clock.systemUTC()));
    int code = new Terminal(session, window, net).run(words.toArray(String[]::new));
    return new Ran(code, out.toString(), err.toString());
  }

  @Test
  void noCommandPassesControlCharactersOnToATerminal() {
    boat("Kn\\e[2Jot\\x9b");
    job("The\\e[1m job\\a\\u202e");
    boolean shown = false;
    for (List<String> command : COMMANDS) {
      Ran ran = run(command);
      assertThat(ran.code()).as(command + ran.err()).isIn(ExitCode.OK, ExitCode.PROBLEMS);
      assertThat((ran.out() + ran.err()).chars().filter(c -> Controls.is((char) c)))
          .as("control characters printed by " + command)
          .isEmpty();
      shown |= ran.out().contains("␛[");
    }
    assertThat(shown).as("made visible").isTrue();
  }

  @Test
  void jsonKeepsThemEscaped() throws IOException {
    boat("Kn\\e[2Jot\\x9b\\u202e");
    Ran ran = run(List.of("boats", "--json"));
    assertThat(ran.out().chars().filter(c -> Controls.is((char) c))).isEmpty();
    assertThat(JsonMapper.builder().build().readTree(ran.out()).at("/boats/0/name").asText())
        .isEqualTo("Kn\u001b[2Jot\u009b\u202e");
  }

  @Test
  void calendarsHaveNone() throws IOException {
    boat("Kn\\e[2Jot\\x9b");
    job("The\\a job");
    assertThat(run(List.of("due", "--boat", "knot", "--ics", "knot.ics")).code()).isZero();
    String text = Files.readString(folder.resolve("knot.ics"));
    assertThat(text).contains("Kn␛[2Jot").contains("The␇ job");
    assertThat(text.replace("\r\n", "").chars().filter(c -> Controls.is((char) c))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ar-EG", "fa-IR", "th-TH-u-nu-thai", "hi-IN-u-nu-deva", "tr-TR"})
  void numbersHavePlainDigitsInEveryLocale(String locale) throws IOException {
    Locale.setDefault(Locale.UK);
    List<String> expected = COMMANDS.stream().map(command -> run(command).out()).toList();
    Locale.setDefault(Locale.forLanguageTag(locale));
    assertThat(String.format("%d", 5)).as("the locale is in force").matches("[^5]|5");
    assertThat(COMMANDS.stream().map(command -> run(command).out()).toList()).isEqualTo(expected);
    assertThat(run(List.of("due", "--csv", "due.csv", "--boat", "knot", "--ics", "a.ics")).code())
        .isZero();
    assertThat(
            Files.readString(folder.resolve("due.csv")) + Files.readString(folder.resolve("a.ics")))
        .matches(text -> text.codePoints().allMatch(c -> !Character.isDigit(c) || c <= '9'));
  }

  @Test
  void cellsThatASpreadsheetWouldReckonAreTextInEveryTable() throws IOException {
    job("=HYPERLINK(1)");
    assertThat(run(List.of("due", "--csv", "due.csv")).code()).isZero();
    assertThat(run(List.of("list", "fitting-out", "--everything", "--csv", "list.csv")).code())
        .isZero();
    assertThat(Files.readString(folder.resolve("due.csv"))).contains(",'=HYPERLINK(1),");
    assertThat(Files.readString(folder.resolve("list.csv")))
        .contains(",'=HYPERLINK(1),")
        .contains(",'=1+1,'@SUM(A1),");
  }

  @Test
  void outputThatDoesNotArriveIsAFailure() {
    for (List<String> command :
        List.of(
            List.of("boats"),
            List.of("boats", "--json"),
            List.of("due", "--json"),
            List.of("done", "job", "--boat", "knot", "--json"),
            List.of("find", "-"),
            List.of("--help"))) {
      Ran ran = run(new PrintWriter(new Full()), new StringWriter(), folders -> false, command);
      assertThat(ran.code()).as(command.toString()).isEqualTo(ExitCode.IO);
      assertThat(ran.err().lines()).as(command.toString()).hasSize(1);
      assertThat(ran.err()).contains("not everything could be printed");
    }
  }

  /** A disk with no room left. */
  private static final class Full extends Writer {
    @Override
    public void write(char[] text, int from, int length) throws IOException {
      throw new IOException("No space left on device");
    }

    @Override
    public void flush() throws IOException {
      throw new IOException("No space left on device");
    }

    @Override
    public void close() {}
  }

  @Test
  void whatNobodyExpectedIsOneLineWithItsDetailsInAFile() throws IOException {
    for (Throwable failure :
        List.of(
            new IllegalStateException("unforeseen"),
            new OutOfMemoryError("Java heap space"),
            new StackOverflowError(),
            new NoClassDefFoundError("x"))) {
      StringWriter out = new StringWriter();
      Ran ran =
          run(
              new PrintWriter(out),
              out,
              folders -> {
                if (failure instanceof Error error) {
                  throw error;
                }
                throw (RuntimeException) failure;
              },
              List.of());
      assertThat(ran.code()).isEqualTo(ExitCode.UNEXPECTED);
      assertThat(ran.out()).isEmpty();
      assertThat(ran.err().lines()).hasSize(1);
      assertThat(ran.err())
          .startsWith("limberboard: limberboard did not work: ")
          .contains("the details are in " + folder.resolve("state"))
          .doesNotContain("\tat ");
    }
    assertThat(Files.readString(folder.resolve("state/failures.txt")))
        .contains("unforeseen")
        .contains("OutOfMemoryError")
        .contains("\tat limberboard.cli.SafeOutputTest");
  }

  @Test
  void filesThatCannotBeWrittenAreToldAlike() {
    for (List<String> command :
        List.of(
            List.of("read", "job", "--pdf"),
            List.of("due", "--boat", "knot", "--ics"),
            List.of("due", "--boat", "knot", "--svg"),
            List.of("due", "--csv"),
            List.of("tree", "wet-cabin", "--boat", "knot", "--svg"),
            List.of("list", "fitting-out", "--csv"),
            List.of("rigging", "--boat", "knot", "--csv"),
            List.of("shopping", "--boat", "knot", "--csv"))) {
      Path missing = folder.resolve("none/file");
      Ran ran = run(with(command, "none/file"));
      assertThat(ran.code()).as(command.toString()).isEqualTo(ExitCode.IO);
      assertThat(ran.err())
          .isEqualToIgnoringNewLines(
              "limberboard: "
                  + missing
                  + " could not be written: there is no folder "
                  + missing.getParent()
                  + "; make it first, or name another file");
      assertThat(run(with(command, "-")).err()).contains("/dev/stdout");
    }
    assertThat(folder.resolve("-")).doesNotExist();
    assertThat(folder.resolve("none")).doesNotExist();
  }

  private static List<String> with(List<String> command, String file) {
    return java.util.stream.Stream.concat(command.stream(), java.util.stream.Stream.of(file))
        .toList();
  }
}
