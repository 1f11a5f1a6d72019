package limberboard.library.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.value.BoatSystem;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Own;
import limberboard.library.value.Required;

/**
 * The header keys that every page has.
 *
 * @param title the page's title
 * @param summary one sentence, or empty
 * @param saidAs phrases that people use for it
 * @param system what the page is filed under
 * @param zones ids of places on the boat
 * @param fits which boats the page is for
 * @param sources where its facts come from
 * @param onlyFor heading text to the boats that the section below it is for
 * @param own whose own the page is, so that sharing lets nobody else change it
 * @param answered what its author answers to a proofreader's findings
 * @param read when and by whom it was last read in full
 */
public record Head(
    @Required String title,
    String summary,
    List<String> saidAs,
    Optional<BoatSystem> system,
    @Names(Named.ZONE) List<String> zones,
    Condition fits,
    List<String> sources,
    Map<String, Condition> onlyFor,
    Optional<Own> own,
    List<AuthorAnswer> answered,
    Optional<ReadInFull> read) {

  /** Absent entries become empty ones. */
  public Head {
    summary = EmptyValues.text(summary);
    saidAs = EmptyValues.list(saidAs);
    system = EmptyValues.optional(system);
    zones = EmptyValues.list(zones);
    fits = EmptyValues.condition(fits);
    sources = EmptyValues.list(sources);
    onlyFor = EmptyValues.map(onlyFor);
    own = EmptyValues.optional(own);
    answered = EmptyValues.list(answered);
    read = EmptyValues.optional(read);
  }

  /** The head of a page that is nobody's own and that no proofreader has spoken of. */
  public Head(
      String title,
      String summary,
      List<String> saidAs,
      Optional<BoatSystem> system,
      List<String> zones,
      Condition fits,
      List<String> sources,
      Map<String, Condition> onlyFor) {
    this(
        title,
        summary,
        saidAs,
        system,
        zones,
        fits,
        sources,
        onlyFor,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }
}
