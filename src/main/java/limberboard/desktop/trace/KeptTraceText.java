package limberboard.desktop.trace;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.trace.CautionsRead;
import limberboard.trace.NextStep;
import limberboard.trace.TrailStep;

/** Kept traces as text: one {@code key=value} a line, escaped as {@link Properties} does it. */
final class KeptTraceText {
  private static final String VERSION = "1";
  private static final int MOST_STEPS = 10_000;

  private KeptTraceText() {}

  static String write(KeptTrace trace) {
    Properties lines = new Properties();
    lines.setProperty("kept-trace", VERSION);
    lines.setProperty("boat", trace.boat());
    lines.setProperty("symptom", trace.symptom());
    lines.setProperty("started", trace.started().toString());
    lines.setProperty("cautions-read", Boolean.toString(trace.cautionsRead()));
    trace.read().ifPresent(read -> put(lines, read));
    trace
        .picked()
        .ifPresent(
            picked -> {
              lines.setProperty("picked.kind", picked.kind());
              lines.setProperty("picked.id", picked.id());
            });
    for (int i = 0; i < trace.steps().size(); i++) {
      put(lines, "step." + (i + 1), trace.steps().get(i));
    }
    return text(lines);
  }

  /** Each in a place of its own by its words, so that the same ones are written the same. */
  private static void put(Properties lines, Set<CautionsRead.Read> read) {
    List<CautionsRead.Read> sorted =
        read.stream()
            .sorted(
                Comparator.comparing(CautionsRead.Read::caution)
                    .thenComparing(CautionsRead.Read::rule))
            .toList();
    lines.setProperty("read", Integer.toString(sorted.size()));
    for (int i = 0; i < sorted.size(); i++) {
      lines.setProperty("read." + (i + 1) + ".caution", sorted.get(i).caution());
      lines.setProperty("read." + (i + 1) + ".rule", sorted.get(i).rule());
    }
  }

  private static void put(Properties lines, String key, TrailStep step) {
    lines.setProperty(key + ".id", step.id());
    if (step instanceof TrailStep.Answered answered) {
      lines.setProperty(key + ".answer", answered.answer());
    } else if (step instanceof TrailStep.MendFailed) {
      lines.setProperty(key + ".mend", "did-not-help");
    } else if (step instanceof TrailStep.MadeSafe) {
      lines.setProperty(key + ".safe", "made");
    }
  }

  /** The lines in order of their keys, without the date that the platform's own writing adds. */
  private static String text(Properties lines) {
    StringWriter out = new StringWriter();
    try {
      lines.store(out, null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString()
        .lines()
        .filter(line -> !line.startsWith("#"))
        .sorted()
        .collect(Collectors.joining("\n", "", "\n"));
  }

  /**
   * Reads a kept trace.
   *
   * @throws IOException when it is no kept trace, with what is wrong in words
   */
  static KeptTrace read(String text) throws IOException {
    Properties lines = new Properties();
    try {
      lines.load(new StringReader(text));
    } catch (IllegalArgumentException e) {
      throw new IOException("a character in it is not written as it should be", e);
    }
    if (!VERSION.equals(lines.getProperty("kept-trace"))) {
      throw new IOException("it is not written the way this version of the program writes them");
    }
    return new KeptTrace(
        required(lines, "boat"),
        required(lines, "symptom"),
        day(required(lines, "started")),
        "true".equals(lines.getProperty("cautions-read")),
        cautions(lines),
        steps(lines),
        Optional.ofNullable(lines.getProperty("picked.id"))
            .map(id -> new NextStep.Which(lines.getProperty("picked.kind", ""), id)));
  }

  private static Optional<Set<CautionsRead.Read>> cautions(Properties lines) {
    if (lines.getProperty("read") == null) {
      return Optional.empty();
    }
    Set<CautionsRead.Read> read = new HashSet<>();
    for (int i = 1; i <= MOST_STEPS; i++) {
      String id = lines.getProperty("read." + i + ".caution");
      if (id == null) {
        break;
      }
      read.add(new CautionsRead.Read(id, lines.getProperty("read." + i + ".rule", "")));
    }
    return Optional.of(read);
  }

  private static List<TrailStep> steps(Properties lines) {
    List<TrailStep> steps = new ArrayList<>();
    for (int i = 1; i <= MOST_STEPS; i++) {
      String key = "step." + i;
      String id = lines.getProperty(key + ".id");
      if (id == null) {
        break;
      }
      String answer = lines.getProperty(key + ".answer");
      if (answer != null) {
        steps.add(new TrailStep.Answered(id, answer));
      } else if (lines.getProperty(key + ".mend") != null) {
        steps.add(new TrailStep.MendFailed(id));
      } else if (lines.getProperty(key + ".safe") != null) {
        steps.add(new TrailStep.MadeSafe(id));
      } else {
        steps.add(new TrailStep.CouldNotTell(id));
      }
    }
    return steps;
  }

  private static String required(Properties lines, String key) throws IOException {
    String value = lines.getProperty(key, "");
    if (value.isEmpty()) {
      throw new IOException("its line \"" + key + "\" is missing");
    }
    return value;
  }

  private static LocalDate day(String text) throws IOException {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new IOException("its day \"" + text + "\" cannot be read", e);
    }
  }
}
