package limberboard.library.check;

import limberboard.library.page.Kind;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.problem.Report;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.MaterialGroup;

/** Checks material pages. */
final class MaterialCheck implements PageCheck<Material> {
  @Override
  public void check(Page<Material> page, KnownNames names, Report report) {
    Material material = page.details();
    if (material.unit().isEmpty() && !material.isTool()) {
      report.error("/unit", "is missing", "say what amounts are counted in: ml, g, m or piece");
    }
    names.pages(Kind.MATERIAL, material.instead(), "/instead", report);
    CautionUseCheck cautions = new CautionUseCheck(names, report);
    material
        .unit()
        .ifPresentOrElse(
            unit -> cautions.material(material.cautions(), unit, "/cautions"),
            () -> cautions.tool(material.cautions(), "/cautions"));
    if (material.rope().isPresent() && material.group() != MaterialGroup.CORDAGE) {
      report.error("/rope", "stands on a page that is no cordage", "write group: cordage");
    }
    material
        .rope()
        .filter(rope -> !KnownUnit.METRES.measures(rope.diameter().quantity()))
        .ifPresent(
            rope -> report.error("/rope/diameter", "is no length", "write a length such as 8 mm"));
    for (int i = 0; i < material.packs().size(); i++) {
      material
          .unit()
          .ifPresent(new PackUnits(material.packs().get(i), "/packs/" + i, report)::check);
    }
  }

  /** Checks that a pack holds what the material is counted in. */
  private record PackUnits(Material.Pack pack, String pointer, Report report) {
    void check(CountingUnit unit) {
      if (!unit.measures(pack.holds().quantity().getUnit())) {
        report.error(
            pointer + "/holds",
            "is not counted in " + unit.word(),
            "write what the pack holds in " + unit.word());
      }
    }
  }
}
