package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.Substance;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;
import limberboard.proofread.text.ThingNames.Mention;
import limberboard.words.Phrases;

/**
 * A material used on what its own page says that it must not touch, or on a listed thing of a
 * substance that it spoils. Only what is spread or poured counts, and only what its page keeps it
 * off without an if or when.
 */
final class KeepOff implements Rule {
  private static final Set<CountingUnit> SPREAD = Set.of(CountingUnit.ML, CountingUnit.G);
  private static final List<Phrase> HARM =
      Phrase.all(List.of("attacks", "spoils", "crazes", "craze", "swells", "eats", "softens"));
  private static final int REACH = 8;
  private static final int DENIED = 6;
  private static final int SHORT = 14;

  @Override
  public String name() {
    return "keep-off";
  }

  @Override
  public List<PageRemark> on(Page<?> page, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    for (ReadWork job : around.jobs(page)) {
      look(page, job, job.steps(), around, found);
    }
    if (page.details() instanceof Material) {
      ReadWork none =
          new ReadWork(page, "", "", List.of(), List.of(), List.of(), Set.of(), List.of());
      look(page, none, around.passages(page), around, found);
    }
    return found;
  }

  private void look(
      Page<?> page,
      ReadWork job,
      List<TextPiece> passages,
      Surroundings around,
      List<PageRemark> found) {
    Set<String> said = new HashSet<>();
    for (TextPiece passage : passages) {
      for (Sentence sentence : clauses(passage)) {
        if (!sentence.denies() && HARM.stream().noneMatch(sentence::has)) {
          for (Mention mention : around.things().in(sentence)) {
            meant(mention, job, page, around).stream()
                .filter(thing -> !sentence.deniedBefore(mention.at(), DENIED))
                .flatMap(thing -> on(job, passage, sentence, mention, thing, around).stream())
                .filter(finding -> said.add(finding.wrong()))
                .forEach(found::add);
          }
        }
      }
    }
  }

  /** A short step in half-sentences is taken as one. */
  private static List<Sentence> clauses(TextPiece passage) {
    Sentence whole = Sentence.one(passage.text());
    return whole.words().size() <= SHORT ? List.of(whole) : passage.sentences();
  }

  /** The spread materials that a name may mean; one of many that are called so only if listed. */
  private static List<Page<Material>> meant(
      Mention mention, ReadWork job, Page<?> page, Surroundings around) {
    return mention.ids().stream()
        .filter(id -> mention.ids().size() == 1 || job.lists(id) || id.equals(page.id()))
        .flatMap(id -> around.library().material(id).stream())
        .filter(thing -> thing.details().unit().filter(SPREAD::contains).isPresent())
        .toList();
  }

  private Optional<PageRemark> on(
      ReadWork job,
      TextPiece passage,
      Sentence sentence,
      Mention mention,
      Page<Material> thing,
      Surroundings around) {
    for (Spoilt spoilt : Spoilt.of(thing)) {
      int at = spoilt.in(sentence, mention.at(), mention.length(), REACH);
      if (at >= 0) {
        String on = sentence.words().get(at);
        return Optional.of(finding(job, passage, mention, thing, on, spoilt, around));
      }
    }
    for (String id : job.materials()) {
      Optional<Spoilt> spoilt = around.library().material(id).flatMap(on -> between(thing, on));
      String last = id.substring(id.lastIndexOf('-') + 1);
      if (spoilt.isPresent() && sentence.stems().containsAll(Phrases.stems(last))) {
        return Optional.of(finding(job, passage, mention, thing, last, spoilt.get(), around));
      }
    }
    return Optional.empty();
  }

  /** What a material spoils of another thing, by what that one touches or is made of. */
  private static Optional<Spoilt> between(Page<Material> thing, Page<Material> on) {
    Set<Substance> of = new HashSet<>(on.details().mixing().touches());
    on.details().mixing().metal().ifPresent(of::add);
    return of.stream()
        .flatMap(substance -> thing.details().mixing().attackOn(substance).stream())
        .map(attack -> new Spoilt(attack.what().word(), attack.why(), List.of()))
        .findFirst();
  }

  private PageRemark finding(
      ReadWork job,
      TextPiece passage,
      Mention mention,
      Page<Material> thing,
      String on,
      Spoilt spoilt,
      Surroundings around) {
    return PageRemark.at(
        this,
        Gravity.MISLEADS,
        job.page(),
        around.line(job, passage),
        thing.id(),
        (passage.isStep() ? NotListed.where(job, passage) : "the text")
            + " brings “"
            + mention.name()
            + "” to “"
            + on
            + "”; its own page keeps it off "
            + spoilt.what(),
        "take another, or keep it off: " + spoilt.why());
  }
}
