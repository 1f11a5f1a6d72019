package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.print.page.Block;
import limberboard.print.page.Part;
import limberboard.words.TimeWords;
import limberboard.workings.PackWords;

/** Cuts a material or tool: cautions, packs, how long it keeps, what it must not touch. */
final class MaterialCutter {
  private final CutContext cutting;

  MaterialCutter(CutContext cutting) {
    this.cutting = cutting;
  }

  List<Part> cut(Page<Material> page) {
    PageParts parts = new PageParts(cutting);
    List<Part> cut = new ArrayList<>();
    List<WorkCaution> cautions = cutting.cautions().of(page);
    Cautions.inShort(cautions).ifPresent(cut::add);
    parts.fit(page).ifPresent(cut::add);
    cut.add(new Part(Part.Role.FACTS, "", List.of(new Block.Facts(facts(page.details())))));
    BodyCutter.part("", new BodyCutter(cutting).cut(page)).ifPresent(cut::add);
    new FiguresPart(cutting).part(page.details().figures()).ifPresent(cut::add);
    new SumsPart(cutting).part(page.details().workings()).ifPresent(cut::add);
    parts.leftOut().ifPresent(cut::add);
    parts.sources(page).ifPresent(cut::add);
    Cautions.inFull(cautions).ifPresent(cut::add);
    return cut;
  }

  private List<Block.Fact> facts(Material material) {
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Block.Fact.of("Shelf", material.group().spoken()));
    PackWords packs = new PackWords(cutting.quantities());
    List<String> sold = material.packs().stream().map(packs::named).toList();
    if (!sold.isEmpty()) {
      facts.add(Block.Fact.of("Sold as", String.join(", ", sold)));
    }
    material
        .shelfLife()
        .ifPresent(life -> facts.add(Block.Fact.of("Keeps unopened", TimeWords.period(life))));
    material
        .openedLife()
        .ifPresent(life -> facts.add(Block.Fact.of("Keeps once opened", TimeWords.period(life))));
    for (Material.KeepOff keepOff : material.keepOff()) {
      facts.add(Block.Fact.of("Keep off", keepOff.what() + ": " + keepOff.why()));
    }
    new Links(cutting).fact("Instead", material.instead()).ifPresent(facts::add);
    return facts;
  }
}
