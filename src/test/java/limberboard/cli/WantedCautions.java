package limberboard.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Check;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Condition;
import limberboard.library.value.KnownUnit;
import limberboard.workings.AmountOutcome;
import limberboard.workings.QuantityWords;
import limberboard.workings.Workings;

/**
 * Which cautions work must carry, derived from the headers and the text line by line, without the
 * program's own way of doing it.
 *
 * @param library the pages
 * @param boat the boat on the day
 */
record WantedCautions(Library library, Fitting boat) {
  private static final Pattern LINK = Pattern.compile("\\]\\([^)]*cautions/([a-z0-9-]+)\\.md");
  private static final Pattern HEADING = Pattern.compile("^(#{1,6}) +(.*?) *$");

  /** Of a procedure. */
  Set<String> of(Page<Procedure> page) {
    Set<String> wanted = named(page.details().cautions());
    wanted.addAll(linked(page, page.details().cautions()));
    for (MaterialUse use : page.details().materials()) {
      if (boat.fits(use.fits())) {
        wanted.addAll(ofThing(use.use(), amount(use.use(), page.details().materials())));
      }
    }
    wanted.addAll(ofTools(page.details().tools()));
    return wanted;
  }

  /** Those named whose condition holds for the boat. */
  Set<String> named(List<CautionUse> uses) {
    return uses.stream()
        .filter(use -> boat.fits(use.fits()))
        .map(CautionUse::use)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What these uses of a material come to on this boat, as the tables of materials have it. */
  private Optional<Double> amount(String id, List<MaterialUse> uses) {
    Optional<Page<Material>> page = library.material(id);
    if (page.isEmpty() || page.get().details().unit().isEmpty()) {
      return Optional.empty();
    }
    Workings workings = new Workings(Optional.of(boat.boat()), QuantityWords.METRIC);
    double sum = 0;
    for (MaterialUse use : uses) {
      if (use.use().equals(id) && boat.fits(use.fits())) {
        if (!(workings.needed(use, page.get()).outcome() instanceof AmountOutcome.Reckoned some)) {
          return Optional.empty();
        }
        sum += in(page.get(), some.amount());
      }
    }
    return Optional.of(sum);
  }

  private static double in(Page<Material> page, Quantity<?> amount) {
    return KnownUnit.counting(page.details().unit().orElseThrow()).of(amount).orElseThrow();
  }

  /** Of a check. */
  Set<String> of(Check check) {
    Set<String> wanted = named(check.cautions());
    wanted.addAll(ofTools(check.tools()));
    return wanted;
  }

  private Set<String> ofTools(List<ToolUse> tools) {
    Set<String> wanted = new TreeSet<>();
    for (ToolUse use : tools) {
      if (boat.fits(use.fits())) {
        wanted.addAll(ofThing(use.use()));
      }
    }
    return wanted;
  }

  /** Of a material or tool. */
  Set<String> ofThing(String id) {
    return ofThing(id, Optional.empty());
  }

  /** Of so much of a material; all of them where nobody knows how much. */
  private Set<String> ofThing(String id, Optional<Double> amount) {
    Set<String> wanted = new TreeSet<>();
    library
        .material(id)
        .ifPresent(
            page -> {
              for (CautionUse use : page.details().cautions()) {
                boolean little =
                    use.from().isPresent()
                        && amount.isPresent()
                        && amount.get() < in(page, use.from().get().quantity());
                if (boat.fits(use.fits()) && !little) {
                  wanted.add(use.use());
                }
              }
              wanted.addAll(linked(page, page.details().cautions()));
            });
    return wanted;
  }

  private Set<String> linked(Page<?> page, List<CautionUse> judged) {
    Set<String> wanted = new TreeSet<>();
    Map<Integer, Boolean> hidden = new LinkedHashMap<>();
    for (String line : page.body().lines().toList()) {
      Matcher heading = HEADING.matcher(line);
      if (heading.matches()) {
        int level = heading.group(1).length();
        hidden.keySet().removeIf(outer -> outer >= level);
        Condition only = page.head().onlyFor().getOrDefault(heading.group(2), Condition.ALWAYS);
        hidden.put(level, !boat.fits(only));
      }
      Matcher link = LINK.matcher(line);
      while (!hidden.containsValue(true) && link.find()) {
        String id = link.group(1);
        if (library.caution(id).isPresent()
            && judged.stream().noneMatch(use -> use.use().equals(id))) {
          wanted.add(id);
        }
      }
    }
    return wanted;
  }
}
