package limberboard.sharing.merge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.history.parts.TextParts;
import limberboard.history.parts.WholeLines;

/** Merges a file that both sides changed, each kind of file by its format. */
public final class FileMerge {
  private FileMerge() {}

  /**
   * Brings two texts together.
   *
   * @param file the file's path, which says of what kind it is
   * @param base the text that both changed; empty when both put the file in
   * @param ours this copy's text
   * @param theirs the other's text
   */
  public static MergedText of(String file, String base, String ours, String theirs) {
    if (ours.equals(theirs) || theirs.equals(base)) {
      return MergedText.settled(ours);
    }
    if (ours.equals(base)) {
      return MergedText.settled(theirs);
    }
    boolean marks = ours.contains("\r\n");
    if (marks != theirs.contains("\r\n")) {
      boolean baseMarks = base.contains("\r\n");
      boolean wanted = marks == baseMarks ? !marks : marks;
      return of(file, lineEnds(base, wanted), lineEnds(ours, wanted), lineEnds(theirs, wanted));
    }
    return byKind(
        file, base.contains("\r\n") == marks ? base : lineEnds(base, marks), ours, theirs);
  }

  private static MergedText byKind(String file, String base, String ours, String theirs) {
    if (file.endsWith(".csv")) {
      Optional<String> table = TableMerge.merge(base, ours, theirs);
      if (table.isPresent()) {
        return MergedText.settled(table.get());
      }
    }
    if (file.endsWith(".md") || file.endsWith(".yaml")) {
      return PartsMerge.merge(
          file, TextParts.of(file, base), TextParts.of(file, ours), TextParts.of(file, theirs));
    }
    if (file.endsWith(".txt") || file.endsWith(".gitignore")) {
      return MergedText.settled(union(base, ours, theirs));
    }
    return PartsMerge.byLines(base, ours, theirs)
        .map(MergedText::settled)
        .orElseGet(() -> whole(file, base, ours, theirs));
  }

  /** A file as one conflict. */
  public static MergedText whole(String file, String base, String ours, String theirs) {
    return new MergedText(
        List.of(new MergedText.Open(new Conflict(file, Conflict.PAGE, "", base, ours, theirs))));
  }

  /** Lists of words, a line each: what either side wrote is kept. */
  private static String union(String base, String ours, String theirs) {
    List<String> lines = new ArrayList<>();
    for (ThreeWay.Part part :
        ThreeWay.merge(WholeLines.of(base), WholeLines.of(ours), WholeLines.of(theirs), true)) {
      if (part instanceof ThreeWay.Agreed agreed) {
        lines.addAll(agreed.texts());
      } else if (part instanceof ThreeWay.Disputed disputed) {
        lines.addAll(disputed.ours());
        disputed.theirs().stream()
            .filter(line -> !disputed.ours().contains(line) && !disputed.base().contains(line))
            .forEach(
                line -> {
                  int last = lines.size() - 1;
                  if (last >= 0 && !lines.get(last).endsWith("\n")) {
                    lines.set(last, lines.get(last) + "\n");
                  }
                  lines.add(line);
                });
      }
    }
    return String.join("", lines);
  }

  private static String lineEnds(String text, boolean marks) {
    String plain = text.replace("\r\n", "\n");
    return marks ? plain.replace("\n", "\r\n") : plain;
  }
}
