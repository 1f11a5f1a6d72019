package limberboard.search;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import limberboard.library.page.Cause;
import limberboard.library.page.Caution;
import limberboard.library.page.Check;
import limberboard.library.page.Details;
import limberboard.library.page.Head;
import limberboard.library.page.Kind;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.ToolUse;

/**
 * Everything of a page that search reads, taken from its header and body, the Markdown as it
 * stands.
 *
 * @param id the page's id
 * @param kind the page's kind
 * @param fits the boats it is for, as a key
 * @param title its title
 * @param said phrases people use for it
 * @param summary its summary
 * @param told phrases for the answers of a symptom's checks
 * @param causes titles and descriptions of a symptom's causes
 * @param more what else the header says in sentences
 * @param uses titles of materials and tools
 * @param place system and zones, as ids and as the models call them
 * @param markdown its body
 */
record SearchedText(
    String id,
    Kind kind,
    String fits,
    String title,
    List<String> said,
    String summary,
    List<String> told,
    List<String> causes,
    List<String> more,
    List<String> uses,
    List<String> place,
    String markdown) {

  /** The text of a page. */
  static SearchedText of(Page<?> page, Titles titles) {
    Head head = page.head();
    Details details = page.details();
    return new SearchedText(
        page.id(),
        page.kind(),
        FitKeys.key(head.fits()),
        head.title(),
        head.saidAs(),
        head.summary(),
        details instanceof Symptom symptom ? told(symptom) : List.of(),
        details instanceof Symptom symptom ? causes(symptom) : List.of(),
        more(details),
        details instanceof Procedure procedure ? uses(procedure, titles) : List.of(),
        place(head, titles),
        page.body());
  }

  private static List<String> told(Symptom symptom) {
    return symptom.checks().stream()
        .flatMap(check -> check.saidAs().values().stream())
        .flatMap(List::stream)
        .toList();
  }

  private static List<String> causes(Symptom symptom) {
    return symptom.causes().stream().map(SearchedText::cause).toList();
  }

  private static String cause(Cause cause) {
    return cause.about().isEmpty() ? cause.title() : cause.title() + ": " + cause.about();
  }

  private static List<String> more(Details details) {
    if (details instanceof Symptom symptom) {
      return symptom.checks().stream().map(Check::ask).toList();
    }
    if (details instanceof Caution caution) {
      return Stream.of(
              Stream.of(caution.danger()), caution.act().stream(), Stream.of(caution.seek()))
          .flatMap(texts -> texts)
          .toList();
    }
    if (details instanceof Material material) {
      return material(material);
    }
    if (details instanceof Model model) {
      return model.equipment().stream()
          .flatMap(
              equipment ->
                  Stream.concat(
                      Stream.of(equipment.title()),
                      equipment.choices().stream().map(Model.Choice::title)))
          .toList();
    }
    return details instanceof Procedure procedure
        ? procedure.lookFor().map(look -> List.of(look.good(), look.bad())).orElse(List.of())
        : List.of();
  }

  private static List<String> material(Material material) {
    List<String> more = new ArrayList<>();
    more.add(material.group().spoken());
    material.packs().forEach(pack -> more.add(pack.name()));
    material.keepOff().forEach(keep -> more.add("Keep off " + keep.what() + ": " + keep.why()));
    return more;
  }

  private static List<String> uses(Procedure procedure, Titles titles) {
    return Stream.concat(
            procedure.materials().stream().map(MaterialUse::use),
            procedure.tools().stream().map(ToolUse::use))
        .map(titles::ofMaterial)
        .toList();
  }

  private static List<String> place(Head head, Titles titles) {
    List<String> place = new ArrayList<>();
    head.system().ifPresent(system -> place.add(system.spoken()));
    head.zones().forEach(zone -> place.addAll(titles.ofZone(zone)));
    return place;
  }

  /** A digest of all of it: two pages with the same digest are the same to search. */
  byte[] digest() {
    return new Digest()
        .add(id)
        .add(kind.name())
        .add(fits)
        .add(title)
        .add(said)
        .add(summary)
        .add(told)
        .add(causes)
        .add(more)
        .add(uses)
        .add(place)
        .add(markdown)
        .bytes();
  }
}
