package limberboard.cli;

import java.util.ArrayList;
import java.util.List;
import limberboard.sharing.PullOutcome;
import limberboard.sharing.merge.Conflict;
import limberboard.words.CountWords;

/**
 * What {@code share pull} prints.
 *
 * @param outcome {@code up-to-date}, {@code pulled} or {@code open}
 * @param recordedFirst how many files were recorded before
 * @param versions how many versions came
 * @param files the files that changed
 * @param merged which of them both had changed
 * @param kept pages that stayed, being this copy's own
 * @param unsent how many versions the other copy does not have
 * @param conflicts what is to be chosen
 * @param idle choices that speak of no conflict
 */
record ShareView(
    String outcome,
    int recordedFirst,
    int versions,
    List<String> files,
    List<String> merged,
    List<String> kept,
    int unsent,
    List<Conflict> conflicts,
    List<String> idle) {
  private static final int SHOWN = 20;

  /** What {@code share push} and {@code share copy} print. */
  record Sent(int recordedFirst, int versions, int files) {}

  static ShareView of(PullOutcome outcome) {
    int first = outcome.recordedFirst();
    if (outcome instanceof PullOutcome.Pulled done) {
      return new ShareView(
          "pulled",
          first,
          done.versions(),
          done.files(),
          done.merged(),
          done.kept(),
          done.unsent(),
          List.of(),
          List.of());
    }
    List<String> none = List.of();
    if (outcome instanceof PullOutcome.Open open) {
      return new ShareView("open", first, 0, none, none, none, 0, open.conflicts(), open.idle());
    }
    int unsent = ((PullOutcome.UpToDate) outcome).unsent();
    return new ShareView("up-to-date", first, 0, none, none, none, unsent, List.of(), none);
  }

  static List<String> lines(PullOutcome outcome) {
    List<String> lines = new ArrayList<>();
    if (outcome.recordedFirst() > 0) {
      lines.add("Recorded first: " + CountWords.of(outcome.recordedFirst(), "file") + " of yours.");
    }
    if (outcome instanceof PullOutcome.Open open) {
      lines.addAll(open(open));
    } else if (outcome instanceof PullOutcome.Pulled pulled) {
      lines.addAll(pulled(pulled));
    } else if (outcome instanceof PullOutcome.UpToDate same) {
      lines.add("There is nothing new.");
      lines.addAll(unsent(same.unsent()));
    }
    return lines;
  }

  private static List<String> pulled(PullOutcome.Pulled pulled) {
    List<String> lines = new ArrayList<>();
    lines.add(
        CountWords.of(pulled.versions(), "version")
            + " came; "
            + CountWords.of(pulled.files().size(), "file")
            + " changed"
            + (pulled.merged().isEmpty()
                ? "."
                : ", of which both copies had changed " + pulled.merged().size() + "."));
    pulled.files().stream()
        .limit(SHOWN)
        .forEach(
            file -> lines.add("  " + file + (pulled.merged().contains(file) ? " (merged)" : "")));
    if (pulled.files().size() > SHOWN) {
      lines.add("  and " + (pulled.files().size() - SHOWN) + " more");
    }
    pulled.kept().forEach(file -> lines.add("Your own, left as it is: " + file));
    lines.addAll(unsent(pulled.unsent()));
    return lines;
  }

  private static List<String> unsent(int unsent) {
    return unsent == 0
        ? List.of()
        : List.of(
            CountWords.of(unsent, "version")
                + " of yours not sent yet: limberboard share push sends "
                + (unsent == 1 ? "it." : "them."));
  }

  private static List<String> open(PullOutcome.Open open) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Both copies changed "
            + CountWords.of(open.conflicts().size(), "part")
            + " differently. No file was changed; choose, and pull again:");
    for (Conflict conflict : open.conflicts()) {
      lines.add("");
      lines.add(
          conflict.file()
              + ", "
              + conflict.part()
              + (conflict.heading().isEmpty() ? "" : ", below “" + conflict.heading() + "”"));
      lines.addAll(side("  ours:   ", conflict.ours()));
      lines.addAll(side("  theirs: ", conflict.theirs()));
      lines.add(
          "  --settle "
              + conflict.file()
              + ":"
              + conflict.part()
              + "=ours|theirs|before"
              + (conflict.mayBeBoth() ? "|both" : ""));
    }
    open.idle().forEach(name -> lines.add("There is nothing to choose for " + name + "."));
    return lines;
  }

  private static List<String> side(String before, String text) {
    return text.isEmpty()
        ? List.of(before + "(nothing)")
        : text.lines().limit(SHOWN).map(line -> before + line).toList();
  }
}
