package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Skill;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;
import limberboard.words.Phrases;
import limberboard.words.Sentences;

/**
 * Tools and materials on a list that no step uses: neither by a name, nor by a word of one, nor by
 * what is done with them.
 */
final class NotUsed implements WorkRule {
  private static final Set<String> SAYING_NOTHING =
      Set.of("set", "kit", "small", "new", "of", "for", "and", "the", "with", "a", "on", "in");
  private static final String MATERIALS = "/materials/";
  private static final int SHORTEST = 3;

  @Override
  public String name() {
    return "not-used";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    if (isOthers(job)) {
      return found;
    }
    look(job, job.tools(), "/tools/", around, found);
    look(job, job.materials(), MATERIALS, around, found);
    return found;
  }

  private void look(
      ReadWork job, List<String> ids, String key, Surroundings around, List<PageRemark> found) {
    for (int i = 0; i < ids.size(); i++) {
      String id = ids.get(i);
      boolean asked =
          around.library().material(id).isPresent()
              && !around.words().carried().contains(id)
              && !saysWhatFor(job, key, i);
      if (asked && !isUsed(id, job, around)) {
        found.add(
            PageRemark.at(
                this,
                Gravity.STUMBLES,
                job.page(),
                around.line(job.page(), job.pointer() + key + i),
                id,
                "“" + around.title(id) + "” is listed, and no step uses it",
                "say in a step what it is for, or take it off the list"));
      }
    }
  }

  /** The yard and the licensed bring their own, and need no step for it. */
  private static boolean isOthers(ReadWork job) {
    return job.page().details() instanceof Procedure work
        && (work.skill() == Skill.YARD || work.skill() == Skill.LICENSED);
  }

  /** Whether the list itself says what a material is for. */
  private static boolean saysWhatFor(ReadWork job, String key, int at) {
    return key.equals(MATERIALS)
        && job.page().details() instanceof Procedure work
        && !work.materials().get(at).purpose().isEmpty();
  }

  private static boolean isUsed(String id, ReadWork job, Surroundings around) {
    List<Phrase> names = new ArrayList<>();
    around.library().material(id).ifPresent(page -> names.addAll(names(page)));
    Stream.concat(around.words().uses().stream(), around.words().names().stream())
        .filter(usage -> usage.thing().equals(id))
        .map(TradeWords.Usage::words)
        .forEach(words -> names.addAll(around.phrases(words)));
    Sentence asked = Sentence.one(job.name());
    return job.isCheck() && names.stream().anyMatch(asked::has)
        || job.passages().stream().anyMatch(passage -> names(passage, names) || links(passage, id));
  }

  private static boolean names(TextPiece passage, List<Phrase> names) {
    return names.stream().anyMatch(passage::has);
  }

  private static boolean links(TextPiece passage, String id) {
    return passage.links().stream().anyMatch(link -> link.contains(id + ".md"));
  }

  private static List<Phrase> names(Page<?> page) {
    List<Phrase> names = new ArrayList<>();
    page.head().saidAs().forEach(said -> names.add(Phrase.of(said)));
    Stream.of(page.title().replaceAll("[,(].*", ""), Sentences.spoken(page.id()))
        .flatMap(name -> Phrases.stems(name).stream())
        .filter(word -> word.length() >= SHORTEST && !SAYING_NOTHING.contains(word))
        .filter(word -> !Character.isDigit(word.charAt(0)))
        .forEach(word -> names.add(new Phrase(word, List.of(List.of(word)))));
    return names;
  }
}
