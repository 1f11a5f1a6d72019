package limberboard.boat;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import limberboard.library.Library;
import limberboard.library.page.Caution;
import limberboard.library.page.Head;
import limberboard.library.page.Page;
import limberboard.library.value.Condition;
import limberboard.words.Sentences;

/**
 * A caution of some work, with what brings it in.
 *
 * @param page the caution; where the library cannot give it, one in its place that says so
 * @param because the title of the material or tool that brings it in; empty where the work names it
 *     itself
 */
public record WorkCaution(Page<Caution> page, String because) {

  /**
   * The caution with this id, or one that says that its page is missing: never nothing.
   *
   * @param fits whether a condition holds for the boat
   */
  static WorkCaution of(Library library, String id, String because, Predicate<Condition> fits) {
    Page<Caution> page = library.caution(id).orElseGet(() -> inPlaceOf(id));
    Caution cut = page.details().cutTo(fits);
    return new WorkCaution(
        new Page<>(page.id(), page.path(), page.head(), cut, page.body(), page.bodyLine()),
        because);
  }

  private static Page<Caution> inPlaceOf(String id) {
    Head head =
        new Head(
            Sentences.spoken(id),
            "",
            List.of(),
            null,
            List.of(),
            Condition.ALWAYS,
            List.of(),
            Map.of());
    Caution caution =
        new Caution(
            "The page of this caution is missing or cannot be read.",
            List.of(
                Caution.Line.always(
                    "Do not begin before somebody who knows this danger has told you what to do.")),
            "");
    return new Page<>(id, "articles/cautions/" + id + ".md", head, caution, "", 1);
  }

  /** The same because of something; what is named already stands. */
  public WorkCaution because(String named) {
    return because.isEmpty() ? new WorkCaution(page, named) : this;
  }

  /** The caution's id. */
  public String id() {
    return page.id();
  }

  /** The caution's title. */
  public String title() {
    return page.title();
  }
}
