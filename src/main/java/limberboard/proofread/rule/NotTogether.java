package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.words.Sentences;

/**
 * Two sealants on one list that spoil each other while they are fresh, where no passage keeps them
 * apart by a day.
 */
final class NotTogether implements WorkRule {
  private static final List<Phrase> APART =
      Phrase.all(
          List.of(
              "one … a day", "another day", "a day apart", "same day", "next day", "has cured"));

  @Override
  public String name() {
    return "not-together";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    boolean apart =
        job.passages().stream().anyMatch(passage -> APART.stream().anyMatch(passage::has));
    for (int i = 0; !apart && i < job.materials().size(); i++) {
      for (int j = i + 1; j < job.materials().size(); j++) {
        Optional<Page<Material>> one = around.library().material(job.materials().get(i));
        Optional<Page<Material>> other = around.library().material(job.materials().get(j));
        if (one.isPresent() && other.isPresent() && spoil(one.get(), other.get())) {
          found.add(finding(job, i, one.get(), other.get(), around));
        }
      }
    }
    return found;
  }

  private PageRemark finding(
      ReadWork job, int at, Page<Material> one, Page<Material> other, Surroundings around) {
    return PageRemark.at(
        this,
        Gravity.MISLEADS,
        job.page(),
        around.line(job.page(), "/materials/" + at),
        other.id(),
        "takes "
            + Sentences.lowered(one.title())
            + " and "
            + Sentences.lowered(other.title())
            + ", which do not cure beside each other while fresh",
        "say which comes on which day, with cloths of its own");
  }

  private static boolean spoil(Page<Material> one, Page<Material> other) {
    return keepsOff(one, other) || keepsOff(other, one);
  }

  private static boolean keepsOff(Page<Material> one, Page<Material> other) {
    return other
        .details()
        .mixing()
        .family()
        .map(family -> "fresh " + family.word())
        .filter(
            fresh -> one.details().keepOff().stream().anyMatch(off -> off.what().startsWith(fresh)))
        .isPresent();
  }
}
