package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.RopeKind;
import limberboard.library.page.RopePlan;
import limberboard.words.Phrases;
import limberboard.words.Sentences;

/** A rope that a page takes for something for which the models' lists of ropes name another. */
final class RopeDiffers implements Rule {
  private static final Set<String> PLAIN =
      Set.copyOf(Phrases.stems("tie tail line rope lashing strop end sheet"));

  @Override
  public String name() {
    return "other-rope";
  }

  @Override
  public List<PageRemark> on(Page<?> page, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    if (page.details() instanceof Procedure work) {
      for (int i = 0; i < work.materials().size(); i++) {
        look(page, work.materials().get(i), "/materials/" + i, around, found);
      }
    }
    return found;
  }

  private void look(
      Page<?> page, MaterialUse use, String pointer, Surroundings around, List<PageRemark> found) {
    Optional<RopeKind> kind =
        around.library().material(use.use()).map(Page::details).flatMap(Material::rope);
    List<RopePlan> meant =
        around.library().all(Model.class).stream()
            .flatMap(model -> model.details().ropes().stream())
            .filter(plan -> names(use, plan))
            .toList();
    boolean agrees =
        meant.stream()
            .anyMatch(
                plan ->
                    kind.map(one -> one.construction() == plan.construction()).orElse(true)
                        || plan.material().equals(Optional.of(use.use())));
    if (kind.isPresent() && !meant.isEmpty() && !agrees) {
      RopePlan plan = meant.get(0);
      found.add(
          PageRemark.at(
              this,
              Gravity.MISLEADS,
              page,
              around.line(page, pointer),
              use.use(),
              "takes "
                  + around.title(use.use())
                  + " for "
                  + use.purpose()
                  + "; the boats' list of ropes has “"
                  + plan.title()
                  + "” of "
                  + Sentences.spoken(plan.construction().word()),
              "take the rope of the list, or mend the list"));
    }
  }

  /** Whether a rope's own name, the last word of its title, is what the material is for. */
  private static boolean names(MaterialUse use, RopePlan plan) {
    Set<String> purpose = new HashSet<>(Phrases.stems(use.purpose()));
    List<String> title = Phrases.stems(plan.title());
    return use.ropes().contains(plan.id())
        || !title.isEmpty()
            && !PLAIN.contains(title.get(title.size() - 1))
            && purpose.contains(title.get(title.size() - 1));
  }
}
