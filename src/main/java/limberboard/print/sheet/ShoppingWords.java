package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.rigging.RopeTotal;
import limberboard.upkeep.shopping.Batch;
import limberboard.upkeep.shopping.BoughtFor;
import limberboard.upkeep.shopping.Cut;
import limberboard.upkeep.shopping.ShoppingLine;
import limberboard.upkeep.shopping.Substitute;
import limberboard.upkeep.shopping.Usage;
import limberboard.words.Sentences;
import limberboard.words.TimeWords;
import limberboard.workings.AmountOutcome;
import limberboard.workings.PackWords;
import limberboard.workings.QuantityWords;

/** What a shopping list says, in words. Immutable. */
public final class ShoppingWords {
  static final String LOOK_FIRST = "Look or ask first: it may not be needed";
  static final String WHY_LOOK =
      "Nobody knows when this work was last done. Look for a date or ask, log what turns out to be"
          + " in order, and leave out what that spares; otherwise buy it and do the work.";

  private static final double HAIR = 1e-9;

  private final QuantityWords quantities;
  private final PackWords packs;

  /** Words with quantities written so. */
  public ShoppingWords(QuantityWords quantities) {
    this.quantities = quantities;
    this.packs = new PackWords(quantities);
  }

  /** An amount of a material, given in its counting unit: {@code 120 ml}, {@code 4}. */
  public String amount(Page<Material> material, double amount) {
    CountingUnit unit = material.details().unit().orElse(CountingUnit.PIECE);
    Quantity<?> quantity = KnownUnit.counting(unit).quantity(amount);
    return quantities.computed(quantity);
  }

  /** One use: how much, how that was worked out, how often, and what for. */
  public String use(ShoppingLine line, Usage use) {
    List<String> parts = new ArrayList<>();
    if (use.once() instanceof AmountOutcome.Reckoned) {
      parts.add(amount(line.material(), use.alone()));
      Optional.of(shared(line, use)).filter(text -> !text.isEmpty()).ifPresent(parts::add);
      if (use.alonePieces() > 0) {
        parts.add(pieces(use));
      }
      if (!use.working().isEmpty()) {
        parts.add(use.working());
      }
    } else {
      parts.add(open(use));
    }
    if (use.by().times() > 1) {
      parts.add("done " + use.by().times() + " times");
    }
    if (!use.purpose().isEmpty()) {
      parts.add(use.purpose());
    }
    return String.join(", ", parts);
  }

  /** What of a use is counted with another: {@code 6 ml of it counted once with …}; or empty. */
  public String shared(ShoppingLine line, Usage use) {
    if (use.shared() <= HAIR) {
      return "";
    }
    String with =
        use.got().with().stream()
            .map(BoughtFor::title)
            .map(Sentences::lowered)
            .collect(Collectors.joining(" and "));
    String much = use.amount() <= HAIR ? "" : amount(line.material(), use.shared()) + " of it ";
    return much + "counted once with " + with;
  }

  /** The kind of a rope: {@code 8 mm polyester, braid on braid}. */
  public static String kind(RopeTotal total) {
    return QuantityWords.plain(total.millimetres()) + " mm " + total.construction().title();
  }

  private String pieces(Usage use) {
    return use.alonePieces() == 1
        ? "in one piece"
        : use.alonePieces() + " pieces of " + QuantityWords.plain(use.pieceLength()) + " m";
  }

  /** Why the amount of a use is not known. */
  public static String open(Usage use) {
    if (use.once() instanceof AmountOutcome.ToMeasure open) {
      return open.sentence();
    }
    return use.once() instanceof AmountOutcome.Mistaken mistaken
        ? "cannot be worked out: " + mistaken.wrong()
        : "as needed, the page does not say how much";
  }

  /** What to buy, or why nothing. */
  public String buy(ShoppingLine line) {
    if (!line.packs().isEmpty()) {
      String left = line.leftOver().filter(over -> over > HAIR).map(o -> left(line, o)).orElse("");
      return packs.of(line.packs()) + left;
    }
    if (line.missing() > HAIR) {
      return amount(line.material(), line.missing());
    }
    return line.open().isEmpty() ? "nothing: it is in stock" : "as much as it takes";
  }

  private String left(ShoppingLine line, double over) {
    return "; " + amount(line.material(), over) + " left over";
  }

  /** What else to know of a line, one sentence each. */
  public List<String> remarks(ShoppingLine line) {
    List<String> remarks = new ArrayList<>();
    if (line.fromStock() > HAIR) {
      remarks.add(amount(line.material(), line.fromStock()) + " from stock");
    }
    for (Batch batch : line.batches()) {
      batch
          .buyFrom()
          .ifPresent(
              day ->
                  remarks.add(
                      "not before "
                          + day
                          + ": it keeps "
                          + line.material().details().shelfLife().map(TimeWords::period).orElse("")
                          + " and is needed on "
                          + batch.to()));
      if (line.batches().size() > 1 && batch.purchase().isPresent()) {
        remarks.add(
            "for "
                + batch.from()
                + (batch.to().equals(batch.from()) ? "" : " to " + batch.to())
                + ": "
                + packs.of(batch.purchase().get()));
      }
    }
    line.cuts().stream().map(ShoppingWords::cut).distinct().forEach(remarks::add);
    if (!line.tooLong().isEmpty()) {
      remarks.add("too long for any pack: " + lengths(line.tooLong()));
    }
    remarks.addAll(line.remarks());
    return remarks;
  }

  private static String cut(Cut cut) {
    return cut.pieces().size() == 1 && !cut.isRemnant() && cut.from().startsWith("one length")
        ? "one piece of " + lengths(cut.pieces())
        : (cut.isRemnant() ? "cut from the " : "cut from ")
            + cut.from()
            + ": "
            + lengths(cut.pieces());
  }

  /** Lengths as they are cut: {@code 4 × 1.1 m, 2 m}. */
  public static String lengths(List<Double> lengths) {
    Map<Double, Long> counted =
        lengths.stream()
            .collect(
                Collectors.groupingBy(length -> length, LinkedHashMap::new, Collectors.counting()));
    return counted.entrySet().stream()
        .map(e -> (e.getValue() == 1 ? "" : e.getValue() + " × ") + QuantityWords.plain(e.getKey()))
        .map(words -> words + " m")
        .collect(Collectors.joining(", "));
  }

  /** A substitute: what it is good for, why not, and what there is of it. */
  public String substitute(Substitute substitute) {
    String good = substitute.goodFor();
    String why = String.join("; ", substitute.against());
    String stored =
        substitute.inStock() > HAIR
            ? " In stock: " + amount(substitute.material(), substitute.inStock()) + "."
            : "";
    String not = why.isEmpty() ? "" : " Not here: " + why + ".";
    return good + not + stored;
  }
}
