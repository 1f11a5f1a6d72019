package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.RopeGroup;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.rigging.Pull;
import limberboard.rigging.Rope;
import limberboard.rigging.RopeTotal;
import limberboard.rigging.RunningRigging;
import limberboard.rigging.Thickness;
import limberboard.workings.QuantityWords;
import limberboard.workings.cordage.RopeStrength;

/** The tables of a rigging sheet. */
final class RiggingTables {
  private static final String BOX = "□";

  private RiggingTables() {}

  /** Every rope, group by group, with a box for cut and one for checked. */
  static Part ropes(RunningRigging rigging) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    Optional<RopeGroup> group = Optional.empty();
    List<String> said = List.of();
    for (Rope rope : rigging.ropes()) {
      if (!group.equals(Optional.of(rope.group()))) {
        group = Optional.of(rope.group());
        said = ofAll(rope.group(), rigging);
        rows.add(heading(rope.group().title() + caution(said)));
      }
      List<String> own = new ArrayList<>(titles(rope, rigging));
      own.removeAll(said);
      rows.add(row(rope, caution(own)));
    }
    return table(
        Part.Role.ROPES,
        "The ropes",
        List.of(Side.LEFT, Side.RIGHT, Side.LEFT, Side.LEFT, Side.CENTRE, Side.CENTRE),
        List.of("Rope", "Cut", "Of", "Ends", "Cut", "Checked"),
        rows);
  }

  /** The cautions that every rope of a group has; they stand beside the group's name. */
  private static List<String> ofAll(RopeGroup group, RunningRigging rigging) {
    List<List<String>> each =
        rigging.ropes().stream()
            .filter(rope -> rope.group() == group)
            .map(rope -> titles(rope, rigging))
            .toList();
    return each.get(0).stream()
        .filter(title -> each.stream().allMatch(titles -> titles.contains(title)))
        .toList();
  }

  private static List<String> titles(Rope rope, RunningRigging rigging) {
    return rigging.cautions(rope).stream().map(WorkCaution::title).toList();
  }

  private static String caution(List<String> titles) {
    return titles.isEmpty() ? "" : " (caution: " + String.join("; ", titles) + ")";
  }

  private static List<List<Inline>> heading(String title) {
    return List.of(List.of(new Inline.Strong(Inline.text(title))));
  }

  private static List<List<Inline>> row(Rope rope, String caution) {
    return List.of(
        Inline.text(rope.title()),
        Inline.text(RiggingWords.pieces(rope)),
        Inline.text(RiggingWords.stuff(rope) + caution),
        Inline.text(rope.endWords()),
        Inline.text(BOX),
        Inline.text(BOX));
  }

  /** What to ask for in the shop. */
  static Part totals(List<RopeTotal> totals) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (RopeTotal total : totals) {
      String pieces =
          total.pieces().stream()
              .map(
                  piece ->
                      piece.title()
                          + " "
                          + RiggingWords.pieces(piece.count(), RiggingWords.metres(piece.metres())))
              .collect(Collectors.joining(", "));
      rows.add(
          List.of(
              named(total.material(), total),
              Inline.text(RiggingWords.metres(total.metres())),
              Inline.text(pieces)));
    }
    return table(
        Part.Role.ROPES,
        "To buy",
        List.of(Side.LEFT, Side.RIGHT, Side.LEFT),
        List.of("Rope", "In all", "For"),
        rows);
  }

  private static List<Inline> named(Optional<Page<Material>> page, RopeTotal total) {
    List<Inline> name =
        Inline.text(RiggingWords.size(total.millimetres()) + " " + total.construction().title());
    return page.map(found -> List.<Inline>of(new Inline.PageLink(found.id(), name))).orElse(name);
  }

  /** How each length and thickness came about, for ropes of which not everything is stated. */
  static Part sums(List<Rope> ropes) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Rope rope : ropes.stream().filter(Rope::dependsOnTheRig).toList()) {
      rows.add(
          List.of(title(rope), Inline.text(rope.length().working()), Inline.text(thickness(rope))));
    }
    Part sums =
        table(
            Part.Role.SUMS,
            "The sums",
            List.of(Side.LEFT, Side.LEFT, Side.LEFT),
            List.of("Rope", "Length of one piece", "Thickness"),
            rows);
    List<Block> blocks = new ArrayList<>(List.of(Block.Paragraph.of(legend(ropes))));
    blocks.addAll(sums.blocks());
    return new Part(sums.role(), sums.title(), blocks);
  }

  /** What the sums take for granted, said once: the sails' pulls, and the losses of a rope. */
  private static String legend(List<Rope> ropes) {
    List<String> pulls = new ArrayList<>();
    for (Rope rope : ropes) {
      if (rope.pull() instanceof Pull.Reckoned pull && !pull.source().isEmpty()) {
        pulls.add(pull.source());
      }
    }
    String sails = String.join("; ", pulls.stream().distinct().toList());
    return (sails.isEmpty() ? "" : "Pulls: " + sails + ". ")
        + "A rope has to break at its load × "
        + QuantityWords.plain(RopeStrength.SAFETY)
        + " ÷ (what its weaker end keeps × "
        + QuantityWords.plain(RopeStrength.AGE_KEEPS)
        + " for age); a knot keeps "
        + QuantityWords.plain(RopeStrength.KNOT_KEEPS)
        + ", an eye splice "
        + QuantityWords.plain(RopeStrength.SPLICE_KEEPS)
        + ". The thinnest stocked rope that does is taken, or what hand, clutch or sheave want.";
  }

  private static List<Inline> title(Rope rope) {
    List<Inline> title = new ArrayList<>();
    title.add(new Inline.Strong(Inline.text(rope.title())));
    if (!rope.purpose().isEmpty()) {
      title.add(new Inline.Text(": " + rope.purpose()));
    }
    return title;
  }

  private static String thickness(Rope rope) {
    return rope.thickness() instanceof Thickness.Chosen chosen
        ? chosen.working()
        : rope.thickness() instanceof Thickness.Open open ? open.why() : "";
  }

  private static Part table(
      Part.Role role,
      String title,
      List<Side> sides,
      List<String> heads,
      List<List<List<Inline>>> rows) {
    return new Part(
        role,
        title,
        List.of(new Block.Table(sides, heads.stream().map(Inline::text).toList(), rows)));
  }
}
