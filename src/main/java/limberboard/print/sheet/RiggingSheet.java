package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.value.Condition;
import limberboard.library.value.KnownUnit;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.cut.PageParts;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import limberboard.words.DayWords;
import limberboard.words.Sentences;
import limberboard.workings.QuantityWords;

/**
 * A boat's running rigging as a sheet that any output can render: the boat's rig, what has to be
 * measured, every rope with boxes to tick and the cautions by name, what to buy, the sums, and the
 * cautions in two lines at the end. Immutable; any thread.
 */
public final class RiggingSheet {
  private static final String HOLD_ON =
      "Lay the new rope beside the old one before you cut it: the old one knows the boat. Loads are"
          + " estimates for choosing rope, not for spars or chain plates.";

  private static final String WHOLE = "The page of each rope's material has the whole text.";

  private final Library library;

  /** Sheets whose cautions and pages are looked up in this library. */
  public RiggingSheet(Library library) {
    this.library = library;
  }

  /** The sheet. */
  public CutPage of(RunningRigging rigging) {
    Boat boat = rigging.fitting().boat();
    List<Part> parts = new ArrayList<>();
    parts.add(PageParts.notice("", HOLD_ON));
    parts.add(new Part(Part.Role.FACTS, "", List.of(new Block.Facts(facts(rigging)))));
    open(rigging).ifPresent(parts::add);
    if (rigging.ropes().isEmpty()) {
      String none = "The page of the " + boat.model().title() + " lists no ropes.";
      parts.add(PageParts.notice("", none));
    } else {
      parts.add(RiggingTables.ropes(rigging));
      parts.add(RiggingTables.totals(rigging.totals()));
      parts.add(RiggingTables.sums(rigging.ropes()));
    }
    Cautions.atEnd(rigging.cautions(), caution -> "", WHOLE).ifPresent(parts::add);
    return new CutPage(
        boat.model().id(),
        boat.model().kind(),
        "ropes",
        "Running rigging of " + boat.name(),
        "",
        PageCutter.cutFor(boat),
        parts);
  }

  private static List<Block.Fact> facts(RunningRigging rigging) {
    Boat boat = rigging.fitting().boat();
    List<String> rig = new ArrayList<>();
    boat.model()
        .details()
        .rig()
        .forEach(
            (name, fixed) -> {
              if (KnownUnit.METRES.measures(fixed.quantity())) {
                rig.add(
                    Sentences.spoken(name) + " " + QuantityWords.METRIC.written(fixed.quantity()));
              }
            });
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Block.Fact.of("Rig", rig.isEmpty() ? "not on the page" : String.join(", ", rig)));
    List<String> fitted = fitted(boat);
    String on = DayWords.of(rigging.fitting().on());
    facts.add(
        fitted.isEmpty()
            ? Block.Fact.of("Reckoned on", on)
            : Block.Fact.of("Fitted on " + on, String.join(", ", fitted)));
    return facts;
  }

  /** The boat's equipment, as far as ropes depend on it. */
  private static List<String> fitted(Boat boat) {
    Model model = boat.model().details();
    List<String> decisive =
        model.ropes().stream().flatMap(rope -> choices(rope.fits()).stream()).distinct().toList();
    List<String> titles = new ArrayList<>();
    for (Model.Equipment equipment : model.equipment()) {
      if (equipment.choices().stream().anyMatch(choice -> decisive.contains(choice.id()))) {
        equipment.choices().stream()
            .filter(choice -> boat.has(choice.id()))
            .map(Model.Choice::title)
            .forEach(titles::add);
      }
    }
    return titles;
  }

  private static List<String> choices(Condition condition) {
    List<String> choices = new ArrayList<>(condition.fitted());
    choices.addAll(condition.notFitted());
    condition.any().forEach(alternative -> choices.addAll(choices(alternative)));
    return choices;
  }

  private static Optional<Part> open(RunningRigging rigging) {
    List<List<Inline>> lines = new ArrayList<>();
    for (Rope rope : rigging.ropes()) {
      if (!rope.isReckoned()) {
        lines.add(
            List.of(
                new Inline.Strong(Inline.text(rope.title())),
                new Inline.Text(": " + String.join("; ", rope.open()))));
      }
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.NOTICE, "Still open", List.of(Block.Items.dotted(lines))));
  }
}
