package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Amount;
import limberboard.print.markdown.LinkTargets;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/** Cuts a model page: its drawings, equipment by year, places, measures and ways to get there. */
final class ModelCutter {
  private final CutContext cutting;

  ModelCutter(CutContext cutting) {
    this.cutting = cutting;
  }

  List<Part> cut(Page<Model> page) {
    Model model = page.details();
    PageParts parts = new PageParts(cutting);
    List<Part> cut = new ArrayList<>();
    parts.fit(page).ifPresent(cut::add);
    cut.add(new Part(Part.Role.FACTS, "", List.of(new Block.Facts(facts(model)))));
    drawings(page).ifPresent(cut::add);
    BodyCutter.part("", new BodyCutter(cutting).cut(page)).ifPresent(cut::add);
    cut.add(table("Equipment", equipment(page)));
    cut.add(table("Places", places(model)));
    addQuantities("Rig", "Dimension", model.rig(), cut);
    addQuantities("Measures", "Measure", model.measures(), cut);
    if (!model.access().isEmpty()) {
      cut.add(table("Getting there", access(model)));
    }
    parts.leftOut().ifPresent(cut::add);
    parts.sources(page).ifPresent(cut::add);
    return cut;
  }

  private static List<Block.Fact> facts(Model model) {
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Block.Fact.of("Built", ConditionWords.years(model.built())));
    model
        .hulls()
        .ifPresent(hulls -> facts.add(Block.Fact.of("Hull numbers", ConditionWords.years(hulls))));
    return facts;
  }

  private static Optional<Part> drawings(Page<Model> page) {
    LinkTargets targets = new LinkTargets(page.path(), id -> false);
    List<Block> drawings = new ArrayList<>();
    addDrawing(targets, page.details().drawing().profile(), "seen from the side", page, drawings);
    addDrawing(targets, page.details().drawing().deck(), "seen from above", page, drawings);
    return drawings.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.TABLES, "Drawings", drawings));
  }

  private static void addDrawing(
      LinkTargets targets, String file, String view, Page<Model> page, List<Block> drawings) {
    targets
        .picture(file)
        .map(path -> new Inline.Picture(path, "The " + page.title() + " " + view))
        .ifPresent(picture -> drawings.add(new Block.Paragraph(List.of(picture))));
  }

  private static Part table(String title, Block.Table table) {
    return new Part(Part.Role.TABLES, title, List.of(table));
  }

  private Block.Table equipment(Page<Model> page) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Model.Equipment equipment : page.details().equipment()) {
      String title = equipment.title();
      for (Model.Choice choice : equipment.choices()) {
        rows.add(
            List.of(
                Inline.text(title),
                choice(choice, page.id()),
                Inline.text(choice.built().map(ConditionWords::years).orElse("all years")),
                Inline.text(choice.usual().map(ConditionWords::years).orElse("only if ordered"))));
        title = "";
      }
    }
    return table(List.of("Equipment", "Choice", "To be had", "Fitted unless asked"), rows);
  }

  private List<Inline> choice(Model.Choice choice, String model) {
    boolean fitted =
        cutting
            .fitting()
            .map(Fitting::boat)
            .filter(boat -> boat.model().id().equals(model) && boat.has(choice.id()))
            .isPresent();
    return fitted
        ? List.of(
            new Inline.Strong(Inline.text(choice.title())),
            new Inline.Text(" (" + cutting.boatName() + " has it)"))
        : Inline.text(choice.title());
  }

  private static Block.Table places(Model model) {
    List<List<List<Inline>>> rows =
        model.drawnZones().stream()
            .map(
                zone ->
                    List.of(
                        Inline.text(zone.title()),
                        Inline.text(seen(zone.profile().isPresent(), zone.deck().isPresent()))))
            .toList();
    return table(List.of("Place", "Drawn"), rows);
  }

  private static String seen(boolean profile, boolean deck) {
    if (profile && deck) {
      return "from the side and from above";
    }
    return profile ? "from the side" : deck ? "from above" : "not drawn";
  }

  private void addQuantities(
      String title, String head, Map<String, Amount.Fixed> quantities, List<Part> cut) {
    if (!quantities.isEmpty()) {
      List<List<List<Inline>>> rows = new ArrayList<>();
      quantities.forEach(
          (name, fixed) ->
              rows.add(
                  List.of(
                      Inline.text(Sentences.spoken(name)),
                      Inline.text(cutting.quantities().written(fixed.quantity())))));
      cut.add(table(title, table(List.of(head, "Value"), rows)));
    }
  }

  private Block.Table access(Model model) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Model.Access access : model.access()) {
      List<String> needs =
          access.needs().stream()
              .map(id -> model.access(id).map(Model.Access::title).orElse(id))
              .toList();
      rows.add(
          List.of(
              Inline.text(access.title()),
              Inline.text(Minutes.words(access.minutes())),
              Inline.text(String.join(", ", needs))));
    }
    return table(List.of("What", "Time", "First"), rows);
  }

  private static Block.Table table(List<String> heads, List<List<List<Inline>>> rows) {
    return new Block.Table(
        heads.stream().map(head -> Side.LEFT).toList(),
        heads.stream().map(Inline::text).toList(),
        rows);
  }
}
