package limberboard.desktop.upkeep.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Span;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.AskedRope;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.page.Page;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.RiggingCsv;
import limberboard.print.sheet.RiggingSheet;
import limberboard.print.sheet.RiggingWords;
import limberboard.rigging.Rope;
import limberboard.rigging.RopeLength;
import limberboard.rigging.RunningRigging;
import limberboard.upkeep.Upkeep;
import limberboard.words.CountWords;

/**
 * Every rope of the chosen boat, and which of them are ticked. Each boat keeps its ticks; what is
 * ticked and not on her list any more is named until something else is ticked. For the event thread
 * only.
 */
final class RiggingModel extends Observed {
  private final UpkeepModel upkeep;
  private final SheetModel<Optional<Void>, Rigged> sheet;
  private final Map<String, Map<String, AskedRope>> ticked = new HashMap<>();
  private String last = "";

  RiggingModel(UpkeepModel upkeep, Background background) {
    this.upkeep = upkeep;
    this.sheet = new SheetModel<>(upkeep, background, Optional.empty(), RiggingModel::make);
    sheet.onChange(this::tell);
  }

  /**
   * A rope that can be ticked.
   *
   * @param id its id on the list
   * @param group the part of the list that it begins, or empty
   * @param facts how it is cut and of what, or what is not known of it
   * @param metres all its pieces together; empty when its length is not known
   * @param page the page of its material, where there is one
   */
  record RopeLine(
      String id,
      String title,
      String group,
      String facts,
      OptionalDouble metres,
      Optional<String> page) {}

  /**
   * What came of it.
   *
   * @param ropes the ropes, in the order of the list
   * @param sheet the list
   */
  record Rigged(List<RopeLine> ropes, Made sheet) implements HasSheet {
    /** Copies the list. */
    Rigged {
      ropes = List.copyOf(ropes);
    }
  }

  /** The sheet. */
  SheetModel<?, Rigged> sheet() {
    return sheet;
  }

  /** The ropes, in the order of the list. */
  List<RopeLine> ropes() {
    return sheet.made().map(Rigged::ropes).orElse(List.of());
  }

  boolean isTicked(String id) {
    return ticks().containsKey(id);
  }

  /** The ticked ropes, in the order of the list. */
  List<RopeLine> ticked() {
    return ropes().stream().filter(rope -> isTicked(rope.id())).toList();
  }

  /** The ticked ropes, to be shopped for. */
  List<AskedRope> asked() {
    return ticked().stream().map(rope -> new AskedRope(rope.id(), rope.title())).toList();
  }

  /** Titles of ropes that were ticked and are not on the list any more. */
  List<String> gone() {
    List<String> there = ropes().stream().map(RopeLine::id).toList();
    return sheet.made().isEmpty()
        ? List.of()
        : ticks().values().stream()
            .filter(rope -> !there.contains(rope.id()))
            .map(AskedRope::title)
            .toList();
  }

  /** How many ropes are ticked, and how long they are together. */
  String words() {
    List<RopeLine> ticked = ticked();
    if (ticked.isEmpty()) {
      return "No rope is ticked.";
    }
    double metres = ticked.stream().mapToDouble(rope -> rope.metres().orElse(0)).sum();
    long open = ticked.stream().filter(rope -> rope.metres().isEmpty()).count();
    String count = CountWords.of(ticked.size(), "rope") + " ticked";
    if (open == ticked.size()) {
      return count + ", of a length that is not known yet.";
    }
    String known = count + ", " + RiggingWords.metres(metres) + " in all";
    return open == 0
        ? known + "."
        : known + ", without " + CountWords.word(open) + " of a length that is not known yet.";
  }

  /**
   * Ticks a rope, or takes its tick away.
   *
   * @param range whether all ropes from the last one on are ticked
   */
  void tick(String id, boolean range) {
    List<String> ids = ropes().stream().map(RopeLine::id).toList();
    if (range && ids.contains(last)) {
      List<String> span = Span.of(ids, last, id);
      add(ropes().stream().filter(rope -> span.contains(rope.id())).toList());
    } else if (isTicked(id)) {
      forgetGone();
      ticks().remove(id);
    } else {
      add(ropes().stream().filter(rope -> rope.id().equals(id)).toList());
    }
    last = id;
    tell();
  }

  /** Ticks every rope. */
  void tickAll() {
    add(ropes());
    tell();
  }

  /** Takes all ticks away. */
  void clear() {
    ticks().clear();
    tell();
  }

  private void add(List<RopeLine> ropes) {
    forgetGone();
    ropes.forEach(rope -> ticks().put(rope.id(), new AskedRope(rope.id(), rope.title())));
  }

  private void forgetGone() {
    ticks().keySet().retainAll(ropes().stream().map(RopeLine::id).toList());
  }

  private Map<String, AskedRope> ticks() {
    return upkeep
        .boat()
        .map(boat -> ticked.computeIfAbsent(boat.id(), id -> new LinkedHashMap<>()))
        .orElseGet(LinkedHashMap::new);
  }

  private static Rigged make(Workspace workspace, Upkeep upkeep, Optional<Void> choice) {
    RunningRigging rigging = RunningRigging.of(workspace.library(), upkeep.fitting());
    CutPage sheet = new RiggingSheet(workspace.library()).of(rigging);
    return new Rigged(
        lines(rigging),
        new Made(
            "rigging-" + upkeep.fitting().boat().id(),
            sheet,
            () -> sheet,
            () -> new RiggingCsv().render(rigging),
            rigging.ropes().isEmpty() ? nothing(upkeep) : ""));
  }

  private static List<RopeLine> lines(RunningRigging rigging) {
    List<RopeLine> lines = new ArrayList<>();
    String before = "";
    for (Rope rope : rigging.ropes()) {
      String group = rope.group().title();
      lines.add(
          new RopeLine(
              rope.id(),
              rope.title(),
              group.equals(before) ? "" : group,
              RiggingWords.cut(rope),
              rope.length() instanceof RopeLength.Cut cut
                  ? OptionalDouble.of(rope.count() * cut.cut())
                  : OptionalDouble.empty(),
              rope.material().map(Page::id)));
      before = group;
    }
    return lines;
  }

  private static String nothing(Upkeep upkeep) {
    return "The page of the "
        + upkeep.fitting().boat().model().title()
        + " names no ropes yet. A model’s page lists them in its header, under ropes; their lengths"
        + " follow from the rig’s dimensions.";
  }
}
