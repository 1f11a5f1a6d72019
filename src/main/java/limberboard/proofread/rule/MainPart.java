package limberboard.proofread.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.MaterialGroup;
import limberboard.library.value.Work;
import limberboard.words.Phrases;

/** A renewal whose main part, by the page's own title, is on no list of materials. */
final class MainPart implements Rule {
  private static final Pattern DOES =
      Pattern.compile(
          "(?i)^(replace|renew|change|fit|re-?arm|repack|put in)\\b((?: a| an| the| new)\\b)*");
  private static final Pattern WHERE = Pattern.compile("(?i) (in|on|at|of|for|to|from|with|by) .*");
  private static final Set<String> ROPES =
      Set.of("lin", "rop", "cord", "halyard", "lash", "lashing", "tie", "ti", "pennant", "tackl");
  private static final int SHORTEST = 3;

  @Override
  public String name() {
    return "main-part";
  }

  @Override
  public List<PageRemark> on(Page<?> page, Surroundings around) {
    if (!(page.details() instanceof Procedure work)
        || work.work() != Work.RENEW
        || work.isRound()
        || !DOES.matcher(page.title()).find()) {
      return List.of();
    }
    String part = WHERE.matcher(DOES.matcher(page.title()).replaceFirst("")).replaceFirst("");
    Set<String> sought = stems(part);
    boolean rope = sought.stream().anyMatch(ROPES::contains);
    boolean listed =
        work.materials().stream()
            .anyMatch(
                use ->
                    named(use, around).stream().anyMatch(sought::contains)
                        || rope && isCordage(use, around));
    return listed || sought.isEmpty()
        ? List.of()
        : List.of(
            PageRemark.at(
                this,
                Gravity.MISLEADS,
                page,
                around.line(page, "/materials"),
                part.strip(),
                "renews the " + part.strip() + ", and lists none",
                "add what is bought for it to materials"));
  }

  private static Set<String> named(MaterialUse use, Surroundings around) {
    Set<String> stems = stems(use.use() + " " + around.title(use.use()));
    around
        .library()
        .material(use.use())
        .ifPresent(page -> page.head().saidAs().forEach(said -> stems.addAll(stems(said))));
    return stems;
  }

  private static boolean isCordage(MaterialUse use, Surroundings around) {
    return around
        .library()
        .material(use.use())
        .filter(page -> page.details().group() == MaterialGroup.CORDAGE)
        .isPresent();
  }

  private static Set<String> stems(String text) {
    Set<String> stems = new HashSet<>(Phrases.stems(text));
    stems.removeIf(stem -> stem.length() < SHORTEST);
    return stems;
  }
}
