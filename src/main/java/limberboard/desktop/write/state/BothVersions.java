package limberboard.desktop.write.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.writing.PageText;
import limberboard.writing.save.LineDifference;
import limberboard.writing.save.SaveOutcome;

/**
 * Decides between what was typed here and what somebody else has written into the file meanwhile.
 * For the event thread only.
 */
public final class BothVersions {
  private final WriteModel model;
  private final WriteOutside outside;

  BothVersions(WriteModel model, WriteOutside outside) {
    this.model = model;
    this.outside = outside;
  }

  /** Compares a page with what its file holds, and shows both versions. */
  public void show(OpenPage page, Optional<PageText> theirs) {
    compare(page, theirs, model.saving()::clashed);
  }

  /**
   * Compares a page with what its file holds, and keeps both versions for whoever decides.
   *
   * @param compared shows them, or says that they differ
   */
  void compare(OpenPage page, Optional<PageText> theirs, Runnable compared) {
    PageText mine = page.text();
    if (theirs.equals(Optional.of(mine))) {
      page.saved(theirs);
      model.saving().clashed();
      return;
    }
    outside
        .looking()
        .run(
            "Comparing both versions",
            () -> LineDifference.between(mine, theirs.orElse(PageText.NONE)),
            found -> {
              page.clash(Optional.of(new SaveOutcome.Changed(mine, theirs, found)));
              compared.run();
            });
  }

  /** Saves the text that was typed over the other one that was shown beside it. */
  public void keepMine(OpenPage page) {
    page.clash().ifPresent(clash -> page.saved(clash.theirs()));
    model.saving().save(page);
  }

  /** Goes on with what the file holds; undo brings back what was typed. */
  public void keepTheirs(OpenPage page) {
    page.clash()
        .ifPresent(
            clash -> {
              page.saved(clash.theirs());
              clash.theirs().ifPresent(text -> model.restore(page, text));
            });
  }

  /** Takes what stands in the file at one place where both differ. */
  public void take(OpenPage page, LineDifference place) {
    Optional<PageText> theirs = page.clash().flatMap(SaveOutcome.Changed::theirs);
    model.replace(page, taking(page.text(), place));
    show(page, theirs);
  }

  /** The text of a page with what its file holds in the place of one difference. */
  static String taking(PageText mine, LineDifference place) {
    List<String> lines = new ArrayList<>(List.of(mine.plain().split("\n", -1)));
    int from = Math.min(place.mineFrom(), lines.size());
    lines.subList(from, Math.min(lines.size(), from + place.mine().size())).clear();
    lines.addAll(from, place.theirs());
    return String.join("\n", lines);
  }
}
