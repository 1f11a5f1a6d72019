package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.file.WorkspaceFolders;

/** Runs commands in a folder on a day, and catches what they print. */
public record TerminalRun(Path folder, LocalDate today, Terminal.Window window) {
  /** On a machine without a display. */
  TerminalRun(Path folder, LocalDate today) {
    this(folder, today, new NoWindow());
  }

  /** On the demo's own pages and boats. */
  static TerminalRun ofDemo(LocalDate today) {
    return new TerminalRun(Path.of("").toAbsolutePath(), today);
  }

  /** A machine without a display. */
  public static class NoWindow implements Terminal.Window {
    @Override
    public boolean open(WorkspaceFolders folders) {
      return false;
    }

    @Override
    public boolean pictures(WorkspaceFolders folders, LocalDate today, PictureOrder order) {
      return false;
    }
  }

  /** What a command printed and returned. */
  record Ran(int code, String out, String err) {
    JsonNode json() throws IOException {
      return JsonMapper.builder().build().readTree(out);
    }

    /** What was printed, into the output and beside it. */
    String all() {
      return out + err;
    }

    /** The same, of a command that must have ended so. */
    Ran ended(int expected) {
      assertThat(code).as(err).isEqualTo(expected);
      return this;
    }
  }

  Ran run(String... words) {
    return typing("", words);
  }

  /** Runs a command that is answered by what is typed. */
  Ran typing(String typed, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandContext session =
        new CommandContext(
            new BufferedReader(new StringReader(typed)),
            new PrintWriter(out),
            new PrintWriter(err),
            folder,
            Optional.empty(),
            today);
    int code = new Terminal(session, window).run(words);
    return new Ran(code, out.toString(), err.toString());
  }
}
