package limberboard.desktop.write.state;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import limberboard.desktop.base.Observed;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;

/** Keeps what is typed until it is saved, and offers back what was left. Event thread only. */
public final class PageKeeping extends Observed {
  private final WriteOutside outside;
  private final Set<OpenPage> waiting = new LinkedHashSet<>();
  private List<KeptTexts.Offered> left = List.of();
  private boolean asked;

  PageKeeping(WriteOutside outside) {
    this.outside = outside;
  }

  /** Looks, the first time, for what earlier sittings have left. */
  public void look() {
    if (!asked) {
      asked = true;
      outside
          .library()
          .run("Looking for text that was not saved", outside.texts()::left, this::found);
    }
  }

  private void found(List<KeptTexts.Offered> texts) {
    left = List.copyOf(texts);
    tell();
  }

  /** What earlier sittings have left, the newest first. */
  public List<KeptTexts.Offered> left() {
    return left;
  }

  /** Forgets a text that was left. */
  public void drop(KeptTexts.Offered offered) {
    List<KeptTexts.Offered> rest = new ArrayList<>(left);
    rest.remove(offered);
    outside
        .library()
        .run(
            "Forgetting a text",
            () -> {
              outside.texts().forget(offered);
              return true;
            },
            done -> {});
    found(rest);
  }

  /** Keeps a page's text once typing rests, or forgets it when there is nothing to be saved. */
  void typed(OpenPage page) {
    waiting.add(page);
    outside.keeping().restart(this::flush);
  }

  /** Keeps now what waits. */
  void flush() {
    List<OpenPage> pages = List.copyOf(waiting);
    waiting.clear();
    pages.forEach(this::keep);
  }

  /** Forgets what was kept under a path. */
  void forget(String path) {
    outside
        .library()
        .run(
            "Forgetting a text",
            () -> {
              outside.texts().forget(path);
              return true;
            },
            done -> {});
  }

  /** Keeps a page's text now. */
  void keep(OpenPage page) {
    if (!page.isChanged()) {
      forget(page.path());
      return;
    }
    KeptText text =
        KeptText.of(page.path(), page.saved(), Instant.now(outside.clock()), page.text());
    outside
        .library()
        .run(
            "Keeping what is typed",
            () -> {
              outside.guard().begins("keeping a text");
              outside.texts().keep(text);
              return true;
            },
            done -> {});
  }
}
