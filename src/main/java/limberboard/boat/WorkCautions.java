package limberboard.boat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import limberboard.library.Library;
import limberboard.library.amount.Product;
import limberboard.library.body.QuotedCautions;
import limberboard.library.page.Caution;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Check;
import limberboard.library.page.Details;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Condition;
import limberboard.library.value.KnownUnit;

/**
 * The cautions of work on a boat: the one place that says which they are. Whatever shows work asks
 * here, so that no output knows fewer than another.
 *
 * <p>They are what the work itself names in its header, whichever boat it is, then what its text
 * links to in the sections that are for this boat, then those of the materials and of the tools
 * that it takes on this boat; each once, in that order. What names a material for other boats only
 * adds nothing; what a caution says to do on other boats only is left out of it. Without a boat
 * everything counts.
 *
 * <p>A caution that is named with a condition does not show where the condition does not hold: its
 * {@code fits} is not for the boat, or the work takes less of the material than {@code from}. An
 * amount that is not known counts as enough. Nothing else leaves one out. The grave ones come
 * first.
 *
 * @param library where cautions, materials and tools are looked up
 * @param fitting the boat on the day, or none
 */
public record WorkCautions(Library library, Optional<Fitting> fitting) {

  /** The cautions of work on one boat. */
  public static WorkCautions on(Library library, Fitting fitting) {
    return new WorkCautions(library, Optional.of(fitting));
  }

  /**
   * Of a whole page: of a procedure those of its work; of a symptom those before any question, then
   * those of its checks that the boat has; of a material or tool its own; of a caution itself; of
   * other pages, which are for reading, none.
   */
  public List<WorkCaution> of(Page<?> page) {
    Details details = page.details();
    Collected collected = new Collected();
    if (details instanceof Procedure work) {
      collected.work(page, work);
      work.round().forEach(each -> library.procedure(each.work()).ifPresent(collected::within));
    } else if (details instanceof Symptom symptom) {
      collected.first(symptom.first()).quoted(page, symptom.first(), "");
      symptom.checks().stream().filter(check -> fits(check.fits())).forEach(collected::check);
    } else if (details instanceof Material material) {
      collected.named(material.cautions()).quoted(page, material.cautions(), "");
    } else if (details instanceof Caution) {
      collected.named(List.of(CautionUse.always(page.id())));
    }
    return collected.all();
  }

  /** Of making one check, with the tools that it takes. */
  public List<WorkCaution> of(Check check) {
    return new Collected().check(check).all();
  }

  /** Of a symptom that is noticed: what comes before any question. */
  public List<WorkCaution> first(Symptom symptom) {
    return new Collected().first(symptom.first()).all();
  }

  /**
   * Of renewing, buying or otherwise handling these materials and tools, however much of them:
   * theirs, each because of the first that brings it in.
   */
  public List<WorkCaution> ofMaterials(Collection<Page<Material>> materials) {
    Collected collected = new Collected();
    materials.forEach(page -> collected.material(page, OptionalDouble.empty()));
    return collected.all();
  }

  /**
   * Of handling so much of a material.
   *
   * @param amount in the unit that the material is counted in; empty when it is not known, and then
   *     it counts as enough for every caution
   */
  public List<WorkCaution> ofMaterial(Page<Material> material, OptionalDouble amount) {
    return new Collected().material(material, amount).all();
  }

  private boolean fits(Condition condition) {
    return fitting.map(boat -> boat.fits(condition)).orElse(true);
  }

  /**
   * Joins the cautions of several pieces of work, each once, the grave ones first and otherwise in
   * order; the first to name one says why it came.
   */
  public static List<WorkCaution> joined(Collection<List<WorkCaution>> works) {
    Map<String, WorkCaution> joined = new LinkedHashMap<>();
    works.forEach(
        all -> all.forEach(caution -> joined.merge(caution.id(), caution, WorkCaution::joined)));
    return graveFirst(joined.values());
  }

  /**
   * The cautions of a step of a trace with those of its symptom. Where both name the same one with
   * another rule it stands twice, so that the rule that matters for the step is told as well.
   *
   * @param symptom those that the symptom names first
   * @param step those of the step
   */
  public static List<WorkCaution> ofStep(List<WorkCaution> symptom, List<WorkCaution> step) {
    List<WorkCaution> all = new ArrayList<>(symptom);
    for (WorkCaution caution : step) {
      OptionalInt same =
          IntStream.range(0, symptom.size())
              .filter(i -> symptom.get(i).isSameAs(caution))
              .findFirst();
      if (same.isPresent()) {
        all.set(same.getAsInt(), symptom.get(same.getAsInt()).joined(caution));
      } else {
        all.add(caution);
      }
    }
    return graveFirst(all);
  }

  /**
   * Those whose whole text is still to be told after what stands in full already: each caution
   * once, or as often as it says something else on another boat, without those that stand as an
   * emergency.
   */
  public static List<WorkCaution> toTellInFull(List<WorkCaution> cautions) {
    Map<List<Object>, WorkCaution> each = new LinkedHashMap<>();
    cautions.forEach(caution -> each.putIfAbsent(said(caution), caution));
    cautions.stream().filter(WorkCaution::emergency).forEach(told -> each.remove(said(told)));
    return List.copyOf(each.values());
  }

  private static List<Object> said(WorkCaution caution) {
    return List.of(caution.id(), caution.page().details().act());
  }

  private static List<WorkCaution> graveFirst(Collection<WorkCaution> cautions) {
    return cautions.stream().sorted(Comparator.comparing(caution -> !caution.grave())).toList();
  }

  /** Cautions in the making, each once; the first to name one stands. */
  private final class Collected {
    private final Map<String, WorkCaution> found = new LinkedHashMap<>();

    Collected named(List<CautionUse> uses) {
      uses.stream().filter(use -> fits(use.fits())).forEach(use -> add(use, "", false));
      return this;
    }

    Collected first(List<CautionUse> uses) {
      uses.stream().filter(use -> fits(use.fits())).forEach(use -> add(use, "", true));
      return this;
    }

    /**
     * Those that a page's text links to, where the section is for the boat. Of those that the
     * page's own header names the header has said whether they hold.
     */
    Collected quoted(Page<?> page, List<CautionUse> named, String because) {
      List<String> judged = CautionUse.ids(named);
      QuotedCautions.in(page).stream()
          .filter(quoted -> library.caution(quoted.caution()).isPresent())
          .filter(quoted -> !judged.contains(quoted.caution()))
          .filter(quoted -> quoted.only().stream().allMatch(WorkCautions.this::fits))
          .forEach(quoted -> add(CautionUse.always(quoted.caution()), because, false));
      return this;
    }

    /** Those of work that is done with a round, where it is for the boat. */
    void within(Page<Procedure> page) {
      if (fits(page.head().fits())) {
        work(page, page.details());
      }
    }

    /** What the page of work names and links to, and what its materials and tools bring in. */
    void work(Page<?> page, Procedure work) {
      named(work.cautions()).quoted(page, work.cautions(), "");
      materials(work.materials()).tools(work.tools());
    }

    Collected check(Check check) {
      return named(check.cautions()).tools(check.tools());
    }

    Collected materials(List<MaterialUse> uses) {
      List<MaterialUse> here = uses.stream().filter(use -> fits(use.fits())).toList();
      here.stream()
          .map(MaterialUse::use)
          .distinct()
          .flatMap(id -> library.material(id).stream())
          .forEach(page -> material(page, amount(page, here)));
      return this;
    }

    Collected tools(List<ToolUse> uses) {
      uses.stream()
          .filter(use -> fits(use.fits()))
          .flatMap(use -> library.material(use.use()).stream())
          .forEach(page -> material(page, OptionalDouble.empty()));
      return this;
    }

    Collected material(Page<Material> page, OptionalDouble amount) {
      List<CautionUse> named = page.details().cautions();
      named.stream()
          .filter(use -> fits(use.fits()))
          .filter(use -> isEnough(page.details(), use, amount))
          .forEach(use -> add(use, page.title(), false));
      return quoted(page, named, page.title());
    }

    private void add(CautionUse use, String because, boolean first) {
      found.merge(
          use.use(),
          WorkCaution.of(library, use, because, first, WorkCautions.this::fits),
          WorkCaution::bitingAlsoAs);
    }

    List<WorkCaution> all() {
      return graveFirst(found.values());
    }
  }

  /** Whether so much of a material is enough for a caution; an unknown amount is. */
  private static boolean isEnough(Material material, CautionUse use, OptionalDouble amount) {
    OptionalDouble least =
        use.from().isPresent() && material.unit().isPresent()
            ? KnownUnit.counting(material.unit().get()).of(use.from().get().quantity())
            : OptionalDouble.empty();
    return least.isEmpty() || amount.isEmpty() || amount.getAsDouble() >= least.getAsDouble();
  }

  /** How much of a material all these uses come to, in its unit; empty when one is not known. */
  private OptionalDouble amount(Page<Material> page, List<MaterialUse> uses) {
    if (page.details().unit().isEmpty()) {
      return OptionalDouble.empty();
    }
    KnownUnit counted = KnownUnit.counting(page.details().unit().get());
    double sum = 0;
    for (MaterialUse use : uses) {
      if (use.use().equals(page.id())) {
        Optional<Product> product =
            Product.of(use, counted, fitting.map(boat -> boat.boat().model().details()))
                .filter(Product::isKnown)
                .filter(known -> known.unit() == counted);
        if (product.isEmpty()) {
          return OptionalDouble.empty();
        }
        sum += product.get().value();
      }
    }
    return OptionalDouble.of(sum);
  }
}
