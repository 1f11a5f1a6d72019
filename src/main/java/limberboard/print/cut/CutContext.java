package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCautions;
import limberboard.boat.WorkMinutes;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Condition;
import limberboard.print.page.Inline;
import limberboard.words.Sentences;
import limberboard.workings.QuantityWords;

/**
 * What every cutter needs: the library, the boat or none, and how things are said; and the list of
 * what is left out for the boat, which grows while a page is cut. For one page, on one thread.
 */
public final class CutContext {
  private final Library library;
  private final Optional<Fitting> fitting;
  private final QuantityWords quantities;
  private final ConditionWords words;
  private final List<String> leftOut = new ArrayList<>();

  public CutContext(Library library, Optional<Fitting> fitting, QuantityWords quantities) {
    this.library = library;
    this.fitting = fitting;
    this.quantities = quantities;
    this.words = new ConditionWords(library);
  }

  Library library() {
    return library;
  }

  Optional<Fitting> fitting() {
    return fitting;
  }

  QuantityWords quantities() {
    return quantities;
  }

  /** The work with the minutes that it takes on the boat. */
  Page<Procedure> timed(Page<Procedure> page) {
    return fitting.map(boat -> WorkMinutes.on(library, boat).of(page)).orElse(page);
  }

  /** The cautions of work on the boat. */
  WorkCautions cautions() {
    return new WorkCautions(library, fitting);
  }

  ConditionWords words() {
    return words;
  }

  /** Why something is not for the boat; empty when it is, or when there is no boat. */
  Optional<String> against(Condition condition) {
    return fitting
        .map(boat -> boat.judge(condition))
        .filter(fit -> !fit.fits())
        .map(fit -> named(fit.reason(), condition));
  }

  /** A choice that the boat's own model does not have is called what another model calls it. */
  private String named(String reason, Condition condition) {
    String named = reason;
    for (String choice : condition.fitted().stream().filter(this::isForeign).toList()) {
      named = named.replace("no " + Sentences.spoken(choice), "no " + words.title(choice));
    }
    for (Condition alternative : condition.any()) {
      named = named(named, alternative);
    }
    return named;
  }

  private boolean isForeign(String choice) {
    return fitting.stream()
        .flatMap(boat -> boat.boat().model().details().equipment().stream())
        .flatMap(equipment -> equipment.choices().stream())
        .noneMatch(known -> known.id().equals(choice));
  }

  /**
   * Whether something is shown: always without a boat, and for a boat when it fits. What does not
   * fit goes on the list of what is left out.
   */
  boolean shows(Condition condition, String what) {
    Optional<String> reason = against(condition);
    reason.ifPresent(why -> leftOut.add(what + ": " + boatName() + " " + predicate(why)));
    return reason.isEmpty();
  }

  /** Which boats something is for, where that has to be said: there is no boat and not all fit. */
  Optional<String> onlyFor(Condition condition) {
    return fitting.isPresent() || condition.isEmpty()
        ? Optional.empty()
        : Optional.of("only for " + words.of(condition));
  }

  /** What was left out so far, one sentence each. */
  List<String> leftOut() {
    return leftOut.stream().distinct().toList();
  }

  /** The boat's name, or the word for any boat. */
  String boatName() {
    return fitting.map(known -> known.boat().name()).orElse("the boat");
  }

  /** A page's title, or its id in words where there is no such page. */
  String title(String id) {
    return library.page(id).map(Page::title).orElseGet(() -> Sentences.spoken(id));
  }

  /** A link to a page, or its id in words where there is no such page. */
  public Inline link(String id) {
    return library
        .page(id)
        .<Inline>map(page -> new Inline.PageLink(id, Inline.text(page.title())))
        .orElseGet(() -> new Inline.Text(Sentences.spoken(id)));
  }

  /** Makes a predicate of a reason: {@code built 2014 …} becomes {@code was built 2014 …}. */
  static String predicate(String reason) {
    if (reason.startsWith("a ")) {
      return "is " + reason;
    }
    if (reason.startsWith("built ")) {
      return "was " + reason;
    }
    if (reason.startsWith("used ") || reason.startsWith("younger ")) {
      return "is " + reason;
    }
    return reason.startsWith("hull number ") ? "has " + reason : reason;
  }
}
