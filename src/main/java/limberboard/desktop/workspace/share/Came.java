package limberboard.desktop.workspace.share;

import java.util.ArrayList;
import java.util.List;
import limberboard.sharing.PullOutcome;
import limberboard.sharing.Sending;
import limberboard.sharing.merge.Conflict;
import limberboard.words.CountWords;

/**
 * What came of a pull or a push, in words. Immutable.
 *
 * @param lines what happened, a sentence a line
 * @param files which files of the workspace changed
 * @param merged which of them both copies had changed
 * @param conflicts what is to be chosen
 */
public record Came(
    List<String> lines, List<String> files, List<String> merged, List<Conflict> conflicts) {
  /** Nothing yet. */
  static final Came NOTHING = new Came(List.of(), List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Came {
    lines = List.copyOf(lines);
    files = List.copyOf(files);
    merged = List.copyOf(merged);
    conflicts = List.copyOf(conflicts);
  }

  static Came of(Sending.Sent sent) {
    List<String> lines = first(sent.recordedFirst());
    lines.add(
        sent.versions() == 0
            ? "The other copy has all of it already."
            : "Sent: " + CountWords.of(sent.versions(), "version") + ".");
    return new Came(lines, List.of(), List.of(), List.of());
  }

  static Came of(PullOutcome outcome) {
    List<String> lines = first(outcome.recordedFirst());
    if (outcome instanceof PullOutcome.Pulled pulled) {
      lines.add(
          CountWords.of(pulled.versions(), "version")
              + " came; "
              + CountWords.of(pulled.files().size(), "file")
              + " changed here.");
      pulled.kept().forEach(file -> lines.add("Your own, left as it is: " + file + "."));
      unsent(pulled.unsent(), lines);
      return new Came(lines, pulled.files(), pulled.merged(), List.of());
    }
    if (outcome instanceof PullOutcome.Open open) {
      lines.add(
          "Both copies changed "
              + CountWords.of(open.conflicts().size(), "part")
              + " differently. No file was changed; choose what is to hold.");
      return new Came(lines, List.of(), List.of(), open.conflicts());
    }
    lines.add("There is nothing new.");
    unsent(((PullOutcome.UpToDate) outcome).unsent(), lines);
    return new Came(lines, List.of(), List.of(), List.of());
  }

  private static List<String> first(int recorded) {
    List<String> lines = new ArrayList<>();
    if (recorded > 0) {
      lines.add("Recorded first: " + CountWords.of(recorded, "file") + " of yours.");
    }
    return lines;
  }

  private static void unsent(int versions, List<String> lines) {
    if (versions > 0) {
      lines.add(CountWords.of(versions, "version") + " of yours not sent yet: push sends them.");
    }
  }
}
