package limberboard.sharing.merge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.history.parts.TextParts;
import limberboard.history.parts.WholeLines;
import limberboard.sharing.merge.MergedText.Open;
import limberboard.sharing.merge.MergedText.Piece;
import limberboard.sharing.merge.MergedText.Settled;

/** Merges texts that were taken apart: keys by name, the body by its pieces. */
final class PartsMerge {
  private final String file;
  private final TextParts base;
  private final TextParts ours;
  private final TextParts theirs;
  private final List<Piece> pieces = new ArrayList<>();
  private int bodyConflicts;

  private PartsMerge(String file, TextParts base, TextParts ours, TextParts theirs) {
    this.file = file;
    this.base = base;
    this.ours = ours;
    this.theirs = theirs;
  }

  static MergedText merge(String file, TextParts base, TextParts ours, TextParts theirs) {
    PartsMerge merge = new PartsMerge(file, base, ours, theirs);
    merge.named("opening", base.opening(), ours.opening(), theirs.opening());
    merge.keys().forEach(merge::key);
    merge.named("closing", base.closing(), ours.closing(), theirs.closing());
    merge.body();
    return new MergedText(merge.pieces);
  }

  /** All keys of either side: in their order where they alone changed it, otherwise in ours. */
  private List<String> keys() {
    boolean oursMoved = !common(ours, base).equals(common(base, ours));
    TextParts first = oursMoved ? ours : theirs;
    TextParts second = oursMoved ? theirs : ours;
    List<String> order = new ArrayList<>(first.header().keySet());
    String last = null;
    for (String key : second.header().keySet()) {
      if (!order.contains(key)) {
        order.add(last == null ? 0 : order.indexOf(last) + 1, key);
      }
      last = key;
    }
    return order;
  }

  private static List<String> common(TextParts of, TextParts with) {
    List<String> keys = new ArrayList<>(of.header().keySet());
    keys.retainAll(with.header().keySet());
    return keys;
  }

  private void key(String key) {
    Optional<String> before = base.key(key);
    Optional<String> one = ours.key(key);
    Optional<String> other = theirs.key(key);
    if (before.isPresent() && (one.isEmpty() || other.isEmpty())) {
      Optional<String> left = one.or(() -> other);
      if (left.isPresent() && !left.equals(before)) {
        open(key, "", before.get(), one.orElse(""), other.orElse(""));
      }
      return;
    }
    named(key, before.orElse(""), one.orElse(""), other.orElse(""));
  }

  /** A part with a name. */
  private void named(String part, String before, String one, String other) {
    Optional<String> merged = merged(before, one, other);
    Optional<String> fit =
        merged.filter(text -> text.equals(one) || text.equals(other) || isKey(part, text));
    if (fit.isPresent()) {
      pieces.add(new Settled(fit.get()));
    } else {
      open(part, "", before, one, other);
    }
  }

  /** Whether lines that were brought together still are this key. */
  private static boolean isKey(String part, String text) {
    return TextParts.ofYaml(text).header().keySet().equals(Set.of(part));
  }

  /** The text where one side changed it, both alike, or lines that do not touch. */
  private static Optional<String> merged(String before, String one, String other) {
    if (one.equals(other) || other.equals(before)) {
      return Optional.of(one);
    }
    if (one.equals(before)) {
      return Optional.of(other);
    }
    return before.isEmpty() ? Optional.empty() : byLines(before, one, other);
  }

  /** Lines brought together where no changes touch; otherwise empty. */
  static Optional<String> byLines(String before, String one, String other) {
    StringBuilder text = new StringBuilder();
    for (ThreeWay.Part part :
        ThreeWay.merge(WholeLines.of(before), WholeLines.of(one), WholeLines.of(other), false)) {
      if (!(part instanceof ThreeWay.Agreed agreed)) {
        return Optional.empty();
      }
      agreed.texts().forEach(text::append);
    }
    return Optional.of(text.toString());
  }

  private void body() {
    for (ThreeWay.Part part : ThreeWay.merge(base.body(), ours.body(), theirs.body(), true)) {
      if (part instanceof ThreeWay.Agreed agreed) {
        pieces.add(new Settled(String.join("", agreed.texts())));
      } else if (part instanceof ThreeWay.Disputed disputed) {
        disputed(disputed);
      }
    }
  }

  private void disputed(ThreeWay.Disputed disputed) {
    String before = String.join("", disputed.base());
    String one = String.join("", disputed.ours());
    String other = String.join("", disputed.theirs());
    Optional<String> merged = merged(before, one, other);
    if (merged.isPresent()) {
      pieces.add(new Settled(merged.get()));
    } else {
      bodyConflicts++;
      open("body-" + bodyConflicts, ours.heading(disputed.at()), before, one, other);
    }
  }

  private void open(String part, String heading, String before, String one, String other) {
    pieces.add(new Open(new Conflict(file, part, heading, before, one, other)));
  }
}
