package limberboard.boat;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.body.QuotedCautions;
import limberboard.library.page.Caution;
import limberboard.library.page.Check;
import limberboard.library.page.Details;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Condition;

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
      collected.named(work.cautions()).quoted(page, "");
      collected.materials(work.materials()).tools(work.tools());
    } else if (details instanceof Symptom symptom) {
      collected.named(symptom.first()).quoted(page, "");
      symptom.checks().stream().filter(check -> fits(check.fits())).forEach(collected::check);
    } else if (details instanceof Material material) {
      collected.named(material.cautions()).quoted(page, "");
    } else if (details instanceof Caution) {
      collected.named(List.of(page.id()));
    }
    return collected.all();
  }

  /** Of making one check, with the tools that it takes. */
  public List<WorkCaution> of(Check check) {
    return new Collected().check(check).all();
  }

  /** Of a symptom that is noticed: what comes before any question. */
  public List<WorkCaution> first(Symptom symptom) {
    return new Collected().named(symptom.first()).all();
  }

  /**
   * Of renewing, buying or otherwise handling these materials and tools: theirs, each because of
   * the first that brings it in.
   */
  public List<WorkCaution> ofMaterials(Collection<Page<Material>> materials) {
    Collected collected = new Collected();
    materials.forEach(collected::material);
    return collected.all();
  }

  private boolean fits(Condition condition) {
    return fitting.map(boat -> boat.fits(condition)).orElse(true);
  }

  /** Joins the cautions of several pieces of work, each once; the first to name one stands. */
  public static List<WorkCaution> joined(Collection<List<WorkCaution>> works) {
    Map<String, WorkCaution> joined = new LinkedHashMap<>();
    works.forEach(all -> all.forEach(caution -> joined.putIfAbsent(caution.id(), caution)));
    return List.copyOf(joined.values());
  }

  /** Cautions in the making, each once; the first to name one stands. */
  private final class Collected {
    private final Map<String, WorkCaution> found = new LinkedHashMap<>();

    Collected named(List<String> ids) {
      ids.forEach(id -> add(id, ""));
      return this;
    }

    /** Those that a page's text links to, where the section is for the boat. */
    Collected quoted(Page<?> page, String because) {
      QuotedCautions.in(page).stream()
          .filter(quoted -> library.caution(quoted.caution()).isPresent())
          .filter(quoted -> quoted.only().stream().allMatch(WorkCautions.this::fits))
          .forEach(quoted -> add(quoted.caution(), because));
      return this;
    }

    Collected check(Check check) {
      return named(check.cautions()).tools(check.tools());
    }

    Collected materials(List<MaterialUse> uses) {
      uses.stream().filter(use -> fits(use.fits())).forEach(use -> brought(use.use()));
      return this;
    }

    Collected tools(List<ToolUse> uses) {
      uses.stream().filter(use -> fits(use.fits())).forEach(use -> brought(use.use()));
      return this;
    }

    private void brought(String id) {
      library.material(id).ifPresent(this::material);
    }

    void material(Page<Material> page) {
      page.details().cautions().forEach(id -> add(id, page.title()));
      quoted(page, page.title());
    }

    private void add(String id, String because) {
      found.computeIfAbsent(
          id, key -> WorkCaution.of(library, key, because, WorkCautions.this::fits));
    }

    List<WorkCaution> all() {
      return List.copyOf(found.values());
    }
  }
}
