package limberboard.print.cut;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.value.Condition;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.workings.AmountOutcome;
import limberboard.workings.Needed;
import limberboard.workings.PackWords;
import limberboard.workings.Purchase;
import limberboard.workings.Totals;
import limberboard.workings.Workings;

/** The materials of a procedure: what, how much, which packs to buy, and how it was worked out. */
final class MaterialsTable {
  private final CutContext cutting;
  private final PackWords packs;
  private final Workings workings;

  MaterialsTable(CutContext cutting) {
    this.cutting = cutting;
    this.packs = new PackWords(cutting.quantities());
    this.workings = new Workings(cutting.fitting().map(Fitting::boat), cutting.quantities());
  }

  /** The table for these uses, all of which the boat needs; empty when there are none. */
  Optional<Part> part(List<MaterialUse> uses) {
    if (uses.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Totals.Total> totals = totals(uses);
    Set<String> bought = new HashSet<>();
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (MaterialUse use : uses) {
      String buy = bought.add(use.use()) ? buy(totals.get(use.use()), uses) : "see above";
      rows.add(row(use, buy));
    }
    Block table =
        new Block.Table(
            List.of(Side.LEFT, Side.LEFT, Side.LEFT),
            List.of(Inline.text("Material"), Inline.text("How much"), Inline.text("Buy")),
            rows);
    return Optional.of(new Part(Part.Role.MATERIALS, "Materials and packs", List.of(table)));
  }

  /** What to lay out before the work, with how much of it, in one line. */
  Optional<Block> inBrief(List<MaterialUse> uses) {
    Map<String, Totals.Total> totals = totals(uses);
    List<List<Inline>> each = new ArrayList<>();
    Set<String> named = new HashSet<>();
    for (MaterialUse use : uses) {
      if (named.add(use.use())) {
        List<Inline> one = new ArrayList<>(List.of(cutting.link(use.use())));
        Optional.ofNullable(totals.get(use.use()))
            .flatMap(this::howMuch)
            .ifPresent(much -> one.add(new Inline.Text(", " + much)));
        each.add(one);
      }
    }
    return InBrief.line("Materials", each);
  }

  private Optional<String> howMuch(Totals.Total total) {
    return total.outcome() instanceof AmountOutcome.Reckoned reckoned
        ? Optional.of(cutting.quantities().computed(reckoned.amount()))
        : Optional.empty();
  }

  private Map<String, Totals.Total> totals(List<MaterialUse> uses) {
    List<Needed> needs =
        uses.stream()
            .flatMap(
                use ->
                    cutting.library().material(use.use()).stream()
                        .map(page -> workings.needed(use, page)))
            .toList();
    return new Totals()
        .of(needs).stream()
            .collect(Collectors.toMap(total -> total.material().id(), Function.identity()));
  }

  private String buy(Totals.Total total, List<MaterialUse> uses) {
    Optional<Purchase> purchase = Optional.ofNullable(total).flatMap(Totals.Total::purchase);
    boolean several =
        total != null
            && uses.stream().filter(use -> use.use().equals(total.material().id())).count() > 1;
    return purchase.map(bought -> packs.of(bought) + (several ? ", for all uses" : "")).orElse("");
  }

  private List<List<Inline>> row(MaterialUse use, String buy) {
    Optional<Page<Material>> page = cutting.library().material(use.use());
    List<Inline> howMuch = new ArrayList<>();
    if (page.isPresent()) {
      addAmount(workings.needed(use, page.get()), howMuch);
    } else {
      howMuch.add(new Inline.Text("this material's page is missing"));
    }
    return List.of(name(use), howMuch, Inline.text(buy));
  }

  private List<Inline> name(MaterialUse use) {
    List<Inline> name = new ArrayList<>();
    name.add(cutting.link(use.use()));
    if (!use.purpose().isEmpty()) {
      name.add(new Inline.Text(", " + use.purpose()));
    }
    Condition only = use.fits();
    cutting.onlyFor(only).ifPresent(words -> name.add(new Inline.Text(" (" + words + ")")));
    return name;
  }

  private void addAmount(Needed needed, List<Inline> text) {
    AmountOutcome outcome = needed.outcome();
    if (outcome instanceof AmountOutcome.Reckoned reckoned) {
      text.add(new Inline.Strong(Inline.text(cutting.quantities().computed(reckoned.amount()))));
      if (!needed.working().isEmpty()) {
        text.add(new Inline.LineBreak());
        text.add(new Inline.Text(needed.working()));
      }
    } else if (outcome instanceof AmountOutcome.ToMeasure open) {
      text.add(new Inline.Text(open.sentence()));
    } else if (outcome instanceof AmountOutcome.Mistaken mistaken) {
      text.add(new Inline.Text("cannot be worked out: " + mistaken.wrong()));
    } else {
      text.add(new Inline.Text("as needed"));
    }
  }
}
