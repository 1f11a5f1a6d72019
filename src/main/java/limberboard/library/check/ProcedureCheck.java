package limberboard.library.check;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import limberboard.library.page.Kind;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.BoatSize;
import limberboard.library.problem.Report;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.Skill;
import limberboard.library.value.Work;

/** Checks procedure pages. */
final class ProcedureCheck implements PageCheck<Procedure> {
  @Override
  public void check(Page<Procedure> page, KnownNames names, Report report) {
    Procedure procedure = page.details();
    if (page.head().system().isEmpty()) {
      report.error("/system", "is missing", "say what part of the boat the work is filed under");
    }
    WorkCheck work = new WorkCheck(names, report);
    work.minutes(procedure.minutes(), "/minutes");
    procedure.minutesFor().ifPresent(size -> size(size, names, report));
    work.access(procedure.access(), "/access");
    work.tools(procedure.tools(), "/tools");
    work.cautions(procedure.cautions(), "/cautions");
    names.pages(Kind.PROCEDURE, procedure.resets(), "/resets", report);
    names.pages(Kind.PROCEDURE, procedure.before(), "/before", report);
    procedure
        .lookAgain()
        .flatMap(Procedure.LookAgain::with)
        .ifPresent(id -> names.page(Kind.PROCEDURE, id, "/look-again/with", report));
    if (!procedure.ownerParts().isEmpty() && procedure.skill() != Skill.LICENSED) {
      report.error(
          "/owner-parts", "is only for licensed work", "take it out: everything is printed");
    }
    procedure
        .interval()
        .ifPresent(
            interval ->
                new IntervalCheck(names, report)
                    .check(interval, procedure.work() == Work.INSPECT, work));
    new IntervalCheck(names, report).appointment(procedure);
    new IntervalCheck(names, report).resets(page);
    List<MaterialUse> materials = procedure.materials();
    for (int i = 0; i < materials.size(); i++) {
      new MaterialUseCheck(names, report, "/materials/" + i).check(materials.get(i));
    }
  }

  private static void size(BoatSize size, KnownNames names, Report report) {
    names.measure(size.measure(), "/minutes-for/measure", report);
    Quantity<?> of = size.of().quantity();
    if (!(of.getValue().doubleValue() > 0)) {
      report.error(
          "/minutes-for/of", "is not more than nothing", "give what it measures on that boat");
      return;
    }
    names.measured(size.measure()).stream()
        .filter(known -> !known.getUnit().isCompatible(of.getUnit()))
        .flatMap(known -> KnownUnit.ownOf(known).stream())
        .findFirst()
        .ifPresent(
            unit ->
                report.error(
                    "/minutes-for/of",
                    "is of another kind than what the models give for " + size.measure(),
                    unit.symbol().isEmpty() ? "write a count" : "give it in " + unit.symbol()));
  }

  /** Checks one entry of a procedure's materials. */
  private record MaterialUseCheck(KnownNames names, Report report, String pointer) {
    void check(MaterialUse use) {
      names.page(Kind.MATERIAL, use.use(), pointer + "/use", report);
      if (!names.mayBeUsedUp(use.use())) {
        report.error(pointer + "/use", "\"" + use.use() + "\" is a tool", "list it under tools");
      }
      names.condition(use.fits(), pointer + "/fits", report);
      long ways =
          List.of(use.amount(), use.bead(), use.coat(), use.cord(), use.pieces()).stream()
              .filter(Optional::isPresent)
              .count();
      if (ways > 1) {
        report.error(
            pointer,
            "gives its amount in " + ways + " ways",
            "keep one of amount, bead, coat, cord, pieces");
      }
      use.amount().ifPresent(amount -> amount(amount, "/amount"));
      use.pieces().ifPresent(amount -> amount(amount, "/pieces"));
      use.bead().ifPresent(this::bead);
      use.coat().ifPresent(this::coat);
      use.cord().ifPresent(this::cord);
      names.ropes(use.ropes(), pointer + "/ropes", report);
    }

    private void bead(MaterialUse.Bead bead) {
      amount(bead.length(), "/bead/length");
      amount(bead.width(), "/bead/width");
      amount(bead.depth(), "/bead/depth");
    }

    private void coat(MaterialUse.Coat coat) {
      amount(coat.area(), "/coat/area");
      amount(coat.thickness(), "/coat/thickness");
    }

    private void cord(MaterialUse.Cord cord) {
      amount(cord.length(), "/cord/length");
      cord.count().ifPresent(count -> amount(count, "/cord/count"));
    }

    private void amount(Amount amount, String key) {
      if (amount instanceof Amount.Measured measured) {
        names.measure(measured.measure(), pointer + key, report);
      }
    }
  }
}
