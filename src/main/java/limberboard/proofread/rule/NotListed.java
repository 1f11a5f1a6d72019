package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.ToolUse;
import limberboard.library.value.MaterialGroup;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;
import limberboard.proofread.text.ThingNames.Mention;

/**
 * Things and tools that the steps name and that stand on no list of the page. Of spare parts only
 * what is said to be new counts: an old part is looked at, not brought along.
 */
final class NotListed implements WorkRule {
  private static final Set<MaterialGroup> BROUGHT =
      Set.of(
          MaterialGroup.TOOL,
          MaterialGroup.SEALANT,
          MaterialGroup.ADHESIVE,
          MaterialGroup.CLEANER,
          MaterialGroup.GREASE,
          MaterialGroup.OIL,
          MaterialGroup.COATING,
          MaterialGroup.TAPE,
          MaterialGroup.ABRASIVE);
  private static final Set<String> NEW = Set.of("new", "fresh", "another", "renew");
  private static final Set<String> GONE =
      Set.of("old", "excess", "surplus", "remains", "traces", "cured", "dirty", "used", "existing");
  private static final List<Phrase> EXCUSES =
      Phrase.all(
          List.of(
              "the yard",
              "where you have",
              "if you have",
              "the rigger",
              "=count",
              "sailmaker",
              "not on the list",
              "car's torque wrench",
              "stopgap",
              "tied to"));
  private static final int REACH = 4;
  private static final int NEAR = 2;

  @Override
  public String name() {
    return "not-listed";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (TextPiece step : job.steps()) {
      for (Sentence sentence : step.sentences()) {
        for (Mention mention : around.things().in(sentence)) {
          if (isMissing(job, step, sentence, mention, around) && said.add(mention.name())) {
            found.add(finding(job, step, mention, around));
          }
        }
      }
    }
    return found;
  }

  private PageRemark finding(ReadWork job, TextPiece step, Mention mention, Surroundings around) {
    String id = mention.ids().stream().sorted().findFirst().orElseThrow();
    boolean tool = isTool(id, around);
    PageRemark said =
        PageRemark.at(
            this,
            Gravity.MISLEADS,
            job.page(),
            around.line(job, step),
            mention.name(),
            where(job, step) + " takes “" + mention.name() + "”, which is on no list",
            "add " + id + " to " + (tool ? "tools" : "materials"));
    return tool && mention.ids().size() == 1
        ? said.mendedBy(new HeaderMend.Adds(job.pointer() + "/tools", id))
        : said;
  }

  static boolean isTool(String id, Surroundings around) {
    return group(id, around).equals(Optional.of(MaterialGroup.TOOL));
  }

  static String where(ReadWork job, TextPiece step) {
    return job.isCheck() ? "the check “" + job.name() + "”" : "step " + step.step();
  }

  private static boolean isMissing(
      ReadWork job, TextPiece step, Sentence sentence, Mention mention, Surroundings around) {
    boolean listed =
        mention.ids().stream()
            .anyMatch(id -> job.lists(id) || isInsteadOfListed(id, job, around) || isPage(id, job));
    return !listed
        && EXCUSES.stream().noneMatch(sentence::has)
        && canBeListed(job, mention, around)
        && isBrought(sentence, mention, around)
        && !isPartOf(sentence, mention)
        && !sentence.deniedBefore(mention.at(), REACH)
        && !sentence.deniedBefore(
            Math.min(sentence.words().size(), mention.at() + mention.length() + NEAR),
            mention.length() + NEAR)
        && !isElsewhere(step, mention, around)
        && !isListedByAShorterName(job, mention, around);
  }

  private static boolean isPage(String id, ReadWork job) {
    return job.page().id().equals(id);
  }

  private static boolean isInsteadOfListed(String id, ReadWork job, Surroundings around) {
    return job.materials().stream()
        .flatMap(listed -> around.library().material(listed).stream())
        .anyMatch(page -> page.details().instead().contains(id));
  }

  /** Grease named beside a listed silicone grease is that grease. */
  private static boolean isListedByAShorterName(
      ReadWork job, Mention mention, Surroundings around) {
    String last = mention.name().substring(mention.name().lastIndexOf(' ') + 1);
    return mention.length() == 1
        && (job.tools().stream().anyMatch(id -> id.contains(last))
            || job.materials().stream().anyMatch(id -> id.contains(last)));
  }

  /** The engine's drip tray is the engine's, and nobody brings it. */
  private static boolean isPartOf(Sentence sentence, Mention mention) {
    String text = sentence.text().toLowerCase(Locale.ROOT);
    return text.contains("'s " + mention.name()) || text.contains("’s " + mention.name());
  }

  /** A check has a list of tools and none of materials. */
  private static boolean canBeListed(ReadWork job, Mention mention, Surroundings around) {
    return !job.isCheck()
        || mention.ids().stream()
            .anyMatch(id -> group(id, around).equals(Optional.of(MaterialGroup.TOOL)));
  }

  private static boolean isBrought(Sentence sentence, Mention mention, Surroundings around) {
    List<String> before = sentence.words().subList(Math.max(0, mention.at() - NEAR), mention.at());
    if (before.stream().anyMatch(GONE::contains)) {
      return false;
    }
    boolean always =
        mention.ids().stream()
            .allMatch(id -> group(id, around).map(BROUGHT::contains).orElse(false));
    return always || before.stream().anyMatch(NEW::contains);
  }

  private static Optional<MaterialGroup> group(String id, Surroundings around) {
    return around
        .library()
        .material(id)
        .map(Page::details)
        .filter(Material::isBought)
        .map(Material::group);
  }

  /** Whether the step sends to a page whose own lists have it. */
  private static boolean isElsewhere(TextPiece step, Mention mention, Surroundings around) {
    for (String link : step.links()) {
      String file = link.split("#", 2)[0];
      String id = file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.md$", "");
      Optional<Procedure> other = around.library().procedure(id).map(Page::details);
      boolean has =
          other
              .map(
                  work ->
                      work.tools().stream().map(ToolUse::use).anyMatch(mention.ids()::contains)
                          || work.materials().stream()
                              .map(MaterialUse::use)
                              .anyMatch(mention.ids()::contains))
              .orElse(false);
      if (has) {
        return true;
      }
    }
    return false;
  }
}
